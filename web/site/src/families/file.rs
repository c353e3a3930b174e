//! A family file with the places of everything in it.

use crate::report::{Report, place};
use std::path::{Path, PathBuf};
use superhet::problems::Family;
use superhet::problems::fault::Place;
use toml::de::{DeTable, DeValue};

/// A TOML file that was read.
#[derive(Debug, Clone)]
pub(super) struct File {
    path: PathBuf,
    text: String,
}

impl File {
    /// Reads a file; a missing one is a fault of the registry's row.
    pub(super) fn open(root: &Path, path: &Path, report: &mut Report) -> Option<File> {
        match std::fs::read_to_string(root.join(path)) {
            Ok(text) => Some(File {
                path: path.to_path_buf(),
                text,
            }),
            Err(error) => {
                report.fault(path, 1, 1, format!("cannot be read: {error}"));
                None
            }
        }
    }

    /// The file's text as another type of data.
    pub(super) fn parse<T: serde::de::DeserializeOwned>(&self, report: &mut Report) -> Option<T> {
        match toml::from_str(&self.text) {
            Ok(data) => Some(data),
            Err(error) => {
                let start = error.span().map_or(0, |span| span.start);
                self.fault_at(start, error.message(), report);
                None
            }
        }
    }

    /// The family that the file holds.
    pub(super) fn family(&self, report: &mut Report) -> Option<Family> {
        self.parse(report)
    }

    /// Reports a fault at a place, or at the nearest place above it that exists.
    pub(super) fn fault(&self, place: &[Place], says: &str, report: &mut Report) {
        self.fault_at(self.offset(place), says, report);
    }

    fn fault_at(&self, offset: usize, says: &str, report: &mut Report) {
        let (line, column) = place(&self.text, offset);
        report.fault(&self.path, line, column, says.replace('\n', " "));
    }

    fn offset(&self, path: &[Place]) -> usize {
        let Ok(table) = DeTable::parse(&self.text) else {
            return 0;
        };
        let mut offset = 0;
        let mut here = DeValue::Table(table.into_inner());
        for step in path {
            let Some((found, value)) = into(here, step) else {
                break;
            };
            offset = found;
            here = value;
        }
        offset
    }
}

/// The value one step further in, with where it starts.
fn into<'t>(value: DeValue<'t>, step: &Place) -> Option<(usize, DeValue<'t>)> {
    match (value, step) {
        (DeValue::Table(table), Place::Key(key)) => {
            let (_, value) = table.into_iter().find(|(name, _)| name.get_ref() == key)?;
            Some((value.span().start, value.into_inner()))
        }
        (DeValue::Array(array), Place::Entry(entry)) => {
            let value = array.into_iter().nth(*entry)?;
            Some((value.span().start, value.into_inner()))
        }
        _ => None,
    }
}
