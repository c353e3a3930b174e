//! What is wrong with the content, all of it at once, each with its place.

use std::fmt;
use std::path::PathBuf;

/// One thing that is wrong, and where: printed as `path:line:column: message`.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Fault {
    /// The file, relative to the repository's root.
    pub path: PathBuf,
    /// The line, counted from 1.
    pub line: usize,
    /// The column in characters, counted from 1.
    pub column: usize,
    /// What is wrong, the rule, and the value found.
    pub message: String,
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let path = self.path.display();
        write!(f, "{path}:{}:{}: {}", self.line, self.column, self.message)
    }
}

/// Every fault found in one reading of the content.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Report {
    faults: Vec<Fault>,
}

impl Report {
    /// Adds one fault.
    pub fn fault(
        &mut self,
        path: impl Into<PathBuf>,
        line: usize,
        column: usize,
        message: impl Into<String>,
    ) {
        self.faults.push(Fault {
            path: path.into(),
            line,
            column,
            message: message.into(),
        });
    }

    /// Adds every fault of another report.
    pub fn absorb(&mut self, other: Report) {
        self.faults.extend(other.faults);
    }

    /// The faults, in the order they were found.
    pub fn faults(&self) -> &[Fault] {
        &self.faults
    }

    /// The value, when nothing was found wrong; the report otherwise.
    ///
    /// # Errors
    /// This report itself, sorted by place, when it holds any fault.
    pub fn or<T>(mut self, value: T) -> Result<T, Report> {
        if self.faults.is_empty() {
            return Ok(value);
        }
        self.faults.sort();
        Err(self)
    }
}

impl fmt::Display for Report {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for fault in &self.faults {
            writeln!(f, "{fault}")?;
        }
        match self.faults.len() {
            1 => write!(f, "1 fault in the content"),
            count => write!(f, "{count} faults in the content"),
        }
    }
}

impl std::error::Error for Report {}

/// The line and column, both counted from 1, of a byte offset in a text.
///
/// An offset beyond the end, or inside a character, is taken back to the nearest
/// character's start.
///
/// ```
/// assert_eq!(site::report::place("one\ntwö x", 9), (2, 5));
/// ```
pub fn place(text: &str, offset: usize) -> (usize, usize) {
    let mut end = offset.min(text.len());
    while !text.is_char_boundary(end) {
        end -= 1;
    }
    let before = &text[..end];
    let line_start = before.rfind('\n').map_or(0, |at| at + 1);
    let line = before.matches('\n').count() + 1;
    (line, before[line_start..].chars().count() + 1)
}

#[cfg(test)]
mod tests {
    use super::{Report, place};

    #[test]
    fn all_faults_are_told_at_once_in_the_order_of_their_places() {
        let mut report = Report::default();
        report.fault("lessons/b.md", 2, 1, "second");
        report.fault("lessons/a.md", 7, 3, "first");
        let said = report.or(()).unwrap_err().to_string();
        assert_eq!(
            said,
            "lessons/a.md:7:3: first\nlessons/b.md:2:1: second\n2 faults in the content"
        );
    }

    #[test]
    fn nothing_wrong_gives_the_value() {
        assert_eq!(Report::default().or(5), Ok(5));
    }

    #[test]
    fn places_count_characters_not_bytes() {
        assert_eq!(place("", 0), (1, 1));
        assert_eq!(place("ö1", 2), (1, 2));
        assert_eq!(place("ö1", 1), (1, 1), "inside a character");
        assert_eq!(place("a\nb", 99), (2, 2), "beyond the end");
    }
}
