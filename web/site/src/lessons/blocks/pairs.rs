//! `key=value` pairs with spaces between them.

use crate::lessons::source_text::SourceText;
use crate::report::Report;
use std::ops::Range;

/// Pairs as typed, in order, and where they stand.
#[derive(Clone, Debug, Default)]
pub(crate) struct Pairs {
    /// Key and value.
    pub(crate) pairs: Vec<(String, String)>,
    /// Place of the first.
    pub(crate) at: usize,
}

impl Pairs {
    /// Reads pairs; what is not one goes to the report.
    pub(super) fn read(file: &SourceText, range: Range<usize>, report: &mut Report) -> Self {
        let text = &file.text()[range.clone()];
        let mut pairs = Vec::new();
        for word in text.split_whitespace() {
            match word.split_once('=') {
                Some((key, value)) if !key.is_empty() && !value.is_empty() => {
                    pairs.push((key.to_owned(), value.to_owned()));
                }
                _ => {
                    let inside = word.as_ptr() as usize - text.as_ptr() as usize;
                    let message = format!(
                        "a parameter is written key=value, without spaces (got \"{word}\")"
                    );
                    file.fault(range.start + inside, message, report);
                }
            }
        }
        Self {
            pairs,
            at: range.start,
        }
    }
}
