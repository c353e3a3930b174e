//! Every formula of the catalogue on one page: its letters in words, a worked line, its
//! limits, its error and its source.

mod entry;
#[cfg(test)]
mod tests;

use crate::lessons::mathml::{Display, mathml};
use crate::links::Links;
use crate::page::{Page, Program};
use crate::render::Site;
use anyhow::{Result, anyhow};
use maud::{Markup, PreEscaped, html};
use superhet::catalogue::{Entry, Note, Subject, subjects};

/// The address of the page.
pub(crate) const PATH: &str = "formulas/";

/// The page with all formulas.
pub(super) fn page(site: &Site<'_>) -> Result<Page> {
    let links = site.links(PATH);
    let subjects = subjects().iter();
    let drawn: Vec<Markup> = subjects
        .map(|it| subject(it, site, &links))
        .collect::<Result<_>>()?;
    Ok(Page {
        path: PATH.to_owned(),
        title: "Formulas".to_owned(),
        description: "Every formula of this site with its letters in words, a worked example, its \
                      limits, how far it can be wrong, and where it is from."
            .to_owned(),
        styles: &["notebook.css", "math.css", "formulas.css"],
        recipes: None,
        program: Program::None,
        main: html! {
            div.leaf.formulas {
                h1 { "Formulas" }
                p.lead {
                    "Whatever these pages work out, they work out by one of these. You need none of "
                    "them to follow " a href=(links.page("lessons/")) { "the lessons" } "."
                }
                p {
                    "Frequencies are in hertz, inductances in henries, capacitances in farads, "
                    "resistances in ohms and voltages in volts, whatever unit they are typed in. The "
                    "worked lines were worked out by the same program as every number here."
                }
                (contents())
                @for subject in &drawn { (subject) }
            }
        },
    })
}

fn contents() -> Markup {
    html! {
        nav.contents aria-label="Subjects" {
            ul {
                @for subject in subjects() {
                    li { a href={ "#" (subject.id()) } { (subject.title()) } }
                }
            }
        }
    }
}

fn subject(subject: &Subject, site: &Site<'_>, links: &Links<'_>) -> Result<Markup> {
    let notes = notes(subject.notes())?;
    let entries: Vec<Markup> = subject
        .entries()
        .iter()
        .map(|it| entry::section(it, &lesson(it, site, links)))
        .collect::<Result<_>>()?;
    Ok(html! {
        section.subject aria-labelledby=(subject.id()) {
            h2 #(subject.id()) { (subject.title()) }
            (notes)
            @for entry in &entries { (entry) }
        }
    })
}

/// Which lesson brings a quantity in.
fn lesson(entry: &Entry, site: &Site<'_>, links: &Links<'_>) -> Markup {
    html! {
        @if let Some(lesson) = site.content.lessons.lesson_of(entry.name) {
            dt { "Lesson" }
            dd { a href=(links.page(&lesson.path())) { (lesson.number) ": " (lesson.title) } }
        }
    }
}

/// What the formulas of a subject share, once for all of them.
fn notes(notes: &[Note]) -> Result<Markup> {
    let drawn: Vec<(Markup, &str)> = notes
        .iter()
        .map(|note| Ok((lines(note.formula)?, note.meaning)))
        .collect::<Result<_>>()?;
    Ok(html! {
        @if !drawn.is_empty() {
            dl.shared {
                @for (formula, meaning) in &drawn {
                    dt { (formula) }
                    dd { (meaning) }
                }
            }
        }
    })
}

/// Letters of LaTeX from which on a line is set smaller, to fit the narrowest phone.
const LONG: usize = 75;

/// A formula, each of its equations and alternatives on a line of its own, so that it
/// fits a narrow page.
fn lines(latex: &str) -> Result<Markup> {
    let mut drawn = Vec::new();
    for equation in latex.split(r", \quad ") {
        for (place, form) in equation.split(r"\ \text{or}\ ").enumerate() {
            let class = if form.len() > LONG {
                "line long"
            } else {
                "line"
            };
            drawn.push((place > 0, class, draw(form, Display::Block)?));
        }
    }
    Ok(html! {
        @for (alternative, class, form) in &drawn {
            @if *alternative { span.or { "or" } }
            div class=(class) { (form) }
        }
    })
}

fn draw(latex: &str, display: Display) -> Result<Markup> {
    mathml(latex, display)
        .map(PreEscaped)
        .map_err(|error| anyhow!(error))
}
