//! Running text: words, emphasis and links, each with its place in the file.

use super::target::Target;
use std::ops::Range;

/// A piece of running text.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Inline {
    /// Plain words.
    Text(Piece),
    /// A code span.
    Code(Piece),
    /// Emphasis.
    Emphasis(Vec<Inline>),
    /// Strong emphasis, which may also define a term.
    Strong(Vec<Inline>),
    /// A link or a marked number.
    Link(Link),
    /// A line's end that only the file shows.
    SoftBreak(usize),
    /// A line's end that the page shows.
    HardBreak(usize),
}

/// Words and where they stand.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Piece {
    /// The words as read: entities and escapes are resolved.
    pub(crate) text: String,
    /// Offset in the file.
    pub(crate) at: usize,
    /// Whether the file has the very same words there, so that offsets run along.
    pub(crate) verbatim: bool,
}

/// A link or a marked number.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Link {
    /// Where it points, or the sentence that refuses it.
    pub(crate) target: Result<Target, String>,
    /// What it says.
    pub(crate) inside: Vec<Inline>,
    /// Offset of the whole link in the file.
    pub(crate) at: usize,
}

/// One run of text that is read without a break: a paragraph, heading, cell, choice.
pub(crate) type Run = Vec<Inline>;

/// Stands in flat text for a marked number, which no scan looks into.
pub(crate) const MARKED: char = '\u{FFFC}';

/// A run as one string, with the place of each byte.
#[derive(Clone, Debug, Default)]
pub(crate) struct Flat {
    /// The words; a marked number is one [`MARKED`].
    pub(crate) text: String,
    /// Offset in `text`, offset in the file, and whether the file runs along.
    anchors: Vec<(usize, usize, bool)>,
    /// Stretches in bold, and links to a term with its id.
    pub(crate) defining: Vec<(Range<usize>, Option<String>)>,
    with_numbers: bool,
}

impl Flat {
    /// A run as one string.
    pub(crate) fn of(run: &[Inline]) -> Self {
        let mut flat = Self::default();
        flat.take_in(run);
        flat
    }

    /// The same with the words of marked numbers.
    pub(crate) fn with_numbers(run: &[Inline]) -> Self {
        let mut flat = Self {
            with_numbers: true,
            ..Self::default()
        };
        flat.take_in(run);
        flat
    }

    /// The place in the file of an offset in the text.
    pub(crate) fn place(&self, offset: usize) -> usize {
        let after = self.anchors.partition_point(|anchor| anchor.0 <= offset);
        let Some(&(from, at, verbatim)) = after.checked_sub(1).and_then(|i| self.anchors.get(i))
        else {
            return 0;
        };
        if verbatim { at + offset - from } else { at }
    }

    fn take_in(&mut self, run: &[Inline]) {
        for inline in run {
            match inline {
                Inline::Text(piece) | Inline::Code(piece) => {
                    self.push(&piece.text, piece.at, piece.verbatim);
                }
                Inline::Emphasis(inside) => self.take_in(inside),
                Inline::Strong(inside) => {
                    let from = self.text.len();
                    self.take_in(inside);
                    self.defining.push((from..self.text.len(), None));
                }
                Inline::Link(link) => self.take_in_link(link),
                Inline::SoftBreak(at) | Inline::HardBreak(at) => self.push(" ", *at, false),
            }
        }
    }

    fn take_in_link(&mut self, link: &Link) {
        let marked = link.target.as_ref().is_ok_and(Target::is_marked_number);
        if marked && !self.with_numbers {
            self.push(MARKED.encode_utf8(&mut [0; 4]), link.at, false);
            return;
        }
        let from = self.text.len();
        self.take_in(&link.inside);
        if let Ok(Target::Term(id)) = &link.target {
            self.defining
                .push((from..self.text.len(), Some(id.clone())));
        }
    }

    fn push(&mut self, text: &str, at: usize, verbatim: bool) {
        self.anchors.push((self.text.len(), at, verbatim));
        self.text.push_str(text);
    }
}

/// What a run says, links and all, without any markup.
pub(crate) fn plain(run: &[Inline]) -> String {
    let mut out = String::new();
    push_plain(run, &mut out);
    out
}

fn push_plain(run: &[Inline], out: &mut String) {
    for inline in run {
        match inline {
            Inline::Text(piece) | Inline::Code(piece) => out.push_str(&piece.text),
            Inline::Emphasis(inside) | Inline::Strong(inside) => push_plain(inside, out),
            Inline::Link(link) => push_plain(&link.inside, out),
            Inline::SoftBreak(_) | Inline::HardBreak(_) => out.push(' '),
        }
    }
}

/// Every link of a run, in order.
pub(crate) fn links(run: &[Inline]) -> Vec<&Link> {
    let mut found = Vec::new();
    collect_links(run, &mut found);
    found
}

fn collect_links<'a>(run: &'a [Inline], found: &mut Vec<&'a Link>) {
    for inline in run {
        match inline {
            Inline::Emphasis(inside) | Inline::Strong(inside) => collect_links(inside, found),
            Inline::Link(link) => found.push(link),
            _ => {}
        }
    }
}

/// Words of a text: what stands between spaces and holds a letter or digit.
pub(crate) fn word_count(text: &str) -> usize {
    text.split_whitespace()
        .filter(|word| word.chars().any(char::is_alphanumeric))
        .count()
}

/// A heading's name in links: its words in lower case, joined by hyphens.
pub(crate) fn slug(text: &str) -> String {
    let words = text.split(|sign: char| !sign.is_alphanumeric());
    let words: Vec<String> = words
        .filter(|word| !word.is_empty())
        .map(str::to_lowercase)
        .collect();
    words.join("-")
}
