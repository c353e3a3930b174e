//! What is wrong with something that an author wrote, and where in it.

use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt;

/// One step from the top of what was written to a place in it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Place {
    /// Into the value of this key.
    Key(&'static str),
    /// Into the entry of a list, counted from 0.
    Entry(usize),
}

/// Something wrong with a family or a set profile: where, the rule, the value.
///
/// ```
/// use superhet::receiver::SetProfile;
/// let mut profile = SetProfile::plain();
/// profile.bands[0].aerial_q = "0".into();
/// let faults = profile.faults();
/// assert_eq!(faults[0].to_string(), "band 1, aerial-q: this is from 1 to 1000 (got 0)");
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fault {
    /// Where, from the top; empty where it is not known.
    pub place: Vec<Place>,
    /// What is wrong, in one sentence.
    pub says: String,
}

impl Fault {
    /// The field in words: `band 2, oscillator, padder`; entries are counted from 1.
    ///
    /// ```
    /// use superhet::fault::{Fault, Place};
    /// let place = vec![Place::Key("band"), Place::Entry(1), Place::Key("low")];
    /// let fault = Fault { place, says: String::new() };
    /// assert_eq!(fault.field(), "band 2, low");
    /// ```
    #[must_use]
    pub fn field(&self) -> String {
        let mut words = String::new();
        for step in &self.place {
            match step {
                Place::Key(key) => {
                    words.push_str(if words.is_empty() { "" } else { ", " });
                    words.push_str(key);
                }
                Place::Entry(entry) => {
                    words.push(' ');
                    words.push_str(&(entry + 1).to_string());
                }
            }
        }
        words
    }
}

impl fmt::Display for Fault {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{}: {}", self.field(), self.says)
    }
}
