//! The superhet's arithmetic: dial, oscillator, intermediate frequency and image.
//!
//! In scope: sums and differences of frequencies, wavelength, and what a ratio of
//! frequencies asks of a variable capacitor. Left out: how strongly any of it is heard,
//! which the tuned circuits decide.
//!
//! Symbols: F is the intermediate frequency, `dial` the station that the set is tuned
//! to, s = +1 with the oscillator above the signal and −1 with it below.
//!
//! The frequencies add without a model error: the mixer makes sums and differences of
//! the frequencies that reach it, and the rest of the set picks one. What is left is
//! the rounding of `f64`, below one part in 10^15 of the largest term.
//!
//! The functions take any frequency above zero; the ranges in which the catalogue
//! accepts what is typed are in [`range`](super::range).

mod error;
#[cfg(test)]
mod tests;

pub use error::ConversionError;

use crate::units::{Frequency, Ratio, Wavelength};

/// The speed of light that old dials and textbooks reckon with, in metres a second:
/// 300 000 divided by the kilohertz gives metres.
///
/// [US Army TC 9-64, Communications-Electronics Fundamentals, paragraphs 2-29 to 2-32,
/// works its examples so]
pub const OLD_DIAL_SPEED: f64 = 300e6;

/// On which side of the signal the oscillator runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Side {
    /// Oscillator = dial + F, the usual way on long and medium wave.
    Above,
    /// Oscillator = dial − F.
    Below,
}

impl Side {
    /// The sign s of F in the formulas.
    const fn sign(self) -> f64 {
        match self {
            Self::Above => 1.0,
            Self::Below => -1.0,
        }
    }

    /// The side as it is typed: `above` or `below`.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Above => "above",
            Self::Below => "below",
        }
    }

    /// The side with this word, in any case of letters.
    ///
    /// ```
    /// use superhet::quantities::conversion::Side;
    /// assert_eq!(Side::from_word("Below"), Some(Side::Below));
    /// assert_eq!(Side::from_word("beside"), None);
    /// ```
    #[must_use]
    pub fn from_word(word: &str) -> Option<Self> {
        [Self::Above, Self::Below]
            .into_iter()
            .find(|side| side.word().eq_ignore_ascii_case(word))
    }
}

/// The sign before F in [`spurious`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Sign {
    /// The harmonic of the signal lies F above that of the oscillator.
    Plus,
    /// It lies F below.
    Minus,
}

/// The frequency that the oscillator runs at, dial + sF.
///
/// # Errors
/// With the oscillator below, the dial must be above F, or nothing is left to run at.
///
/// [D. Roddy and J. Coolen, Electronic Communications, example 7.3.1, p. 227]
///
/// ```
/// use superhet::quantities::conversion::{Side, oscillator};
/// use superhet::units::Frequency;
/// let found = oscillator(Frequency::khz(1200.0), Frequency::khz(470.0), Side::Above);
/// assert_eq!(found, Ok(Frequency::khz(1670.0)));
/// ```
pub fn oscillator(
    dial: Frequency,
    intermediate: Frequency,
    side: Side,
) -> Result<Frequency, ConversionError> {
    let found = dial.to_hz() + side.sign() * intermediate.to_hz();
    if found > 0.0 {
        Ok(Frequency::hz(found))
    } else {
        Err(ConversionError::NoOscillator { dial, intermediate })
    }
}

/// The other frequency that makes F with the same oscillator, |dial + 2sF|.
///
/// With the oscillator below and F < dial < 2F the difference dial − 2F is negative: a
/// signal at 2F − dial then makes F as a *sum*, oscillator + signal. See
/// [`image_is_a_sum`].
///
/// # Errors
/// With the oscillator below, the dial must be above F, as for [`oscillator`], and must
/// not be 2F: the image would be at 0 Hz, where no station can be.
///
/// [G. M. Miller and J. S. Beasley, Modern Electronic Communication, example 3.2,
/// p. 134, for the oscillator above]
///
/// ```
/// use superhet::quantities::conversion::{Side, image};
/// use superhet::units::Frequency;
/// let found = image(Frequency::khz(620.0), Frequency::khz(455.0), Side::Above);
/// assert_eq!(found, Ok(Frequency::khz(1530.0)));
/// ```
pub fn image(
    dial: Frequency,
    intermediate: Frequency,
    side: Side,
) -> Result<Frequency, ConversionError> {
    oscillator(dial, intermediate, side)?;
    let found = (dial.to_hz() + 2.0 * side.sign() * intermediate.to_hz()).abs();
    if found > 0.0 {
        Ok(Frequency::hz(found))
    } else {
        Err(ConversionError::NoImage { dial, intermediate })
    }
}

