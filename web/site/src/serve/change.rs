//! What a changed file means.

use std::path::Path;

/// What has to be made anew, the lesser first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Change {
    /// Lessons, styles, scripts: the pages alone.
    Content,
    /// A crate that runs in the page only: its wasm, then the pages.
    Wasm,
    /// A crate this program is itself made of: the program, then everything.
    Tool,
}

impl Change {
    /// What a change of the file at this path (relative to the root) means, if anything.
    pub(super) fn of(path: &Path) -> Option<Self> {
        let parts: Vec<&str> = path.iter().filter_map(|part| part.to_str()).collect();
        let name = parts.last()?;
        let passing = |part: &&str| {
            part.starts_with('.')
                || part.ends_with('~')
                || *part == "node_modules"
                || *part == "target"
        };
        if parts.iter().any(passing) {
            return None;
        }
        let is_code = name.ends_with(".rs") || *name == "Cargo.toml";
        match parts[..] {
            // Drawn into the shell when the tool is compiled.
            ["web", "pages", "icons", "source", ..] => Some(Self::Tool),
            ["lessons", ..] | ["web", "pages", ..] => Some(Self::Content),
            ["web", "study" | "lookup" | "api" | "listening", ..] if is_code => Some(Self::Wasm),
            ["core", ..] | ["web", "figures" | "myset" | "numbers" | "site", ..] if is_code => {
                Some(Self::Tool)
            }
            ["web", "site", .., _] if name.ends_with(".js") => Some(Self::Tool),
            ["Cargo.toml" | "Cargo.lock"] => Some(Self::Tool),
            _ => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Change;
    use std::path::Path;

    #[test]
    fn each_room_has_its_meaning() {
        let of = |path: &str| Change::of(Path::new(path));
        assert_eq!(of("lessons/05-the-image.md"), Some(Change::Content));
        assert_eq!(of("web/pages/css/base.css"), Some(Change::Content));
        assert_eq!(of("web/pages/icons/source/mark.svg"), Some(Change::Tool));
        assert_eq!(of("web/lookup/src/lib.rs"), Some(Change::Wasm));
        assert_eq!(of("core/src/units/frequency.rs"), Some(Change::Tool));
        assert_eq!(of("web/figures/src/svg.rs"), Some(Change::Tool));
        assert_eq!(of("web/site/src/pages/home.rs"), Some(Change::Tool));
        assert_eq!(of("Cargo.lock"), Some(Change::Tool));
    }

    #[test]
    fn what_editors_and_compilers_leave_about_means_nothing() {
        for path in [
            "target/debug/site",
            "lessons/.05-the-image.md.swp",
            "lessons/05-the-image.md~",
            "core/target/x.rs",
            "web/site/tools/node_modules/x.js",
            "README.md",
            "tests/src/lib.rs",
        ] {
            assert_eq!(Change::of(Path::new(path)), None, "{path}");
        }
    }

    #[test]
    fn the_greater_change_contains_the_lesser() {
        assert!(Change::Content < Change::Wasm && Change::Wasm < Change::Tool);
    }
}
