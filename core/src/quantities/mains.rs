//! The mains: how far an alternating voltage swings.
//!
//! In scope: a sine. Left out: real mains, whose tops are often a little flattened, and
//! surges, which go far higher.

use core::f64::consts::SQRT_2;

use crate::units::Voltage;

/// The peak of an alternating voltage, `√2·rms`.
///
/// What a reservoir capacitor charges to behind a rectifier when nothing draws current.
/// Exact for a sine; flattened tops give some per cent less.
///
/// ```
/// use superhet::quantities::mains::peak_voltage;
/// use superhet::units::Voltage;
/// // 1.4142 × 230 V.
/// assert!((peak_voltage(Voltage::v(230.0)).to_v() - 325.27).abs() < 0.005);
/// ```
#[must_use]
pub fn peak_voltage(rms: Voltage) -> Voltage {
    Voltage::v(SQRT_2 * rms.to_v())
}

#[cfg(test)]
mod tests {
    use super::peak_voltage;
    use crate::units::Voltage;

    /// The mean of the square of a sine is half the square of its peak, so the peak squared
    /// is twice the square of the effective value. Two roundings: a few parts in 10¹⁶.
    #[test]
    fn half_its_square_is_the_square_of_the_effective_value() {
        const ROUNDING: f64 = 1e-15;
        for rms in [1e-6, 1.0, 117.0, 230.0, 240.0, 1e4] {
            let peak = peak_voltage(Voltage::v(rms)).to_v();
            assert!(
                (peak * peak / 2.0 / (rms * rms) - 1.0).abs() < ROUNDING,
                "{rms}"
            );
        }
    }
}
