//! What the practice page knows of each kind of problem before it fetches one: where it is
//! found, which lesson it belongs to, what it is about.

use crate::links::Links;
use crate::render::Site;
use anyhow::{Context, Result};
use maud::{Markup, PreEscaped, html};
use serde::Serialize;
use superhet::problems::Registered;

/// A kind as `study` reads it (`web/study/src/practice/kinds.rs`).
#[derive(Serialize)]
struct Kind<'a> {
    id: &'a str,
    number: u16,
    lesson: u32,
    title: &'a str,
    at: String,
}

/// `<script type="application/json" id="kinds">`.
pub(super) fn data(site: &Site<'_>, links: &Links<'_>) -> Result<Markup> {
    let families = site.content.families.newest();
    let kinds: Result<Vec<Kind<'_>>> = families.map(|it| kind(it, site, links)).collect();
    // No text can end the element, whatever it holds.
    let text = serde_json::to_string(&kinds?)?.replace('<', "\\u003c");
    Ok(html! { script #kinds type="application/json" { (PreEscaped(text)) } })
}

fn kind<'a>(it: &'a Registered, site: &Site<'_>, links: &Links<'_>) -> Result<Kind<'a>> {
    let Registered { number, family } = it;
    let mut lessons = site.content.lessons.summaries();
    let lesson = lessons.find(|it| it.slug == family.lesson);
    let lesson = lesson.with_context(|| format!("{} has no lesson", family.id))?;
    Ok(Kind {
        id: &family.id,
        number: *number,
        lesson: lesson.number,
        title: &family.title,
        at: links.family(&family.id),
    })
}
