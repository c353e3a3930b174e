//! The page for an address that leads nowhere. It is served at any depth.

use crate::page::{Page, Program};
use crate::render::Site;
use maud::html;

/// Its path: static hosts look for this very name.
const PATH: &str = "404.html";

/// The page for an address that leads nowhere.
pub(super) fn page(site: &Site<'_>) -> Page {
    let links = site.links(PATH);
    Page {
        path: PATH.to_owned(),
        title: "No such page".to_owned(),
        description: "This address leads to no page. Home, the lessons and the look-up are here."
            .to_owned(),
        styles: &["notebook.css"],
        recipes: None,
        program: Program::None,
        main: html! {
            div.leaf {
                p.kicker { "Nothing at this setting" }
                h1 { "No page answers to this address." }
                p.lead {
                    "Perhaps a letter is missing, or the page has moved. "
                    "What you have kept in this browser is untouched."
                }
                a.next-step href=(links.page("")) {
                    span { "Go to the first page" small { "It knows what comes next for you" } }
                }
                p {
                    "Or open " a href=(links.page("lessons/")) { "the lessons" } " or "
                    a href=(links.page("lookup/")) { "the look-up" } "."
                }
            }
        },
    }
}
