//! Why a family, or a draw of it, gives no problem.

use alloc::{string::String, vec::Vec};

use super::family::Level;
pub use crate::fault::{Fault, Place};

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
