//! The head of a lesson: place, title, what to read first, goals, cautions.

use super::Drawing;
use super::inline::Manner;
use crate::check;
use crate::lessons::lesson::Lesson;
use crate::lessons::prose::plain;
use maud::{Markup, html};

/// From this lesson on readers know what an oscillator and an IF are, and can be asked for
/// those of their own set.
const KNOWS_A_SET: u32 = 3;

/// One sentence for search engines: where the lesson stands and what it is for.
pub(super) fn description(lesson: &Lesson) -> String {
    let goal = lesson
        .goals
        .first()
        .map(|goal| plain(goal))
        .unwrap_or_default();
    format!(
        "Lesson {} on how an AM superhet works, {} minutes. {goal}.",
        lesson.number, lesson.front.minutes
    )
}

/// The head, and the cautions where the reader comes near a set.
pub(super) fn head(drawing: &Drawing<'_>) -> Markup {
    let lesson = drawing.lesson;
    html! {
        header.lesson-head {
            p.kicker { "Lesson " (lesson.number) " · " (lesson.front.minutes) " minutes" }
            h1 { (drawing.run(&lesson.title, Manner::LINE)) }
            (read_first(drawing))
            (whose_numbers(drawing))
            (twelve_first(drawing))
            div.goals {
                p { "After this lesson you can:" }
                ul {
                    @for goal in &lesson.goals { li { (drawing.run(goal, Manner::LINE)) } }
                }
            }
        }
        @if lesson.front.near_a_set {
            div.caution role="note" aria-label="Cautions" {
                (drawing.blocks(drawing.course.cautions.brief()))
            }
        }
    }
}

/// Whose numbers these are. A reader with a set of their own gets a switch here, from a
/// program that is fetched for them alone.
fn whose_numbers(drawing: &Drawing<'_>) -> Markup {
    let links = drawing.links;
    let portable = links.are_portable();
    let wasm = portable.then(|| links.asset("numbers-wasm.js"));
    let mut parts = vec!["recipes.js".to_owned()];
    parts.extend(wasm);
    html! {
        @if drawing.lesson.front.my_set.is_some() {
            @let parts = [parts, vec![links.asset("numbers.js")]].concat().join(" ");
            p.numbers #numbers data-my-set=(links.page("my-set/")) data-parts=(parts) data-styles=(links.asset("numbers.css"))
                data-wasm=[(!portable).then(|| links.asset("numbers.wasm"))] {
                "The numbers are those of the club’s own set. "
                @if drawing.lesson.number >= KNOWS_A_SET {
                    "Have you a set of your own? "
                    a href=(links.page("my-set/")) { "Put its numbers in" }
                }
            }
        }
    }
}

/// Over the first lesson: the check before the course.
fn twelve_first(drawing: &Drawing<'_>) -> Markup {
    let lessons = &drawing.course.lessons;
    let is_first = lessons.iter().all(|it| it.number >= drawing.lesson.number);
    html! {
        @if is_first {
            p.small {
                "If you like, "
                a href=(drawing.links.page(check::PATH)) { "answer twelve questions" }
                " before you begin: twelve more after the last lesson then show what has changed."
            }
        }
    }
}

fn read_first(drawing: &Drawing<'_>) -> Markup {
    let needs = drawing.lesson.front.needs.iter();
    let needed: Vec<&Lesson> = needs
        .filter_map(|slug| drawing.course.lesson(slug.get_ref()))
        .collect();
    html! {
        @if !needed.is_empty() {
            p.read-first {
                "Read first: "
                @for (index, lesson) in needed.iter().enumerate() {
                    @if index > 0 { @if index + 1 == needed.len() { " and " } @else { ", " } }
                    a href=(drawing.links.page(&lesson.path())) {
                        "lesson " (lesson.number) ", “" (lesson.plain_title()) "”"
                    }
                }
            }
        }
    }
}
