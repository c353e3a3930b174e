//! Practice: a few mixed problems at a time, and the notebook of how they went.
//!
//! Static markup; `study` (`web/study/src/practice`) finds it by the ids and brings it
//! alive. What does nothing without the program is not seen until then, but keeps its room
//! (`.coming`), with the words of somebody's first visit in it.

pub(super) mod check;
mod kinds;
pub(super) mod on_paper;

use super::listing::{self, Listing};
use super::place;
use crate::links::Links;
use crate::mistake_names::asset_name;
use crate::page::{Figures, Page, Program};
use crate::render::Site;
use anyhow::Result;
use maud::{Markup, html};
use superhet::problems::LeitnerBox;

/// The address of the page.
const PATH: &str = "practice/";

/// The practice page.
pub(super) fn page(site: &Site<'_>) -> Result<Page> {
    Ok(Page {
        path: PATH.to_owned(),
        title: "Practice".to_owned(),
        description: "A few mixed problems at a time, marked, each mistake called by its name; \
                      what went wrong comes back soon, what went right comes back later."
            .to_owned(),
        styles: &["notebook.css", "lesson.css", "study.css", "practice.css"],
        recipes: None,
        program: Program::Study(Figures::Practice),
        main: main(site)?,
    })
}

fn main(site: &Site<'_>) -> Result<Markup> {
    let links = site.links(PATH);
    let lessons = listing::lessons(site);
    Ok(html! {
        div.leaf {
            h1 { "Practice" }
            p.lead {
                "A few problems at a time, from several lessons, mixed. Each is marked, and a "
                "mistake is called by its name."
            }
            noscript {
                p.note {
                    "Setting and marking problems needs JavaScript, which is switched off "
                    "here. Below is the way to problems on paper, with answers to unfold."
                }
            }
            (end())
            (choose(&lessons))
            (round())
            (method())
            p {
                "No screen at the table? One problem of each kind stands "
                a href=(links.page(on_paper::PATH)) { "on paper" } ", to print or to work here."
            }
            (notebook(&lessons, &links))
            h2 { "Before and after" }
            p {
                a href=(links.page(crate::check::PATH)) { "Twelve questions" }
                " before lesson 1, and twelve of the same kinds after the last, show you "
                "what has changed."
            }
            (place::controls())
            (listing::data(&lessons, &links))
            (kinds::data(site, &links)?)
        }
    })
}

/// What to practise.
fn choose(lessons: &[Listing]) -> Markup {
    html! {
        section #choose .coming aria-labelledby="choose-title" {
            h2 #choose-title { "What shall it be?" }
            p #due-said role="status" { "Nothing waits for you today; a round does no harm." }
            (wishes())
            (to_pick(lessons))
            label.choice #own-choice hidden {
                input type="checkbox" checked;
                span { "Ask about my own set where a problem can: " span #own-said {} }
            }
            div.buttons {
                button #begin .main type="button" { "Begin" }
            }
            p #choose-said role="status" {}
        }
    }
}

/// From where the problems come.
fn wishes() -> Markup {
    let wish = |value: &str, checked: bool, words: Markup| {
        html! {
            label.choice {
                input type="radio" name="wish" value=(value) checked[checked];
                span { (words) }
            }
        }
    };
    html! {
        fieldset {
            legend.visually-hidden { "What to practise" }
            div.choices {
                (wish("done", true, html! {
                    "What I have read: " span #done-lessons {
                        "no lesson is ticked yet, so you are asked about lesson 1"
                    }
                }))
                (wish("picked", false, html! { "Lessons that I pick" }))
                (wish("weak", false, html! { "What I am weak at" }))
            }
        }
    }
}

/// The lessons, to pick some of them.
fn to_pick(lessons: &[Listing]) -> Markup {
    html! {
        fieldset #pick-lessons .pick-lessons hidden {
            legend { "Lessons" }
            @for lesson in lessons {
                label.choice {
                    input type="checkbox" name="lesson" value=(lesson.number);
                    span { (lesson.number) " " (lesson.title) }
                }
            }
        }
    }
}

/// What is said when a round is over, before the next is chosen.
fn end() -> Markup {
    html! {
        section #round-end hidden aria-labelledby="round-end-title" {
            h2 #round-end-title tabindex="-1" { "That is all for now" }
            p #round-sum {}
            div.buttons { button #round-again .main type="button" { "Another round" } }
            div #round-said {}
        }
    }
}

/// Where problems are worked, one at a time.
fn round() -> Markup {
    html! {
        section #round hidden aria-labelledby="round-title" {
            h2 #round-title tabindex="-1" {}
            div #round-problem .problem {}
            div.buttons {
                button #round-leave type="button" data-do="leave" { "Leave this one" }
                button type="button" data-do="stop" { "Stop here" }
            }
        }
    }
}

/// When a kind of problem comes back, in one sentence, and whose method it is.
fn method() -> Markup {
    let days: Vec<String> = (LeitnerBox::FIRST.number()..=LeitnerBox::COUNT)
        .filter_map(LeitnerBox::from_number)
        .map(|it| it.days().to_string())
        .collect();
    let (others, last) = days.split_at(days.len() - 1);
    let days = format!("{} or {}", others.join(", "), last.concat());
    html! {
        section aria-labelledby="method-title" {
            h2 #method-title { "When a problem comes back" }
            p {
                "Each kind of problem stands in one of five boxes: done right without help on its day it "
                "moves one box up, done after a wrong answer or with a hint one box down, with its "
                "working shown back to the first, and from box to box it comes back after " (days) " days, always with "
                "other numbers."
            }
            p.small {
                "The boxes are S. Leitner’s (" cite lang="de" { "So lernt man lernen" }
                ", Herder 1972, told here from memory of the book); the days, and one box down "
                "for help, are our own choice. You are never asked how hard it was."
            }
        }
    }
}

/// The notebook: lessons as ticked lines, mistakes as tallies.
fn notebook(lessons: &[Listing], links: &Links<'_>) -> Markup {
    html! {
        section #notebook .coming aria-labelledby="notebook-title" {
            h2 #notebook-title { "Your notebook" }
            h3 { "Lessons" }
            ol.course.ticks {
                @for lesson in lessons {
                    li data-lesson=(lesson.slug) {
                        span.number { (lesson.number) }
                        div {
                            p.title { a href=(links.page(&lesson.path())) { (lesson.title) } }
                            p.ticked hidden {}
                        }
                    }
                }
            }
            h3 { "Mistakes" }
            div #tallies data-names=(links.asset(asset_name(links.are_portable()))) {
                p { "No mistake is on record." }
            }
        }
    }
}
