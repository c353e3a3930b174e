//! The blocks of a Markdown text.

use super::prose::Run;
use pulldown_cmark::{Alignment, HeadingLevel};
use std::ops::Range;

/// A block of Markdown.
#[derive(Clone, Debug)]
pub(crate) enum Block {
    /// A heading, with its level and place.
    Heading(HeadingLevel, Run, usize),
    /// A paragraph, or the words of a tight list item.
    Paragraph(Run),
    /// A list; one with numbers has the first of them.
    List(Option<u64>, Vec<Vec<Block>>),
    /// A quotation.
    Quote(Vec<Block>),
    /// A table.
    Table(Table),
    /// A rule across the page.
    Rule,
    /// A fenced block, not yet looked into.
    Fence(Fence),
}

/// A table.
#[derive(Clone, Debug)]
pub(crate) struct Table {
    /// Side to which each column is set.
    pub(crate) alignments: Vec<Alignment>,
    /// Headings of the columns.
    pub(crate) headings: Vec<Run>,
    /// Rows of cells.
    pub(crate) rows: Vec<Vec<Run>>,
}

/// A fenced block: its first line's words and the range of its text in the file.
#[derive(Clone, Debug)]
pub(crate) struct Fence {
    /// Words behind the backticks.
    pub(crate) info: String,
    /// Place of those words.
    pub(crate) at: usize,
    /// Extent of the text inside.
    pub(crate) body: Range<usize>,
}
