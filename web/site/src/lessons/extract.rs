//! A part of a file that is read as Markdown.

use super::source_text::SourceText;
use crate::report::Report;
use std::ops::Range;
use toml::Spanned;

/// A part of a file, and where its characters stand in it.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Extract<'a> {
    /// The file.
    pub(crate) file: &'a SourceText,
    /// The text to read.
    pub(crate) text: &'a str,
    /// Where it begins in the file.
    pub(crate) at: usize,
    /// Whether the file runs along with the text; if not, everything is placed at `at`.
    pub(crate) verbatim: bool,
}

impl<'a> Extract<'a> {
    /// The whole file.
    pub(crate) fn whole(file: &'a SourceText) -> Self {
        Self::part(file, 0..file.text().len())
    }

    /// A stretch of the file.
    pub(crate) fn part(file: &'a SourceText, range: Range<usize>) -> Self {
        Self {
            file,
            text: &file.text()[range.clone()],
            at: range.start,
            verbatim: true,
        }
    }

    /// A TOML string. One with escapes or joined lines is placed at its beginning.
    pub(crate) fn toml(file: &'a SourceText, value: &'a Spanned<String>) -> Self {
        let span = value.span();
        let text = value.get_ref();
        let found = file.text().get(span.clone()).and_then(|raw| raw.find(text));
        Self {
            file,
            text,
            at: span.start + found.unwrap_or(0),
            verbatim: found.is_some(),
        }
    }

    /// The place in the file of an offset in the text.
    pub(crate) fn place(&self, offset: usize) -> usize {
        if self.verbatim {
            self.at + offset
        } else {
            self.at
        }
    }

    /// Reports what is wrong at an offset in the text.
    pub(crate) fn fault(&self, offset: usize, message: impl Into<String>, report: &mut Report) {
        self.file.fault(self.place(offset), message, report);
    }
}
