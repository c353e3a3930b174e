//! The home page: one next step.

use crate::page::{Page, Program};
use crate::render::Site;
use maud::html;

/// The home page.
pub(super) fn page(site: &Site<'_>) -> Page {
    let links = site.links("");
    Page {
        path: String::new(),
        title: "What each adjustment is for".to_owned(),
        description: "Learn the superheterodyne AM receiver before you put a tool to one."
            .to_owned(),
        styles: &[],
        program: Program::None,
        main: html! {
            h1 { a href=(links.page("")) { "Before the Bench" } }
        },
    }
}
