//! A file of set profiles: what it holds, and every fault of it with its place.

use crate::report::place;
use crate::toml_place::{Step, offset};
use serde::Deserialize;
use superhet::receiver::{Fault, Place, SetProfile};

/// A set file that was read as TOML; its values are not checked yet.
#[derive(Debug, Clone)]
pub(crate) struct SetFile<'t> {
    text: &'t str,
    /// The sets, in the order of the file.
    pub(crate) sets: Vec<SetProfile>,
}

/// Something wrong in a set file, with the byte where it stands.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Slip {
    /// Where, in bytes.
    pub(crate) at: usize,
    /// The field, the rule and the value.
    pub(crate) says: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct List {
    #[serde(default, rename = "set")]
    sets: Vec<SetProfile>,
}

impl<'t> SetFile<'t> {
    /// Reads a file's text.
    pub(crate) fn read(text: &'t str) -> Result<Self, Slip> {
        match toml::from_str::<List>(text) {
            Ok(List { sets }) => Ok(Self { text, sets }),
            Err(error) => Err(Slip {
                at: error.span().map_or(0, |span| span.start),
                says: error
                    .message()
                    .split_whitespace()
                    .collect::<Vec<_>>()
                    .join(" "),
            }),
        }
    }

    /// Every fault of one of the sets, counted from 0, in the order of their places.
    pub(crate) fn slips(&self, set: usize) -> Vec<Slip> {
        let faults = self.sets.get(set).map(SetProfile::faults);
        let slip = |fault: Fault| Slip {
            at: self.at(set, &fault.place),
            says: fault.to_string(),
        };
        let faults = faults.unwrap_or_default();
        let mut slips: Vec<Slip> = faults.into_iter().map(slip).collect();
        slips.sort_by_key(|slip| slip.at);
        slips
    }

    /// The byte where something in one of the sets stands.
    pub(crate) fn at(&self, set: usize, within: &[Place]) -> usize {
        let steps = within.iter().map(|step| match step {
            Place::Key(key) => Step::Key(key),
            Place::Entry(entry) => Step::Entry(*entry),
        });
        offset(
            self.text,
            [Step::Key("set"), Step::Entry(set)]
                .into_iter()
                .chain(steps),
        )
    }

    /// The slip as printed: `path:line:column: message`.
    pub(crate) fn line(text: &str, path: &str, slip: &Slip) -> String {
        let (line, column) = place(text, slip.at);
        format!("{path}:{line}:{column}: {}", slip.says)
    }
}

#[cfg(test)]
mod tests {
    use super::SetFile;
    use superhet::receiver::SetProfile;

    #[test]
    fn a_profile_goes_through_json_unchanged() {
        let text = include_str!("../../../lessons/set-profiles.toml");
        let sets = SetFile::read(text).unwrap().sets;
        assert_eq!(sets.len(), 3);
        for set in sets {
            let json = serde_json::to_string(&set).unwrap();
            let back: SetProfile = serde_json::from_str(&json).unwrap();
            assert_eq!(back, set);
            assert_eq!(back.faults(), []);
        }
    }
}
