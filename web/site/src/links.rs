//! Links as a page at some depth writes them.
//!
//! All links are relative to the page, so that the site works in a folder on any host.
//! Two exceptions: `404.html` is served at any depth and so uses the base path, and the
//! portable edition names `index.html`, since no server adds it.

use crate::assets::AssetNames;
use crate::edition::Edition;
use crate::families::asset_name;
use crate::page::file_of;
use std::sync::Mutex;

/// Every name that links asked for, to be held against what exists once all pages are
/// rendered.
#[derive(Debug, Default)]
pub struct Asked {
    pages: Mutex<Vec<(String, String)>>,
    assets: Mutex<Vec<(String, String)>>,
}

impl Asked {
    /// Pages asked for, as (asking page, page asked for).
    pub fn pages(&self) -> Vec<(String, String)> {
        lock(&self.pages).clone()
    }

    /// Assets asked for that do not exist, as (asking page, asset).
    pub fn missing_assets(&self) -> Vec<(String, String)> {
        lock(&self.assets).clone()
    }
}

/// A poisoned list is still a list.
fn lock<T>(mutex: &Mutex<T>) -> std::sync::MutexGuard<'_, T> {
    mutex
        .lock()
        .unwrap_or_else(std::sync::PoisonError::into_inner)
}

/// Makes the links of one page.
#[derive(Debug, Clone)]
pub struct Links<'a> {
    from: String,
    prefix: String,
    portable: bool,
    assets: &'a AssetNames,
    asked: &'a Asked,
}

impl<'a> Links<'a> {
    /// The links of the page at `path`.
    pub fn from_page(
        path: &str,
        edition: &Edition,
        assets: &'a AssetNames,
        asked: &'a Asked,
    ) -> Self {
        let prefix = match edition {
            Edition::Hosted { base, .. } if path == "404.html" => base.clone(),
            _ => "../".repeat(path.matches('/').count()),
        };
        Self {
            from: path.to_owned(),
            prefix,
            portable: edition.is_portable(),
            assets,
            asked,
        }
    }

    /// The page these links stand on.
    pub fn from(&self) -> &str {
        &self.from
    }

    /// Whether they are those of the portable edition.
    pub fn are_portable(&self) -> bool {
        self.portable
    }

    /// The way from this page to the site's root: `"../"`, `"./"`, or the base on 404.
    pub fn root(&self) -> String {
        self.or_here(self.prefix.clone())
    }

    /// A link to a page by its path; a query or fragment after it is kept:
    /// `links.page("lookup/?dial=1200kHz")`.
    ///
    /// A page that does not exist fails the rendering, with both names.
    pub fn page(&self, to: &str) -> String {
        let end = to.find(['?', '#']).unwrap_or(to.len());
        let (path, tail) = to.split_at(end);
        lock(&self.asked.pages).push((self.from.clone(), path.to_owned()));
        let path = if self.portable {
            file_of(path)
        } else {
            path.to_owned()
        };
        let link = self.or_here(format!("{}{path}", self.prefix));
        format!("{link}{tail}")
    }

    /// A link to an asset by its name in `web/pages`: `links.asset("base.css")` gives
    /// `"../assets/base.1a2b3c4d5e.css"`.
    ///
    /// An asset that does not exist fails the rendering, with the page's name.
    pub fn asset(&self, name: &str) -> String {
        if let Some(path) = self.assets.path(name) {
            return format!("{}{path}", self.prefix);
        }
        lock(&self.asked.assets).push((self.from.clone(), name.to_owned()));
        name.to_owned()
    }

    /// A link to a problem family by its id, for a page's program to fetch.
    pub fn family(&self, id: &str) -> String {
        self.asset(&asset_name(id, self.portable))
    }

    /// A link to a file that keeps its name: `"icons/icon.svg"`, `"sw.js"`,
    /// `"site.webmanifest"`, `"api/superhet.js"`.
    pub fn file(&self, path: &str) -> String {
        format!("{}{path}", self.prefix)
    }

    /// An empty link means this very address with its query; `./` means its folder.
    fn or_here(&self, link: String) -> String {
        if link.is_empty() {
            "./".to_owned()
        } else {
            link
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Asked, Links};
    use crate::assets::AssetNames;
    use crate::edition::Edition;

    fn names() -> AssetNames {
        let mut names = AssetNames::default();
        names.insert("base.css", "assets/base.0123456789.css");
        names
    }

    fn hosted(base: &str) -> Edition {
        Edition::Hosted {
            base: base.to_owned(),
            public_url: None,
        }
    }

    #[test]
    fn links_climb_as_deep_as_the_page_lies() {
        let (names, asked) = (names(), Asked::default());
        let edition = hosted("/club/");
        let from = |path| Links::from_page(path, &edition, &names, &asked);
        assert_eq!(from("").page("lookup/"), "lookup/");
        assert_eq!(from("").page(""), "./");
        assert_eq!(from("").root(), "./");
        assert_eq!(from("lookup/").page(""), "../");
        assert_eq!(from("lessons/the-image/").page("lookup/"), "../../lookup/");
        assert_eq!(
            from("lessons/the-image/").asset("base.css"),
            "../../assets/base.0123456789.css"
        );
        assert_eq!(from("lookup/").file("sw.js"), "../sw.js");
    }

    #[test]
    fn only_the_page_served_at_any_depth_uses_the_base() {
        let (names, asked) = (names(), Asked::default());
        let edition = hosted("/club/");
        let links = Links::from_page("404.html", &edition, &names, &asked);
        assert_eq!(links.page("lookup/"), "/club/lookup/");
        assert_eq!(links.page(""), "/club/");
        assert_eq!(links.asset("base.css"), "/club/assets/base.0123456789.css");
    }

    #[test]
    fn the_portable_edition_names_the_index() {
        let (names, asked) = (names(), Asked::default());
        let from = |path| Links::from_page(path, &Edition::Portable, &names, &asked);
        assert_eq!(from("").page(""), "index.html");
        assert_eq!(from("about/").page(""), "../index.html");
        assert_eq!(
            from("about/").page("lookup/?dial=1200kHz#card"),
            "../lookup/index.html?dial=1200kHz#card"
        );
    }

    #[test]
    fn queries_and_fragments_stay_behind_the_path() {
        let (names, asked) = (names(), Asked::default());
        let edition = hosted("/");
        let links = Links::from_page("", &edition, &names, &asked);
        assert_eq!(links.page("lookup/?dial=1200kHz"), "lookup/?dial=1200kHz");
        assert_eq!(links.page("#place"), "./#place");
        assert_eq!(asked.pages()[0].1, "lookup/");
    }

    #[test]
    fn what_is_missing_is_remembered() {
        let (names, asked) = (names(), Asked::default());
        let edition = hosted("/");
        let links = Links::from_page("about/", &edition, &names, &asked);
        links.asset("nothing.css");
        assert_eq!(
            asked.missing_assets(),
            [("about/".to_owned(), "nothing.css".to_owned())]
        );
    }
}
