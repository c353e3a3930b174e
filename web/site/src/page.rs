//! A page before the shell is put around it.

use maud::Markup;

/// The wasm program of a page.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Program {
    /// `page.js` alone.
    None,
    /// Lessons, problems and benches.
    Study,
    /// The phone look-up.
    Lookup,
}

impl Program {
    /// The name its wasm and its script carry; none where there is no program.
    pub fn name(self) -> Option<&'static str> {
        match self {
            Self::None => None,
            Self::Study => Some("study"),
            Self::Lookup => Some("lookup"),
        }
    }
}

/// One page of the site.
#[derive(Debug, Clone)]
pub struct Page {
    /// Where it stands: `""` for home, `"lookup/"`, `"lessons/the-image/"`, `"404.html"`.
    pub path: String,
    /// Its title, without the site's name.
    pub title: String,
    /// One sentence for search engines and link previews.
    pub description: String,
    /// Style sheets besides `base.css`, by their names in `web/pages/css`.
    pub styles: &'static [&'static str],
    /// The wasm program that makes it live.
    pub program: Program,
    /// What stands between header and footer.
    pub main: Markup,
}

/// The file a page is written to: `""` is `index.html`, `"lookup/"` is
/// `lookup/index.html`, and a name with an extension stays as it is.
pub fn file_of(path: &str) -> String {
    if path.is_empty() || path.ends_with('/') {
        format!("{path}index.html")
    } else {
        path.to_owned()
    }
}

#[cfg(test)]
mod tests {
    use super::file_of;

    #[test]
    fn pages_are_folders_with_an_index() {
        assert_eq!(file_of(""), "index.html");
        assert_eq!(
            file_of("lessons/the-image/"),
            "lessons/the-image/index.html"
        );
        assert_eq!(file_of("404.html"), "404.html");
    }
}
