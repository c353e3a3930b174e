//! What the pointer says against what the set receives.
//!
//! In scope: the station that the oscillator brings in, against the reading of the pointer.
//! Left out: tracking error, which is about the aerial circuit (see `tracking`), and the
//! width of the pointer.
//!
//! Symbols: `fo` oscillator, `F` the IF, `s` +1 above and −1 below.

use super::conversion::{ConversionError, Side, dial};
use crate::units::Frequency;

/// How much higher the received station is than the pointer's reading; below zero where
/// it is lower.
///
/// `(fo − sF) − reading`.
///
/// # Errors
/// As [`dial`].
///
/// ```
/// use superhet::quantities::conversion::Side;
/// use superhet::quantities::dial_error::dial_error;
/// use superhet::units::Frequency;
/// // The pointer says 1200 kHz, the oscillator runs at 1678 kHz: 1208 kHz comes in.
/// let (oscillator, f) = (Frequency::khz(1678.0), Frequency::khz(470.0));
/// let error = dial_error(oscillator, f, Side::Above, Frequency::khz(1200.0)).unwrap();
/// assert_eq!(error, Frequency::khz(8.0));
/// ```
pub fn dial_error(
    oscillator: Frequency,
    intermediate: Frequency,
    side: Side,
    reading: Frequency,
) -> Result<Frequency, ConversionError> {
    let received = dial(oscillator, intermediate, side)?;
    Ok(Frequency::hz(received.to_hz() - reading.to_hz()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantities::conversion::oscillator;

    #[test]
    fn an_oscillator_in_its_place_leaves_no_error() {
        let (reading, f) = (Frequency::khz(909.0), Frequency::khz(470.0));
        for side in [Side::Above, Side::Below] {
            let right = oscillator(reading, f, side).unwrap();
            let error = dial_error(right, f, side, reading).unwrap();
            assert_eq!(error, Frequency::hz(0.0));
        }
    }

    #[test]
    fn an_oscillator_under_the_if_brings_in_nothing() {
        let (low, f) = (Frequency::khz(400.0), Frequency::khz(470.0));
        assert!(dial_error(low, f, Side::Above, Frequency::khz(900.0)).is_err());
    }
}
