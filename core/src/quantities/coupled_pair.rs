//! Two tuned circuits coupled together, in the narrow-band form that textbooks print.
//!
//! In scope: both circuits tuned to `f0`, each with its own loaded Q, one coupling
//! coefficient; curves under the pair's own peak. Left out: detuning of one side and
//! everything far from `f0`; for these use
//! [`TransformerNetwork`](super::transformer_network::TransformerNetwork), the exact network.
//!
//! Symbols: `q1`, `q2` loaded Q; `k` coupling coefficient; `P = q1·q2`;
//! `v = 2(f − f0)/f0`; `u = v²`; `D(u) = (1 + k²P − P·u)² + u·(q1 + q2)²`, to which the
//! square of the response is inversely proportional; `w = k² − (1/q1² + 1/q2²)/2`, where
//! `D` is least; `Dm = D(max(0, w))`, its value at the peak.
//!
//! Where it stops being true: with `δ = (f − f0)/f0`, an exact pair with its losses in
//! series has `(1 + δ)²·D` with `y = f/f0 − f0/f` for `v` and `k(1 + δ)` for `k`. Far off
//! the three changes nearly cancel: the exact loss is `20·log10(1 + δ²/4(1 + δ))` dB more,
//! 0.01 dB at 30 kHz from 455 kHz and 0.1 to 0.2 dB at the quarter of `f0` where this form
//! ends. Near the humps they do not: at Q 100 the width is 0.2 % too large at critical
//! coupling and 1.1 % at 2.4 times that, and the dip 0.02 to 0.19 dB too shallow, since one
//! of the exact humps is higher. Putting `y` alone for `v` makes it worse: 30 kHz off, where
//! the exact pair is 38.82 dB down on one side and 38.80 dB on the other, `v` gives 38.79 dB
//! on both and `y` 39.39 and 38.24 dB. `tests/tests/narrow_band.rs` holds all of this.
//!
//! Sources: the universal curves, as in F. E. Terman, *Radio Engineers' Handbook*
//! (1943), section 3 (form from memory, algebra done again here).

use core::fmt;

use libm::{expm1, round, sqrt};

use super::attenuation::{DECIBELS_PER_NEPER_OF_POWER, weaker};
use crate::units::{Decibels, Frequency, Kind, display};

/// The farthest from `f0`, as a fraction of it, at which the narrow-band form is given:
/// one quarter, so that a width is at most half of `f0`.
pub const NARROW_BAND_LIMIT: f64 = 0.25;

/// Why a narrow-band answer was refused.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum NarrowBandError {
    /// The frequency asked about is farther from `f0` than a quarter of it.
    TooFar {
        /// The frequency asked about.
        frequency: Frequency,
        /// The frequency both circuits are tuned to.
        resonant: Frequency,
    },
    /// The width reaches beyond half of `f0`; as a fraction of `f0`.
    TooWide(f64),
}

impl fmt::Display for NarrowBandError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::TooFar {
                frequency,
                resonant,
            } => write!(
                out,
                "the narrow-band form holds within a quarter of the tuned frequency: \
                 {frequency} is too far from {resonant}"
            ),
            Self::TooWide(fraction) => write!(
                out,
                "the narrow-band form holds for widths up to half the tuned frequency: \
                 this one would be {} times it",
                display::text(Kind::Ratio, round(fraction * 100.0) / 100.0)
            ),
        }
    }
}

impl core::error::Error for NarrowBandError {}

/// Two coupled circuits, each tuned to the same frequency.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CoupledPair {
    q1: f64,
    q2: f64,
    coupling: f64,
}

impl CoupledPair {
    /// A pair from the loaded Q of each circuit (5 to 1 000) and the coefficient of
    /// coupling (1e-6 to 0.2).
    #[must_use]
    pub const fn new(q1: f64, q2: f64, coupling: f64) -> Self {
        Self { q1, q2, coupling }
    }

    /// How far under its own peak the pair is at `f`.
    ///
    /// `10·log10(D(v²)/Dm)`, from the difference `D − Dm` so that no digits are lost
    /// near the peak.
    ///
    /// # Errors
    /// When `|f − f0| > f0/4`, outside the narrow band.
    ///
    /// ```
    /// use superhet::quantities::coupled_pair::CoupledPair;
    /// use superhet::units::Frequency;
    /// // Critical, Q 100, 9 kHz off 455 kHz: x = 3.956, 10·log10(1 + x⁴/4) = 17.94 dB.
    /// let pair = CoupledPair::new(100.0, 100.0, 0.01);
    /// let loss = pair.attenuation(Frequency::khz(464.0), Frequency::khz(455.0)).unwrap();
    /// assert!((loss.to_db() - 17.94).abs() < 0.01);
    /// ```
    pub fn attenuation(
        &self,
        frequency: Frequency,
        resonant: Frequency,
    ) -> Result<Decibels, NarrowBandError> {
        let (f, f0) = (frequency.to_hz(), resonant.to_hz());
        if (f - f0).abs() > NARROW_BAND_LIMIT * f0 {
            return Err(NarrowBandError::TooFar {
                frequency,
                resonant,
            });
        }
        let v = 2.0 * (f - f0) / f0;
        Ok(weaker(self.excess(v * v)))
    }

