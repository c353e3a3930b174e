//! A damaged course is reported, never fatal.

use super::{course_of, files};
use crate::lessons::checks;
use crate::lessons::source_text::faults_of;

/// Texts that damage: parts of the format cut off, and letters of several bytes.
const SPLINTERS: [&str; 24] = [
    "é",
    "µ",
    "\u{a0}",
    "😀",
    "](",
    "[",
    ")",
    "```",
    "\n",
    "+++",
    "\"",
    "|",
    "{",
    "}",
    "calc:",
    "given:dial",
    "½",
    "1,",
    "e9",
    "- [x] ",
    "settled by:",
    "\\",
    "&#",
    "\u{2060}",
];

/// Damaged courses that are tried.
const TRIES: usize = 150;

/// A stream of numbers that is the same in every run: the multiplier of MMIX (Knuth).
struct Stream(u64);

impl Stream {
    fn below(&mut self, count: usize) -> usize {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        usize::try_from(self.0 >> 33).unwrap_or(0) % count
    }
}

#[test]
fn it_is_read_to_the_end() {
    let mut stream = Stream(1);
    let mut reported = 0;
    for _ in 0..TRIES {
        let mut files = files();
        let file = stream.below(files.len());
        let text = &files[file].1;
        let from = text.floor_char_boundary(stream.below(text.len()));
        let to = text.ceil_char_boundary(from + stream.below(12));
        let splinter = SPLINTERS[stream.below(SPLINTERS.len())];
        files[file].1 = format!("{}{splinter}{}", &text[..from], &text[to..]);
        let said = faults_of(|report| {
            let course = course_of(&files, report);
            checks::all(&course, &["family"], report);
        });
        reported += usize::from(!said.is_empty());
    }
    // Most of the text is plain words, which a letter more does not harm.
    assert!(reported > 0, "no damage reached the checks");
}
