//! Power.

use super::{Kind, display};
use core::fmt;

/// A power, held in watts.
///
/// ```
/// use superhet::units::Power;
/// assert_eq!(Power::kw(50.0).to_w(), 50_000.0);
/// assert_eq!(Power::w(4.5).to_string(), "4.5 W");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Power(f64);

impl Power {
    /// A power of so many watts.
    #[must_use]
    pub const fn w(value: f64) -> Self {
        Self(value)
    }

    /// A power of so many milliwatts.
    #[must_use]
    pub const fn mw(value: f64) -> Self {
        Self(value / 1e3)
    }

    /// A power of so many kilowatts.
    #[must_use]
    pub const fn kw(value: f64) -> Self {
        Self(value * 1e3)
    }

    /// The number of watts.
    #[must_use]
    pub const fn to_w(self) -> f64 {
        self.0
    }

    /// The number of milliwatts.
    #[must_use]
    pub const fn to_mw(self) -> f64 {
        self.0 * 1e3
    }

    /// The number of kilowatts.
    #[must_use]
    pub const fn to_kw(self) -> f64 {
        self.0 / 1e3
    }
}

impl fmt::Display for Power {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(&display::text(Kind::Power, self.0))
    }
}
