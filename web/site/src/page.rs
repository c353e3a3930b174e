//! A page before the shell is put around it.

use figures::Group;
use maud::Markup;

/// The wasm program of a page.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Program {
    /// `page.js` alone.
    None,
    /// Lessons, problems and benches, with the figures they show.
    Study(Figures),
    /// The phone look-up.
    Lookup,
    /// The page of the reader's own set.
    MySet,
    /// The search: a script without wasm.
    Search,
}

/// The figures that a page brings alive: those of one group, or all; or none.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Figures {
    /// No figure and no problem: the first page and the course.
    None,
    /// No figure: the page of practice.
    Practice,
    /// No figure: the check before and after.
    Check,
    /// One group alone.
    Of(Group),
    /// Every group.
    All,
}

impl Figures {
    /// What each build of the program brings: (its name, the figures, features of `study`).
    pub const BUILDS: [(&str, Self, &str); 14] = [
        ("study-shelf", Self::None, "carrying"),
        ("study-practice", Self::Practice, "rounds"),
        ("study-check", Self::Check, "check"),
        (
            "study-frequencies",
            Self::Of(Group::Frequencies),
            "frequencies",
        ),
        ("study-blocks", Self::Of(Group::Blocks), "blocks"),
        ("study-bands", Self::Of(Group::Bands), "bands"),
        ("study-responses", Self::Of(Group::Responses), "responses"),
        ("study-circuits", Self::Of(Group::Circuits), "circuits"),
        (
            "study-transformers",
            Self::Of(Group::Transformers),
            "transformers",
        ),
        ("study-amplifier", Self::Of(Group::Amplifier), "amplifier"),
        (
            "study-modulation",
            Self::Of(Group::Modulation),
            "modulation",
        ),
        ("study-detection", Self::Of(Group::Detection), "detection"),
        ("study-tracking", Self::Of(Group::Tracking), "tracking"),
        ("study", Self::All, "all-figures"),
    ];

    /// The least that brings all these figures; a page without any takes the first group.
    pub fn least<'n>(names: impl Iterator<Item = &'n str>) -> Self {
        let mut groups = names.filter_map(figures::group);
        let first = groups.next().unwrap_or(Group::Frequencies);
        if groups.all(|group| group == first) {
            Self::Of(first)
        } else {
            Self::All
        }
    }
}

impl Program {
    /// The name its wasm and its script carry; none where there is no program.
    pub fn name(self) -> Option<&'static str> {
        match self {
            Self::None | Self::Search => None,
            Self::Study(wanted) => Figures::BUILDS
                .iter()
                .find(|(_, figures, _)| *figures == wanted)
                .map(|(name, _, _)| *name),
            Self::Lookup => Some("lookup"),
            Self::MySet => Some("myset"),
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
    /// How its numbers came about, where a set of the reader's can change any: JSON.
    pub recipes: Option<String>,
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
    use super::{Figures, file_of};
    use figures::Group;
    use std::collections::BTreeSet;

    #[test]
    fn pages_are_folders_with_an_index() {
        assert_eq!(file_of(""), "index.html");
        assert_eq!(
            file_of("lessons/the-image/"),
            "lessons/the-image/index.html"
        );
        assert_eq!(file_of("404.html"), "404.html");
    }

    #[test]
    fn a_page_brings_the_figures_it_shows() {
        let least = |names: &[&str]| Figures::least(names.iter().copied());
        let frequencies = Figures::Of(Group::Frequencies);
        assert_eq!(least(&[]), frequencies);
        assert_eq!(least(&["frequency-line", "frequency-line"]), frequencies);
        assert_eq!(least(&["block-diagram"]), Figures::Of(Group::Blocks));
        assert_eq!(least(&["frequency-line", "block-diagram"]), Figures::All);
    }

    #[test]
    fn every_group_is_built_once() {
        let names: Vec<&str> = Figures::BUILDS.iter().map(|(name, ..)| *name).collect();
        assert_eq!(names.iter().collect::<BTreeSet<_>>().len(), names.len());
        assert!(names.iter().all(|name| name.starts_with("study")));
        for figure in figures::names() {
            let figures = Figures::least([figure].into_iter());
            assert!(
                Figures::BUILDS
                    .iter()
                    .any(|(_, built, _)| *built == figures)
            );
        }
    }
}