/// Whether the image makes F as a sum with the oscillator instead of a difference: the
/// oscillator is below and F < dial < 2F.
///
/// ```
/// use superhet::quantities::conversion::{Side, image, image_is_a_sum};
/// use superhet::units::Frequency;
/// let (dial, f) = (Frequency::khz(700.0), Frequency::khz(455.0));
/// // The oscillator runs at 245 kHz, and 245 + 210 = 455.
/// assert_eq!(image(dial, f, Side::Below), Ok(Frequency::khz(210.0)));
/// assert!(image_is_a_sum(dial, f, Side::Below));
/// ```
#[must_use]
pub fn image_is_a_sum(dial: Frequency, intermediate: Frequency, side: Side) -> bool {
    side == Side::Below && intermediate < dial && dial.to_hz() < 2.0 * intermediate.to_hz()
}

/// The difference that the mixer makes, |signal − oscillator|; 0 Hz where they are the
/// same.
///
/// [D. Roddy and J. Coolen, Electronic Communications, section 7.3]
///
/// ```
/// use superhet::quantities::conversion::difference;
/// use superhet::units::Frequency;
/// let found = difference(Frequency::khz(1200.0), Frequency::khz(1670.0));
/// assert_eq!(found, Frequency::khz(470.0));
/// ```
#[must_use]
pub fn difference(signal: Frequency, oscillator: Frequency) -> Frequency {
    Frequency::hz((signal.to_hz() - oscillator.to_hz()).abs())
}

/// The sum that the mixer makes beside the difference, signal + oscillator.
///
/// ```
/// use superhet::quantities::conversion::sum;
/// use superhet::units::Frequency;
/// let found = sum(Frequency::khz(1200.0), Frequency::khz(1670.0));
/// assert_eq!(found, Frequency::khz(2870.0));
/// ```
#[must_use]
pub fn sum(signal: Frequency, oscillator: Frequency) -> Frequency {
    Frequency::hz(signal.to_hz() + oscillator.to_hz())
}

/// The station that a set is tuned to, oscillator − sF.
///
/// # Errors
/// With the oscillator above, it must run above F, or no station is left.
///
/// [[`oscillator`] solved for the dial]
///
/// ```
/// use superhet::quantities::conversion::{Side, dial};
/// use superhet::units::Frequency;
/// let found = dial(Frequency::khz(1670.0), Frequency::khz(470.0), Side::Above);
/// assert_eq!(found, Ok(Frequency::khz(1200.0)));
/// ```
pub fn dial(
    oscillator: Frequency,
    intermediate: Frequency,
    side: Side,
) -> Result<Frequency, ConversionError> {
    let found = oscillator.to_hz() - side.sign() * intermediate.to_hz();
    if found > 0.0 {
        Ok(Frequency::hz(found))
    } else {
        Err(ConversionError::NoDial {
            oscillator,
            intermediate,
        })
    }
}

/// The wavelength that an old dial prints beside a frequency, reckoned with
/// [`OLD_DIAL_SPEED`]: 0.07 % longer than the true one.
///
/// ```
/// use superhet::quantities::conversion::old_dial_wavelength;
/// use superhet::units::Frequency;
/// assert_eq!(old_dial_wavelength(Frequency::khz(1250.0)).to_m(), 240.0);
/// ```
#[must_use]
pub const fn old_dial_wavelength(frequency: Frequency) -> Wavelength {
    Wavelength::m(OLD_DIAL_SPEED / frequency.to_hz())
}

/// The frequency that an old dial means by a wavelength, reckoned with
/// [`OLD_DIAL_SPEED`].
///
/// ```
/// use superhet::quantities::conversion::old_dial_frequency;
/// use superhet::units::Wavelength;
/// assert_eq!(old_dial_frequency(Wavelength::m(240.0)).to_khz(), 1250.0);
/// ```
#[must_use]
pub const fn old_dial_frequency(wavelength: Wavelength) -> Frequency {
    Frequency::hz(OLD_DIAL_SPEED / wavelength.to_m())
}

/// The pitch of two carriers heard together, |f1 − f2|. Common practice, no source.
///
/// ```
/// use superhet::quantities::conversion::beat;
/// use superhet::units::Frequency;
/// let found = beat(Frequency::khz(909.0), Frequency::khz(900.0));
/// assert_eq!(found, Frequency::khz(9.0));
/// ```
#[must_use]
pub fn beat(first: Frequency, second: Frequency) -> Frequency {
    difference(first, second)
}

