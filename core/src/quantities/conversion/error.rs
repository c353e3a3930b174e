//! When the superhet's arithmetic has no answer.

use crate::units::{Frequency, Kind, display};
use alloc::string::String;
use core::fmt;

/// Why there is no such frequency.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum ConversionError {
    /// The oscillator below the signal would not run above 0 Hz.
    NoOscillator {
        /// The station.
        dial: Frequency,
        /// The intermediate frequency.
        intermediate: Frequency,
    },
    /// The image would be at 0 Hz.
    NoImage {
        /// The station.
        dial: Frequency,
        /// The intermediate frequency.
        intermediate: Frequency,
    },
    /// The oscillator above the signal leaves no station above 0 Hz.
    NoDial {
        /// The oscillator.
        oscillator: Frequency,
        /// The intermediate frequency.
        intermediate: Frequency,
    },
    /// The spurious response would not be above 0 Hz.
    NoSpurious {
        /// The oscillator.
        oscillator: Frequency,
        /// The intermediate frequency.
        intermediate: Frequency,
        /// The harmonic of the oscillator.
        m: u32,
    },
    /// The highest frequency of a band is not above the lowest.
    BandUpsideDown {
        /// What was given as the lowest.
        lowest: Frequency,
        /// What was given as the highest.
        highest: Frequency,
    },
}

impl ConversionError {
    /// The catalogue's name of the parameter to look at first.
    #[must_use]
    pub const fn parameter(&self) -> &'static str {
        match self {
            Self::NoOscillator { .. } | Self::NoImage { .. } => "dial",
            Self::NoDial { .. } | Self::NoSpurious { .. } => "oscillator",
            Self::BandUpsideDown { .. } => "f-high",
        }
    }

    /// The whole message: one sentence with the rule and the values.
    ///
    /// ```
    /// use superhet::quantities::conversion::{Side, oscillator};
    /// use superhet::units::Frequency;
    /// let error = oscillator(Frequency::khz(400.0), Frequency::khz(470.0), Side::Below);
    /// assert_eq!(
    ///     error.unwrap_err().sentence(),
    ///     "with the oscillator below, dial must be above the IF (got dial 400 kHz, IF 470 kHz)"
    /// );
    /// ```
    #[must_use]
    pub fn sentence(&self) -> String {
        let (rule, values): (&str, [(&str, Frequency); 2]) = match *self {
            Self::NoOscillator { dial, intermediate } => (
                "with the oscillator below, dial must be above the IF",
                [("dial", dial), ("IF", intermediate)],
            ),
            Self::NoImage { dial, intermediate } => (
                "with the oscillator below, dial must not be twice the IF: its image is at 0 Hz",
                [("dial", dial), ("IF", intermediate)],
            ),
            Self::NoDial {
                oscillator,
                intermediate,
            } => (
                "with the oscillator above, oscillator must be above the IF",
                [("oscillator", oscillator), ("IF", intermediate)],
            ),
            Self::NoSpurious {
                oscillator,
                intermediate,
                m,
            } => return no_spurious(oscillator, intermediate, m),
            Self::BandUpsideDown { lowest, highest } => (
                "f-high must be above f-low",
                [("f-low", lowest), ("f-high", highest)],
            ),
        };
        with_values(rule, &values)
    }
}

fn no_spurious(oscillator: Frequency, intermediate: Frequency, m: u32) -> String {
    let mut rule = String::from("with sign minus, m times the oscillator must be above the IF");
    rule.push_str(", m being ");
    rule.push_str(&display::text(Kind::Integer, f64::from(m)));
    with_values(&rule, &[("oscillator", oscillator), ("IF", intermediate)])
}

/// The rule with the values in brackets: "… (got dial 400 kHz, IF 470 kHz)".
fn with_values(rule: &str, values: &[(&str, Frequency)]) -> String {
    let mut sentence = String::from(rule);
    for (place, (name, value)) in values.iter().enumerate() {
        sentence.push_str(if place == 0 { " (got " } else { ", " });
        sentence.push_str(name);
        sentence.push(' ');
        sentence.push_str(&display::text(Kind::Frequency, value.to_hz()));
    }
    sentence.push(')');
    sentence
}

impl fmt::Display for ConversionError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.sentence())
    }
}

impl core::error::Error for ConversionError {}
