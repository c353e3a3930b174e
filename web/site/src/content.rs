//! Everything an author wrote, read and checked.

use crate::report::Report;
use std::path::{Path, PathBuf};

/// The content of the site: lessons and the lists they draw on.
#[derive(Debug, Clone)]
pub struct Content {
    /// The repository's root.
    pub root: PathBuf,
}

impl Content {
    /// Reads and checks all content under the repository's root.
    ///
    /// # Errors
    /// Every fault of every file at once, each with its place.
    pub fn load(root: &Path) -> Result<Self, Report> {
        let report = Report::default();
        report.or(Self {
            root: root.to_path_buf(),
        })
    }
}
