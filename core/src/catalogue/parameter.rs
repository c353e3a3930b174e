//! A parameter of a quantity: its name, kind and range.
//!
//! Each constructor takes the name in expressions, the formula letter in LaTeX and the
//! meaning in words, and sets the kind's range as [`range`] gives it.

use super::{Kind, carried};
use crate::quantities::range::{self, Range};
use crate::units::display;
use alloc::format;
use alloc::string::String;

/// What a quantity is worked out from.
///
/// In wasm the texts `symbol` and `meaning` are empty.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Parameter {
    /// The key in expressions.
    pub name: &'static str,
    /// The formula letter, in LaTeX.
    pub symbol: &'static str,
    /// What it is, in words that go on a page.
    pub meaning: &'static str,
    /// How it is typed.
    pub kind: Kind,
    /// The least value accepted, in the SI unit; 0 for a choice.
    pub min: f64,
    /// The greatest value accepted, in the SI unit; 0 for a choice.
    pub max: f64,
    /// The words of a choice; empty for every other kind.
    pub choices: &'static [&'static str],
    /// The field of a set profile that pages fill it from.
    pub profile: Option<&'static str>,
}

type Text = &'static str;

impl Parameter {
    /// A parameter of any kind and range.
    #[must_use]
    pub const fn new(name: Text, symbol: Text, meaning: Text, kind: Kind, range: Range) -> Self {
        Self {
            name,
            symbol: carried(symbol),
            meaning: carried(meaning),
            kind,
            min: range.least,
            max: range.most,
            choices: &[],
            profile: None,
        }
    }

    /// A radio frequency, [`range::RADIO`]; it may be typed as a wavelength.
    #[must_use]
    pub const fn frequency(name: Text, symbol: Text, meaning: Text) -> Self {
        Self::new(name, symbol, meaning, Kind::Frequency, range::RADIO)
    }

    /// An audio frequency, [`range::AUDIO`].
    #[must_use]
    pub const fn audio(name: Text, symbol: Text, meaning: Text) -> Self {
        Self::new(name, symbol, meaning, Kind::Frequency, range::AUDIO)
    }

    /// A bandwidth, [`range::BANDWIDTH`].
    #[must_use]
    pub const fn bandwidth(name: Text, symbol: Text, meaning: Text) -> Self {
        Self::new(name, symbol, meaning, Kind::Frequency, range::BANDWIDTH)
    }

    /// A wavelength, [`range::WAVELENGTH`].
    #[must_use]
    pub const fn wavelength(name: Text, symbol: Text, meaning: Text) -> Self {
        Self::new(name, symbol, meaning, Kind::Wavelength, range::WAVELENGTH)
    }

    /// An inductance above zero.
    #[must_use]
    pub const fn inductance(name: Text, symbol: Text, meaning: Text) -> Self {
        Self::new(name, symbol, meaning, Kind::Inductance, range::ABOVE_ZERO)
    }

    /// A capacitance above zero.
    #[must_use]
    pub const fn capacitance(name: Text, symbol: Text, meaning: Text) -> Self {
        Self::new(name, symbol, meaning, Kind::Capacitance, range::ABOVE_ZERO)
    }

    /// A resistance above zero.
    #[must_use]
    pub const fn resistance(name: Text, symbol: Text, meaning: Text) -> Self {
        Self::new(name, symbol, meaning, Kind::Resistance, range::ABOVE_ZERO)
    }

    /// A conductance above zero.
    #[must_use]
    pub const fn conductance(name: Text, symbol: Text, meaning: Text) -> Self {
        Self::new(name, symbol, meaning, Kind::Conductance, range::ABOVE_ZERO)
    }

    /// A voltage above zero.
    #[must_use]
    pub const fn voltage(name: Text, symbol: Text, meaning: Text) -> Self {
        Self::new(name, symbol, meaning, Kind::Voltage, range::ABOVE_ZERO)
    }

    /// A power above zero.
    #[must_use]
    pub const fn power(name: Text, symbol: Text, meaning: Text) -> Self {
        Self::new(name, symbol, meaning, Kind::Power, range::ABOVE_ZERO)
    }

    /// Decibels, [`range::DECIBELS`].
    #[must_use]
    pub const fn decibels(name: Text, symbol: Text, meaning: Text) -> Self {
        Self::new(name, symbol, meaning, Kind::Decibels, range::DECIBELS)
    }

    /// A plain number in a range of its own, such as [`range::Q`].
    #[must_use]
    pub const fn ratio(name: Text, symbol: Text, meaning: Text, range: Range) -> Self {
        Self::new(name, symbol, meaning, Kind::Ratio, range)
    }

    /// A depth of modulation, [`range::DEPTH`].
    #[must_use]
    pub const fn depth(name: Text, symbol: Text, meaning: Text) -> Self {
        Self::new(name, symbol, meaning, Kind::Depth, range::DEPTH)
    }

    /// A whole number in a range of its own, such as [`range::STAGES`].
    #[must_use]
    pub const fn integer(name: Text, symbol: Text, meaning: Text, range: Range) -> Self {
        Self::new(name, symbol, meaning, Kind::Integer, range)
    }

    /// One of a few words.
    #[must_use]
    pub const fn choice(name: Text, symbol: Text, meaning: Text, choices: &'static [Text]) -> Self {
        let mut parameter = Self::new(name, symbol, meaning, Kind::Choice, Range::new(0.0, 0.0));
        parameter.choices = choices;
        parameter
    }

    /// Whether this is a radio frequency, which may be typed as a wavelength; audio
    /// frequencies and bandwidths, whose range starts lower, may not.
    #[must_use]
    pub fn is_radio(&self) -> bool {
        self.kind == Kind::Frequency && self.min >= range::RADIO.least
    }

    /// The range in words that follow "must": "be above zero", "be from 1 to 8". A choice
    /// has none.
    ///
    /// ```
    /// use superhet::catalogue::find;
    /// let dial = find("oscillator").unwrap().parameter("dial").unwrap();
    /// assert_eq!(dial.rule(), "be from 1 kHz to 1000 MHz");
    /// ```
    #[must_use]
    pub fn rule(&self) -> String {
        let shown = |value| display::text(self.kind, value);
        match (self.min, self.max) {
            (0.0, f64::MAX) => String::from("not be below zero"),
            (f64::MIN_POSITIVE, f64::MAX) => String::from("be above zero"),
            (min, max) => format!("be from {} to {}", shown(min), shown(max)),
        }
    }

    /// The same parameter with another range: `Parameter::decibels(…).within(range::DROP)`.
    #[must_use]
    pub const fn within(mut self, range: Range) -> Self {
        self.min = range.least;
        self.max = range.most;
        self
    }

    /// The same parameter, which pages fill from this field of the set profile.
    #[must_use]
    pub const fn from_profile(mut self, field: Text) -> Self {
        self.profile = Some(field);
        self
    }
}
