//! `lessons/check.toml`: the check before and after the course, twelve questions in two
//! forms.

use crate::families::Families;
use crate::report::{Report, place};
use crate::toml_place::{Step, offset};
use serde::Deserialize;
use std::path::Path;
use superhet::problems::{Level, Registered, generate};

/// Where the check stands, from the repository's root.
pub(crate) const FILE: &str = "lessons/check.toml";
/// The address of its page.
pub(crate) const PATH: &str = "practice/check/";
/// Questions of a form; the reader's notebook holds a bit for each.
const ITEMS: usize = 12;
/// How many of them are transfer.
const TRANSFER: usize = 6;

/// The check, its questions in their order.
#[derive(Clone, Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Check {
    /// The questions.
    #[serde(rename = "item", default)]
    pub items: Vec<Item>,
}

/// A question of the check: the same kind of problem in both forms.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Item {
    /// The family that it is drawn from.
    pub family: String,
    /// The level.
    pub level: Level,
    /// The seed of the first form, and of the second.
    pub seeds: [u32; 2],
}

impl Check {
    /// Reads the check and holds it against the families; what is wrong goes to the report.
    pub fn load(root: &Path, families: &Families, report: &mut Report) -> Self {
        let text = match std::fs::read_to_string(root.join(FILE)) {
            Ok(text) => text,
            Err(error) => {
                report.fault(FILE, 1, 1, format!("cannot be read: {error}"));
                return Self::default();
            }
        };
        Self::read(&text, families, report)
    }

    fn read(text: &str, families: &Families, report: &mut Report) -> Self {
        let mut fault = |at: usize, says: String| {
            let (line, column) = place(text, at);
            report.fault(FILE, line, column, says);
        };
        let check: Self = match toml::from_str(text) {
            Ok(check) => check,
            Err(error) => {
                let start = error.span().map_or(0, |span| span.start);
                fault(start, error.message().replace('\n', " "));
                return Self::default();
            }
        };
        if let Some(says) = check.counted() {
            fault(0, says);
        }
        for (entry, item) in check.items.iter().enumerate() {
            if let Some((key, says)) = item.amiss(families) {
                let steps = [Step::Key("item"), Step::Entry(entry), Step::Key(key)];
                fault(offset(text, steps), says);
            }
        }
        check
    }

    /// What is wrong with the number of questions.
    fn counted(&self) -> Option<String> {
        let items = self.items.len();
        let transfer = self.items.iter().filter(|item| item.is_transfer()).count();
        ((items, transfer) != (ITEMS, TRANSFER)).then(|| {
            format!(
                "the check has {ITEMS} questions, {TRANSFER} of them transfer (got {items} and {transfer})"
            )
        })
    }
}

impl Item {
    /// Whether the question is on a set that no lesson uses.
    pub fn is_transfer(&self) -> bool {
        self.level == Level::Transfer
    }

    /// What is wrong with the item, and under which of its keys.
    fn amiss(&self, families: &Families) -> Option<(&'static str, String)> {
        let Some(Registered { family, .. }) = families.find(&self.family) else {
            return Some((
                "family",
                format!("no problem family is called {:?}", self.family),
            ));
        };
        let parts = family.level(self.level).parts.len();
        if parts != 1 {
            return Some((
                "level",
                format!("a question of the check has one part (got {parts})"),
            ));
        }
        let mut drawn = self
            .seeds
            .iter()
            .map(|seed| generate(family, self.level, *seed));
        let failed = drawn.find_map(Result::err);
        failed.map(|error| ("seeds", error.to_string()))
    }
}

#[cfg(test)]
mod tests {
    use super::Check;
    use crate::families::Families;
    use crate::report::Report;
    use crate::repository;

    fn report(text: &str) -> String {
        let mut report = Report::default();
        let families = Families::load(&repository::root(), &mut report);
        Check::read(text, &families, &mut report);
        report.to_string()
    }

    #[test]
    fn what_is_amiss_is_told_with_its_place() {
        let item = |family: &str, level: &str| {
            format!("[[item]]\nfamily = \"{family}\"\nlevel = \"{level}\"\nseeds = [0, 1]\n")
        };
        for (text, says) in [
            (
                item("no-such-family", "one"),
                "lessons/check.toml:2:10: no problem family is called",
            ),
            (
                item("card-of-a-set", "three"),
                "lessons/check.toml:3:9: a question of the check has one part (got 3)",
            ),
            (
                item("card-of-a-set", "four"),
                "lessons/check.toml:3:9: unknown variant",
            ),
            (
                item("card-of-a-set", "one"),
                "lessons/check.toml:1:1: the check has 12 questions, 6 of them transfer (got 1 and 0)",
            ),
        ] {
            let report = report(&text);
            assert!(report.contains(says), "{says}: {report}");
        }
    }

    #[test]
    fn the_check_of_the_course_is_sound() {
        let mut report = Report::default();
        let families = Families::load(&repository::root(), &mut report);
        let check = Check::load(&repository::root(), &families, &mut report);
        assert_eq!(report.faults(), [], "{report}");
        assert_eq!(check.items.len(), super::ITEMS);
    }
}
