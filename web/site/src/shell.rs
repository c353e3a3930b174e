//! What stands around every page: the head, the name and its tabs, the foot.

use crate::edition::Edition;
use crate::links::Links;
use crate::page::{Page, Program};
use crate::pages::home_screen;
use crate::programs;
use crate::render::Site;
use crate::security::policy;
use maud::{DOCTYPE, Markup, PreEscaped, html};

/// The drawn mark, in the text so that it takes the ink's colour.
const MARK: &str = include_str!("../../pages/icons/source/mark.svg");

/// Paper and night, as `base.css` has them, for the browser's own bar.
const THEME_COLOURS: [(&str, &str); 2] = [("light", "#efe5d0"), ("dark", "#0e1116")];

/// The face of headings, which every page but the look-up and the lessons sets.
const HEADING_FACE: &str = "besley-semibold-latin.woff2";

/// The tabs at the head of each page: (path, words). Only pages that exist stand here.
const TABS: [(&str, &str); 4] = [
    ("lessons/", "Lessons"),
    ("practice/", "Practice"),
    ("lookup/", "Look up"),
    ("about/", "About"),
];

/// What the foot of each page leads to: (path, words).
const FOOT_LINKS: [(&str, &str); 9] = [
    ("search/", "Search"),
    ("my-set/", "My set"),
    ("glossary/", "Words"),
    ("formulas/", "Formulas"),
    ("about/#caution", "Cautions"),
    ("about/#privacy", "Privacy"),
    ("about/#accuracy", "Accuracy"),
    ("about/#sources", "Sources"),
    ("about/#licences", "Licences"),
];

/// A whole page as text: head, header, main, footer.
pub fn render(page: &Page, site: &Site<'_>) -> String {
    let links = site.links(&page.path);
    let program = page.program.name();
    let markup = html! {
        (DOCTYPE)
        html lang="en-GB" {
            (head(page, site, &links))
            body class=[body_class(page)] data-program=[program] {
                a.skip href="#main" { "Skip to the page" }
                (header(page, &links))
                main #main tabindex="-1" {
                    (page.main)
                    @if matches!(page.program, Program::Study(_)) { (home_screen::hint()) }
                }
                (footer(&links))
            }
        }
    };
    markup.into_string()
}

/// The look-up keeps its screen for the answer: a head of one line, and no fetched face. A
/// lesson keeps its bytes for figures and problems: its headings take a face of the device.
fn body_class(page: &Page) -> Option<&'static str> {
    match page.program {
        Program::Lookup => Some("compact"),
        _ if page.styles.contains(&"lesson.css") => Some("device-headings"),
        Program::None | Program::Study(_) | Program::MySet | Program::Search => None,
    }
}

fn head(page: &Page, site: &Site<'_>, links: &Links<'_>) -> Markup {
    let portable = site.edition.is_portable();
    html! {
        head {
            meta charset="utf-8";
            meta name="viewport" content="width=device-width, initial-scale=1";
            meta http-equiv="Content-Security-Policy" content=(policy(site.edition));
            title { (page.title) " – Before the Bench" }
            meta name="description" content=(page.description);
            @for (name, colour) in THEME_COLOURS {
                meta name="theme-color" media={ "(prefers-color-scheme: " (name) ")" }
                    content=(colour)
                    data-light=(THEME_COLOURS[0].1) data-dark=(THEME_COLOURS[1].1);
            }
            @if page.path == "404.html" { meta name="robots" content="noindex"; }
            (public_address(page, site.edition))
            script src=(links.asset("theme.js")) {}
            link rel="stylesheet" href=(links.asset("base.css"));
            @for style in page.styles {
                link rel="stylesheet" href=(links.asset(style));
            }
            // Named here, the heading face comes with the style sheets and not after them.
            @if body_class(page).is_none() && !portable {
                link rel="preload" as="font" type="font/woff2" href=(links.asset(HEADING_FACE))
                    crossorigin;
            }
            (icons(page.program, links, portable))
            (programs::tags(page.program, links, portable))
        }
    }
}

