//! Everything an author wrote, read and checked.

use crate::check::Check;
use crate::families::Families;
use crate::lessons::Lessons;
use crate::report::Report;
use std::path::{Path, PathBuf};

/// The content of the site: lessons and the lists they draw on.
#[derive(Debug, Clone)]
pub struct Content {
    /// The repository's root.
    pub root: PathBuf,
    /// The lessons and the lists beside them.
    pub lessons: Lessons,
    /// The problem families.
    pub families: Families,
    /// The check before and after the course.
    pub check: Check,
}

impl Content {
    /// Reads and checks all content under the repository's root.
    ///
    /// # Errors
    /// Every fault of every file at once, each with its place.
    pub fn load(root: &Path) -> Result<Self, Report> {
        let mut report = Report::default();
        let families = Families::load(root, &mut report);
        let lessons = Lessons::load(root, &families, &mut report);
        let check = Check::load(root, &families, &mut report);
        report.or(Self {
            root: root.to_path_buf(),
            lessons,
            families,
            check,
        })
    }
}
