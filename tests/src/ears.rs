//! Ears in the pages, for the engine whose driver does not tell what its console says.
//!
//! A script is put at the head of every page and the offline copy's list is made anew, so
//! that all else stays as it was built.

use anyhow::Result;
use site::page_files::PageFiles;
use site::render::Files;
use site::{repository, service_worker};
use std::time::Duration;

/// The script's file.
const FILE: &str = "journey-ears.js";

/// How long after it happened the ears may note that a file was missed, and somewhat more.
pub(crate) const LATEST: Duration = Duration::from_millis(150);

/// Takes what was heard since this was last asked.
pub(crate) const HEARD: &str = "const heard = sessionStorage.getItem('journey-heard'); \
    sessionStorage.removeItem('journey-heard'); return JSON.parse(heard || '[]')";

/// Puts ears into a built site that stands under `base`.
///
/// # Errors
/// When the service worker's template is not there or unfit.
pub fn add(files: &mut Files, base: &str) -> Result<()> {
    for (path, bytes) in files.iter_mut() {
        if path.ends_with(".html") {
            let up = match path.as_str() {
                "404.html" => base.to_owned(),
                _ => "../".repeat(path.matches('/').count()),
            };
            let head = format!("<head><script src=\"{up}{FILE}\"></script>");
            let page = String::from_utf8_lossy(bytes);
            *bytes = page.replacen("<head>", &head, 1).into_bytes();
        }
    }
    files.retain(|path, _| !path.ends_with(".br") && !path.ends_with(".gz"));
    files.insert(FILE.to_owned(), include_bytes!("ears.js").to_vec());
    if files.contains_key("sw.js") {
        service_worker::add(files, &PageFiles::load(&repository::root())?)?;
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::add;
    use site::render::Files;

    #[test]
    fn pages_hear_and_the_offline_copy_lists_them_as_they_are() {
        let mut files = Files::new();
        for path in ["index.html", "a/b/index.html", "404.html"] {
            files.insert(path.to_owned(), b"<head><title>x".to_vec());
        }
        files.insert("index.html.br".to_owned(), b"old".to_vec());
        files.insert("sw.js".to_owned(), b"old".to_vec());
        add(&mut files, "/club/").unwrap();
        let text = |path: &str| String::from_utf8_lossy(&files[path]).into_owned();
        assert!(text("index.html").starts_with("<head><script src=\"journey-ears.js\">"));
        assert!(text("a/b/index.html").contains("\"../../journey-ears.js\""));
        assert!(text("404.html").contains("\"/club/journey-ears.js\""));
        assert!(text("sw.js").contains("journey-ears.js"));
        assert!(!files.contains_key("index.html.br"));
    }
}
