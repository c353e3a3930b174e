//! Reads a TOML file into a type, and tells everything in it that does not fit.
//!
//! Reading stops at the first key that nobody knows and at the first value of a wrong kind.
//! So what stopped it is noted, taken out of what was parsed, and the rest is read again.
//! Where the grammar itself is broken, all such places are told, and the rest is read as far
//! as it can be made out.

use crate::toml_place::Step;
use serde::de::DeserializeOwned;
use std::ops::Range;
use toml::Spanned;
use toml::de::{DeTable, DeValue, Deserializer, Error};

/// Something wrong in a file, with the byte where it stands.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Slip {
    /// Where, in bytes.
    pub(crate) at: usize,
    /// The field, the rule and the value.
    pub(crate) says: String,
}

/// A file as far as it could be read.
#[derive(Debug, Clone)]
pub(crate) struct Shaped<T> {
    /// What was read; none where nothing is left of it.
    pub(crate) read: Option<T>,
    /// Everything that does not fit, in the order of its places.
    pub(crate) slips: Vec<Slip>,
    /// Whether the grammar is broken, so that what seems to be missing may only be lost.
    pub(crate) garbled: bool,
    /// Paths of the values of a wrong kind: they are told, and not missing.
    taken: Vec<String>,
}

impl<T> Shaped<T> {
    /// What was read, and what is told of the rest.
    pub(crate) fn apart(self) -> (Option<T>, Shaped<()>) {
        let told = Shaped {
            read: None,
            slips: self.slips,
            garbled: self.garbled,
            taken: self.taken,
        };
        (self.read, told)
    }

    /// Whether the value at a path was there and of a wrong kind.
    pub(crate) fn took<'k>(&self, path: impl IntoIterator<Item = Step<'k>>) -> bool {
        let path = path.into_iter().fold(String::new(), longer);
        self.taken.contains(&path)
    }
}

/// Reads a file.
pub(crate) fn read<T: DeserializeOwned>(text: &str) -> Shaped<T> {
    let (table, broken) = DeTable::parse_recoverable(text);
    let mut slips: Vec<Slip> = broken.iter().map(slip).collect();
    let garbled = !slips.is_empty();
    let (span, mut table) = (table.span(), table.into_inner());
    let mut taken = Vec::new();
    let read = loop {
        let whole = Spanned::new(span.clone(), table.clone());
        let error = match T::deserialize(Deserializer::from(whole)) {
            Ok(read) => break Some(read),
            Err(error) => error,
        };
        slips.push(slip(&error));
        match error.span().and_then(|at| take(&mut table, &at, "")) {
            Some(Taken::Value(path)) => taken.push(path),
            Some(Taken::Key) => {}
            None => break None,
        }
    };
    let line = |at: usize| {
        text.get(..at)
            .map_or(0, |before| before.matches('\n').count())
    };
    slips.sort_by_key(|slip| slip.at);
    if garbled {
        // One slip of grammar is told once, whatever was made of the rest of its line.
        slips.dedup_by_key(|slip| line(slip.at));
    }
    Shaped {
        read,
        slips,
        garbled,
        taken,
    }
}

fn slip(error: &Error) -> Slip {
    let words: Vec<&str> = error.message().split_whitespace().collect();
    Slip {
        at: error.span().map_or(0, |span| span.start),
        says: words.join(" "),
    }
}

/// What was taken out of a table.
enum Taken {
    /// A key that nobody knows, with its value.
    Key,
    /// A value of a wrong kind, with its path.
    Value(String),
}

/// Takes out the key or the value that stands exactly here. Of a list the whole is taken,
/// since the places of its other entries would no longer be theirs.
fn take(table: &mut DeTable<'_>, at: &Range<usize>, path: &str) -> Option<Taken> {
    let unknown = table.keys().find(|key| key.span() == *at).cloned();
    if let Some(key) = unknown {
        table.remove(&key);
        return Some(Taken::Key);
    }
    let mut wrong = None;
    for (key, value) in table.iter_mut() {
        let path = longer(path.to_owned(), Step::Key(key.get_ref()));
        if value.span() == *at || has_entry(value.get_ref(), at) {
            wrong = Some((key.clone(), path));
            break;
        }
        if let Some(taken) = take_within(value.get_mut(), at, &path) {
            return Some(taken);
        }
    }
    let (key, path) = wrong?;
    table.remove(&key);
    Some(Taken::Value(path))
}

