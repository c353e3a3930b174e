//! No term before the lesson that introduces it, and its meaning at its first use there.

use super::introduced::{Introduced, early};
use crate::lessons::course::Course;
use crate::lessons::lesson::Lesson;
use crate::lessons::prose::Flat;
use crate::lessons::texts;
use crate::lessons::words::Phrases;
use crate::report::Report;
use std::collections::HashSet;
use std::ops::Range;

/// Reports terms used too early, not defined at first use, or never used.
pub(super) fn check(course: &Course, introduced: &Introduced<'_>, report: &mut Report) {
    let phrases = Phrases::of_terms(&course.glossary);
    for lesson in &course.lessons {
        check_lesson(lesson, course, introduced, &phrases, report);
        check_shown_texts(lesson, course, introduced, &phrases, report);
    }
}

fn check_lesson<'a>(
    lesson: &'a Lesson,
    course: &'a Course,
    introduced: &Introduced<'_>,
    phrases: &Phrases<&'a str>,
    report: &mut Report,
) {
    let mut own: HashSet<&str> = HashSet::new();
    for text in texts::of_lesson(lesson) {
        let flat = Flat::of(text.run);
        for (range, id) in terms_in(&flat, phrases) {
            match introduced.terms.get_key_value(id) {
                Some((_, number)) if *number > lesson.number => {
                    text.file.fault(
                        flat.place(range.start),
                        early(&flat.text[range], *number),
                        report,
                    );
                }
                Some((id, number)) if *number == lesson.number && !text.in_front => {
                    let first = own.insert(id);
                    if first && !defines(&flat, &range, id) {
                        let message = undefined(&flat.text[range.clone()], id);
                        text.file.fault(flat.place(range.start), message, report);
                    }
                }
                _ => {}
            }
        }
    }
    for id in &lesson.front.introduces.terms {
        if course.glossary.find(id.get_ref()).is_some() && !own.contains(id.get_ref().as_str()) {
            let message = format!(
                "the lesson introduces \"{}\" but never uses it",
                id.get_ref()
            );
            lesson.file.fault(id.span().start, message, report);
        }
    }
}

/// The terms of a text in order: by their spellings, and by links whatever they say.
fn terms_in<'f>(flat: &'f Flat, phrases: &Phrases<&'f str>) -> Vec<(Range<usize>, &'f str)> {
    let mut found = phrases.find(&flat.text);
    for (stretch, id) in &flat.defining {
        let Some(id) = id else { continue };
        let spelled = found
            .iter()
            .any(|(range, known)| known == id && within(range, stretch));
        if !spelled {
            found.push((stretch.clone(), id));
        }
    }
    found.sort_by_key(|(range, _)| range.start);
    found
}

fn within(range: &Range<usize>, stretch: &Range<usize>) -> bool {
    stretch.start <= range.start && range.end <= stretch.end
}

/// Texts of the lists use no later term than the lesson that shows them.
fn check_shown_texts<'a>(
    lesson: &Lesson,
    course: &'a Course,
    introduced: &Introduced<'_>,
    phrases: &Phrases<&'a str>,
    report: &mut Report,
) {
    for text in texts::shown_from_lists(lesson, course) {
        let flat = Flat::of(text.run);
        for (range, id) in terms_in(&flat, phrases) {
            if let Some(later) = introduced
                .terms
                .get(id)
                .filter(|number| **number > lesson.number)
            {
                let message = format!(
                    "{}, and lesson {} shows this text",
                    early(&flat.text[range.clone()], *later),
                    lesson.number
                );
                text.file.fault(flat.place(range.start), message, report);
            }
        }
    }
}

/// Whether the stretch is the term's link, or bold type that holds nothing else.
fn defines(flat: &Flat, range: &Range<usize>, id: &str) -> bool {
    flat.defining.iter().any(|(stretch, term)| match term {
        Some(term) => term == id && within(range, stretch),
        None => stretch == range,
    })
}

fn undefined(words: &str, id: &str) -> String {
    format!(
        "the first \"{words}\" of the lesson that introduces it is a link to term:{id} or bold type"
    )
}
