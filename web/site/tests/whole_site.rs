//! The site as it stands in the repository, rendered in every edition.
//!
//! Rendering itself refuses inline code, foreign fetches, missing policies and links that
//! lead nowhere (`site::inspection`); here the real content goes through it.

use site::edition::Edition;
use site::render::{Files, render};
use site::repository;
use site::sources::Sources;
use site::wasm::Wasm;
use std::sync::Arc;

fn rendered(edition: &Edition) -> Files {
    let root = repository::root();
    let wasm = Arc::new(Wasm::stand_in());
    let rendered = Sources::load(&root, &wasm).and_then(|sources| render(&sources, edition));
    rendered.unwrap_or_else(|error| panic!("{error:#}"))
}

fn hosted(base: &str) -> Edition {
    Edition::Hosted {
        base: base.to_owned(),
        public_url: None,
    }
}

fn text(files: &Files, path: &str) -> String {
    String::from_utf8_lossy(&files[path]).into_owned()
}

#[test]
fn only_the_page_served_at_any_depth_changes_with_the_base() {
    let (root, club) = (rendered(&hosted("/")), rendered(&hosted("/club/")));
    let differ: Vec<&String> = root
        .iter()
        .filter(|(path, bytes)| club.get(*path) != Some(*bytes))
        .map(|(path, _)| path)
        .collect();
    assert_eq!(differ, ["404.html"]);
    assert!(text(&club, "404.html").contains("href=\"/club/"));
}

#[test]
fn the_portable_edition_leads_from_file_to_file() {
    let files = rendered(&Edition::Portable);
    for (path, bytes) in &files {
        if !path.ends_with(".html") {
            continue;
        }
        let page = String::from_utf8_lossy(bytes);
        for link in page.split("<a ").skip(1) {
            let link = link.split("href=\"").nth(1).unwrap_or_default();
            let link = link.split('"').next().unwrap_or_default();
            let address = link.split(['?', '#']).next().unwrap_or_default();
            let leads_to_folder = address.ends_with('/') && !address.contains("://");
            assert!(!leads_to_folder, "{path} leads to the folder {link}");
        }
    }
    assert!(!files.keys().any(|path| path.starts_with("api/")));
}

#[test]
fn each_page_has_its_own_title_and_description() {
    let files = rendered(&hosted("/"));
    let mut seen = std::collections::BTreeSet::new();
    for path in files.keys().filter(|path| path.ends_with(".html")) {
        let page = text(&files, path);
        let title = between(&page, "<title>", "</title>");
        let description = between(&page, "name=\"description\" content=\"", "\"");
        assert!(!title.is_empty() && !description.is_empty(), "{path}");
        assert!(
            seen.insert(title.to_owned()),
            "{path}: \"{title}\" stands twice"
        );
    }
}

fn between<'a>(text: &'a str, before: &str, after: &str) -> &'a str {
    let rest = text.split_once(before).map_or("", |(_, rest)| rest);
    rest.split_once(after).map_or("", |(inside, _)| inside)
}