    /// The distance of the outermost two frequencies that are `drop` under the peak.
    ///
    /// `f0·√u` with `u` the largest root of `D(u) = Dm·10^(drop/10)`; a dip between the
    /// humps that is deeper than `drop` does not count.
    ///
    /// # Errors
    /// When the width would exceed half of `f0`, outside the narrow band.
    ///
    /// ```
    /// use superhet::quantities::coupled_pair::CoupledPair;
    /// use superhet::units::{Decibels, Frequency};
    /// // Critical, equal Q 100, at half power: √2·f0/Q = 6.435 kHz.
    /// let half_power = Decibels::db(3.010299956639812);
    /// let width = CoupledPair::new(100.0, 100.0, 0.01)
    ///     .bandwidth(Frequency::khz(455.0), half_power)
    ///     .unwrap();
    /// assert!((width.to_khz() - 6.4347).abs() < 0.0001);
    /// ```
    pub fn bandwidth(
        &self,
        resonant: Frequency,
        drop: Decibels,
    ) -> Result<Frequency, NarrowBandError> {
        let fraction = self.fractional_bandwidth(drop)?;
        Ok(Frequency::hz(resonant.to_hz() * fraction))
    }

    /// The distance between the two humps, 0 up to transitional coupling.
    ///
    /// `f0·√max(0, w)`.
    ///
    /// ```
    /// use superhet::quantities::coupled_pair::CoupledPair;
    /// use superhet::units::Frequency;
    /// // Equal Q 100, k twice critical: f0·√(k² − 1/Q²) = 455 × 0.017321 = 7.881 kHz.
    /// let apart = CoupledPair::new(100.0, 100.0, 0.02).peaks(Frequency::khz(455.0));
    /// assert!((apart.to_khz() - 7.881).abs() < 0.001);
    /// ```
    #[must_use]
    pub fn peaks(&self, resonant: Frequency) -> Frequency {
        Frequency::hz(resonant.to_hz() * sqrt(self.least().max(0.0)))
    }

    /// The depth of the dip at `f0` under the humps, 0 dB up to transitional coupling.
    ///
    /// `10·log10(D(0)/Dm)`.
    ///
    /// ```
    /// use superhet::quantities::coupled_pair::CoupledPair;
    /// // Twice critical, equal Q: the centre is at 0.8 of the humps, 1.94 dB.
    /// let dip = CoupledPair::new(100.0, 100.0, 0.02).dip();
    /// assert!((dip.to_db() - 1.938).abs() < 0.001);
    /// ```
    #[must_use]
    pub fn dip(&self) -> Decibels {
        weaker(self.excess(0.0))
    }

    /// The fraction of `f0` that the pair is wide at `drop` under its peak.
    ///
    /// # Errors
    /// As [`bandwidth`](Self::bandwidth).
    pub(crate) fn fractional_bandwidth(&self, drop: Decibels) -> Result<f64, NarrowBandError> {
        let product = self.q1 * self.q2;
        let least = self.least();
        let more = expm1(drop.to_db() / DECIBELS_PER_NEPER_OF_POWER) * self.at_peak()
            / (product * product);
        // D(u) − Dm is P²(u − w)² over a hump and P²(u² − 2wu) without one. In the second
        // case w is negative, and the root is written as a quotient so that a small drop
        // keeps its digits.
        let u = if least >= 0.0 {
            least + sqrt(more)
        } else {
            more / (sqrt(least * least + more) - least)
        };
        let fraction = sqrt(u);
        if fraction > 2.0 * NARROW_BAND_LIMIT {
            return Err(NarrowBandError::TooWide(fraction));
        }
        Ok(fraction)
    }

    /// `w`, the `u` at which `D` is least; negative below transitional coupling.
    ///
    /// Written as a difference of squares over the transitional coupling.
    fn least(&self) -> f64 {
        let transitional = transitional_coupling(self.q1, self.q2);
        (self.coupling - transitional) * (self.coupling + transitional)
    }

    /// `Dm`, the value of `D` at the peak.
    fn at_peak(&self) -> f64 {
        let product = self.q1 * self.q2;
        let sum = self.q1 + self.q2;
        let peak = self.least().max(0.0);
        let real = 1.0 + self.coupling * self.coupling * product - product * peak;
        real * real + peak * sum * sum
    }

    /// `D(u)/Dm − 1`, how much more the response is divided than at the peak.
    fn excess(&self, u: f64) -> f64 {
        let product = self.q1 * self.q2;
        let least = self.least();
        let square = if least >= 0.0 {
            (u - least) * (u - least)
        } else {
            u * (u - 2.0 * least)
        };
        product * product * square / self.at_peak()
    }
}

/// The coupling at which a pair passes most at `f0`.
///
/// `k = 1/√(q1·q2)`, also called critical.
///
/// ```
/// use superhet::quantities::coupled_pair::critical_coupling;
/// // Q 40 and Q 30: 0.0289.
/// assert!((critical_coupling(40.0, 30.0) - 0.0289).abs() < 0.0001);
/// ```
#[must_use]
pub fn critical_coupling(q1: f64, q2: f64) -> f64 {
    1.0 / sqrt(q1 * q2)
}

/// The coupling at which one peak becomes two.
///
/// `k = √((1/q1² + 1/q2²)/2)`: equal to critical coupling only for equal Q, larger
/// otherwise.
///
/// ```
/// use superhet::quantities::coupled_pair::{critical_coupling, transitional_coupling};
/// assert_eq!(transitional_coupling(100.0, 100.0), 0.01);
/// assert!(transitional_coupling(150.0, 50.0) > critical_coupling(150.0, 50.0));
/// ```
#[must_use]
pub fn transitional_coupling(q1: f64, q2: f64) -> f64 {
    sqrt((1.0 / (q1 * q1) + 1.0 / (q2 * q2)) / 2.0)
}

#[cfg(test)]
mod tests;