/// The pitch of the whistle that a harmonic of F makes with a station that the set is
/// exactly in tune with, |harmonic·F − signal|. Common practice, no source.
///
/// Where the set is off tune by d the intermediate frequency is off by d, and the pitch
/// moves by `harmonic` times d.
///
/// ```
/// use superhet::quantities::conversion::whistle;
/// use superhet::units::Frequency;
/// // The second harmonic of 455 kHz is 910 kHz.
/// let found = whistle(Frequency::khz(911.0), Frequency::khz(455.0), 2);
/// assert_eq!(found, Frequency::khz(1.0));
/// ```
#[must_use]
pub fn whistle(signal: Frequency, intermediate: Frequency, harmonic: u32) -> Frequency {
    Frequency::hz((f64::from(harmonic) * intermediate.to_hz() - signal.to_hz()).abs())
}

/// The pitch of a station and its image heard together, |2·oscillator − f1 − f2|: each
/// makes its own intermediate frequency, and this is the distance between the two.
/// Common practice, no source.
///
/// ```
/// use superhet::quantities::conversion::image_whistle;
/// use superhet::units::Frequency;
/// // 900 kHz makes 470 kHz with the oscillator, 1842 kHz makes 472 kHz.
/// let khz = Frequency::khz;
/// assert_eq!(image_whistle(khz(1370.0), khz(900.0), khz(1842.0)), khz(2.0));
/// ```
#[must_use]
pub fn image_whistle(oscillator: Frequency, first: Frequency, second: Frequency) -> Frequency {
    Frequency::hz((2.0 * oscillator.to_hz() - first.to_hz() - second.to_hz()).abs())
}

/// A frequency where a signal makes F with harmonic m of the oscillator and harmonic n
/// of itself, (m·oscillator ± F)/n.
///
/// m = 1 and n = 1 give the two frequencies that the set is meant to choose between:
/// station and image. m = 0 gives F/n.
///
/// # Errors
/// m·oscillator − F must be above zero, and n must not be 0.
///
/// [D. Roddy and J. Coolen, Electronic Communications, example 7.7.1, p. 236]
///
/// ```
/// use superhet::quantities::conversion::{Sign, spurious};
/// use superhet::units::Frequency;
/// let (oscillator, f) = (Frequency::khz(1405.0), Frequency::khz(455.0));
/// let found = spurious(oscillator, f, 2, 2, Sign::Minus);
/// assert_eq!(found, Ok(Frequency::khz(1177.5)));
/// ```
pub fn spurious(
    oscillator: Frequency,
    intermediate: Frequency,
    m: u32,
    n: u32,
    sign: Sign,
) -> Result<Frequency, ConversionError> {
    let carried = f64::from(m) * oscillator.to_hz();
    let reached = match sign {
        Sign::Plus => carried + intermediate.to_hz(),
        Sign::Minus => carried - intermediate.to_hz(),
    };
    let found = reached / f64::from(n);
    if found > 0.0 && found.is_finite() {
        Ok(Frequency::hz(found))
    } else {
        Err(ConversionError::NoSpurious {
            oscillator,
            intermediate,
            m,
        })
    }
}

/// How many times the frequency climbs from one end of a band to the other,
/// `highest`/`lowest`.
///
/// # Errors
/// The highest frequency must be above the lowest.
///
/// [D. Roddy and J. Coolen, Electronic Communications, example 7.3.1: 2.909 for 550 to
/// 1600 kHz]
///
/// ```
/// use superhet::quantities::conversion::frequency_ratio;
/// use superhet::units::Frequency;
/// let found = frequency_ratio(Frequency::khz(500.0), Frequency::khz(1500.0)).unwrap();
/// assert_eq!(found.value(), 3.0);
/// ```
pub fn frequency_ratio(lowest: Frequency, highest: Frequency) -> Result<Ratio, ConversionError> {
    if highest > lowest {
        Ok(Ratio::new(highest.to_hz() / lowest.to_hz()))
    } else {
        Err(ConversionError::BandUpsideDown { lowest, highest })
    }
}

/// The ratio of greatest to least capacitance that tunes a band with one coil,
/// (`highest`/`lowest`)².
///
/// The whole capacitance of the circuit counts, strays and trimmer included, so that a
/// variable capacitor by itself needs more than this.
///
/// # Errors
/// The highest frequency must be above the lowest.
///
/// [D. Roddy and J. Coolen, Electronic Communications, example 7.4.1: 8.463 for 550
/// to 1600 kHz]
///
/// ```
/// use superhet::quantities::conversion::capacitance_ratio;
/// use superhet::units::Frequency;
/// let found = capacitance_ratio(Frequency::khz(500.0), Frequency::khz(1500.0)).unwrap();
/// assert_eq!(found.value(), 9.0);
/// ```
pub fn capacitance_ratio(lowest: Frequency, highest: Frequency) -> Result<Ratio, ConversionError> {
    let ratio = frequency_ratio(lowest, highest)?.value();
    Ok(Ratio::new(ratio * ratio))
}
