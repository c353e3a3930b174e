//! Capacitance.

use super::{Kind, SPEED_OF_LIGHT, display};
use core::fmt;

/// Farads in a jar, 10/9 nF. [Admiralty Handbook of Wireless Telegraphy, 1938, p. A2]
const JAR: f64 = 1.0 / 9e8;

/// Farads in a centimetre of capacitance, the CGS unit: `10⁵/c²`, with c in metres a second;
/// 1.112 65 pF.
const CENTIMETRE: f64 = 1e5 / (SPEED_OF_LIGHT * SPEED_OF_LIGHT);

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

    /// A capacitance of so many jars, as British naval papers count it: 10/9 nF each.
    ///
    /// ```
    /// use superhet::units::Capacitance;
    /// assert_eq!(Capacitance::jar(900.0), Capacitance::uf(1.0));
    /// ```
    #[must_use]
    pub const fn jar(value: f64) -> Self {
        Self(value * JAR)
    }

    /// A capacitance of so many centimetres, as old continental parts are marked.
    ///
    /// ```
    /// use superhet::units::Capacitance;
    /// assert_eq!(Capacitance::cm(500.0).to_string(), "556.325 pF");
    /// ```
    #[must_use]
    pub const fn cm(value: f64) -> Self {
        Self(value * CENTIMETRE)
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
