//! The ranges that parameters are accepted in, shared by every quantity.
//!
//! Wide enough for any broadcast receiver and its test gear; narrow enough that a slip
//! of a thousand in a unit is mostly noticed.

use crate::units::SPEED_OF_LIGHT;

/// A range from `least` to `most`, both included, in SI units.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Range {
    /// The least value that is accepted.
    pub least: f64,
    /// The greatest value that is accepted.
    pub most: f64,
}

impl Range {
    /// The range between two values, both included.
    #[must_use]
    pub const fn new(least: f64, most: f64) -> Self {
        Self { least, most }
    }

    /// Whether the value lies in the range; what is not a number does not.
    ///
    /// ```
    /// use superhet::quantities::range;
    /// assert!(range::RADIO.contains(1_200e3));
    /// assert!(!range::RADIO.contains(0.0));
    /// ```
    #[must_use]
    pub fn contains(self, value: f64) -> bool {
        self.least <= value && value <= self.most
    }
}

/// Every frequency that is neither an audio frequency nor a bandwidth.
pub const RADIO: Range = Range::new(1e3, 1e9);
/// Audio frequencies, with room for the upper harmonics of a test tone.
pub const AUDIO: Range = Range::new(1.0, 100e3);
/// Bandwidths.
pub const BANDWIDTH: Range = Range::new(1.0, 1e9);
/// Wavelengths of the frequencies in [`RADIO`].
pub const WAVELENGTH: Range = Range::new(SPEED_OF_LIGHT / RADIO.most, SPEED_OF_LIGHT / RADIO.least);
/// Anything above zero: inductance, capacitance, resistance, voltage, power, ratio.
pub const ABOVE_ZERO: Range = Range::new(f64::MIN_POSITIVE, f64::MAX);
/// Zero or more: the least voltage of an envelope.
pub const ZERO_OR_MORE: Range = Range::new(0.0, f64::MAX);
/// Decibels of gain or loss.
pub const DECIBELS: Range = Range::new(-400.0, 400.0);
/// A drop under a peak, in decibels.
pub const DROP: Range = Range::new(0.01, 120.0);
/// The Q of a single circuit.
pub const Q: Range = Range::new(1.0, 1000.0);
/// The Q of each circuit of a coupled pair.
pub const PAIR_Q: Range = Range::new(5.0, 1000.0);
/// The coefficient of coupling of a pair.
pub const COUPLING: Range = Range::new(1e-6, 0.2);
/// The coupling of a pair over its critical coupling.
pub const COUPLING_INDEX: Range = Range::new(1e-3, 200.0);
/// A depth of modulation.
pub const DEPTH: Range = Range::new(0.0, 1.0);
/// Circuits, stages or transformers.
pub const STAGES: Range = Range::new(1.0, 8.0);
/// A harmonic of the IF.
pub const HARMONIC: Range = Range::new(2.0, 10.0);
/// The harmonic of the oscillator in a spurious response; 0 leaves it out.
pub const OSCILLATOR_HARMONIC: Range = Range::new(0.0, 10.0);
/// The harmonic of the signal in a spurious response.
pub const SIGNAL_HARMONIC: Range = Range::new(1.0, 10.0);

#[cfg(test)]
mod tests {
    use super::{DECIBELS, RADIO, WAVELENGTH};
    use crate::units::Frequency;

    #[test]
    fn the_wavelengths_are_those_of_the_frequencies() {
        let metres = |hertz| Frequency::hz(hertz).to_wavelength().to_m();
        assert_eq!(WAVELENGTH.least, metres(RADIO.most));
        assert_eq!(WAVELENGTH.most, metres(RADIO.least));
    }

    #[test]
    fn a_gain_may_be_as_large_as_a_loss() {
        assert!(DECIBELS.contains(-DECIBELS.most) && DECIBELS.contains(DECIBELS.most));
        assert!(!DECIBELS.contains(2.0 * DECIBELS.most) && !DECIBELS.contains(f64::NAN));
    }
}
