//! Decibels of a ratio.

use super::{Kind, Ratio, display};
use core::fmt;

/// A ratio in decibels: of voltages 20·log10(ratio), of powers 10·log10(ratio).
///
/// Positive where an attenuation or rejection is meant and the signal is weaker.
///
/// ```
/// use superhet::units::{Decibels, Ratio};
/// assert_eq!(Decibels::from_voltage_ratio(Ratio::new(10.0)).to_db(), 20.0);
/// assert_eq!(Decibels::db(6.0).to_string(), "6 dB");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Decibels(f64);

impl Decibels {
    /// So many decibels.
    #[must_use]
    pub const fn db(value: f64) -> Self {
        Self(value)
    }

    /// The number of decibels.
    #[must_use]
    pub const fn to_db(self) -> f64 {
        self.0
    }

    /// Decibels of a ratio of two voltages across equal resistances, 20·log10(ratio).
    #[must_use]
    pub fn from_voltage_ratio(ratio: Ratio) -> Self {
        Self(20.0 * libm::log10(ratio.value()))
    }

    /// The ratio of voltages, 10^(dB/20).
    #[must_use]
    pub fn to_voltage_ratio(self) -> Ratio {
        Ratio::new(libm::pow(10.0, self.0 / 20.0))
    }

    /// Decibels of a ratio of two powers, 10·log10(ratio).
    ///
    /// ```
    /// use superhet::units::{Decibels, Ratio};
    /// assert_eq!(Decibels::from_power_ratio(Ratio::new(100.0)).to_db(), 20.0);
    /// ```
    #[must_use]
    pub fn from_power_ratio(ratio: Ratio) -> Self {
        Self(10.0 * libm::log10(ratio.value()))
    }

    /// The ratio of powers, 10^(dB/10).
    #[must_use]
    pub fn to_power_ratio(self) -> Ratio {
        Ratio::new(libm::pow(10.0, self.0 / 10.0))
    }
}

impl fmt::Display for Decibels {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(&display::text(Kind::Decibels, self.0))
    }
}
