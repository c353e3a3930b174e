//! What is wrong with a family, and where in its file.

use alloc::{string::String, vec::Vec};

use super::family::Level;

/// One step from the top of a family file to a place in it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Place {
    /// Into the value of this key.
    Key(&'static str),
    /// Into the entry of a list, counted from 0.
    Entry(usize),
}

/// Something wrong with a family.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fault {
    /// Where, from the top of the file; empty where it is not known.
    pub place: Vec<Place>,
    /// What is wrong, in one sentence.
    pub says: String,
}

/// Why something drawn has no value.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Trouble {
    /// The family is at fault: no draw could give a value.
    Faulty(Fault),
    /// This draw gives none: outside the range of a quantity, or not finite.
    Refused(String),
}

impl Trouble {
    /// A fault of the family, its place not known yet.
    pub fn faulty(says: impl Into<String>) -> Trouble {
        Trouble::Faulty(Fault {
            place: Vec::new(),
            says: says.into(),
        })
    }

    /// The same trouble at this place, unless a place is known already.
    #[must_use]
    pub fn at(mut self, place: &[Place]) -> Trouble {
        if let Trouble::Faulty(fault) = &mut self
            && fault.place.is_empty()
        {
            fault.place.extend(place);
        }
        self
    }
}

impl Level {
    /// The key of this level in a family file.
    pub fn key(self) -> &'static str {
        match self {
            Level::One => "level-1",
            Level::Two => "level-2",
            Level::Three => "level-3",
            Level::Transfer => "transfer",
        }
    }
}
