//! Texts from a seed.

use crate::letters::LETTERS;
use rand_core::{Rng, SeedableRng};
use rand_pcg::Pcg32;

/// Bytes that a spoilt or joined text may grow to.
const LONG: usize = 400;
/// Bytes of the rare text that is very long.
const VERY_LONG: usize = 1_000_000;

/// Makes texts, the same ones for the same seed.
#[derive(Clone, Debug)]
pub struct Maker {
    numbers: Pcg32,
}

impl Maker {
    /// A maker that starts from a seed.
    #[must_use]
    pub fn new(seed: u64) -> Self {
        Self {
            numbers: Pcg32::seed_from_u64(seed),
        }
    }

    /// A whole number under `end`, which is not 0.
    pub fn below(&mut self, end: usize) -> usize {
        let share = u64::from(self.numbers.next_u32()) * end as u64;
        (share >> 32) as usize
    }

    /// 32 bits of any kind.
    pub fn bits(&mut self) -> u32 {
        self.numbers.next_u32()
    }

    /// Whether this is the one case in so many.
    pub fn one_in(&mut self, cases: usize) -> bool {
        self.below(cases) == 0
    }

    /// One of these.
    pub fn one_of<'a, T: ?Sized>(&mut self, all: &[&'a T]) -> &'a T {
        all[self.below(all.len())]
    }

    /// A text near `valid`, of a reader that knows `words`: mostly spoilt by a few slips,
    /// sometimes words in any order, seldom a run of one piece, very seldom a long one.
    pub fn near(&mut self, valid: &str, words: &[&str]) -> String {
        match self.below(64) {
            0 => self.run(words),
            1 => valid.to_owned(),
            2..24 => self.joined(words),
            _ => self.spoilt(valid, words),
        }
    }

    /// Up to a dozen pieces in any order.
    pub fn joined(&mut self, words: &[&str]) -> String {
        let mut text = String::new();
        for _ in 0..self.below(13) {
            text.push_str(self.piece(words));
        }
        text
    }

    /// `valid` with one to four slips.
    pub fn spoilt(&mut self, valid: &str, words: &[&str]) -> String {
        let mut text = valid.to_owned();
        for _ in 0..=self.below(4) {
            self.slip(&mut text, words);
        }
        text
    }

    /// One piece over and over, with something behind it at times.
    pub fn run(&mut self, words: &[&str]) -> String {
        let length = if self.one_in(400) { VERY_LONG } else { LONG };
        let piece = self.piece(words);
        let mut text = piece.repeat(1 + self.below(length) / piece.len().max(1));
        if self.one_in(2) {
            text.push_str(self.piece(words));
        }
        text
    }

    fn piece<'a>(&mut self, words: &[&'a str]) -> &'a str {
        if words.is_empty() || self.one_in(4) {
            LETTERS[self.below(LETTERS.len())]
        } else {
            self.one_of(words)
        }
    }

    fn slip(&mut self, text: &mut String, words: &[&str]) {
        let (from, to) = self.stretch(text);
        match self.below(7) {
            0 => text.truncate(from),
            1 => text.replace_range(from..to, ""),
            2 => text.insert_str(from, self.piece(words)),
            3 => text.replace_range(from..to, self.piece(words)),
            4 if text.len() < LONG => {
                let again = text[from..to].repeat(2);
                text.replace_range(from..to, &again);
            }
            5 => text.replace_range(from..to, &text[from..to].to_uppercase()),
            _ => text.replace_range(from..to, &text[from..to].chars().rev().collect::<String>()),
        }
    }

    /// A stretch of a text between two characters, mostly short.
    fn stretch(&mut self, text: &str) -> (usize, usize) {
        let from = text.floor_char_boundary(self.below(text.len() + 1));
        let most = if self.one_in(8) { text.len() } else { 4 };
        let to = text.ceil_char_boundary((from + self.below(most + 1)).min(text.len()));
        (from, to)
    }
}

#[cfg(test)]
mod tests {
    use super::{Maker, VERY_LONG};

    #[test]
    fn the_same_seed_makes_the_same_texts() {
        let texts = |seed| {
            let mut maker = Maker::new(seed);
            (0..100)
                .map(|_| maker.near("1200 kHz", &["1", "kHz"]))
                .collect::<Vec<_>>()
        };
        assert_eq!(texts(1), texts(1));
        assert_ne!(texts(1), texts(2));
    }

    /// The million cases hold what they are said to hold.
    #[test]
    fn texts_are_valid_spoilt_joined_and_very_long() {
        let mut maker = Maker::new(7);
        let texts: Vec<String> = (0..100_000)
            .map(|_| maker.near("1200 kHz", &["12", "kHz", " "]))
            .collect();
        let count = |fits: &dyn Fn(&str) -> bool| texts.iter().filter(|text| fits(text)).count();
        assert!(count(&|text| text == "1200 kHz") > 1000);
        assert!(count(&str::is_empty) > 1000);
        assert!(count(&|text| !text.is_ascii()) > 10_000);
        assert!(count(&|text| text.starts_with("1200 ") && text != "1200 kHz") > 5000);
        assert!(count(&|text| text.len() > VERY_LONG / 10) > 0);
    }
}
