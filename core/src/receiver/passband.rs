//! Where a curve of attenuation has its peak, and how wide it is a drop below it.
//!
//! The curve is one with all its humps inside a window that is known beforehand, and
//! falling on both sides of it.

use crate::units::{Decibels, Frequency};

/// Halvings of a stretch that holds one edge: a double has 53 places.
const HALVINGS: u32 = 60;

/// Steps of the golden section: each leaves 0.618 of the stretch, and 40 of them a
/// hundred-millionth, below which a peak is flat in doubles.
const SECTIONS: u32 = 40;

/// The golden section of a stretch, (√5 − 1)/2.
const GOLDEN: f64 = 0.618_033_988_749_895;

/// Doublings of the distance from the window in which an edge is looked for.
const DOUBLINGS: u32 = 40;

/// More looks at a window than this are not taken.
const MOST_LOOKS: f64 = 20_000.0;

/// A curve of attenuation in decibels over frequency in hertz, and where its humps are.
pub(super) struct Passband<A: Fn(f64) -> f64> {
    attenuation: A,
    low: f64,
    high: f64,
    step: f64,
}

impl<A: Fn(f64) -> f64> Passband<A> {
    /// A curve with its humps between two frequencies, none narrower than a few steps.
    pub(super) fn new(attenuation: A, low: f64, high: f64, step: f64) -> Self {
        let step = step.max((high - low) / MOST_LOOKS);
        Self {
            attenuation,
            low,
            high,
            step,
        }
    }

    /// The frequency of least attenuation, and that attenuation.
    pub(super) fn peak(&self) -> (f64, f64) {
        let looks = libm::ceil((self.high - self.low) / self.step) as u32;
        let place = |look: u32| self.low + f64::from(look) * self.step;
        let here = |x: f64| (x, (self.attenuation)(x));
        let mut best = here(self.low);
        let (mut before, mut middle) = (here(place(0)), here(place(1)));
        for look in 2..=looks.max(2) {
            let after = here(place(look));
            if middle.1 <= before.1 && middle.1 <= after.1 {
                let top = self.top(before.0, after.0);
                if top.1 < best.1 {
                    best = top;
                }
            }
            (before, middle) = (middle, after);
        }
        best
    }

    /// The top of one hump, by golden section.
    fn top(&self, mut from: f64, mut to: f64) -> (f64, f64) {
        let mut lower = to - GOLDEN * (to - from);
        let mut upper = from + GOLDEN * (to - from);
        let (mut at_lower, mut at_upper) = ((self.attenuation)(lower), (self.attenuation)(upper));
        for _ in 0..SECTIONS {
            if at_lower <= at_upper {
                (to, upper, at_upper) = (upper, lower, at_lower);
                lower = to - GOLDEN * (to - from);
                at_lower = (self.attenuation)(lower);
            } else {
                (from, lower, at_lower) = (lower, upper, at_upper);
                upper = from + GOLDEN * (to - from);
                at_upper = (self.attenuation)(upper);
            }
        }
        if at_lower <= at_upper {
            (lower, at_lower)
        } else {
            (upper, at_upper)
        }
    }

    /// The outermost two frequencies at a level of attenuation, lower and upper, round the
    /// peak. None where the curve does not fall so far between 0 Hz and a great distance.
    pub(super) fn edges(&self, peak: f64, level: f64) -> Option<(f64, f64)> {
        let lower = self.edge(self.low.min(peak), peak, level)?;
        let upper = self.edge(self.high.max(peak), peak, level)?;
        Some((lower, upper))
    }

    /// The outermost place at a level, on the side of the peak where `limit` is.
    fn edge(&self, limit: f64, peak: f64, level: f64) -> Option<f64> {
        if self.passes(limit, level) {
            self.farther_out(limit, peak, level)
        } else {
            Some(self.farther_in(limit, peak, level))
        }
    }

