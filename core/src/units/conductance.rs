//! Conductance.

use super::{Kind, display};
use core::fmt;

/// A conductance, held in siemens: how much current a valve's anode gives for a volt on
/// its grid.
///
/// ```
/// use superhet::units::Conductance;
/// assert_eq!(Conductance::milliampere_per_volt(2.5).to_siemens(), 0.0025);
/// assert_eq!(Conductance::siemens(0.0025).to_string(), "2.5 mA/V");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Conductance(f64);

impl Conductance {
    /// A conductance of so many siemens, which are amperes per volt.
    #[must_use]
    pub const fn siemens(value: f64) -> Self {
        Self(value)
    }

    /// A conductance of so many milliamperes per volt.
    #[must_use]
    pub const fn milliampere_per_volt(value: f64) -> Self {
        Self(value / 1e3)
    }

    /// The number of siemens.
    #[must_use]
    pub const fn to_siemens(self) -> f64 {
        self.0
    }

    /// The number of milliamperes per volt.
    #[must_use]
    pub const fn to_milliampere_per_volt(self) -> f64 {
        self.0 * 1e3
    }
}

impl fmt::Display for Conductance {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(&display::text(Kind::Conductance, self.0))
    }
}
