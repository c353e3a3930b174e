//! What tuned circuits take away from a signal off their resonance.
//!
//! In scope: `n` alike, separate circuits in a row, each with the same loaded Q held
//! constant over the curve. Left out: circuits that are coupled to each other
//! (see [`CoupledPair`](super::coupled_pair::CoupledPair)) and traps.
//!
//! Symbols: `f` the frequency asked about, `f0` the resonance, `y = f/f0 − f0/f`,
//! `Q` the loaded Q, `n` the number of circuits.

use super::attenuation::weaker;
use super::conversion::{ConversionError, Side, image};
use crate::units::{Decibels, Frequency};

/// The offset `y = f/f0 − f0/f` of a single circuit.
///
/// Computed as `(f − f0)(f + f0)/(f·f0)`, which keeps its digits close to resonance.
pub(crate) fn offset(frequency: Frequency, resonant: Frequency) -> f64 {
    offset_hz(frequency.to_hz(), resonant.to_hz())
}

/// The same from hertz.
#[inline]
pub(super) fn offset_hz(f: f64, f0: f64) -> f64 {
    (f - f0) * (f + f0) / (f * f0)
}

/// How much weaker `circuits` alike tuned circuits make a signal off resonance.
///
/// `10·n·log10(1 + Q²y²)` decibels, positive when weaker, 0 at resonance.
///
/// Q is held constant, so far from resonance (a factor of two) a real coil departs by a
/// few decibels.
///
/// ```
/// use superhet::quantities::selectivity::selectivity;
/// use superhet::units::Frequency;
/// // Half a bandwidth off, one circuit: close to 3.01 dB.
/// let loss = selectivity(Frequency::khz(475.0), Frequency::khz(470.0), 47.0, 1);
/// assert!((loss.to_db() - 2.99).abs() < 0.01);
/// ```
#[must_use]
pub fn selectivity(
    frequency: Frequency,
    resonant: Frequency,
    loaded_q: f64,
    circuits: u32,
) -> Decibels {
    let qy = loaded_q * offset(frequency, resonant);
    Decibels::db(f64::from(circuits) * weaker(qy * qy).to_db())
}

/// How much weaker than the wanted station its image is, after `circuits` alike and
/// separate circuits tuned to the dial.
///
/// `selectivity(image, dial, Q, circuits)`.
///
/// Exact for a voltage induced in proportion to frequency (a rod or a loop) with the
/// output across the capacitor. With a flat voltage in series the true figure differs by
/// `20·log10(image/dial)`: 8 dB at 600 kHz.
///
/// # Errors
/// As [`image`].
///
/// ```
/// use superhet::quantities::conversion::Side;
/// use superhet::quantities::selectivity::image_rejection;
/// use superhet::units::Frequency;
/// // Textbook example: 590 kHz, IF 455 kHz, Q 40: 38.687 dB.
/// let (dial, f) = (Frequency::khz(590.0), Frequency::khz(455.0));
/// let rejection = image_rejection(dial, f, Side::Above, 40.0, 1).unwrap();
/// assert!((rejection.to_db() - 38.687).abs() < 0.0005);
/// ```
pub fn image_rejection(
    dial: Frequency,
    intermediate: Frequency,
    side: Side,
    loaded_q: f64,
    circuits: u32,
) -> Result<Decibels, ConversionError> {
    let image = image(dial, intermediate, side)?;
    Ok(selectivity(image, dial, loaded_q, circuits))
}

/// How much weaker a signal at the IF itself is than the wanted station, after
/// `circuits` alike circuits tuned to the dial and no trap.
///
/// `selectivity(F, dial, Q, circuits)`.
///
/// ```
/// use superhet::quantities::selectivity::if_rejection;
/// use superhet::units::Frequency;
/// // 540 kHz, IF 470 kHz, Q 80: only 27 dB, the dial is close to the IF.
/// let rejection = if_rejection(Frequency::khz(540.0), Frequency::khz(470.0), 80.0, 1);
/// assert!((rejection.to_db() - 26.97).abs() < 0.01);
/// ```
#[must_use]
pub fn if_rejection(
    dial: Frequency,
    intermediate: Frequency,
    loaded_q: f64,
    circuits: u32,
) -> Decibels {
    selectivity(intermediate, dial, loaded_q, circuits)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_is_lost_at_resonance() {
        let f0 = Frequency::khz(909.0);
        assert_eq!(selectivity(f0, f0, 80.0, 4), Decibels::db(0.0));
    }

    #[test]
    fn three_decibels_at_the_half_power_points() {
        // y·Q = 1 at f = f0·(√(1 + 1/4Q²) ± 1/2Q).
        let (f0, q) = (1e6, 50.0);
        let edge = f0 * (libm::sqrt(1.0 + 0.25 / (q * q)) + 0.5 / q);
        let loss = selectivity(Frequency::hz(edge), Frequency::hz(f0), q, 1).to_db();
        assert!((loss - 10.0 * libm::log10(2.0)).abs() < 1e-12, "{loss}");
    }

    #[test]
    fn equal_ratios_above_and_below_lose_the_same() {
        let f0 = Frequency::khz(600.0);
        let up = selectivity(Frequency::khz(1200.0), f0, 70.0, 1).to_db();
        let down = selectivity(Frequency::khz(300.0), f0, 70.0, 1).to_db();
        assert!((up - down).abs() < 1e-12);
    }

    #[test]
    fn circuits_add_their_decibels() {
        let (f, f0) = (Frequency::khz(1540.0), Frequency::khz(600.0));
        let one = selectivity(f, f0, 90.0, 1).to_db();
        let three = selectivity(f, f0, 90.0, 3).to_db();
        assert!((three - 3.0 * one).abs() < 1e-12);
    }
}
