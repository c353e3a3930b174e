//! The first lessons speak of "times weaker": no decibels, no Q.

use crate::lessons::course::Course;
use crate::lessons::lesson::Lesson;
use crate::lessons::prose;
use crate::lessons::texts;
use crate::lessons::words::Phrases;
use crate::report::Report;
use std::ops::Range;

/// The last lesson that must do without decibels and Q.
const LAST_PLAIN_LESSON: u32 = 5;

/// What the first lessons do not say.
const WORDS: [&str; 8] = [
    "decibel",
    "decibels",
    "dB",
    "db",
    "DB",
    "Q",
    "quality factor",
    "Q factor",
];

/// Reports decibels and Q in the first lessons, marked numbers and all.
pub(super) fn check(course: &Course, report: &mut Report) {
    for lesson in &course.lessons {
        let own = texts::of_lesson(lesson);
        for text in own
            .into_iter()
            .chain(texts::shown_from_lists(lesson, course))
        {
            let flat = prose::Flat::with_numbers(text.run);
            for (range, message) in too_early(&flat.text, lesson) {
                text.file.fault(flat.place(range.start), message, report);
            }
        }
    }
}

/// Words that a lesson so early in the course does not say.
pub(super) fn too_early(text: &str, lesson: &Lesson) -> Vec<(Range<usize>, String)> {
    if lesson.number > LAST_PLAIN_LESSON {
        return Vec::new();
    }
    let said = |(range, ()): (Range<usize>, ())| {
        let message = format!(
            "lessons 1 to {LAST_PLAIN_LESSON} say \"times weaker\": no decibels and no Q (got \"{}\")",
            &text[range.clone()]
        );
        (range, message)
    };
    let phrases = Phrases::new(WORDS.map(|word| (word, ())));
    phrases.find(text).into_iter().map(said).collect()
}
