//! A file of the course as text, with what it says in a report.

use crate::report::{Report, place};

/// One file of the course: its path from the repository's root, and its text.
#[derive(Clone, Debug)]
pub(crate) struct SourceText {
    path: String,
    text: String,
}

impl SourceText {
    /// A file at `path` (as it is to be shown) that holds `text`.
    pub(crate) fn new(path: impl Into<String>, text: impl Into<String>) -> Self {
        Self {
            path: path.into(),
            text: text.into(),
        }
    }

    /// The path as shown in a report.
    pub(crate) fn path(&self) -> &str {
        &self.path
    }

    /// The whole text.
    pub(crate) fn text(&self) -> &str {
        &self.text
    }

    /// Reports what is wrong at a byte offset.
    pub(crate) fn fault(&self, at: usize, message: impl Into<String>, report: &mut Report) {
        let (line, column) = place(&self.text, at);
        report.fault(self.path.as_str(), line, column, message);
    }
}

/// The faults that `check` finds, one a line, as tests compare them.
#[cfg(test)]
pub(crate) fn faults_of(check: impl FnOnce(&mut Report)) -> String {
    let mut report = Report::default();
    check(&mut report);
    let mut lines: Vec<String> = report.faults().iter().map(ToString::to_string).collect();
    lines.sort();
    lines.join("\n")
}
