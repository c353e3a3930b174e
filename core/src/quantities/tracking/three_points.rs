//! An oscillator that is exact at three dial settings, and its error between them.

use libm::sqrt;

use super::TrackingError;
use super::greatest::greatest;
use crate::quantities::conversion::Side;
use crate::quantities::selectivity::selectivity;
use crate::quantities::square_root::square_root;
use crate::units::{Decibels, Frequency};

/// An oscillator above the signal that is exact at three dial settings.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ThreePoints {
    settings: [f64; 3],
    intermediate: f64,
    l2: f64,
    m2: f64,
    n2: f64,
    gap: f64,
}

impl ThreePoints {
    /// The curve that is exact at `settings`, in any order, for one IF.
    ///
    /// # Errors
    /// For an oscillator below the signal: it explains why there is none.
    ///
    /// ```
    /// use superhet::quantities::conversion::Side;
    /// use superhet::quantities::tracking::ThreePoints;
    /// use superhet::units::Frequency;
    /// let settings = [600.0, 950.0, 1500.0].map(Frequency::khz);
    /// let curve = ThreePoints::new(settings, Frequency::khz(455.0), Side::Above).unwrap();
    /// // The oscillator is 4.459 kHz too high at 540 kHz.
    /// assert!((curve.error(Frequency::khz(540.0)).to_khz() - 4.459).abs() < 0.001);
    /// assert!(ThreePoints::new(settings, Frequency::khz(455.0), Side::Below).is_err());
    /// ```
    pub fn new(
        settings: [Frequency; 3],
        intermediate: Frequency,
        side: Side,
    ) -> Result<Self, TrackingError> {
        if side == Side::Below {
            return Err(TrackingError::OscillatorBelow);
        }
        Ok(Self::from_hz(
            settings.map(Frequency::to_hz),
            intermediate.to_hz(),
        ))
    }

    /// As [`new`](Self::new), from hertz, for an oscillator above.
    pub(super) fn from_hz(settings: [f64; 3], intermediate: f64) -> Self {
        let [f1, f2, f3] = settings;
        let a = f1 + f2 + f3;
        let b = f1 * f2 + f1 * f3 + f2 * f3;
        let c = f1 * f2 * f3;
        let d = a + 2.0 * intermediate;
        // ab ≥ 9c and a² ≥ 3b for positive settings, so neither difference loses more
        // than a digit, and all three squares are above zero.
        let l2 = (b * d - c) / (2.0 * intermediate);
        let rest = a * d - b;
        let m2 = l2 + intermediate * intermediate + rest;
        let n2 = (c * d + intermediate * intermediate * l2) / m2;
        // l² − n² from its own numerator: the two are nearly equal for a large IF.
        let gap = (l2 * (l2 + rest) - c * d) / m2;
        Self {
            settings,
            intermediate,
            l2,
            m2,
            n2,
            gap,
        }
    }

    /// The oscillator's frequency at a dial setting.
    ///
    /// `√(m²(f² + n²)/(f² + l²))`.
    #[must_use]
    pub fn oscillator(&self, dial: Frequency) -> Frequency {
        Frequency::hz(self.oscillator_hz(dial.to_hz()))
    }

    /// How much too high the oscillator is at a dial setting; negative when too low.
    ///
    /// `oscillator − (dial + F)`, in the form
    /// `−(x − f1)(x − f2)(x − f3)(x + a + 2F) / ((x² + l²)(oscillator + x + F))`, which is
    /// exactly zero at the three settings.
    #[must_use]
    pub fn error(&self, dial: Frequency) -> Frequency {
        Frequency::hz(self.error_hz(dial.to_hz()))
    }

