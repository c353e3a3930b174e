//! No quantity before the lesson that introduces it.

use super::introduced::{Introduced, early};
use crate::lessons::blocks::Part;
use crate::lessons::course::Course;
use crate::lessons::lesson::Lesson;
use crate::lessons::prose;
use crate::lessons::source_text::SourceText;
use crate::lessons::target::Target;
use crate::lessons::texts::{self, Text};
use crate::report::Report;

/// Reports quantities used too early, introduced by no lesson, or never used.
pub(super) fn check(course: &Course, introduced: &Introduced<'_>, report: &mut Report) {
    for lesson in &course.lessons {
        check_lesson(lesson, course, introduced, report);
    }
}

fn check_lesson(
    lesson: &Lesson,
    course: &Course,
    introduced: &Introduced<'_>,
    report: &mut Report,
) {
    let uses = uses(lesson, course);
    for (file, at, name) in &uses {
        match introduced.quantities.get(name) {
            Some(number) if *number > lesson.number => {
                file.fault(*at, early(name, *number), report);
            }
            Some(_) => {}
            None => file.fault(
                *at,
                format!("no lesson introduces the quantity \"{name}\""),
                report,
            ),
        }
    }
    for name in &lesson.front.introduces.quantities {
        if !uses.iter().any(|(_, _, used)| used == name.get_ref()) {
            let message = format!(
                "the lesson introduces \"{}\" but never uses it",
                name.get_ref()
            );
            lesson.file.fault(name.span().start, message, report);
        }
    }
}

/// Where a lesson, and what it shows from the lists, uses which quantity.
fn uses<'a>(lesson: &'a Lesson, course: &'a Course) -> Vec<(&'a SourceText, usize, &'a str)> {
    let mut uses = Vec::new();
    let own = texts::of_lesson(lesson);
    let shown = texts::shown_from_lists(lesson, course);
    for text in own.into_iter().chain(shown) {
        uses.extend(quantities_in(text));
    }
    for part in &lesson.parts {
        match part {
            Part::Formula(block) => uses.push((&lesson.file, block.at, block.quantity.as_str())),
            Part::Predict(predict) => {
                uses.push((
                    &lesson.file,
                    predict.settled_at,
                    predict.settled_by.quantity.as_str(),
                ));
            }
            _ => {}
        }
    }
    uses
}

fn quantities_in(text: Text<'_>) -> Vec<(&SourceText, usize, &str)> {
    prose::links(text.run)
        .into_iter()
        .filter_map(|link| match &link.target {
            Ok(Target::Calc(expression)) => {
                Some((text.file, link.at, expression.quantity.as_str()))
            }
            _ => None,
        })
        .collect()
}
