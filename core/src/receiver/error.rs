//! When a receiver has no answer.

use alloc::string::String;
use core::fmt;

use crate::quantities::conversion::ConversionError;
use crate::units::Frequency;

/// Why a receiver has no answer to a setting.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub enum ReceiverError {
    /// No band has this reading between its marks.
    OffTheDial {
        /// The reading.
        reading: Frequency,
        /// The bands that there are: `Medium wave 525 kHz to 1605 kHz`.
        bands: String,
    },
    /// There is no such band.
    NoBand {
        /// What was asked for.
        id: String,
        /// The ids that there are.
        ids: String,
    },
    /// The selectivity switch has no such position.
    NoPosition {
        /// What was asked for.
        id: String,
        /// The ids that there are.
        ids: String,
    },
    /// The oscillator is where no station can make the IF with it.
    NoStation(ConversionError),
}

impl fmt::Display for ReceiverError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::OffTheDial { reading, bands } => {
                write!(out, "dial: this set has {bands} (got {reading})")
            }
            Self::NoBand { id, ids } => write!(out, "band: this set has {ids} (got \"{id}\")"),
            Self::NoPosition { ids, id } if ids.is_empty() => {
                write!(
                    out,
                    "selectivity: this set has no switch for it (got \"{id}\")"
                )
            }
            Self::NoPosition { id, ids } => {
                write!(out, "selectivity: this set has {ids} (got \"{id}\")")
            }
            Self::NoStation(error) => error.fmt(out),
        }
    }
}

impl core::error::Error for ReceiverError {}

impl From<ConversionError> for ReceiverError {
    fn from(error: ConversionError) -> Self {
        Self::NoStation(error)
    }
}