    /// The greatest error between two dial settings, without its sign.
    ///
    /// ```
    /// use superhet::quantities::conversion::Side;
    /// use superhet::quantities::tracking::ThreePoints;
    /// use superhet::units::Frequency;
    /// let settings = [600.0, 1000.0, 1400.0].map(Frequency::khz);
    /// let curve = ThreePoints::new(settings, Frequency::khz(455.0), Side::Above).unwrap();
    /// // 11.66 kHz at 1600 kHz, yet 3.99 kHz between 600 and 1400 kHz.
    /// let greatest = |low, high| curve.largest_error([low, high].map(Frequency::khz));
    /// assert!((greatest(540.0, 1600.0).unwrap().to_khz() - 11.66).abs() < 0.005);
    /// assert!((greatest(600.0, 1400.0).unwrap().to_khz() - 3.99).abs() < 0.005);
    /// ```
    ///
    /// # Errors
    /// When the ends are not in order.
    pub fn largest_error(&self, ends: [Frequency; 2]) -> Result<Frequency, TrackingError> {
        let [low, high] = ends;
        if high <= low {
            return Err(TrackingError::EndsOutOfOrder { low, high });
        }
        let error = |dial: f64| self.error_hz(dial).abs();
        Ok(Frequency::hz(greatest(error, low.to_hz(), high.to_hz())))
    }

    /// What the aerial circuit loses at a dial setting because the oscillator, not it,
    /// decides which station is received.
    ///
    /// The loss of one circuit of `loaded_q` tuned to the dial setting, for a signal off
    /// it by the tracking error.
    ///
    /// ```
    /// use superhet::quantities::conversion::Side;
    /// use superhet::quantities::tracking::ThreePoints;
    /// use superhet::units::Frequency;
    /// let settings = [600.0, 950.0, 1500.0].map(Frequency::khz);
    /// let curve = ThreePoints::new(settings, Frequency::khz(455.0), Side::Above).unwrap();
    /// // Q 80, 4.459 kHz off 540 kHz: 1 + (80 × 0.016447)² = 2.731, 4.36 dB.
    /// assert!((curve.loss(Frequency::khz(540.0), 80.0).to_db() - 4.363).abs() < 0.001);
    /// ```
    #[must_use]
    pub fn loss(&self, dial: Frequency, loaded_q: f64) -> Decibels {
        let received = Frequency::hz(dial.to_hz() + self.error_hz(dial.to_hz()));
        selectivity(received, dial, loaded_q, 1)
    }

    /// `l²` in Hz².
    #[must_use]
    pub const fn l_squared(&self) -> f64 {
        self.l2
    }

    /// `m²` in Hz².
    #[must_use]
    pub const fn m_squared(&self) -> f64 {
        self.m2
    }

    /// `n²` in Hz².
    #[must_use]
    pub const fn n_squared(&self) -> f64 {
        self.n2
    }

    /// `l² − n²` in Hz², with all its digits.
    pub(super) const fn gap(&self) -> f64 {
        self.gap
    }

    /// The intermediate frequency.
    #[must_use]
    pub const fn intermediate(&self) -> Frequency {
        Frequency::hz(self.intermediate)
    }

    fn oscillator_hz(&self, dial: f64) -> f64 {
        sqrt(self.oscillator_square(dial))
    }

    #[inline]
    fn oscillator_square(&self, dial: f64) -> f64 {
        self.m2 * (dial * dial + self.n2) / (dial * dial + self.l2)
    }

    pub(super) fn error_hz(&self, dial: f64) -> f64 {
        self.error_with(self.oscillator_hz(dial), dial)
    }

    /// [`error_hz`](Self::error_hz) for columns of many settings, in which the quick square
    /// root stands: it is 2 ulp off at most, and so is the error.
    #[inline]
    pub(in crate::quantities) fn error_in_column(&self, dial: f64) -> f64 {
        self.error_with(square_root(self.oscillator_square(dial)), dial)
    }

    /// The error at a dial setting where the oscillator is known.
    #[inline]
    fn error_with(&self, oscillator: f64, dial: f64) -> f64 {
        let [f1, f2, f3] = self.settings;
        let sum = f1 + f2 + f3 + 2.0 * self.intermediate;
        let cubic = (dial - f1) * (dial - f2) * (dial - f3);
        let received = oscillator + dial + self.intermediate;
        -cubic * (dial + sum) / ((dial * dial + self.l2) * received)
    }
}

#[cfg(test)]
mod tests;
