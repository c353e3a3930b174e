//! The words of a problem family belong to its lesson: no later term, no number of their
//! own.
//!
//! Looked into: the texts that a learner reads. Numbers come in through slots in braces,
//! which the family's own check looks after.

use super::introduced::{Introduced, early};
use super::plain_words::too_early;
use crate::lessons::course::Course;
use crate::lessons::extract::Extract;
use crate::lessons::lesson::Lesson;
use crate::lessons::scan::numbers_with_unit;
use crate::lessons::source_text::SourceText;
use crate::lessons::words::Phrases;
use crate::report::Report;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// Keys whose texts a learner reads.
const READ_BY_LEARNERS: [&str; 6] = ["scenes", "ask", "hints", "steps", "says", "text"];

/// Reports terms of later lessons and numbers with a unit in the texts of families.
pub(super) fn check(course: &Course, introduced: &Introduced<'_>, report: &mut Report) {
    let phrases = Phrases::of_terms(&course.glossary);
    for file in &course.families {
        // What is no TOML, or names no lesson, is told by the families' own check.
        let Ok(table) = DeTable::parse(file.text()) else {
            continue;
        };
        let table = table.into_inner();
        let slug = table.get("lesson").and_then(|slug| slug.get_ref().as_str());
        let Some(lesson) = slug.and_then(|slug| course.lesson(slug)) else {
            continue;
        };
        let mut texts = Vec::new();
        for (key, value) in &table {
            collect(key.get_ref(), value, &mut texts);
        }
        for text in texts {
            check_numbers(file, &text, report);
            check_words(file, &text, lesson, introduced, &phrases, report);
        }
    }
}

fn check_words(
    file: &SourceText,
    text: &Spanned<String>,
    lesson: &Lesson,
    introduced: &Introduced<'_>,
    phrases: &Phrases<&str>,
    report: &mut Report,
) {
    let words = without_slots(text.get_ref());
    let mut found = too_early(&words, lesson);
    for (range, id) in phrases.find(&words) {
        let later = introduced
            .terms
            .get(id)
            .filter(|number| **number > lesson.number);
        found.extend(later.map(|later| (range.clone(), early(&words[range], *later))));
    }
    for (range, message) in found {
        Extract::toml(file, text).fault(range.start, message, report);
    }
}

fn check_numbers(file: &SourceText, text: &Spanned<String>, report: &mut Report) {
    for range in numbers_with_unit(text.get_ref()) {
        let message = format!(
            "\"{}\" is a number with a unit: let a slot fill it in",
            &text.get_ref()[range.clone()]
        );
        Extract::toml(file, text).fault(range.start, message, report);
    }
}

/// Every text under one of the keys that learners read, however deep it stands.
fn collect(key: &str, value: &Spanned<DeValue<'_>>, texts: &mut Vec<Spanned<String>>) {
    match value.get_ref() {
        DeValue::String(text) if READ_BY_LEARNERS.contains(&key) => {
            texts.push(Spanned::new(value.span(), text.to_string()));
        }
        DeValue::Array(entries) => entries.iter().for_each(|entry| collect(key, entry, texts)),
        DeValue::Table(table) => {
            for (key, value) in table {
                collect(key.get_ref(), value, texts);
            }
        }
        _ => {}
    }
}

/// The text with its slots blanked, each byte in its place.
fn without_slots(text: &str) -> String {
    let mut inside = false;
    text.chars()
        .map(|letter| {
            inside = (inside || letter == '{') && letter != '}';
            if inside && letter.is_ascii() {
                '_'
            } else {
                letter
            }
        })
        .collect()
}
