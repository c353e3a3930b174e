//! Running a reader on a million texts.

use crate::Maker;
use allocation_counter::measure;
use std::panic::{AssertUnwindSafe, catch_unwind, resume_unwind};

/// A million cases.
pub const MILLION: usize = 1_000_000;

/// How a reader is tried.
#[derive(Clone, Copy, Debug)]
pub struct Trial {
    /// What the texts are made from.
    pub seed: u64,
    /// How many there are.
    pub cases: usize,
    /// Bytes that may be held at a time beside the text.
    pub most_held: u64,
}

impl Trial {
    /// Has texts read. `read` gets each and fails by panicking, as an assertion does.
    ///
    /// # Panics
    /// At the first text that is not survived, after printing it.
    pub fn run(self, mut make: impl FnMut(&mut Maker) -> String, mut read: impl FnMut(&str)) {
        let (seed, most) = (self.seed, self.most_held);
        let mut maker = Maker::new(seed);
        for case in 0..self.cases {
            let text = make(&mut maker);
            let held = held_to_read(&text, &mut read).unwrap_or_else(|panic| {
                eprintln!("case {case} of seed {seed}: {}", shown(&text));
                resume_unwind(panic)
            });
            assert!(
                held <= most,
                "case {case} of seed {seed} held {held} bytes of {most}: {}",
                shown(&text)
            );
        }
    }
}

/// The bytes held at most while a text was read.
fn held_to_read(text: &str, read: &mut impl FnMut(&str)) -> std::thread::Result<u64> {
    catch_unwind(AssertUnwindSafe(|| measure(|| read(text)).bytes_max))
}

/// The start of a text, escaped, with its length.
fn shown(text: &str) -> String {
    let start: String = text.chars().take(300).collect();
    format!("{start:?} ({} bytes)", text.len())
}

#[cfg(test)]
mod tests {
    use super::held_to_read;

    #[test]
    fn what_is_held_is_measured() {
        let mut hold = |text: &str| drop(text.repeat(10));
        assert_eq!(held_to_read("abcd", &mut hold).unwrap_or(0), 40);
    }

    #[test]
    fn a_panic_is_caught_with_its_text() {
        assert!(held_to_read("a", &mut |text| assert_eq!(text, "b")).is_err());
    }
}
