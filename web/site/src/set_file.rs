//! A file of set profiles: what it holds, and every fault of it with its place.

use crate::report::place;
use crate::toml_place::{Step, found, offset};
use crate::toml_shape::{self, Shaped, Slip};
use serde::Deserialize;
use superhet::receiver::{Fault, Place, SetProfile};

/// A set file as far as it could be read; its values are not checked yet.
#[derive(Debug, Clone)]
pub(crate) struct SetFile<'t> {
    text: &'t str,
    /// The sets, in the order of the file.
    pub(crate) sets: Vec<SetProfile>,
    shaped: Shaped<()>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct List {
    #[serde(default, rename = "set")]
    sets: Vec<SetProfile>,
}

impl<'t> SetFile<'t> {
    /// Reads a file's text.
    pub(crate) fn read(text: &'t str) -> Self {
        let (list, shaped) = toml_shape::read::<List>(text).apart();
        Self {
            text,
            sets: list.map_or_else(Vec::new, |list| list.sets),
            shaped,
        }
    }

    /// What is no TOML, keys that nobody knows, and values of a wrong kind, in any of the
    /// sets.
    pub(crate) fn misshapen(&self) -> &[Slip] {
        &self.shaped.slips
    }

    /// Every fault in the values of one of the sets, counted from 0, in the order of their
    /// places. What is told as misshapen is not told as missing.
    pub(crate) fn slips(&self, set: usize) -> Vec<Slip> {
        let faults = self.sets.get(set).map(SetProfile::faults);
        let faults = faults.unwrap_or_default().into_iter();
        let slip = |fault: Fault| Slip {
            at: self.at(set, &fault.place),
            says: fault.to_string(),
        };
        let mut slips: Vec<Slip> = faults
            .filter(|fault| !self.is_told(set, &fault.place))
            .map(slip)
            .collect();
        slips.sort_by_key(|slip| slip.at);
        slips
    }

    /// Whether the value was there and is told as misshapen.
    pub(crate) fn is_told(&self, set: usize, within: &[Place]) -> bool {
        let lost = self.shaped.garbled && !found(self.text, path(set, within));
        lost || self.shaped.took(path(set, within))
    }

    /// The byte where something in one of the sets stands.
    pub(crate) fn at(&self, set: usize, within: &[Place]) -> usize {
        offset(self.text, path(set, within))
    }

    /// The slip as printed: `path:line:column: message`.
    pub(crate) fn line(text: &str, path: &str, slip: &Slip) -> String {
        let (line, column) = place(text, slip.at);
        format!("{path}:{line}:{column}: {}", slip.says)
    }
}

/// The path of something in one of the sets.
fn path(set: usize, within: &[Place]) -> impl Iterator<Item = Step<'_>> {
    let steps = within.iter().map(|step| match step {
        Place::Key(key) => Step::Key(key),
        Place::Entry(entry) => Step::Entry(*entry),
    });
    [Step::Key("set"), Step::Entry(set)]
        .into_iter()
        .chain(steps)
}

#[cfg(test)]
mod tests {
    use super::SetFile;
    use superhet::receiver::SetProfile;

    #[test]
    fn a_profile_goes_through_json_unchanged() {
        let text = include_str!("../../../lessons/set-profiles.toml");
        let sets = SetFile::read(text).sets;
        assert_eq!(sets.len(), 3);
        for set in sets {
            let json = serde_json::to_string(&set).unwrap();
            let back: SetProfile = serde_json::from_str(&json).unwrap();
            assert_eq!(back, set);
            assert_eq!(back.faults(), []);
        }
    }

    const SETS: &str = "[[set]]\nif = \"470\"\nside = true\nregion = 9\n[[set.band]]\n\
                        low = [\"525 kHz\"]\nhigh = \"1605 kHz\"\naerial-q = 80\n\
                        [[set.if-transformer]]\ncouplng = 0.01\n\
                        primary = { capacitance = \"200 pF\", q = 100 }\n\
                        secondary = { capacitance = \"200 pF\", q = \"x\" }\n";

    fn said(text: &str) -> Vec<String> {
        let file = SetFile::read(text);
        let mut slips = file.misshapen().to_vec();
        slips.extend(file.slips(0));
        slips.sort_by_key(|slip| slip.at);
        slips
            .iter()
            .map(|slip| SetFile::line(text, "s", slip))
            .collect()
    }

    #[test]
    fn faults_of_shape_and_of_value_are_told_together() {
        let said = said(SETS);
        let starts = [
            "s:2:6: if: a frequency needs a unit",
            "s:3:8: invalid type: boolean `true`",
            "s:4:10: region: this is from 1 to 3 (got 9)",
            "s:6:7: invalid type: sequence",
            "s:9:1: if-transformer 1, coupling: this is missing",
            "s:10:1: unknown field `couplng`",
            "s:12:43: if-transformer 1, secondary, q: a plain number starts with a number",
        ];
        assert_eq!(said.len(), starts.len(), "{said:#?}");
        for (said, start) in said.iter().zip(starts) {
            assert!(said.starts_with(start), "{said} against {start}");
        }
    }

    #[test]
    fn what_broken_grammar_took_is_not_missed() {
        let said = said(
            &SETS
                .replace("side = true", "side = above")
                .replace("= 9", "= 9 9"),
        );
        assert!(
            said.iter()
                .any(|line| line.starts_with("s:2:6: if: a frequency")),
            "{said:#?}"
        );
        assert!(
            said.iter().any(|line| line.starts_with("s:3:")),
            "{said:#?}"
        );
        assert!(
            said.iter().any(|line| line.starts_with("s:4:")),
            "{said:#?}"
        );
        assert!(
            said.iter()
                .any(|line| line.contains("unknown field `couplng`")),
            "{said:#?}"
        );
        assert!(
            !said.iter().any(|line| line.contains("missing")),
            "{said:#?}"
        );
    }
}
