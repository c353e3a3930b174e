//! Practice on paper: a problem of each kind, lesson by lesson, its key folded away.
//!
//! The page needs no program. Printed, it is a sheet without its keys.

use super::super::listing::{self, Listing};
use crate::lessons::on_paper;
use crate::page::{Page, Program};
use crate::render::Site;
use anyhow::Result;
use maud::{Markup, html};
use superhet::problems::{Level, Registered, generate};

/// The address of the page.
pub(super) const PATH: &str = "practice/on-paper/";
/// The seed of the problems here: another than that of the lessons, so the numbers differ.
const SEED: u32 = 16;
/// A step harder than where they stand in a lesson.
const LEVEL: Level = Level::Two;

/// The page.
pub(in crate::pages) fn page(site: &Site<'_>) -> Result<Page> {
    let links = site.links(PATH);
    let lessons = listing::lessons(site);
    let sections: Result<Vec<Markup>> = lessons.iter().map(|it| section(it, site)).collect();
    Ok(Page {
        path: PATH.to_owned(),
        title: "Practice on paper".to_owned(),
        description: "One problem of each kind, lesson by lesson, to work with a pencil: hints, \
                      answers and steps are folded away."
            .to_owned(),
        styles: &["lesson.css", "practice.css"],
        recipes: None,
        program: Program::None,
        main: html! {
            div.leaf.paper-sheet {
                h1 { "Practice on paper" }
                p.lead {
                    "One problem of each kind, to work with a pencil. Hints, answers and steps are "
                    "folded away below each; on a printed sheet they stay away."
                }
                p.no-print {
                    "To have problems set and marked, each time with other numbers, go to "
                    a href=(links.page(super::PATH)) { "practice" } "."
                }
                @for section in sections? { (section) }
            }
        },
    })
}

/// The problems of a lesson.
fn section(lesson: &Listing, site: &Site<'_>) -> Result<Markup> {
    let links = site.links(PATH);
    let families = site.content.families.newest();
    let of_lesson = families.filter(|it| it.family.lesson == lesson.slug);
    let problems: Result<Vec<Markup>> = of_lesson.map(problem).collect();
    Ok(html! {
        h2 {
            (lesson.number) " " a href=(links.page(&lesson.path())) { (lesson.title) }
        }
        @for problem in problems? { (problem) }
    })
}

fn problem(registered: &Registered) -> Result<Markup> {
    let problem = generate(&registered.family, LEVEL, SEED)?;
    Ok(html! { div.problem { div.on-paper { (on_paper(&problem)) } } })
}