/// Where the site is published, when that is known: one address for one page.
fn public_address(page: &Page, edition: &Edition) -> Markup {
    let Edition::Hosted {
        public_url: Some(url),
        ..
    } = edition
    else {
        return html! {};
    };
    let address = format!("{}/{}", url.trim_end_matches('/'), page.path);
    html! {
        @if page.path != "404.html" { link rel="canonical" href=(address); }
        meta property="og:title" content=(page.title);
        meta property="og:description" content=(page.description);
        meta property="og:image" content={ (url.trim_end_matches('/')) "/icons/icon-512.png" };
    }
}

/// A page without a server has no use for a manifest, and its browser would complain.
fn icons(program: Program, links: &Links<'_>, portable: bool) -> Markup {
    // On a home screen the look-up opens by itself, at the set chosen last.
    let manifest = match program {
        Program::Lookup => "lookup.webmanifest",
        Program::None | Program::Study(_) | Program::MySet | Program::Search => "site.webmanifest",
    };
    html! {
        link rel="icon" type="image/svg+xml" href=(links.file("icons/icon.svg"));
        link rel="icon" type="image/png" sizes="32x32" href=(links.file("icons/icon-32.png"));
        link rel="apple-touch-icon" href=(links.file("icons/icon-180.png"));
        @if !portable { link rel="manifest" href=(links.file(manifest)); }
    }
}

fn header(page: &Page, links: &Links<'_>) -> Markup {
    html! {
        header.head {
            div.head-inner {
                a.name href=(links.page("")) aria-current=[current(page, "")] {
                    (PreEscaped(MARK.trim_end()))
                    span { "Before the Bench" }
                }
                nav.tabs aria-label="Main" {
                    ul {
                        @for (path, words) in TABS {
                            li {
                                a href=(links.page(path)) aria-current=[current(page, path)] {
                                    (words)
                                }
                            }
                        }
                    }
                }
            }
        }
    }
}

/// `page` for the tab of this very page, `true` for that of a page above it.
fn current(page: &Page, path: &str) -> Option<&'static str> {
    if page.path == path {
        Some("page")
    } else if !path.is_empty() && page.path.starts_with(path) {
        Some("true")
    } else {
        None
    }
}

fn footer(links: &Links<'_>) -> Markup {
    html! {
        footer.foot {
            div.foot-inner {
                div {
                    p.kept #kept data-kept="no" {
                        "Needs signal: each page is fetched when you open it."
                    }
                    button #kept-fill type="button" hidden { "Keep the rest for use without signal" }
                    p {
                        "Nothing you type leaves this browser. "
                        "Code under MIT or Apache 2.0, lessons under CC BY 4.0."
                    }
                    ul.foot-links {
                        @for (path, words) in FOOT_LINKS {
                            li { a href=(links.page(path)) { (words) } }
                        }
                    }
                }
                label.theme hidden {
                    "Paper "
                    select #theme {
                        option value="device" { "as this device" }
                        option value="light" { "light" }
                        option value="dark" { "dark" }
                    }
                }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{TABS, current};
    use crate::page::{Page, Program};
    use maud::html;

    fn page(path: &str) -> Page {
        Page {
            path: path.to_owned(),
            title: String::new(),
            description: String::new(),
            styles: &[],
            recipes: None,
            program: Program::None,
            main: html! {},
        }
    }

    #[test]
    fn one_tab_at_most_is_the_reader_s_place() {
        let marked = |path: &str| -> Vec<&str> {
            let page = page(path);
            let tabs = TABS.iter().filter(|(to, _)| current(&page, to).is_some());
            tabs.map(|(to, _)| *to).collect()
        };
        assert_eq!(marked("lessons/"), ["lessons/"]);
        assert_eq!(marked("lessons/the-image/"), ["lessons/"]);
        assert!(marked("").is_empty() && marked("404.html").is_empty());
    }

    #[test]
    fn a_page_below_a_tab_is_not_the_tab_s_own_page() {
        assert_eq!(current(&page("about/"), "about/"), Some("page"));
        assert_eq!(current(&page("lessons/x/"), "lessons/"), Some("true"));
        assert_eq!(current(&page("lessons/x/"), ""), None);
    }
}
