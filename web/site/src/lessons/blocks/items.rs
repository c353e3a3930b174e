//! The items of a block: lines that begin with a mark, each with the lines that follow.

use super::keyed::trim;
use std::ops::Range;

/// Splits an extent into what stands before the first item, and the items.
///
/// `mark` gives the length of the mark with which a line begins an item.
pub(super) fn split(
    text: &str,
    range: Range<usize>,
    mark: impl Fn(&str) -> Option<usize>,
) -> (Range<usize>, Vec<Item>) {
    let mut lead = range.clone();
    let mut items: Vec<Item> = Vec::new();
    let mut at = range.start;
    for line in text[range.clone()].split_inclusive('\n') {
        if let Some(length) = mark(line) {
            match items.last_mut() {
                Some(item) => item.words.end = at,
                None => lead.end = at,
            }
            items.push(Item {
                at,
                words: at + length..range.end,
            });
        }
        at += line.len();
    }
    for item in &mut items {
        item.words = trim(text, item.words.clone());
    }
    (trim(text, lead), items)
}

/// One item.
#[derive(Clone, Debug)]
pub(super) struct Item {
    /// Place of its mark.
    pub(super) at: usize,
    /// Extent of its words.
    pub(super) words: Range<usize>,
}

/// The mark of a numbered line, `12. `.
pub(super) fn number_mark(line: &str) -> Option<usize> {
    let digits = line.bytes().take_while(u8::is_ascii_digit).count();
    (digits > 0 && line[digits..].starts_with(". ")).then_some(digits + 2)
}

/// The mark of a choice, `- [ ] ` or `- [x] `.
pub(super) fn choice_mark(line: &str) -> Option<usize> {
    (line.starts_with("- [ ] ") || line.starts_with("- [x] ")).then_some(6)
}
