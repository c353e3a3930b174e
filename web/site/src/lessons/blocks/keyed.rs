//! The text of a block, divided by lines that begin with a key and a colon.

use super::Opening;
use crate::lessons::extract::Extract;
use crate::lessons::markdown;
use crate::lessons::prose::Run;
use crate::report::Report;
use std::ops::Range;

/// The text of a block: what stands before the first key, then each key's part.
#[derive(Debug)]
pub(super) struct Keyed<'a> {
    opening: &'a Opening<'a>,
    /// Extent of what stands before the first key.
    pub(super) lead: Range<usize>,
    parts: Vec<(&'static str, Range<usize>)>,
}

impl<'a> Keyed<'a> {
    /// Divides a block's text; unknown and repeated keys go to the report.
    pub(super) fn read(
        opening: &'a Opening<'a>,
        body: Range<usize>,
        keys: &'static [&'static str],
        report: &mut Report,
    ) -> Self {
        let file = opening.file;
        let mut keyed = Self {
            opening,
            lead: body.clone(),
            parts: Vec::new(),
        };
        let mut at = body.start;
        for line in file.text()[body.clone()].split_inclusive('\n') {
            if let Some(word) = key_of(line) {
                match keys.iter().copied().find(|key| *key == word) {
                    Some(key) => keyed.begin(key, at, body.end, report),
                    None => {
                        let message = format!(
                            "\"{word}\" is no key of this block (its keys: {})",
                            keys.join(", ")
                        );
                        file.fault(at, message, report);
                    }
                }
            }
            at += line.len();
        }
        keyed
    }

    fn begin(&mut self, key: &'static str, at: usize, end: usize, report: &mut Report) {
        if self.parts.iter().any(|(known, _)| *known == key) {
            let message = format!("\"{key}\" stands a second time in this block");
            self.opening.file.fault(at, message, report);
        }
        match self.parts.last_mut() {
            Some((_, range)) => range.end = at,
            None => self.lead.end = at,
        }
        self.parts.push((key, at + key.len() + 1..end));
    }

    /// The extent of a key's part, without the spaces around it.
    pub(super) fn optional(&self, key: &str) -> Option<Range<usize>> {
        let (_, range) = self.parts.iter().find(|(known, _)| *known == key)?;
        Some(trim(self.opening.file.text(), range.clone()))
    }

    /// The same for a key that must be there.
    pub(super) fn required(&self, key: &str, report: &mut Report) -> Option<Range<usize>> {
        let found = self.optional(key).filter(|range| !range.is_empty());
        if found.is_none() {
            let message = format!("this block needs a line that begins \"{key}:\"");
            self.opening.file.fault(self.opening.at, message, report);
        }
        found
    }

    /// The running text at an extent.
    pub(super) fn run(&self, range: Range<usize>, report: &mut Report) -> Run {
        markdown::run(Extract::part(self.opening.file, range), report)
    }
}

/// An extent without the white space at its ends.
pub(super) fn trim(text: &str, range: Range<usize>) -> Range<usize> {
    let part = &text[range.clone()];
    let start = range.start + part.len() - part.trim_start().len();
    start..start + part.trim().len()
}

/// The key with which a line begins: one to three words in small letters and a colon.
fn key_of(line: &str) -> Option<&str> {
    let (word, rest) = line.split_once(':')?;
    let plain = word
        .bytes()
        .all(|byte| byte.is_ascii_lowercase() || byte == b' ');
    let closed = rest.is_empty() || rest.starts_with(char::is_whitespace);
    (plain && closed && !word.starts_with(' ') && word.split(' ').count() <= 3 && !word.is_empty())
        .then_some(word)
}
