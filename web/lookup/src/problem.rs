//! What is wrong with what was typed, and what may have been meant.

use alloc::string::String;

/// The box a sentence is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Field {
    /// The dial setting.
    Dial,
    /// The oscillator.
    Oscillator,
    /// The intermediate frequency.
    Intermediate,
}

impl Field {
    /// All three.
    pub const ALL: [Self; 3] = [Self::Dial, Self::Oscillator, Self::Intermediate];

    /// The name of its box, in the page's form and in links.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Dial => "dial",
            Self::Oscillator => "oscillator",
            Self::Intermediate => "if",
        }
    }

    /// As a sentence begins with it.
    #[must_use]
    pub const fn title(self) -> &'static str {
        match self {
            Self::Dial => "Dial",
            Self::Oscillator => "Oscillator",
            Self::Intermediate => "IF",
        }
    }

    /// The quantity of the catalogue it is found as.
    #[must_use]
    pub const fn quantity(self) -> &'static str {
        match self {
            Self::Dial => "dial",
            Self::Oscillator => "oscillator",
            Self::Intermediate => "difference",
        }
    }
}

/// Why there is no answer.
#[derive(Debug, Clone, PartialEq)]
pub struct Problem {
    /// One sentence: what, the rule, the value.
    pub says: String,
    /// The box to look at.
    pub field: Field,
    /// Nothing was typed yet, which is no mistake.
    pub waiting: bool,
    /// What may have been meant.
    pub offer: Option<Offer>,
}

/// Another reading of what was typed, to be taken with one press.
#[derive(Debug, Clone, PartialEq)]
pub struct Offer {
    /// What it is, as its button says it.
    pub says: String,
    /// The box it would change.
    pub field: Field,
    /// What the box would then hold, with its unit.
    pub text: String,
}
