//! The start tags of a page.
//!
//! The pages are our own output: attribute values stand in double quotes. That is all
//! this reads; it is no parser of other people's pages.

/// One start tag.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Tag<'a> {
    pub(super) name: &'a str,
    pub(super) attributes: Vec<(&'a str, &'a str)>,
}

impl<'a> Tag<'a> {
    /// The value of an attribute; empty for one without a value.
    pub(super) fn attribute(&self, name: &str) -> Option<&'a str> {
        let found = self.attributes.iter().find(|(known, _)| *known == name);
        found.map(|(_, value)| *value)
    }
}

/// Every start tag, in order. Comments and the content of scripts hold none.
pub(super) fn tags(page: &str) -> impl Iterator<Item = Tag<'_>> {
    let mut rest = page;
    std::iter::from_fn(move || {
        loop {
            let at = rest.find('<')?;
            rest = &rest[at + 1..];
            if let Some(comment) = rest.strip_prefix("!--") {
                rest = comment.split_once("-->").map_or("", |(_, after)| after);
                continue;
            }
            if rest.starts_with(|first: char| first.is_ascii_alphabetic()) {
                let (tag, after) = start_tag(rest);
                rest = after;
                if tag.name == "script" {
                    rest = rest.split_once("</script>").map_or("", |(_, after)| after);
                }
                return Some(tag);
            }
        }
    })
}

/// Reads a start tag from behind its `<`; gives it and what follows its `>`.
fn start_tag(text: &str) -> (Tag<'_>, &str) {
    let ends_name = |c: char| c.is_whitespace() || c == '>' || c == '/';
    let name_end = text.find(ends_name).unwrap_or(text.len());
    let (name, mut rest) = text.split_at(name_end);
    let mut attributes = Vec::new();
    loop {
        rest = rest.trim_start_matches(|c: char| c.is_whitespace() || c == '/');
        if rest.is_empty() || rest.starts_with('>') {
            let after = rest.strip_prefix('>').unwrap_or(rest);
            return (Tag { name, attributes }, after);
        }
        let (attribute, after) = attribute(rest);
        attributes.push(attribute);
        rest = after;
    }
}

/// Reads `name="value"` or `name`.
fn attribute(text: &str) -> ((&str, &str), &str) {
    let ends = |c: char| c.is_whitespace() || "=>/".contains(c);
    // At least one character, so that reading always gets on.
    let first = text.chars().next().map_or(0, char::len_utf8);
    let end = text[first..].find(ends).map_or(text.len(), |at| first + at);
    let (name, rest) = text.split_at(end);
    let Some(quoted) = rest.strip_prefix("=\"") else {
        return ((name, ""), rest);
    };
    match quoted.split_once('"') {
        Some((value, after)) => ((name, value), after),
        None => ((name, quoted), ""),
    }
}

#[cfg(test)]
mod tests {
    use super::tags;

    #[test]
    fn attributes_keep_what_stands_in_their_quotes() {
        let page = "<!DOCTYPE html><a href=\"x > y\" hidden>1 < 2</a><br/><i\nid=\"é\">";
        let found: Vec<_> = tags(page).collect();
        assert_eq!(found.len(), 3);
        assert_eq!(found[0].attribute("href"), Some("x > y"));
        assert_eq!(found[0].attribute("hidden"), Some(""));
        assert_eq!(found[1].name, "br");
        assert_eq!(found[2].attribute("id"), Some("é"));
    }

    #[test]
    fn scripts_and_comments_hold_no_tags() {
        let page = "<script src=\"a\"><b></script><!-- <u> --><p>";
        let names: Vec<&str> = tags(page).map(|tag| tag.name).collect();
        assert_eq!(names, ["script", "p"]);
    }

    #[test]
    fn a_page_that_breaks_off_ends() {
        for page in ["<", "<a", "<a href=\"x", "<a =", "<a \"", "<!-- "] {
            assert!(tags(page).count() <= 1, "{page}");
        }
    }
}
