//! What a padder and a trimmer of preferred values cost in tracking.

use libm::sqrt;

use super::greatest::greatest;
use super::{Arrangement, OscillatorParts, TrackingError, gang_capacitance};
use crate::quantities::preferred_values::Series;
use crate::units::{Capacitance, Frequency, Inductance};

/// A signal circuit and a band over which an oscillator is to follow it from above.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Band {
    /// The lowest and the highest dial setting.
    pub ends: [Frequency; 2],
    /// The intermediate frequency.
    pub intermediate: Frequency,
    /// The signal circuit's coil.
    pub signal_coil: Inductance,
}

/// The greatest tracking error over a band, without its sign, in three states.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PreferredCost {
    /// The preferred padder and trimmer, with the coil of the exact solution.
    pub parts: OscillatorParts,
    /// With the exact parts.
    pub exact: Frequency,
    /// With the preferred padder and trimmer and nothing done about them.
    pub rounded: Frequency,
    /// With the preferred padder, and trimmer and coil aligned again at the outer settings.
    pub aligned: Option<Frequency>,
}

/// The parts as they are made: padder and trimmer nearest in a series.
#[must_use]
pub fn preferred_parts(parts: &OscillatorParts, series: Series) -> OscillatorParts {
    let nearest = |exact: Capacitance| Capacitance::f(series.nearest(exact.to_f()));
    OscillatorParts {
        padder: nearest(parts.padder),
        trimmer: nearest(parts.trimmer),
        ..*parts
    }
}

impl Band {
    /// How much too high the oscillator is at a dial setting with these parts; below zero
    /// where it is too low.
    ///
    /// `oscillator − (dial + F)`, with the circuit's own arithmetic.
    #[must_use]
    pub fn error(&self, parts: &OscillatorParts, dial: Frequency) -> Frequency {
        Frequency::hz(self.error_hz(parts, dial.to_hz()))
    }

    /// The greatest error over the band with these parts, without its sign.
    #[must_use]
    pub fn largest_error(&self, parts: &OscillatorParts) -> Frequency {
        let [low, high] = self.ends.map(Frequency::to_hz);
        let error = |dial: f64| self.error_hz(parts, dial).abs();
        Frequency::hz(greatest(error, low, high))
    }

    /// What rounding a padder and a trimmer to a series costs.
    ///
    /// `outer` are the two settings at which trimmer and coil are aligned again.
    ///
    /// ```
    /// use superhet::quantities::conversion::Side;
    /// use superhet::quantities::preferred_values::Series;
    /// use superhet::quantities::tracking::{Arrangement, Band, OscillatorParts, ThreePoints};
    /// use superhet::units::{Frequency, Inductance};
    /// let settings = [600.0, 950.0, 1500.0].map(Frequency::khz);
    /// let (f, coil) = (Frequency::khz(455.0), Inductance::uh(200.0));
    /// let curve = ThreePoints::new(settings, f, Side::Above).unwrap();
    /// let exact = OscillatorParts::new(&curve, coil, Arrangement::AcrossCoil).unwrap();
    /// let ends = [540.0, 1600.0].map(Frequency::khz);
    /// let band = Band { ends, intermediate: f, signal_coil: coil };
    /// let cost = band.cost(&exact, Series::E12, [settings[0], settings[2]]);
    /// // 459.7 and 11.13 pF become 470 and 12 pF: from 6.19 kHz to 23.76 kHz; aligning
    /// // trimmer and coil again brings it to 6.94 kHz.
    /// assert!((cost.exact.to_khz() - 6.193).abs() < 0.001);
    /// assert!((cost.rounded.to_khz() - 23.760).abs() < 0.001);
    /// assert!((cost.aligned.unwrap().to_khz() - 6.939).abs() < 0.001);
    /// ```
    #[must_use]
    pub fn cost(
        &self,
        exact: &OscillatorParts,
        series: Series,
        outer: [Frequency; 2],
    ) -> PreferredCost {
        let parts = preferred_parts(exact, series);
        let aligned = self.aligned(parts.padder, parts.arrangement, outer).ok();
        PreferredCost {
            parts,
            exact: self.largest_error(exact),
            rounded: self.largest_error(&parts),
            aligned: aligned.map(|parts| self.largest_error(&parts)),
        }
    }

    /// The trimmer and coil that make the oscillator exact at two dial settings with a
    /// padder that is given: what aligning both ends comes to.
    ///
    /// With `W(Cg, Ct)` the whole capacitance and `ω` the oscillator's, both `L·W = 1/ω²`:
    /// their ratio gives `Ct` (for the trimmer across the gang by a quadratic), either
    /// gives `L`.
    ///
    /// # Errors
    /// When the settings are not in order, or a part would not be above zero.
    pub fn aligned(
        &self,
        padder: Capacitance,
        arrangement: Arrangement,
        outer: [Frequency; 2],
    ) -> Result<OscillatorParts, TrackingError> {
        let [low, high] = outer;
        if high <= low {
            return Err(TrackingError::EndsOutOfOrder { low, high });
        }
        let gangs = outer.map(|dial| gang_capacitance(dial, self.signal_coil).to_f());
        let p = padder.to_f();
        let wanted = outer.map(|dial| dial.to_hz() + self.intermediate.to_hz());
        // W(low)/W(high) has to be this.
        let ratio = (wanted[1] / wanted[0]) * (wanted[1] / wanted[0]);
        let trimmer = match arrangement {
            Arrangement::AcrossCoil => {
                let [s1, s3] = gangs.map(|gang| gang * p / (gang + p));
                (s1 - ratio * s3) / (ratio - 1.0)
            }
            Arrangement::AcrossGang => positive_root(gangs, p, ratio),
        };
        if !(trimmer > 0.0 && trimmer.is_finite()) {
            return Err(TrackingError::NoPositiveParts);
        }
        let trial = OscillatorParts {
            padder,
            trimmer: Capacitance::f(trimmer),
            inductance: Inductance::h(1.0),
            arrangement,
        };
        // The coil moves the oscillator by 1/√L.
        let with_one_henry = trial.oscillator(Capacitance::f(gangs[0])).to_hz();
        let times = with_one_henry / wanted[0];
        Ok(OscillatorParts {
            inductance: Inductance::h(times * times),
            ..trial
        })
    }

    fn error_hz(&self, parts: &OscillatorParts, dial: f64) -> f64 {
        let gang = gang_capacitance(Frequency::hz(dial), self.signal_coil);
        parts.oscillator(gang).to_hz() - (dial + self.intermediate.to_hz())
    }
}

/// The trimmer across the gang: the root above zero of
/// `t² + (g1 + g3 + p)·t + g1g3 − p(g1 − r·g3)/(r − 1) = 0`, which comes of
/// `(g1 + t)(g3 + t + p) = r(g3 + t)(g1 + t + p)`; not a number where there is none.
fn positive_root([g1, g3]: [f64; 2], p: f64, r: f64) -> f64 {
    let sum = g1 + g3 + p;
    let constant = g1 * g3 - p * (g1 - r * g3) / (r - 1.0);
    // Written so that nothing cancels: the constant is below zero where there is a root.
    -2.0 * constant / (sum + sqrt(sum * sum - 4.0 * constant))
}

#[cfg(test)]
mod tests;
