//! Which lesson introduces what.

use crate::lessons::course::Course;
use crate::lessons::lesson::Lesson;
use crate::report::Report;
use std::collections::HashMap;
use toml::Spanned;

/// Which lesson, by its number, introduces what.
pub(super) struct Introduced<'a> {
    /// Catalogue names.
    pub(super) quantities: HashMap<&'a str, u32>,
    /// Glossary ids.
    pub(super) terms: HashMap<&'a str, u32>,
}

impl<'a> Introduced<'a> {
    /// Reads it from the front matter of every lesson; what stands twice or is no term
    /// goes to the report.
    pub(super) fn read(course: &'a Course, report: &mut Report) -> Self {
        let mut introduced = Self {
            quantities: HashMap::new(),
            terms: HashMap::new(),
        };
        for lesson in &course.lessons {
            let lists = &lesson.front.introduces;
            enter(
                &mut introduced.quantities,
                &lists.quantities,
                lesson,
                report,
            );
            enter(&mut introduced.terms, &lists.terms, lesson, report);
            for id in lists
                .terms
                .iter()
                .filter(|id| course.glossary.find(id.get_ref()).is_none())
            {
                let message = format!("no term has the id \"{}\" in glossary.toml", id.get_ref());
                lesson.file.fault(id.span().start, message, report);
            }
        }
        introduced
    }
}

fn enter<'a>(
    known: &mut HashMap<&'a str, u32>,
    ids: &'a [Spanned<String>],
    lesson: &Lesson,
    report: &mut Report,
) {
    for id in ids {
        if let Some(earlier) = known.get(id.get_ref().as_str()) {
            let message = format!("lesson {earlier} introduces \"{}\" already", id.get_ref());
            lesson.file.fault(id.span().start, message, report);
        } else {
            known.insert(id.get_ref(), lesson.number);
        }
    }
}

/// What is said of words before their lesson.
pub(super) fn early(words: &str, number: u32) -> String {
    let words = words.split_whitespace().collect::<Vec<_>>().join(" ");
    format!("\"{words}\" is used here, but lesson {number} introduces it")
}
