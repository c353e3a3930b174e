//! A family file with the places of everything in it.

use crate::report::{Report, place};
use crate::toml_place::{Step, offset};
use std::path::{Path, PathBuf};
use superhet::problems::Family;
use superhet::problems::fault::Place;

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
        let steps = path.iter().map(|step| match step {
            Place::Key(key) => Step::Key(key),
            Place::Entry(entry) => Step::Entry(*entry),
        });
        offset(&self.text, steps)
    }
}
