//! The first page: one next step, then the doors.

use super::listing::{self, Listing};
use super::{place, strip};
use crate::links::Links;
use crate::page::{Figures, Page, Program};
use crate::render::Site;
use maud::{Markup, PreEscaped, html};

/// What stands on a door, drawn in a few lines.
const NOTEBOOK: &str = r#"<svg viewBox="0 0 48 48" aria-hidden="true" focusable="false"><path d="M24 12C19 8.5 12 8 5 9V39C12 38 19 38.5 24 42C29 38.5 36 38 43 39V9C36 8 29 8.5 24 12ZM24 12V42M10 17C13 16.7 16 17 19 18M10 24C13 23.7 16 24 19 25"/><path class="glow" d="M29 24L33 29L39 17"/></svg>"#;
const LENS: &str = r#"<svg viewBox="0 0 48 48" aria-hidden="true" focusable="false"><path d="M20 6A14 14 0 1 0 20 34A14 14 0 1 0 20 6ZM30.5 29.5L43 42"/><path class="glow" d="M10 22C13 22 14 13 16.5 13S20 28 22.5 28S26 18 30 18"/></svg>"#;
const TALLY: &str = r#"<svg viewBox="0 0 48 48" aria-hidden="true" focusable="false"><path d="M10 8V40M18 9V41M26 7V39M34 9V41"/><path class="glow" d="M4 33L42 15"/></svg>"#;
/// The first page.
pub(super) fn page(site: &Site<'_>) -> Page {
    let links = site.links("");
    let lessons = listing::lessons(site);
    Page {
        path: String::new(),
        title: "Know what each adjustment is for".to_owned(),
        description: "Learn how an AM superhet receiver works before you put a tool to one: \
                      lessons with marked problems, and the right figures at the bench."
            .to_owned(),
        styles: &["notebook.css"],
        recipes: None,
        program: Program::Study(Figures::None),
        main: html! {
            div.opening {
                div {
                    h1 { "Know what each adjustment is for, before you put a tool to it." }
                    p.lead {
                        "Most valve radios are superhets: before anything else, the set moves "
                        "the station you want to one frequency of its own. "
                        "This notebook teaches how that works and how it goes wrong. "
                        "Then it gives you the right figures for the set on your bench."
                    }
                    (caution(&links))
                    (next_step(&links, &lessons))
                }
                (strip::drawing())
            }
            (doors(&links))
            (place::controls())
            (listing::data(&lessons, &links))
        },
    }
}

/// One line where most people come in.
fn caution(links: &Links<'_>) -> Markup {
    html! {
        p.first-caution {
            strong { "A valve set can kill you." } " "
            a href=(links.page("about/#caution")) { "Before you open one" }
        }
    }
}

/// The one thing to do. The words are a new reader's; `study` changes them for others.
fn next_step(links: &Links<'_>, lessons: &[Listing]) -> Markup {
    html! {
        @if let Some(first) = lessons.first() {
            a #next-step .next-step href=(links.page(&first.path())) {
                span {
                    span.what {
                        "Start: lesson " (first.number) ", "
                        span.value { (first.minutes) " minutes" }
                    }
                    small { (first.title) }
                }
            }
            a #due-step .due-step href=(links.page("practice/")) hidden { "Practise first" }
        }
    }
}

fn doors(links: &Links<'_>) -> Markup {
    html! {
        h2 { "What is in it" }
        ul.doors {
            li {
                a.door href=(links.page("lessons/")) {
                    (PreEscaped(NOTEBOOK))
                    span.what { "Learn" }
                    span {
                        "Short lessons with drawings to move, problems that are marked, and "
                        "mistakes called by name."
                    }
                }
            }
            li {
                a.door href=(links.page("practice/")) {
                    (PreEscaped(TALLY))
                    span.what { "Practise" }
                    span {
                        "A few mixed problems at a time. What went wrong comes back soon, what "
                        "went right comes back later."
                    }
                }
            }
            li {
                a.door href=(links.page("lookup/")) {
                    (PreEscaped(LENS))
                    span.what { "Look up" }
                    span {
                        "At the bench, beside a closed set: type what the dial says, read what its "
                        "oscillator should run at, and where else a station can come in."
                    }
                }
            }
        }
    }
}
