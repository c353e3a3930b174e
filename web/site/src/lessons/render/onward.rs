//! The ways to the lessons before and after.

use super::Drawing;
use crate::check;
use crate::lessons::lesson::Lesson;
use maud::{Markup, html};

/// The lessons before and after.
pub(super) fn onward(drawing: &Drawing<'_>) -> Markup {
    let number = drawing.lesson.number;
    let lessons = &drawing.course.lessons;
    let previous = lessons.iter().rev().find(|lesson| lesson.number < number);
    let next = lessons.iter().find(|lesson| lesson.number > number);
    html! {
        @if next.is_none() { (other_twelve(drawing)) }
        nav.onward aria-label="Lessons before and after" {
            (way(drawing, previous, "previous", "prev", "Before"))
            (way(drawing, next, "next", "next", "Next"))
            a.course href=(drawing.links.page("lessons/")) { "All lessons" }
        }
    }
}

/// Under the last lesson: that it is the last, and the check after the course.
fn other_twelve(drawing: &Drawing<'_>) -> Markup {
    html! {
        p.small {
            "This is the last lesson of the course. If you like, "
            a href=(drawing.links.page(check::PATH)) { "answer twelve questions" }
            ": beside those from before lesson 1 they show what has changed."
        }
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
