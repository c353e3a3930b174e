//! Capacitance.

use super::{Kind, display};
use core::fmt;

/// A capacitance, held in farads.
///
/// ```
/// use superhet::units::Capacitance;
/// assert_eq!(Capacitance::pf(500.0).to_f(), 500e-12);
/// assert_eq!(Capacitance::nf(2.0).to_string(), "2 nF");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Capacitance(f64);

impl Capacitance {
    /// A capacitance of so many farads.
    #[must_use]
    pub const fn f(value: f64) -> Self {
        Self(value)
    }

    /// A capacitance of so many microfarads.
    #[must_use]
    pub const fn uf(value: f64) -> Self {
        Self(value / 1e6)
    }

    /// A capacitance of so many nanofarads.
    #[must_use]
    pub const fn nf(value: f64) -> Self {
        Self(value / 1e9)
    }

    /// A capacitance of so many picofarads.
    #[must_use]
    pub const fn pf(value: f64) -> Self {
        Self(value / 1e12)
    }

    /// The number of farads.
    #[must_use]
    pub const fn to_f(self) -> f64 {
        self.0
    }

    /// The number of microfarads.
    #[must_use]
    pub const fn to_uf(self) -> f64 {
        self.0 * 1e6
    }

    /// The number of nanofarads.
    #[must_use]
    pub const fn to_nf(self) -> f64 {
        self.0 * 1e9
    }

    /// The number of picofarads.
    #[must_use]
    pub const fn to_pf(self) -> f64 {
        self.0 * 1e12
    }
}

impl fmt::Display for Capacitance {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(&display::text(Kind::Capacitance, self.0))
    }
}
