//! The ways to the lessons before and after.

use super::Drawing;
use crate::lessons::lesson::Lesson;
use maud::{Markup, html};

/// The lessons before and after, as far as they are written.
pub(super) fn onward(drawing: &Drawing<'_>) -> Markup {
    let number = drawing.lesson.number;
    let lessons = &drawing.course.lessons;
    let previous = lessons.iter().rev().find(|lesson| lesson.number < number);
    let next = lessons.iter().find(|lesson| lesson.number > number);
    html! {
        nav.onward aria-label="Lessons before and after" {
            (way(drawing, previous, "previous", "prev", "Before"))
            (way(drawing, next, "next", "next", "Next"))
            @if let Some(between) = next.and_then(|next| unwritten(number, next.number)) {
                p.small { (between) }
            }
            @if next.is_none() { p.small { "This is the last lesson written so far." } }
            a.course href=(drawing.links.page("lessons/")) { "All lessons" }
        }
    }
}

/// Says which lessons between two are still to be written.
fn unwritten(number: u32, next: u32) -> Option<String> {
    match next.saturating_sub(number) {
        0 | 1 => None,
        2 => Some(format!("Lesson {} is not written yet.", number + 1)),
        _ => Some(format!(
            "Lessons {} to {} are not written yet.",
            number + 1,
            next - 1
        )),
    }
}

fn way(
    drawing: &Drawing<'_>,
    lesson: Option<&Lesson>,
    class: &str,
    rel: &str,
    word: &str,
) -> Markup {
    html! {
        @if let Some(lesson) = lesson {
            a class=(class) rel=(rel) href=(drawing.links.page(&lesson.path())) {
                (word) ": lesson " (lesson.number) ", " (lesson.plain_title())
            }
        }
    }
}
