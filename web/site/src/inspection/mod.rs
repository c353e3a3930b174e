//! What no rendered page may hold, looked for in every page of every rendering.
//!
//! A page may hold no inline script or style, since its policy would refuse them; it must
//! carry that policy; whatever it points to inside the site must exist, fragments too; and
//! nothing may be fetched from anywhere else.

mod elsewhere;
mod fragments;
mod tags;

use crate::edition::Edition;
use crate::render::Files;
use crate::security::policy;
use anyhow::{Result, bail};
use fragments::Targets;
use tags::{Tag, tags};

/// Refuses a rendering in which any page holds what none may: everything at once.
///
/// # Errors
/// Every fault found, one a line, each with its page.
pub fn inspect(files: &Files, edition: &Edition) -> Result<()> {
    let targets = Targets::of(files, edition);
    let mut faults = Vec::new();
    for (path, bytes) in files {
        let mut found = Vec::new();
        if path.ends_with(".css") {
            elsewhere::in_styles(&String::from_utf8_lossy(bytes), &mut found);
            faults.extend(found.into_iter().map(|fault| format!("{path}: {fault}")));
            continue;
        }
        let Some(page) = page(path, bytes) else {
            continue;
        };
        for tag in tags(page) {
            inline_code(&tag, &mut found);
            elsewhere::in_tag(&tag, &mut found);
            targets.check(path, &tag, &mut found);
        }
        carries_policy(page, edition, &mut found);
        targets.check_ids(path, &mut found);
        faults.extend(found.into_iter().map(|fault| format!("{path}: {fault}")));
    }
    if faults.is_empty() {
        return Ok(());
    }
    bail!("{}", faults.join("\n"));
}

/// The text of a page; other files are not looked into.
fn page<'a>(path: &str, bytes: &'a [u8]) -> Option<&'a str> {
    path.ends_with(".html")
        .then(|| std::str::from_utf8(bytes).ok())
        .flatten()
}

/// What the policy would refuse to run.
fn inline_code(tag: &Tag<'_>, faults: &mut Vec<String>) {
    for (name, value) in &tag.attributes {
        if *name == "style" || name.starts_with("on") {
            faults.push(format!("<{} {name}={value:?}> is inline code", tag.name));
        }
        if value.trim_start().starts_with("javascript:") {
            faults.push(format!(
                "<{} {name}={value:?}> is code in an address",
                tag.name
            ));
        }
    }
    let is_data = tag.attribute("type") == Some("application/json");
    if tag.name == "script" && tag.attribute("src").is_none() && !is_data {
        faults.push("<script> without src is inline code".to_owned());
    }
    if tag.name == "style" {
        faults.push("<style> is inline style".to_owned());
    }
}

fn carries_policy(page: &str, edition: &Edition, faults: &mut Vec<String>) {
    let policy = policy(edition);
    let carries = tags(page).any(|tag| {
        tag.attribute("http-equiv") == Some("Content-Security-Policy")
            && tag.attribute("content") == Some(policy.as_str())
    });
    if !carries {
        faults.push("the Content-Security-Policy is missing".to_owned());
    }
}

#[cfg(test)]
mod tests {
    use super::inspect;
    use crate::edition::Edition;
    use crate::render::Files;
    use crate::security::policy;

    fn faults_of(body: &str) -> String {
        let policy = policy(&Edition::at_root());
        let head = format!("<meta http-equiv=\"Content-Security-Policy\" content=\"{policy}\">");
        let mut files = Files::new();
        let page = format!("<html><head>{head}</head><body>{body}</body></html>");
        files.insert("a/index.html".to_owned(), page.into_bytes());
        files.insert("assets/base.1.css".to_owned(), Vec::new());
        let inspected = inspect(&files, &Edition::at_root());
        inspected.map_or_else(|error| error.to_string(), |()| String::new())
    }

    #[test]
    fn inline_code_is_refused_wherever_it_hides() {
        for body in [
            "<p style=\"color:red\">",
            "<button onclick=\"go()\">",
            "<svg><rect style=\"x\"/></svg>",
            "<script>go()</script>",
            "<style>p{}</style>",
            "<a href=\" javascript:go()\">",
        ] {
            let said = faults_of(body);
            assert!(said.starts_with("a/index.html: <"), "{body}: {said:?}");
        }
    }

    #[test]
    fn what_only_looks_like_code_is_kept() {
        let body = "<script type=\"application/json\">{\"style\": 1}</script>\
            <p data-style=\"x\">style=\"a\" onclick=\"b\"</p><!-- <p style=\"x\"> -->\
            <a href=\"https://elsewhere.example/\">a</a><b id=\"on\" title=\"a > b\"></b>";
        assert_eq!(faults_of(body), "");
    }

    #[test]
    fn nothing_comes_from_elsewhere() {
        let body = "<img src=\"https://elsewhere.example/a.png\">";
        assert!(faults_of(body).contains("fetches from elsewhere"));
        let mut files = Files::new();
        let styles = b"@import \"//elsewhere.example/a.css\";".to_vec();
        files.insert("assets/base.1.css".to_owned(), styles);
        let said = inspect(&files, &Edition::at_root())
            .unwrap_err()
            .to_string();
        assert!(said.starts_with("assets/base.1.css: "), "{said}");
    }

    #[test]
    fn a_page_without_its_policy_is_refused() {
        let mut files = Files::new();
        files.insert("index.html".to_owned(), b"<p>".to_vec());
        let said = inspect(&files, &Edition::at_root())
            .unwrap_err()
            .to_string();
        assert!(
            said.contains("Content-Security-Policy is missing"),
            "{said}"
        );
    }

    #[test]
    fn links_lead_to_what_exists() {
        assert_eq!(
            faults_of("<i id=\"here\"><a href=\"#here\"><a href=\"../a/#here\">"),
            ""
        );
        assert_eq!(
            faults_of("<link href=\"../assets/base.1.css\"><a href=\"./?x=1\">"),
            ""
        );
        for (body, part) in [
            ("<a href=\"#gone\">", "no id \"gone\""),
            ("<a href=\"../b/\">", "leads to nothing"),
            ("<img src=\"../assets/x.png\">", "leads to nothing"),
            ("<a href=\"../../above/\">", "leads out of the site"),
            ("<i id=\"two\"><i id=\"two\">", "id \"two\" stands twice"),
        ] {
            let said = faults_of(body);
            assert!(said.contains(part), "{body}: {said:?}");
        }
    }
}
