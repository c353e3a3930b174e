//! What is answered to one request: a pure function of the files and what was asked.

use super::store::{Store, Stored};
use crate::mime::media_type;
use axum::body::Bytes;

/// What a request asks for.
#[derive(Debug, Clone, Copy)]
pub struct Asked<'a> {
    /// The path, beginning with `/`.
    pub path: &'a str,
    /// The query without its `?`, when there is one.
    pub query: Option<&'a str>,
    /// The `Accept-Encoding` header.
    pub encodings: &'a str,
    /// The `If-None-Match` header.
    pub known_tag: &'a str,
}

/// An answer: status, headers, body.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Answer {
    /// The http status.
    pub status: u16,
    /// Header names and values.
    pub headers: Vec<(&'static str, String)>,
    /// What follows the headers.
    pub body: Bytes,
}

/// The answer of a static host: folders give their index, folders asked for without
/// their slash are redirected, compressed forms go to those who take them, names that
/// change with the content may be kept for ever, and what is not there gives the 404 page.
pub fn answer(store: &Store, asked: Asked<'_>) -> Answer {
    let path = asked.path.trim_start_matches('/');
    let file = if path.is_empty() || path.ends_with('/') {
        format!("{path}index.html")
    } else {
        path.to_owned()
    };
    if let Some(stored) = store.file(&file) {
        return found(&file, stored, asked);
    }
    if store.file(&format!("{path}/index.html")).is_some() {
        return moved(path, asked.query);
    }
    missing(store, asked)
}

fn found(file: &str, stored: &Stored, asked: Asked<'_>) -> Answer {
    if asked.known_tag == stored.tag {
        return Answer {
            status: 304,
            headers: headers(file, stored),
            body: Bytes::new(),
        };
    }
    let (coding, body) = form(stored, asked.encodings);
    let mut headers = headers(file, stored);
    headers.push(("content-type", media_type(file).to_owned()));
    headers.extend(coding.map(|coding| ("content-encoding", coding.to_owned())));
    Answer {
        status: 200,
        headers,
        body,
    }
}

/// The headers that a cache goes by.
fn headers(file: &str, stored: &Stored) -> Vec<(&'static str, String)> {
    let keep = if file.starts_with("assets/") {
        "public, max-age=31536000, immutable"
    } else {
        "no-cache"
    };
    vec![
        ("etag", stored.tag.clone()),
        ("cache-control", keep.to_owned()),
        ("vary", "accept-encoding".to_owned()),
    ]
}

/// The smallest form the asker takes, with the name of its coding.
fn form(stored: &Stored, encodings: &str) -> (Option<&'static str>, Bytes) {
    let takes = |coding: &str| {
        encodings
            .split(',')
            .filter_map(|part| part.split(';').next())
            .any(|part| part.trim() == coding)
    };
    match (&stored.brotli, &stored.gzip) {
        (Some(brotli), _) if takes("br") => (Some("br"), brotli.clone()),
        (_, Some(gzip)) if takes("gzip") => (Some("gzip"), gzip.clone()),
        _ => (None, stored.plain.clone()),
    }
}

/// Points to the folder: its own last name with a slash, so that any base path holds.
fn moved(path: &str, query: Option<&str>) -> Answer {
    let name = path.rsplit('/').next().unwrap_or(path);
    let query = query.map_or_else(String::new, |query| format!("?{query}"));
    Answer {
        status: 301,
        headers: vec![("location", format!("{name}/{query}"))],
        body: Bytes::new(),
    }
}

/// The site's own 404 page, or a sentence.
fn missing(store: &Store, asked: Asked<'_>) -> Answer {
    if let Some(stored) = store.file("404.html") {
        let known_tag = "";
        let page = found("404.html", stored, Asked { known_tag, ..asked });
        return Answer {
            status: 404,
            ..page
        };
    }
    Answer {
        status: 404,
        headers: vec![("content-type", "text/plain; charset=utf-8".to_owned())],
        body: Bytes::from_static(b"There is no such page.\n"),
    }
}

#[cfg(test)]
mod tests {
    use super::{Answer, Asked, answer};
    use crate::render::Files;
    use crate::server::Store;

    fn store() -> Store {
        let mut files = Files::new();
        for path in [
            "index.html",
            "lookup/index.html",
            "lookup/index.html.br",
            "lookup/index.html.gz",
            "assets/base.1.css",
            "404.html",
        ] {
            files.insert(path.to_owned(), path.as_bytes().to_vec());
        }
        Store::new(files)
    }

    fn ask(path: &str, encodings: &str) -> Answer {
        let (path, query) = match path.split_once('?') {
            Some((path, query)) => (path, Some(query)),
            None => (path, None),
        };
        let asked = Asked {
            path,
            query,
            encodings,
            known_tag: "",
        };
        answer(&store(), asked)
    }

    fn header<'a>(answer: &'a Answer, name: &str) -> Option<&'a str> {
        let found = answer.headers.iter().find(|(known, _)| *known == name);
        found.map(|(_, value)| value.as_str())
    }

    #[test]
    fn folders_give_their_index() {
        assert_eq!(&ask("/", "").body[..], b"index.html");
        let page = ask("/lookup/?dial=1200kHz", "");
        assert_eq!(
            (page.status, &page.body[..]),
            (200, &b"lookup/index.html"[..])
        );
        assert_eq!(
            header(&page, "content-type"),
            Some("text/html; charset=utf-8")
        );
    }

    #[test]
    fn a_missing_slash_is_added_and_the_query_kept() {
        let page = ask("/lookup?dial=1200kHz", "");
        assert_eq!(page.status, 301);
        assert_eq!(header(&page, "location"), Some("lookup/?dial=1200kHz"));
    }

    #[test]
    fn brotli_before_gzip_before_plain() {
        let coding = |encodings: &str| {
            let page = ask("/lookup/", encodings);
            header(&page, "content-encoding").map(str::to_owned)
        };
        assert_eq!(coding("gzip, deflate, br;q=1.0").as_deref(), Some("br"));
        assert_eq!(coding("gzip, deflate").as_deref(), Some("gzip"));
        assert_eq!(coding("identity"), None);
        assert_eq!(&ask("/lookup/", "br").body[..], b"lookup/index.html.br");
    }

    #[test]
    fn only_names_that_change_with_the_content_are_kept_for_ever() {
        let asset = ask("/assets/base.1.css", "");
        assert!(header(&asset, "cache-control").is_some_and(|h| h.contains("immutable")));
        assert_eq!(header(&ask("/", ""), "cache-control"), Some("no-cache"));
    }

    #[test]
    fn a_known_version_is_not_sent_again() {
        let first = ask("/", "");
        let known_tag = header(&first, "etag").unwrap();
        let asked = Asked {
            path: "/",
            query: None,
            encodings: "",
            known_tag,
        };
        let again = answer(&store(), asked);
        assert_eq!((again.status, again.body.len()), (304, 0));
    }

    #[test]
    fn what_is_not_there_gives_the_sites_own_page() {
        for path in ["/nothing", "/../Cargo.toml", "/lookup/index.html/", "//"] {
            let page = ask(path, "br");
            assert_eq!(page.status, if path == "//" { 200 } else { 404 }, "{path}");
        }
        assert_eq!(&ask("/nothing", "").body[..], b"404.html");
    }
}
