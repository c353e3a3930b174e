//! The lessons as lists of them show them: the course page, the first page, and what
//! `study` reads to say what comes next.

use crate::lessons::summary;
use crate::links::Links;
use crate::render::Site;
use maud::{Markup, PreEscaped, html};
use serde::Serialize;

/// One lesson in a list.
pub(super) struct Listing {
    /// Its place in the course.
    pub(super) number: u32,
    /// Its address under `lessons/`.
    pub(super) slug: String,
    /// Plain text.
    pub(super) title: String,
    /// To read and work.
    pub(super) minutes: u32,
    /// What the reader can do afterwards.
    pub(super) goals: Vec<Markup>,
    /// Slugs of the lessons to read first.
    pub(super) needs: Vec<String>,
}

impl Listing {
    /// The page of the lesson.
    pub(super) fn path(&self) -> String {
        summary::path(&self.slug)
    }
}

/// The lessons that exist, in the order of the course.
pub(super) fn lessons(site: &Site<'_>) -> Vec<Listing> {
    let summaries = site.content.lessons.summaries();
    summaries
        .map(|lesson| Listing {
            number: lesson.number,
            slug: lesson.slug,
            title: lesson.title,
            minutes: lesson.minutes,
            goals: lesson.goals.iter().map(|goal| html! { (goal) }).collect(),
            needs: lesson.needs,
        })
        .collect()
}

/// A lesson as `study` reads it.
#[derive(Serialize)]
struct Line<'a> {
    number: u32,
    slug: &'a str,
    title: &'a str,
    minutes: u32,
    href: String,
}

/// The course as data, for `study`: `<script type="application/json" id="course">`.
pub(super) fn data(lessons: &[Listing], links: &Links<'_>) -> Markup {
    let lines: Vec<Line<'_>> = lessons
        .iter()
        .map(|lesson| Line {
            number: lesson.number,
            slug: &lesson.slug,
            title: &lesson.title,
            minutes: lesson.minutes,
            href: links.page(&lesson.path()),
        })
        .collect();
    // Plain structs of text and numbers always serialise.
    let text = serde_json::to_string(&lines).unwrap_or_default();
    // No title can end the element, whatever it holds.
    let text = text.replace('<', "\\u003c");
    html! { script #course type="application/json" { (PreEscaped(text)) } }
}
