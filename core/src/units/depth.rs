//! Depth of modulation.

use super::{Kind, display};
use core::fmt;

/// A depth of modulation, held as a fraction: 1 is full modulation.
///
/// ```
/// use superhet::units::Depth;
/// assert_eq!(Depth::percent(80.0).fraction(), 0.8);
/// assert_eq!(Depth::new(0.3).to_string(), "0.3");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Depth(f64);

impl Depth {
    /// A depth given as a fraction.
    #[must_use]
    pub const fn new(fraction: f64) -> Self {
        Self(fraction)
    }

    /// A depth given in per cent.
    #[must_use]
    pub const fn percent(value: f64) -> Self {
        Self(value / 1e2)
    }

    /// The depth as a fraction.
    #[must_use]
    pub const fn fraction(self) -> f64 {
        self.0
    }

    /// The depth in per cent.
    #[must_use]
    pub const fn to_percent(self) -> f64 {
        self.0 * 1e2
    }
}

impl fmt::Display for Depth {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(&display::text(Kind::Depth, self.0))
    }
}
