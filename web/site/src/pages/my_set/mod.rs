//! The reader's own set: questions, what the set will do, and ways to keep and carry it.
//!
//! What the page says is made by the crate `myset`, here for the practice set and in the
//! page for the reader's. Without JavaScript the practice set's results remain.

mod questions;
mod results;

use crate::links::Links;
use crate::page::{Page, Program};
use crate::render::Site;
use maud::{Markup, html};
use myset::Typed;

/// The address of the page.
const PATH: &str = "my-set/";

/// The page of the reader's own set.
pub(super) fn page(site: &Site<'_>) -> Page {
    Page {
        path: PATH.to_owned(),
        title: "My set".to_owned(),
        description: "Say what your set is, see what it will do: a card of the whole band, the \
                      image, whistles and tracking, kept in your browser for the look-up."
            .to_owned(),
        styles: &["lookup.css", "myset.css"],
        recipes: None,
        program: Program::MySet,
        main: main(site),
    }
}

fn main(site: &Site<'_>) -> Markup {
    let links = site.links(PATH);
    let example = site.content.lessons.practice_set().map(Typed::of_profile);
    let example = example.as_ref().and_then(|typed| typed.set().ok());
    html! {
        div.leaf.my-set {
            h1 { "My set" }
            p.lead {
                "Say once what your set is. This page shows what it will do, and the "
                a href=(links.page("lookup/")) { "look-up" } " and the "
                a href=(links.page("lessons/")) { "lessons" } " can work with it."
            }
            p.slip #notice role="status" {}
            noscript {
                p.note {
                    "The questions of this page need JavaScript, which is switched off here. "
                    "Below it shows what it says of the practice set."
                }
            }
            (questions::form())
            section.results #results aria-labelledby="results-title" {
                (results::section(example.as_ref()))
            }
            (carry(&links))
        }
    }
}

fn carry(links: &Links<'_>) -> Markup {
    html! {
        section.carry-set.no-print #carry hidden aria-labelledby="carry-title" {
            h2 #carry-title { "Take it with you" }
            p {
                "Your set lives in this browser alone. A file or a link carries it to another, or "
                "to somebody with the same set."
            }
            div.buttons {
                button #file-save type="button" { "Save a file" }
                button #file-open type="button" { "Open a file" }
                button #link-make type="button" { "Copy a link" }
            }
            input #file .visually-hidden type="file" accept=".json,application/json" tabindex="-1"
                aria-label="A file of a set, saved here before";
            p #link-line hidden {
                label for="link" { "The link" }
                input #link type="text" readonly;
            }
            p.said #carried role="status" {}
            details {
                summary { "Wipe my set" }
                p {
                    "This empties the boxes and forgets the set that this browser keeps. The "
                    "notebook stays; the " a href=(links.page("")) { "first page" }
                    " can wipe everything."
                }
                button #wipe type="button" { "Yes, wipe my set" }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{questions, results};
    use myset::page::my_set;

    /// Names that the program's lines speak of, each of which the page must have.
    #[test]
    fn every_box_the_program_speaks_of_is_on_the_page() {
        let form = questions::form().into_string();
        for line in my_set("do=open").lines() {
            let mut fields = line.split('\t');
            let (verb, name) = (fields.next().unwrap_or_default(), fields.next());
            let name = name.unwrap_or_default();
            let mark = match verb {
                "box" | "press" => format!(" name=\"{name}\""),
                "reading" => format!(" id=\"reading-{name}\""),
                "fault" => format!(" id=\"fault-{name}\""),
                _ => continue,
            };
            assert!(form.contains(&mark), "{line:?}: no {mark}");
        }
    }

    #[test]
    fn without_an_example_the_results_say_what_they_wait_for() {
        let section = results::section(None).into_string();
        assert!(section.contains("IF") && !section.contains("<table"));
    }
}
