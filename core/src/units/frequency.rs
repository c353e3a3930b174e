//! Frequency.

use super::{Kind, Wavelength, display, wavelength::SPEED_OF_LIGHT};
use core::fmt;

/// A frequency, held in hertz.
///
/// The constructors take any number: whether a frequency makes sense is a matter for
/// the quantity that uses it and for [`parse`](super::parse), which refuses what is not
/// above zero.
///
/// ```
/// use superhet::units::Frequency;
/// let dial = Frequency::khz(1200.0);
/// assert_eq!(dial.to_hz(), 1_200_000.0);
/// assert_eq!(dial.to_string(), "1200 kHz");
/// ```
///
/// A frequency is no inductance, and the compiler says so. This compiles:
///
/// ```
/// use superhet::units::Frequency;
/// fn tune(dial: Frequency) -> f64 { dial.to_mhz() }
/// tune(Frequency::khz(909.0));
/// ```
///
/// and this, with another unit in the same place, does not:
///
/// ```compile_fail
/// use superhet::units::{Frequency, Inductance};
/// fn tune(dial: Frequency) -> f64 { dial.to_mhz() }
/// tune(Inductance::uh(909.0));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Frequency(f64);

impl Frequency {
    /// A frequency of so many hertz.
    #[must_use]
    pub const fn hz(value: f64) -> Self {
        Self(value)
    }

    /// A frequency of so many kilohertz.
    #[must_use]
    pub const fn khz(value: f64) -> Self {
        Self(value * 1e3)
    }

    /// A frequency of so many megahertz.
    #[must_use]
    pub const fn mhz(value: f64) -> Self {
        Self(value * 1e6)
    }

    /// The number of hertz.
    #[must_use]
    pub const fn to_hz(self) -> f64 {
        self.0
    }

    /// The number of kilohertz.
    #[must_use]
    pub const fn to_khz(self) -> f64 {
        self.0 / 1e3
    }

    /// The number of megahertz.
    #[must_use]
    pub const fn to_mhz(self) -> f64 {
        self.0 / 1e6
    }

    /// The length of this wave in free space, c/f with the exact speed of light.
    ///
    /// ```
    /// use superhet::units::Frequency;
    /// assert_eq!(Frequency::mhz(1.0).to_wavelength().to_m(), 299.792_458);
    /// ```
    #[must_use]
    pub const fn to_wavelength(self) -> Wavelength {
        Wavelength::m(SPEED_OF_LIGHT / self.0)
    }
}

impl fmt::Display for Frequency {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(&display::text(Kind::Frequency, self.0))
    }
}
