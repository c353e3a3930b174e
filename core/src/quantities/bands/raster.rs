//! Evenly spaced carriers: the channels of a broadcast band.
//!
//! Whole hertz throughout, so that counting channels never meets a rounding error.

use crate::units::Frequency;

/// The channels of a band: first carrier, last carrier, and the step between them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Raster {
    first_hz: u32,
    last_hz: u32,
    step_hz: u32,
}

impl Raster {
    /// Carriers from `first` to `last` in kHz, `step` kHz apart. The step divides the
    /// distance without remainder; the tables' own tests hold that.
    pub(super) const fn khz(first: u32, last: u32, step: u32) -> Self {
        Self {
            first_hz: first * 1000,
            last_hz: last * 1000,
            step_hz: step * 1000,
        }
    }

    /// The lowest carrier.
    #[must_use]
    pub fn first(self) -> Frequency {
        Frequency::hz(f64::from(self.first_hz))
    }

    /// The highest carrier.
    #[must_use]
    pub fn last(self) -> Frequency {
        Frequency::hz(f64::from(self.last_hz))
    }

    /// The distance between neighbouring carriers.
    #[must_use]
    pub fn step(self) -> Frequency {
        Frequency::hz(f64::from(self.step_hz))
    }

    /// How many carriers there are.
    #[must_use]
    pub const fn count(self) -> u32 {
        (self.last_hz - self.first_hz) / self.step_hz + 1
    }

    /// Carrier number `index`, counted from 0; none beyond the last.
    #[must_use]
    pub fn channel(self, index: u32) -> Option<Frequency> {
        (index < self.count()).then(|| self.carrier(index))
    }

    /// All carriers, lowest first.
    pub fn channels(self) -> impl Iterator<Item = Frequency> {
        (0..self.count()).map(move |index| self.carrier(index))
    }

    /// The carrier nearest to a frequency; the lower one when two are equally near, and
    /// the end carrier beyond either end.
    #[must_use]
    pub fn nearest(self, frequency: Frequency) -> Frequency {
        let below = self.carrier(self.at_or_below(frequency));
        match self.up(below) {
            Some(above)
                if above.to_hz() - frequency.to_hz() < frequency.to_hz() - below.to_hz() =>
            {
                above
            }
            _ => below,
        }
    }

    /// The next carrier above a frequency; none from the last carrier on.
    #[must_use]
    pub fn up(self, frequency: Frequency) -> Option<Frequency> {
        if frequency < self.first() {
            return Some(self.first());
        }
        self.channel(self.at_or_below(frequency) + 1)
    }

    /// The next carrier below a frequency; none from the first carrier down.
    #[must_use]
    pub fn down(self, frequency: Frequency) -> Option<Frequency> {
        if frequency <= self.first() {
            return None;
        }
        let index = self.at_or_below(frequency);
        if self.carrier(index) < frequency {
            self.channel(index)
        } else {
            self.channel(index - 1)
        }
    }

    /// Index of the highest carrier not above a frequency; 0 below the first.
    fn at_or_below(self, frequency: Frequency) -> u32 {
        let steps = (frequency.to_hz() - f64::from(self.first_hz)) / f64::from(self.step_hz);
        // The cast truncates, and it saturates: 0 below the first carrier. Where the
        // quotient rounds up to a whole number the carrier may lie above the frequency
        // by less than one bit of it; the comparisons of the callers then still hold.
        (steps as u32).min(self.count() - 1)
    }

    fn carrier(self, index: u32) -> Frequency {
        Frequency::hz(f64::from(self.first_hz + index * self.step_hz))
    }
}

#[cfg(test)]
mod tests {
    use super::Raster;
    use crate::units::Frequency;
    use proptest::prelude::{ProptestConfig, prop_assert, prop_assert_eq, proptest};

    const MEDIUM_WAVE: Raster = Raster::khz(531, 1602, 9);

    fn khz(value: f64) -> Frequency {
        Frequency::khz(value)
    }

    #[test]
    fn neighbours_of_a_carrier_are_one_step_away() {
        assert_eq!(MEDIUM_WAVE.up(khz(900.0)), Some(khz(909.0)));
        assert_eq!(MEDIUM_WAVE.down(khz(900.0)), Some(khz(891.0)));
    }

    #[test]
    fn neighbours_off_the_raster_are_the_carriers_on_each_side() {
        assert_eq!(MEDIUM_WAVE.up(khz(905.0)), Some(khz(909.0)));
        assert_eq!(MEDIUM_WAVE.down(khz(905.0)), Some(khz(900.0)));
    }

    #[test]
    fn the_ends_have_no_neighbour_beyond() {
        assert_eq!(MEDIUM_WAVE.up(khz(1602.0)), None);
        assert_eq!(MEDIUM_WAVE.up(khz(5000.0)), None);
        assert_eq!(MEDIUM_WAVE.down(khz(531.0)), None);
        assert_eq!(MEDIUM_WAVE.down(khz(100.0)), None);
        assert_eq!(MEDIUM_WAVE.up(khz(100.0)), Some(khz(531.0)));
        assert_eq!(MEDIUM_WAVE.down(khz(5000.0)), Some(khz(1602.0)));
    }

    #[test]
    fn halfway_between_two_carriers_the_lower_is_nearest() {
        assert_eq!(MEDIUM_WAVE.nearest(khz(904.5)), khz(900.0));
        assert_eq!(MEDIUM_WAVE.nearest(khz(904.6)), khz(909.0));
        assert_eq!(MEDIUM_WAVE.nearest(khz(1.0)), khz(531.0));
        assert_eq!(MEDIUM_WAVE.nearest(khz(30_000.0)), khz(1602.0));
    }

    proptest! {
        #![proptest_config(ProptestConfig { cases: 2_000, failure_persistence: None, ..ProptestConfig::default() })]

        #[test]
        fn the_nearest_carrier_is_the_nearest_by_trying_all(kilohertz in 1.0..3_000.0_f64) {
            let asked = khz(kilohertz);
            let distance = |carrier: Frequency| (carrier.to_hz() - asked.to_hz()).abs();
            let least = MEDIUM_WAVE.channels().map(distance).fold(f64::INFINITY, f64::min);
            prop_assert_eq!(distance(MEDIUM_WAVE.nearest(asked)), least);
        }

        #[test]
        fn up_and_down_are_the_closest_on_their_side_by_trying_all(kilohertz in 1.0..3_000.0_f64) {
            let asked = khz(kilohertz);
            prop_assert_eq!(MEDIUM_WAVE.up(asked), MEDIUM_WAVE.channels().find(|carrier| *carrier > asked));
            prop_assert_eq!(MEDIUM_WAVE.down(asked), MEDIUM_WAVE.channels().filter(|carrier| *carrier < asked).last());
            prop_assert!(MEDIUM_WAVE.nearest(asked) >= MEDIUM_WAVE.first());
        }
    }
}
