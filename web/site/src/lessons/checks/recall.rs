//! A recall set holds families of earlier lessons, each once.

use crate::lessons::blocks::{Part, RecallBlock};
use crate::lessons::course::Course;
use crate::lessons::lesson::Lesson;
use crate::report::Report;
use std::collections::HashMap;
use toml::de::DeTable;

/// Reports recall sets that stand twice, or ask for what has not been taught before.
pub(super) fn check(course: &Course, families: &[&str], report: &mut Report) {
    let taught = taught(course);
    for lesson in &course.lessons {
        let sets = lesson.parts.iter().filter_map(|part| match part {
            Part::Recall(block) => Some(block),
            _ => None,
        });
        for (index, set) in sets.enumerate() {
            if index > 0 {
                let message = "a lesson has one recall set";
                lesson.file.fault(set.at, message, report);
            }
            check_set(lesson, set, families, &taught, report);
        }
    }
}

fn check_set(
    lesson: &Lesson,
    set: &RecallBlock,
    families: &[&str],
    taught: &HashMap<String, u32>,
    report: &mut Report,
) {
    for (index, (id, at)) in set.families.iter().enumerate() {
        let own = lesson.front.problems.iter().any(|it| it.get_ref() == id);
        let message = if !families.contains(&id.as_str()) {
            format!("no problem family has the id \"{id}\" in problems/registry.toml")
        } else if set.families[..index]
            .iter()
            .any(|(earlier, _)| earlier == id)
        {
            format!("\"{id}\" stands in this recall set a second time")
        } else if let Some(number) = taught.get(id).filter(|number| **number >= lesson.number) {
            format!("a recall set looks back: \"{id}\" belongs to lesson {number}")
        } else if own {
            format!("\"{id}\" is shown in this lesson already")
        } else {
            continue;
        };
        lesson.file.fault(*at, message, report);
    }
}

/// The number of the lesson that each family belongs to. What is no TOML, or names no
/// lesson, is told by the families' own check.
fn taught(course: &Course) -> HashMap<String, u32> {
    let files = course.families.iter().filter_map(|file| {
        let table = DeTable::parse(file.text()).ok()?.into_inner();
        let slug = table.get("lesson")?.get_ref().as_str()?;
        let name = file.path().rsplit('/').next()?.strip_suffix(".toml")?;
        Some((name.to_owned(), course.lesson(slug)?.number))
    });
    files.collect()
}
