//! Inductance.

use super::{Kind, display};
use core::fmt;

/// An inductance, held in henries.
///
/// ```
/// use superhet::units::Inductance;
/// assert_eq!(Inductance::uh(175.0).to_h(), 175e-6);
/// assert_eq!(Inductance::mh(2.2).to_string(), "2.2 mH");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Inductance(f64);

impl Inductance {
    /// An inductance of so many henries.
    #[must_use]
    pub const fn h(value: f64) -> Self {
        Self(value)
    }

    /// An inductance of so many millihenries.
    #[must_use]
    pub const fn mh(value: f64) -> Self {
        Self(value / 1e3)
    }

    /// An inductance of so many microhenries.
    #[must_use]
    pub const fn uh(value: f64) -> Self {
        Self(value / 1e6)
    }

    /// The number of henries.
    #[must_use]
    pub const fn to_h(self) -> f64 {
        self.0
    }

    /// The number of millihenries.
    #[must_use]
    pub const fn to_mh(self) -> f64 {
        self.0 * 1e3
    }

    /// The number of microhenries.
    #[must_use]
    pub const fn to_uh(self) -> f64 {
        self.0 * 1e6
    }
}

impl fmt::Display for Inductance {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(&display::text(Kind::Inductance, self.0))
    }
}
