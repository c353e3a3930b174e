//! The offline copy: the service worker with the list of files it may keep.
//!
//! `web/pages/scripts/sw.js` is the template; its one `const LIST = …;` line is replaced.

use crate::hashing::sha256;
use crate::page_files::PageFiles;
use crate::render::Files;
use anyhow::{Context, Result, bail};
use std::collections::BTreeSet;

/// The line of the template that is replaced.
const PLACE: &str = "const LIST = {version: \"\", files: []};";

/// How many hexadecimal digits of a file's SHA-256 the list holds: 128 bits are enough to
/// tell any other file, and every page pays for the list.
const FILE_DIGITS: usize = 32;

/// How many hexadecimal digits name a version.
const VERSION_DIGITS: usize = 12;

/// Adds `sw.js` to the rendered files, listing all of them that a reader may need.
///
/// Without a template nothing is added.
///
/// # Errors
/// When the template is no text or lacks the line that is replaced.
pub fn add(files: &mut Files, page_files: &PageFiles) -> Result<()> {
    let Some(template) = page_files.bytes("scripts/sw.js") else {
        return Ok(());
    };
    let template = std::str::from_utf8(template).context("web/pages/scripts/sw.js is not UTF-8")?;
    if template.matches(PLACE).count() != 1 {
        bail!("web/pages/scripts/sw.js must hold `{PLACE}` exactly once");
    }
    let script = template.replace(PLACE, &format!("const LIST = {};", list(files)));
    files.insert("sw.js".to_owned(), script.into_bytes());
    Ok(())
}

/// The list as JavaScript: `{version, files: [[path, sha256, bytes, first], …]}`.
fn list(files: &Files) -> String {
    let first = needed_by_lookup(files);
    let rows: Vec<String> = files
        .iter()
        .filter(|(path, _)| is_kept(path))
        .map(|(path, bytes)| {
            let address = path.strip_suffix("index.html").unwrap_or(path);
            let digest = &sha256(bytes)[..FILE_DIGITS];
            let first = u8::from(first.contains(path.as_str()));
            format!("[\"{address}\",\"{digest}\",{},{first}]", bytes.len())
        })
        .collect();
    let rows = rows.join(",\n");
    let version = sha256(rows.as_bytes());
    format!(
        "{{version: \"{}\", files: [\n{rows}\n]}}",
        &version[..VERSION_DIGITS]
    )
}

/// The interface for other people's scripts and downloads are no part of the offline copy.
fn is_kept(path: &str) -> bool {
    let left_out = path.starts_with("api/")
        || path == "sw.js"
        || path == "robots.txt"
        || [".zip", ".br", ".gz", ".xml"]
            .iter()
            .any(|end| path.ends_with(end));
    !left_out
}

/// What the look-up needs: its page, the files that page names, and the files those name.
/// Where there is no look-up, home stands in for it.
fn needed_by_lookup(files: &Files) -> BTreeSet<&str> {
    let lookup = ["lookup/index.html", "index.html"]
        .into_iter()
        .find(|page| files.contains_key(*page));
    let mut needed = BTreeSet::new();
    let mut unread: Vec<&str> = lookup.into_iter().collect();
    while let Some(path) = unread.pop() {
        if !needed.insert(path) {
            continue;
        }
        if ![".html", ".css", ".js", ".webmanifest"]
            .iter()
            .any(|end| path.ends_with(end))
        {
            continue;
        }
        let text = String::from_utf8_lossy(&files[path]);
        let named = files.keys().filter(|other| names(&text, other));
        unread.extend(named.map(String::as_str));
    }
    needed
}

/// Whether a text names a file. Pages are not followed, only what lies in folders of
/// files with names of their own.
fn names(text: &str, path: &str) -> bool {
    let file = path.rsplit('/').next().unwrap_or(path);
    !path.ends_with(".html") && is_kept(path) && text.contains(file)
}

#[cfg(test)]
mod tests {
    use super::{PLACE, add};
    use crate::page_files::PageFiles;
    use crate::render::Files;

    fn site() -> Files {
        let mut files = Files::new();
        let mut put = |path: &str, text: &str| {
            files.insert(path.to_owned(), text.as_bytes().to_vec());
        };
        put("index.html", "home <a href='lookup/'>");
        put("lookup/index.html", "<link href='../assets/base.1.css'>");
        put("assets/base.1.css", "url(\"ink.2.woff2\")");
        put("assets/ink.2.woff2", "font");
        put("assets/study.3.js", "study");
        put("api/superhet.js", "api");
        files
    }

    fn script_of(mut files: Files) -> String {
        let mut sources = PageFiles::default();
        sources.insert("scripts/sw.js", format!("before\n{PLACE} // words\nafter"));
        add(&mut files, &sources).unwrap();
        String::from_utf8(files["sw.js"].clone()).unwrap()
    }

    #[test]
    fn the_look_up_comes_first_with_all_it_names() {
        let script = script_of(site());
        let first: Vec<&str> = script
            .lines()
            .filter(|line| line.trim_end_matches(',').ends_with(",1]"))
            .filter_map(|line| line.split('"').nth(1))
            .collect();
        assert_eq!(
            first,
            ["assets/base.1.css", "assets/ink.2.woff2", "lookup/"]
        );
    }

    #[test]
    fn every_file_is_listed_once_but_the_interface_for_scripts() {
        let script = script_of(site());
        assert!(script.contains("[\"\",\""), "home is the empty path");
        assert!(script.contains("assets/study.3.js"));
        assert!(!script.contains("api/"));
        assert!(script.starts_with("before\nconst LIST = {version: \""));
        assert!(script.ends_with("// words\nafter"));
    }

    #[test]
    fn the_version_changes_with_any_file() {
        let version = |script: &str| script.split('"').nth(1).map(str::to_owned);
        let mut changed = site();
        changed.insert("assets/study.3.js".to_owned(), b"other".to_vec());
        assert_ne!(version(&script_of(site())), version(&script_of(changed)));
        assert_eq!(version(&script_of(site())), version(&script_of(site())));
    }

    #[test]
    fn a_template_without_its_place_is_refused() {
        let mut sources = PageFiles::default();
        sources.insert("scripts/sw.js", "const LIST = 5;");
        assert!(add(&mut site(), &sources).is_err());
    }
}