/// Whether an entry of this list stands exactly here and is no table.
fn has_entry(value: &DeValue<'_>, at: &Range<usize>) -> bool {
    let entries = value.as_array();
    entries.is_some_and(|entries| entries.iter().any(|entry| entry.span() == *at))
}

fn take_within(value: &mut DeValue<'_>, at: &Range<usize>, path: &str) -> Option<Taken> {
    match value {
        DeValue::Table(table) => take(table, at, path),
        DeValue::Array(entries) => entries.iter_mut().enumerate().find_map(|(place, entry)| {
            let path = longer(path.to_owned(), Step::Entry(place));
            take_within(entry.get_mut(), at, &path)
        }),
        _ => None,
    }
}

fn longer(path: String, step: Step<'_>) -> String {
    match step {
        Step::Key(key) => path + "/" + key,
        Step::Entry(entry) => path + "/" + &entry.to_string(),
    }
}

#[cfg(test)]
mod tests {
    use super::read;
    use crate::toml_place::Step::{Entry, Key};
    use serde::Deserialize;

    #[derive(Deserialize, Debug, Default, PartialEq)]
    #[serde(default, deny_unknown_fields)]
    struct Shelf {
        name: String,
        count: u32,
        sizes: Vec<u32>,
        boxes: Vec<Shelf>,
    }

    fn said(text: &str) -> Vec<String> {
        let shelf = read::<Shelf>(text);
        let said = |slip: &super::Slip| format!("{} {}", slip.at, slip.says);
        shelf.slips.iter().map(said).collect()
    }

    #[test]
    fn everything_that_does_not_fit_is_told_with_its_place() {
        let text = "nane = \"a\"\ncount = \"b\"\n[[boxes]]\ncount = -1\nwide = 1\n[[boxes]]\n\
                    name = 4\nsizes = [1, true]\n[boxes.lid]\nwide = 2\n";
        let at = |piece: &str| text.find(piece).unwrap();
        let starts = [
            (at("nane"), "unknown field `nane`"),
            (at("\"b\""), "invalid type: string \"b\", expected u32"),
            (at("-1"), "invalid value: integer `-1`, expected u32"),
            (at("wide"), "unknown field `wide`"),
            (at("4\n"), "invalid type: integer `4`, expected a string"),
            (at("true"), "invalid type: boolean `true`, expected u32"),
            (at("lid"), "unknown field `lid`"),
        ];
        let said = said(text);
        assert_eq!(said.len(), starts.len(), "{said:#?}");
        for (said, (at, says)) in said.iter().zip(starts) {
            assert!(said.starts_with(&format!("{at} {says}")), "{said}");
        }
    }

    #[test]
    fn what_fits_is_read_and_what_was_taken_is_known() {
        let shelf = read::<Shelf>("name = \"a\"\ncount = \"b\"\n[[boxes]]\ncount = 2\nname = 1\n");
        assert!(shelf.took([Key("count")]));
        assert!(shelf.took([Key("boxes"), Entry(0), Key("name")]));
        assert!(!shelf.took([Key("name")]) && !shelf.garbled);
        let read = shelf.read.unwrap();
        assert_eq!(
            (read.name.as_str(), read.count, read.boxes[0].count),
            ("a", 0, 2)
        );
    }

    #[test]
    fn every_slip_of_grammar_is_told_once() {
        let text = "name = \ncount = 1 2\nsizes = [1, 2]\nwide = 3\n";
        let said = said(text);
        assert_eq!(said.len(), 3, "{said:#?}");
        assert!(said[2].contains("unknown field `wide`"), "{said:#?}");
    }
}
