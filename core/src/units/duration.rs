//! Duration.

use super::{Kind, display};
use core::fmt;

/// A length of time, held in seconds.
///
/// ```
/// use superhet::units::Duration;
/// assert_eq!(Duration::ms(100.0).to_s(), 0.1);
/// assert_eq!(Duration::s(0.1).to_string(), "100 ms");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Duration(f64);

impl Duration {
    /// A time of so many seconds.
    #[must_use]
    pub const fn s(value: f64) -> Self {
        Self(value)
    }

    /// A time of so many milliseconds.
    #[must_use]
    pub const fn ms(value: f64) -> Self {
        Self(value / 1e3)
    }

    /// A time of so many microseconds.
    #[must_use]
    pub const fn us(value: f64) -> Self {
        Self(value / 1e6)
    }

    /// The number of seconds.
    #[must_use]
    pub const fn to_s(self) -> f64 {
        self.0
    }

    /// The number of milliseconds.
    #[must_use]
    pub const fn to_ms(self) -> f64 {
        self.0 * 1e3
    }

    /// The number of microseconds.
    #[must_use]
    pub const fn to_us(self) -> f64 {
        self.0 * 1e6
    }
}

impl fmt::Display for Duration {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(&display::text(Kind::Duration, self.0))
    }
}
