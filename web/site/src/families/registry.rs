//! The registry: which number is which family, for ever.

use super::FOLDER;
use super::file::File;
use crate::report::Report;
use serde::Deserialize;
use std::path::{Path, PathBuf};
use superhet::problems::fault::Place;

/// One row: a family at one revision.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Row {
    pub(super) number: u16,
    pub(super) id: String,
    pub(super) revision: u8,
    pub(super) seal: String,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Rows {
    #[serde(default)]
    family: Vec<Row>,
}

impl Row {
    /// Where this revision stands.
    pub(super) fn path(&self, newest: bool) -> PathBuf {
        let name = match newest {
            true => format!("{}.toml", self.id),
            false => format!("{}.r{}.toml", self.id, self.revision),
        };
        Path::new(FOLDER).join(name)
    }
}

/// The registry's own file.
pub(super) fn path() -> PathBuf {
    Path::new(FOLDER).join("registry.toml")
}

/// The rows in their order; what breaks the order is reported.
pub(super) fn load(root: &Path, report: &mut Report) -> Vec<Row> {
    let Some(file) = File::open(root, &path(), report) else {
        return Vec::new();
    };
    let Some(Rows { family: rows }) = file.parse(report) else {
        return Vec::new();
    };
    for (here, row) in rows.iter().enumerate() {
        if let Some(says) = broken(&rows[..here], row) {
            file.fault(&[Place::Key("family"), Place::Entry(here)], &says, report);
        }
    }
    rows
}

/// What is wrong with a row after the ones before it. A new family takes the next
/// number; a new revision of an old one is the next of its revisions.
fn broken(before: &[Row], row: &Row) -> Option<String> {
    let next = before.iter().map(|row| row.number).max().unwrap_or(0) + 1;
    let Some(last) = before.iter().rfind(|earlier| earlier.number == row.number) else {
        return if row.number != next {
            Some(format!(
                "a new family takes the next number, {next} (got {})",
                row.number
            ))
        } else if before.iter().any(|earlier| earlier.id == row.id) {
            Some(format!("{:?} has a number already", row.id))
        } else {
            (row.revision != 1)
                .then(|| format!("a family starts at revision 1 (got {})", row.revision))
        };
    };
    if last.id != row.id {
        return Some(format!(
            "number {} is {:?} for ever (got {:?})",
            row.number, last.id, row.id
        ));
    }
    let due = last.revision.saturating_add(1);
    (row.revision != due).then(|| {
        format!(
            "the next revision of {:?} is {due} (got {})",
            row.id, row.revision
        )
    })
}

#[cfg(test)]
mod tests {
    use super::{Row, broken};

    fn row(number: u16, id: &str, revision: u8) -> Row {
        Row {
            number,
            id: id.into(),
            revision,
            seal: String::new(),
        }
    }

    #[test]
    fn rows_are_appended_in_order() {
        let before = [row(1, "one", 1), row(2, "two", 1), row(1, "one", 2)];
        for fine in [row(3, "three", 1), row(1, "one", 3), row(2, "two", 2)] {
            assert_eq!(broken(&before, &fine), None, "{fine:?}");
        }
        for (wrong, says) in [
            (row(5, "five", 1), "next number, 3"),
            (row(3, "two", 1), "has a number already"),
            (row(3, "three", 2), "starts at revision 1"),
            (row(2, "other", 2), "is \"two\" for ever"),
            (row(2, "two", 3), "next revision of \"two\" is 2"),
        ] {
            let broken = broken(&before, &wrong).unwrap_or_default();
            assert!(broken.contains(says), "{wrong:?}: {broken}");
        }
    }
}
