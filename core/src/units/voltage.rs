//! Voltage.

use super::{Kind, display};
use core::fmt;

/// A voltage, held in volts.
///
/// ```
/// use superhet::units::Voltage;
/// assert_eq!(Voltage::mv(60.0).to_v(), 0.06);
/// assert_eq!(Voltage::v(0.06).to_string(), "60 mV");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Voltage(f64);

impl Voltage {
    /// A voltage of so many volts.
    #[must_use]
    pub const fn v(value: f64) -> Self {
        Self(value)
    }

    /// A voltage of so many millivolts.
    #[must_use]
    pub const fn mv(value: f64) -> Self {
        Self(value / 1e3)
    }

    /// A voltage of so many microvolts.
    #[must_use]
    pub const fn uv(value: f64) -> Self {
        Self(value / 1e6)
    }

    /// The number of volts.
    #[must_use]
    pub const fn to_v(self) -> f64 {
        self.0
    }

    /// The number of millivolts.
    #[must_use]
    pub const fn to_mv(self) -> f64 {
        self.0 * 1e3
    }

    /// The number of microvolts.
    #[must_use]
    pub const fn to_uv(self) -> f64 {
        self.0 * 1e6
    }
}

impl fmt::Display for Voltage {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(&display::text(Kind::Voltage, self.0))
    }
}
