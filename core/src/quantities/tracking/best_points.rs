//! The three dial settings that keep the largest tracking error smallest.
//!
//! The error is `w(x)·(x − f1)(x − f2)(x − f3)` with a weight `w` that hardly changes
//! with the settings. So: hold the weight, find the cubic, to a scale, whose weighted extremes
//! alternate and are equal at four places (the two band ends and one place in each gap
//! between settings), take its roots as new settings, and repeat. By the alternation
//! theorem equal extremes of alternating sign are the least possible.

use super::{ThreePoints, TrackingError};
use crate::units::Frequency;

/// What is to be kept smallest.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Minimised {
    /// The error over the dial setting: what the aerial circuit's loss depends on.
    Relative,
    /// The error in kilohertz.
    Kilohertz,
}

/// The best three settings and the error they leave.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BestPoints {
    /// The settings, lowest first.
    pub settings: [Frequency; 3],
    /// The largest error over the band, in hertz or as a fraction of the dial setting.
    pub largest: f64,
}

/// Rounds of exchange allowed; the ones seen settle in fewer than 30.
const MOST_ROUNDS: usize = 200;

/// Settings that move less than this fraction of the band are settled.
const SETTLED: f64 = 1e-12;

/// The best three settings for a band and an IF, oscillator above.
///
/// # Errors
/// When the ends are not in order, or the search does not settle.
///
/// ```
/// use superhet::quantities::tracking::{Minimised, best_points};
/// use superhet::units::Frequency;
/// let ends = [540.0, 1600.0].map(Frequency::khz);
/// let best = best_points(ends, Frequency::khz(455.0), Minimised::Kilohertz).unwrap();
/// assert!((best.largest - 4675.0).abs() < 5.0);
/// assert!((best.settings[1].to_khz() - 1010.5).abs() < 0.1);
/// ```
pub fn best_points(
    ends: [Frequency; 2],
    intermediate: Frequency,
    minimised: Minimised,
) -> Result<BestPoints, TrackingError> {
    let [low, high] = ends;
    if high <= low {
        return Err(TrackingError::EndsOutOfOrder { low, high });
    }
    let (low, high) = (low.to_hz(), high.to_hz());
    let search = Search {
        low,
        high,
        intermediate: intermediate.to_hz(),
        minimised,
    };
    let mut settings = search.first_guess();
    for _ in 0..MOST_ROUNDS {
        let next = search.exchange(settings);
        let moved = (0..3)
            .map(|i| (next[i] - settings[i]).abs())
            .fold(0.0, f64::max);
        settings = next;
        if moved <= SETTLED * (high - low) {
            return Ok(BestPoints {
                settings: settings.map(Frequency::hz),
                largest: search.largest(settings),
            });
        }
    }
    Err(TrackingError::NoBestPoints)
}

struct Search {
    low: f64,
    high: f64,
    intermediate: f64,
    minimised: Minimised,
}

impl Search {
    /// The roots of the Chebyshev cubic on the band: middle, and √3/2 of half of it away.
    fn first_guess(&self) -> [f64; 3] {
        let (middle, half) = ((self.low + self.high) / 2.0, (self.high - self.low) / 2.0);
        let away = 0.866_025_403_784_438_6 * half;
        [middle - away, middle, middle + away]
    }

    fn exchange(&self, settings: [f64; 3]) -> [f64; 3] {
        let curve = ThreePoints::from_hz(settings, self.intermediate);
        let places = self.extremes(&curve, settings);
        let cubic = self.level_cubic(&curve, settings, places);
        core::array::from_fn(|i| root_between(&cubic, places[i], places[i + 1]))
    }

    /// The band ends and the place of the largest error in each gap.
    fn extremes(&self, curve: &ThreePoints, settings: [f64; 3]) -> [f64; 4] {
        let [f1, f2, f3] = settings;
        let error = |x: f64| self.judged(curve, x).abs();
        [
            self.low,
            largest_between(error, f1, f2),
            largest_between(error, f2, f3),
            self.high,
        ]
    }

    /// A cubic whose weighted values at `places` are equal and alternate. Its roots alone are
    /// asked for, so its scale is left as it comes.
    fn level_cubic(
        &self,
        curve: &ThreePoints,
        settings: [f64; 3],
        places: [f64; 4],
    ) -> Interpolated {
        let values: [f64; 4] = core::array::from_fn(|i| {
            let x = places[i];
            let product = settings.iter().map(|f| x - f).product::<f64>();
            let weight = (self.judged(curve, x) / product).abs();
            if i % 2 == 0 {
                -1.0 / weight
            } else {
                1.0 / weight
            }
        });
        Interpolated {
            places,
            spreads: spreads(places),
            values,
        }
    }

    fn judged(&self, curve: &ThreePoints, dial: f64) -> f64 {
        let error = curve.error_hz(dial);
        match self.minimised {
            Minimised::Relative => error / dial,
            Minimised::Kilohertz => error,
        }
    }

    fn largest(&self, settings: [f64; 3]) -> f64 {
        let curve = ThreePoints::from_hz(settings, self.intermediate);
        let places = self.extremes(&curve, settings);
        places
            .iter()
            .map(|&x| self.judged(&curve, x).abs())
            .fold(0.0, f64::max)
    }
}

/// A cubic through four points, in Lagrange's form.
struct Interpolated {
    places: [f64; 4],
    spreads: [f64; 4],
    values: [f64; 4],
}

impl Interpolated {
    fn at(&self, x: f64) -> f64 {
        (0..4)
            .map(|i| {
                let others = (0..4).filter(|&j| j != i).map(|j| x - self.places[j]);
                self.values[i] / self.spreads[i] * others.product::<f64>()
            })
            .sum()
    }
}

/// The product of the distances from each place to the others.
fn spreads(places: [f64; 4]) -> [f64; 4] {
    core::array::from_fn(|i| {
        (0..4)
            .filter(|&j| j != i)
            .map(|j| places[i] - places[j])
            .product()
    })
}

/// The root of a cubic that changes sign between two places, by halving.
fn root_between(cubic: &Interpolated, from: f64, to: f64) -> f64 {
    let (mut from, mut to) = (from, to);
    let below = cubic.at(from) < 0.0;
    // 60 halvings take any band to the last bit.
    for _ in 0..60 {
        let middle = f64::midpoint(from, to);
        if (cubic.at(middle) < 0.0) == below {
            from = middle;
        } else {
            to = middle;
        }
    }
    f64::midpoint(from, to)
}

/// Where a function with one hump between two places is largest, by the golden section.
///
/// The place is good to about a hundred-millionth of the gap, since a hump is flat at
/// its top; its height is then good to the last digits.
fn largest_between(height: impl Fn(f64) -> f64, from: f64, to: f64) -> f64 {
    const GOLDEN: f64 = 0.618_033_988_749_894_9;
    let (mut from, mut to) = (from, to);
    let (mut left, mut right) = (to - GOLDEN * (to - from), from + GOLDEN * (to - from));
    let (mut at_left, mut at_right) = (height(left), height(right));
    for _ in 0..42 {
        if at_left < at_right {
            (from, left, at_left) = (left, right, at_right);
            right = from + GOLDEN * (to - from);
            at_right = height(right);
        } else {
            (to, right, at_right) = (right, left, at_left);
            left = to - GOLDEN * (to - from);
            at_left = height(left);
        }
    }
    f64::midpoint(from, to)
}

#[cfg(test)]
mod tests;
