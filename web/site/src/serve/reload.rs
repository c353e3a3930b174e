//! Reloading the page: a script that exists only in `serve`, and the events it hears.

use super::current::Current;
use crate::render::Files;
use axum::response::sse::{Event, Sse};
use futures_util::stream::{Stream, unfold};
use std::convert::Infallible;
use std::sync::Arc;

/// Where the script is found.
const SCRIPT: &str = "reload.js";
/// Where it hears of new versions.
pub(super) const EVENTS: &str = "/reload-events";

/// Adds the script to the files and its element, with the version's name, to every page.
pub(super) fn add(files: &mut Files, version: &str) {
    let element =
        format!("<script defer src=\"/{SCRIPT}\" data-version=\"{version}\"></script></head>");
    for (path, bytes) in files.iter_mut() {
        if path.ends_with(".html") {
            let page = String::from_utf8_lossy(bytes);
            *bytes = page.replacen("</head>", &element, 1).into_bytes();
        }
    }
    let script = include_bytes!("reload.js");
    files.insert(SCRIPT.to_owned(), script.to_vec());
}

/// The names of versions as server-sent events: the one in place at once, then each new one.
pub(super) fn events(
    current: &Arc<Current>,
) -> Sse<impl Stream<Item = Result<Event, Infallible>> + use<>> {
    let mut news = current.news();
    news.mark_changed();
    Sse::new(unfold(news, |mut news| async move {
        news.changed().await.ok()?;
        let name = news.borrow_and_update().clone();
        Some((Ok(Event::default().data(name)), news))
    }))
}

#[cfg(test)]
mod tests {
    use super::add;
    use crate::render::Files;

    #[test]
    fn every_page_names_the_version_it_belongs_to() {
        let mut files = Files::new();
        files.insert("a/index.html".to_owned(), b"<head></head></head>".to_vec());
        files.insert("b.css".to_owned(), b"</head>".to_vec());
        add(&mut files, "five");
        let page = String::from_utf8_lossy(&files["a/index.html"]);
        let element = "<script defer src=\"/reload.js\" data-version=\"five\"></script>";
        assert_eq!(page, format!("<head>{element}</head></head>"));
        assert_eq!(files["b.css"], b"</head>");
        assert!(files.contains_key("reload.js"));
    }
}
