//! What the course covers: goals, families, misconceptions and transfer, lesson by lesson.

use super::real::{course, families};
use crate::families::Families;
use crate::lessons::blocks::Part;
use crate::lessons::lesson::Lesson;
use superhet::problems::{Family, Level};

#[test]
fn each_lesson_is_covered() {
    let course = course();
    let families = families();
    let mut untold = Vec::new();
    for lesson in &course.lessons {
        println!("{} {}", lesson.number, lesson.slug);
        for goal in &lesson.front.goals {
            println!("  goal           {}", goal.get_ref());
        }
        let own = of_lesson(&families, lesson);
        let shown = |family: &&Family| {
            let mut blocks = lesson.front.problems.iter();
            blocks.any(|id| *id.get_ref() == family.id)
        };
        assert!(
            own.iter().any(shown),
            "{} shows no family of its own",
            lesson.slug
        );
        for family in &own {
            let transfer = family.level(Level::Transfer).parts.join(", ");
            let place = if shown(family) {
                ""
            } else {
                "; not in the lesson"
            };
            println!(
                "  family         {}; transfer: {transfer}{place}",
                family.id
            );
        }
        for id in &lesson.front.misconceptions {
            let told = told_by(&families, &course.lessons, id.get_ref());
            println!("  misconception  {}: {}", id.get_ref(), told.join(", "));
            if told.is_empty() {
                untold.push(id.get_ref().clone());
            }
        }
    }
    assert_eq!(
        untold,
        Vec::<String>::new(),
        "no prediction and no problem tells a learner of these"
    );
}

fn of_lesson<'a>(families: &'a Families, lesson: &Lesson) -> Vec<&'a Family> {
    let own = families.newest().map(|it| &it.family);
    own.filter(|family| family.lesson == lesson.slug).collect()
}

/// The predictions and families that name a misconception to whoever shows it.
fn told_by(families: &Families, lessons: &[Lesson], id: &str) -> Vec<String> {
    let predicted = lessons.iter().filter(|lesson| predicts(lesson, id));
    let predicted = predicted.map(|lesson| format!("prediction of {}", lesson.slug));
    let families = families.newest().map(|it| &it.family);
    let asked = families.filter(|family| names(family, id));
    predicted
        .chain(asked.map(|family| family.id.clone()))
        .collect()
}

fn predicts(lesson: &Lesson, id: &str) -> bool {
    lesson.parts.iter().any(|part| match part {
        Part::Predict(predict) => predict.choices.iter().any(|choice| {
            choice
                .misconception
                .as_ref()
                .is_some_and(|(it, _)| it == id)
        }),
        _ => false,
    })
}

fn names(family: &Family, id: &str) -> bool {
    let mistakes = family.mistakes.iter().map(|it| &it.misconception);
    let options = family.parts.iter().flat_map(|part| &part.options);
    mistakes
        .chain(options.map(|it| &it.misconception))
        .any(|it| it.as_deref() == Some(id))
}
