//! A number without a unit.

use super::{Kind, display};
use core::fmt;

/// A ratio of two like things: Q, a coefficient of coupling, "times weaker".
///
/// ```
/// use superhet::units::Ratio;
/// assert_eq!(Ratio::new(138.6).to_string(), "138.6");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Ratio(f64);

impl Ratio {
    /// A ratio of so much to one.
    #[must_use]
    pub const fn new(value: f64) -> Self {
        Self(value)
    }

    /// The number itself.
    #[must_use]
    pub const fn value(self) -> f64 {
        self.0
    }
}

impl fmt::Display for Ratio {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(&display::text(Kind::Ratio, self.0))
    }
}
