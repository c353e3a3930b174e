//! Reads what was typed into a profile and notes everything that is wrong.
//!
//! Reading goes on after a fault, so that all of them are found. What could not be read is
//! not a number from then on: no comparison with it holds, so one slip is not reported a
//! second time by a rule that compares.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::{Fault, Place, Typed};
use crate::quantities::range::Range;
use crate::units::{Kind, display, parse};

/// Stands for what could not be read.
pub(super) const UNREAD: f64 = f64::NAN;

/// A place in a profile that is being read, and the faults so far.
#[derive(Debug, Default)]
pub(super) struct Reader {
    place: Vec<Place>,
    faults: Vec<Fault>,
}

impl Reader {
    /// The faults, or what was read when there are none.
    pub(super) fn finish<T>(self, read: T) -> Result<T, Vec<Fault>> {
        if self.faults.is_empty() {
            Ok(read)
        } else {
            Err(self.faults)
        }
    }

    /// Reads the value of a key.
    pub(super) fn within<T>(&mut self, key: &'static str, read: impl FnOnce(&mut Self) -> T) -> T {
        self.place.push(Place::Key(key));
        let found = read(self);
        self.place.pop();
        found
    }

    /// Reads each entry of a list under a key.
    pub(super) fn each<P, T>(
        &mut self,
        key: &'static str,
        entries: &[P],
        mut read: impl FnMut(&mut Self, &P) -> T,
    ) -> Vec<T> {
        self.within(key, |reader| {
            let one = |(index, entry)| {
                reader.place.push(Place::Entry(index));
                let found = read(reader, entry);
                reader.place.pop();
                found
            };
            entries.iter().enumerate().map(one).collect()
        })
    }

    /// Notes a fault at the place that is being read.
    pub(super) fn fault(&mut self, says: String) {
        let place = self.place.clone();
        self.faults.push(Fault { place, says });
    }

    /// Notes a fault of a key.
    pub(super) fn fault_of(&mut self, key: &'static str, says: String) {
        self.within(key, |reader| reader.fault(says));
    }

    /// The value of a key that must be there, in SI units.
    pub(super) fn value(&mut self, key: &'static str, typed: &Typed, of: Allowed) -> f64 {
        self.within(key, |reader| reader.here(typed, of))
    }

    /// The value of a key that may be left out.
    pub(super) fn optional(
        &mut self,
        key: &'static str,
        typed: &Typed,
        of: Allowed,
    ) -> Option<f64> {
        (!typed.is_absent()).then(|| self.value(key, typed, of))
    }

    /// The value at the place that is being read.
    pub(super) fn here(&mut self, typed: &Typed, of: Allowed) -> f64 {
        match of.read(typed) {
            Ok(value) => value,
            Err(says) => {
                self.fault(says);
                UNREAD
            }
        }
    }

    /// Which of a few words a key holds, counted from 0; the first when left out or wrong.
    pub(super) fn choice(&mut self, key: &'static str, typed: &Typed, words: &[&str]) -> usize {
        let text = match typed {
            Typed::Absent => return 0,
            Typed::Text(text) => text.trim().to_string(),
            Typed::Number(number) => display::text(Kind::Ratio, *number),
        };
        let found = words
            .iter()
            .position(|word| word.eq_ignore_ascii_case(&text));
        found.unwrap_or_else(|| {
            let quoted = parse::quoted(&text);
            self.fault_of(
                key,
                format!("this is {} (got \"{quoted}\")", words.join(" or ")),
            );
            0
        })
    }
}

/// What a value may be: its kind and its range.
#[derive(Clone, Copy, Debug)]
pub(super) struct Allowed {
    kind: Kind,
    range: Range,
}

impl Allowed {
    /// Values of a kind between two, both included.
    pub(super) const fn new(kind: Kind, least: f64, most: f64) -> Self {
        Self {
            kind,
            range: Range::new(least, most),
        }
    }

    fn read(self, typed: &Typed) -> Result<f64, String> {
        let value = match typed {
            Typed::Absent => return Err(format!("this is missing; it is {}", self.words())),
            Typed::Text(text) => {
                parse::value(self.kind, text, None).map_err(|error| error.sentence())?
            }
            Typed::Number(number) => {
                // A number without quotation marks has no unit, and may need one.
                let text = display::text(Kind::Ratio, *number);
                parse::value(self.kind, &text, None).map_err(|error| error.sentence())?;
                *number
            }
        };
        if self.range.contains(value) {
            return Ok(value);
        }
        let got = display::text(self.kind, value);
        Err(format!("this is {} (got {got})", self.words()))
    }

    fn words(self) -> String {
        let text = |value| display::text(self.kind, value);
        let (least, most) = (text(self.range.least), text(self.range.most));
        format!("from {least} to {most}")
    }
}
