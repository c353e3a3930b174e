//! Where in a TOML file something stands, found by its keys.

use toml::de::{DeTable, DeValue};

/// One step from the top of a file to a place in it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Step<'k> {
    /// Into the value of this key.
    Key(&'k str),
    /// Into the entry of a list, counted from 0.
    Entry(usize),
}

/// The byte at which the value at a path starts, or the nearest value above it that exists.
pub(crate) fn offset<'k>(text: &str, path: impl IntoIterator<Item = Step<'k>>) -> usize {
    walked(text, path).0
}

/// Whether there is a value at a path.
pub(crate) fn found<'k>(text: &str, path: impl IntoIterator<Item = Step<'k>>) -> bool {
    walked(text, path).1
}

/// How far a path leads: where the last value found starts, and whether it was the last
/// step's. In a file whose grammar is broken it leads through what can be made out.
fn walked<'k>(text: &str, path: impl IntoIterator<Item = Step<'k>>) -> (usize, bool) {
    let (table, _) = DeTable::parse_recoverable(text);
    let mut offset = 0;
    let mut here = DeValue::Table(table.into_inner());
    for step in path {
        let Some((found, value)) = into(here, step) else {
            return (offset, false);
        };
        offset = found;
        here = value;
    }
    (offset, true)
}

/// The value one step further in, with where it starts.
fn into<'t>(value: DeValue<'t>, step: Step<'_>) -> Option<(usize, DeValue<'t>)> {
    match (value, step) {
        (DeValue::Table(table), Step::Key(key)) => {
            let (_, value) = table.into_iter().find(|(name, _)| name.get_ref() == key)?;
            Some((value.span().start, value.into_inner()))
        }
        (DeValue::Array(array), Step::Entry(entry)) => {
            let value = array.into_iter().nth(entry)?;
            Some((value.span().start, value.into_inner()))
        }
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::Step::{Entry, Key};
    use super::offset;

    const TEXT: &str = "a = 1\n[[set]]\nb = [2, 3]\n[set.c]\nd = 4\n";

    #[test]
    fn values_are_found_by_their_keys() {
        let path = [Key("set"), Entry(0), Key("c"), Key("d")];
        assert_eq!(&TEXT[offset(TEXT, path)..], "4\n");
        let path = [Key("set"), Entry(0), Key("b"), Entry(1)];
        assert!(TEXT[offset(TEXT, path)..].starts_with("3]"));
    }

    #[test]
    fn what_is_missing_is_told_where_it_would_stand() {
        let path = [Key("set"), Entry(0), Key("e")];
        assert!(TEXT[offset(TEXT, path)..].starts_with("[[set]]"));
        assert_eq!(offset(TEXT, [Key("x")]), 0);
        assert_eq!(offset("not toml", [Key("x")]), 0);
    }
}