    /// An edge beyond the window, where the curve only falls.
    fn farther_out(&self, limit: f64, peak: f64, level: f64) -> Option<f64> {
        let factor = if limit > peak { 2.0 } else { 0.5 };
        let mut inside = limit;
        for _ in 0..DOUBLINGS {
            let outside = inside * factor;
            if !self.passes(outside, level) {
                return Some(self.between(outside, inside, level));
            }
            inside = outside;
        }
        None
    }

    /// An edge inside the window, where the curve may rise and fall: walks in from outside.
    fn farther_in(&self, limit: f64, peak: f64, level: f64) -> f64 {
        let step = if limit > peak { -self.step } else { self.step };
        let mut outside = limit;
        loop {
            let inside = outside + step;
            let at_peak = (inside - peak) * step >= 0.0;
            if at_peak {
                return self.between(outside, peak, level);
            }
            if self.passes(inside, level) {
                return self.between(outside, inside, level);
            }
            outside = inside;
        }
    }

    fn between(&self, mut outside: f64, mut inside: f64, level: f64) -> f64 {
        for _ in 0..HALVINGS {
            let middle = 0.5 * (outside + inside);
            if self.passes(middle, level) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        0.5 * (outside + inside)
    }

    fn passes(&self, place: f64, level: f64) -> bool {
        (self.attenuation)(place) < level
    }
}

/// The bandwidth at 60 dB over that at 6 dB.
pub(super) fn shape_factor(bandwidth: impl Fn(Decibels) -> Option<Frequency>) -> Option<f64> {
    let width = |drop| bandwidth(Decibels::db(drop)).map(Frequency::to_hz);
    Some(width(60.0)? / width(6.0)?)
}

#[cfg(test)]
mod tests {
    use super::Passband;

    /// Humps of 0 and 0.5 at 8 and 12, a dip of 16 between: (x² − 20x + 96)², tilted.
    fn two_humps(x: f64) -> f64 {
        let quartic = (x - 8.0) * (x - 12.0);
        quartic * quartic + (x - 8.0) / 8.0
    }

    #[test]
    fn the_higher_of_two_humps_is_the_peak() {
        let (place, least) = Passband::new(two_humps, 5.0, 15.0, 0.3).peak();
        // The tilt of 1/8 moves the top by 1/8 over twice the square of 4: 1/256.
        assert!((place - (8.0 - 1.0 / 256.0)).abs() < 1e-4, "{place}");
        assert!(least < 0.0 && least > -0.001, "{least}");
    }

    #[test]
    fn edges_are_the_outermost_even_under_a_deep_dip() {
        let band = Passband::new(two_humps, 5.0, 15.0, 0.3);
        let (peak, least) = band.peak();
        let (lower, upper) = band.edges(peak, least + 2.0).unwrap();
        for edge in [lower, upper] {
            assert!((two_humps(edge) - least - 2.0).abs() < 1e-12, "{edge}");
        }
        assert!(lower < 8.0 && upper > 12.0);
        // The dip at 10 is 16 down, and lies between them all the same.
        assert!(two_humps(10.0) - least > 16.0);
    }

    #[test]
    fn edges_far_outside_the_window_are_found() {
        // 20·|log2(x/10)| is 100 down at 10·2^±5.
        let hill = |x: f64| 20.0 * libm::fabs(libm::log2(x / 10.0));
        let band = Passband::new(hill, 9.0, 11.0, 0.1);
        let (lower, upper) = band.edges(band.peak().0, 100.0).unwrap();
        assert!((lower - 10.0 / 32.0).abs() < 1e-6, "{lower}");
        assert!((upper - 320.0).abs() < 1e-3, "{upper}");
    }

    #[test]
    fn a_curve_that_levels_off_has_no_edge() {
        let shelf = |x: f64| libm::fmin(6.0, libm::fabs(x - 10.0));
        assert_eq!(Passband::new(shelf, 9.0, 11.0, 0.1).edges(10.0, 7.0), None);
    }
}
