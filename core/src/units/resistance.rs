//! Resistance.

use super::{Kind, display};
use core::fmt;

/// A resistance, reactance or impedance, held in ohms.
///
/// ```
/// use superhet::units::Resistance;
/// assert_eq!(Resistance::kilohm(47.0).to_ohm(), 47_000.0);
/// assert_eq!(Resistance::megohm(0.5).to_string(), "500 kΩ");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Resistance(f64);

impl Resistance {
    /// A resistance of so many ohms.
    #[must_use]
    pub const fn ohm(value: f64) -> Self {
        Self(value)
    }

    /// A resistance of so many kilohms.
    #[must_use]
    pub const fn kilohm(value: f64) -> Self {
        Self(value * 1e3)
    }

    /// A resistance of so many megohms.
    #[must_use]
    pub const fn megohm(value: f64) -> Self {
        Self(value * 1e6)
    }

    /// The number of ohms.
    #[must_use]
    pub const fn to_ohm(self) -> f64 {
        self.0
    }

    /// The number of kilohms.
    #[must_use]
    pub const fn to_kilohm(self) -> f64 {
        self.0 / 1e3
    }

    /// The number of megohms.
    #[must_use]
    pub const fn to_megohm(self) -> f64 {
        self.0 / 1e6
    }
}

impl fmt::Display for Resistance {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(&display::text(Kind::Resistance, self.0))
    }
}
