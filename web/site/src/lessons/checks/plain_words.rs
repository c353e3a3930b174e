//! The first lessons speak of "times weaker": no decibels, no Q.

use crate::lessons::course::Course;
use crate::lessons::prose;
use crate::lessons::texts;
use crate::lessons::words::Phrases;
use crate::report::Report;

/// The last lesson that must do without decibels and Q.
const LAST_PLAIN_LESSON: u32 = 5;

/// Reports decibels and Q in the first lessons, marked numbers and all.
pub(super) fn check(course: &Course, report: &mut Report) {
    let words = [
        "decibel",
        "decibels",
        "dB",
        "db",
        "DB",
        "Q",
        "quality factor",
        "Q factor",
    ];
    let phrases = Phrases::new(words.map(|word| (word, ())));
    for lesson in &course.lessons {
        if lesson.number > LAST_PLAIN_LESSON {
            continue;
        }
        let own = texts::of_lesson(lesson);
        for text in own
            .into_iter()
            .chain(texts::shown_from_lists(lesson, course))
        {
            let flat = prose::Flat::with_numbers(text.run);
            for (range, ()) in phrases.find(&flat.text) {
                let message = format!(
                    "lessons 1 to {LAST_PLAIN_LESSON} say \"times weaker\": no decibels and no Q (got \"{}\")",
                    &flat.text[range.clone()]
                );
                text.file.fault(flat.place(range.start), message, report);
            }
        }
    }
}
