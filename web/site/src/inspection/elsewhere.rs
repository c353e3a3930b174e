//! What would be fetched from another host, by a page or by its styles.

use super::tags::Tag;

/// Attributes whose addresses a browser fetches, or sends to, without the reader following
/// a link.
const FETCHED: [&str; 11] = [
    "src",
    "href",
    "xlink:href",
    "srcset",
    "imagesrcset",
    "poster",
    "data",
    "background",
    "action",
    "formaction",
    "ping",
];

/// Refuses what a tag would fetch from another host. Links that a reader follows are no
/// fetches, nor is the page's own published address.
pub(super) fn in_tag(tag: &Tag<'_>, faults: &mut Vec<String>) {
    let follows = tag.name == "a" || tag.attribute("rel") == Some("canonical");
    for (name, value) in &tag.attributes {
        let name = name.to_ascii_lowercase();
        let followed = follows && name.ends_with("href");
        if FETCHED.contains(&name.as_str()) && !followed && holds_host(value) {
            faults.push(format!(
                "<{} {name}={value:?}> fetches from elsewhere",
                tag.name
            ));
        }
    }
    let kind = tag.attribute("http-equiv").unwrap_or_default();
    let content = tag.attribute("content").unwrap_or_default();
    if kind.eq_ignore_ascii_case("refresh") && holds_host(content) {
        faults.push(format!("<meta content={content:?}> leads elsewhere"));
    }
}

/// Whether a value names another host anywhere: with a scheme, or with the two slashes
/// that take the page's own. Browsers read a backslash in an address as a slash.
fn holds_host(value: &str) -> bool {
    let value = value.replace('\\', "/");
    let starts = |at: usize| {
        let before = value[..at].chars().next_back();
        before.is_none_or(|letter| letter.is_whitespace() || ":,;='\"".contains(letter))
    };
    value.match_indices("//").any(|(at, _)| starts(at))
}

/// Refuses what styles would fetch from another host.
pub(super) fn in_styles(styles: &str, faults: &mut Vec<String>) {
    let styles = without_comments(styles);
    let lower = styles.to_ascii_lowercase();
    for (at, _) in lower.match_indices("url(") {
        let inside = &styles[at + 4..];
        refuse(inside.split(')').next().unwrap_or(inside), "url", faults);
    }
    for (at, _) in lower.match_indices("@import") {
        let inside = &styles[at + 7..];
        let inside = inside.split(';').next().unwrap_or(inside).trim();
        // `@import url(…)` was looked at above.
        if inside.starts_with(['"', '\'']) {
            refuse(inside, "@import", faults);
        }
    }
}

fn refuse(address: &str, what: &str, faults: &mut Vec<String>) {
    let address = address.trim().trim_matches(['"', '\'']);
    let is_data = address.starts_with("data:");
    if !is_data && holds_host(address) {
        faults.push(format!("{what} {address:?} fetches from elsewhere"));
    }
}

/// Styles without what stands between `/*` and `*/`.
fn without_comments(styles: &str) -> String {
    let mut kept = String::with_capacity(styles.len());
    let mut rest = styles;
    while let Some((before, comment)) = rest.split_once("/*") {
        kept.push_str(before);
        rest = comment.split_once("*/").map_or("", |(_, after)| after);
    }
    kept + rest
}

#[cfg(test)]
mod tests {
    use super::{in_styles, in_tag};
    use crate::inspection::tags::tags;

    fn faults_of(page: &str) -> Vec<String> {
        let mut faults = Vec::new();
        for tag in tags(page) {
            in_tag(&tag, &mut faults);
        }
        faults
    }

    fn faults_of_styles(styles: &str) -> Vec<String> {
        let mut faults = Vec::new();
        in_styles(styles, &mut faults);
        faults
    }

    #[test]
    fn every_way_to_another_host_is_refused() {
        for body in [
            "<img src=\"https://elsewhere.example/a.png\">",
            "<img src=\" //elsewhere.example/a.png\">",
            "<img src=\"\\\\elsewhere.example/a.png\">",
            "<img srcset=\"a.png 1x, //elsewhere.example/a.png 2x\">",
            "<link rel=\"stylesheet\" href=\"//elsewhere.example/a.css\">",
            "<video poster=\"https://elsewhere.example/a.png\">",
            "<button formaction=\"//elsewhere.example/\">",
            "<use xlink:href=\"https://elsewhere.example/a.svg#a\">",
            "<a href=\"b/\" ping=\"https://elsewhere.example/\">",
            "<meta http-equiv=\"Refresh\" content=\"0; url=https://elsewhere.example/\">",
            "<meta http-equiv=\"refresh\" content=\"0;url='//elsewhere.example/'\">",
        ] {
            assert_eq!(faults_of(body).len(), 1, "{body}: {:?}", faults_of(body));
        }
    }

    #[test]
    fn what_stays_or_is_followed_is_kept() {
        for body in [
            "<a href=\"https://elsewhere.example/\">",
            "<link rel=\"canonical\" href=\"https://own.example/a/\">",
            "<svg xmlns=\"http://www.w3.org/2000/svg\"><use href=\"#a\">",
            "<meta name=\"description\" content=\"see https://own.example\">",
            "<img src=\"../a//b.png\">",
        ] {
            assert_eq!(faults_of(body), [""; 0], "{body}");
        }
    }

    #[test]
    fn styles_fetch_nothing_from_elsewhere() {
        for styles in [
            "@font-face { src: url(//elsewhere.example/a.woff2) }",
            "p { background: URL( 'https://elsewhere.example/a.png' ) }",
            "@import \"https://elsewhere.example/a.css\";",
            "@import '//elsewhere.example/a.css' print;",
            "@import url(https://elsewhere.example/a.css);",
        ] {
            let faults = faults_of_styles(styles);
            assert_eq!(faults.len(), 1, "{styles}: {faults:?}");
        }
        let ours = "/* see https://elsewhere.example url(//a) */ @import \"b.css\"; \
            p { background: url(\"ink.2.woff2\"), \
            url(\"data:image/svg+xml,<svg xmlns='http://www.w3.org/2000/svg'/>\") }";
        assert_eq!(faults_of_styles(ours), [""; 0]);
    }
}
