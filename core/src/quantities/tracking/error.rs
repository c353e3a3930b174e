//! Why a tracking question has no answer.

use core::fmt;

use crate::units::Frequency;

/// Why a tracking question has no answer.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum TrackingError {
    /// The oscillator is to run below the signal.
    OscillatorBelow,
    /// The two ends of the band are not in order.
    EndsOutOfOrder {
        /// The end that is called low.
        low: Frequency,
        /// The end that is called high.
        high: Frequency,
    },
    /// The settings and the IF leave no room for a padder and a trimmer above zero.
    NoPositiveParts,
    /// The search for the best settings did not settle.
    NoBestPoints,
}

impl fmt::Display for TrackingError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let sentence = match self {
            Self::OscillatorBelow => {
                "side: no padder and trimmer make an oscillator track below the signal (got \
                 below), since capacitors in series and in parallel only shrink the gang's ratio \
                 and an oscillator below needs a larger one; pad the signal circuit instead, or \
                 give the oscillator's vanes their own shape"
            }
            Self::EndsOutOfOrder { low, high } => {
                return write!(out, "f-high must be above f-low (got {high} and {low})");
            }
            Self::NoPositiveParts => "these three settings leave no padder and trimmer above zero",
            Self::NoBestPoints => "no best three settings were found for this band and IF",
        };
        out.write_str(sentence)
    }
}

impl core::error::Error for TrackingError {}
