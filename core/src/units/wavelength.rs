//! Wavelength in free space.

use super::{Frequency, Kind, display};
use core::fmt;

/// The speed of light in a vacuum, in metres a second: exact, since it defines the
/// metre.
///
/// [SI Brochure, 9th edition, BIPM 2019, section 2.2]
pub const SPEED_OF_LIGHT: f64 = 299_792_458.0;

/// A wavelength in free space, held in metres.
///
/// ```
/// use superhet::units::Wavelength;
/// assert_eq!(Wavelength::m(250.0).to_string(), "250 m");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Wavelength(f64);

impl Wavelength {
    /// A wavelength of so many metres.
    #[must_use]
    pub const fn m(value: f64) -> Self {
        Self(value)
    }

    /// The number of metres.
    #[must_use]
    pub const fn to_m(self) -> f64 {
        self.0
    }

    /// The frequency of this wave, c/λ with the exact speed of light.
    ///
    /// ```
    /// use superhet::units::Wavelength;
    /// let khz = Wavelength::m(240.0).to_frequency().to_khz();
    /// assert!((khz - 1249.135).abs() < 0.0005);
    /// ```
    #[must_use]
    pub const fn to_frequency(self) -> Frequency {
        Frequency::hz(SPEED_OF_LIGHT / self.0)
    }
}

impl fmt::Display for Wavelength {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(&display::text(Kind::Wavelength, self.0))
    }
}
