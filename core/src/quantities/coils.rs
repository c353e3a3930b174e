//! Coils: their Q, what two of them share, and the aerial coil.
//!
//! In scope: a coil as an inductance in series with one loss resistance; two coils of one
//! tuned frequency; an aerial circuit (capacitance, resistance, primary) that is coupled
//! to a tuned secondary. Left out: self-capacitance, and what a rod or loop picks up
//! from a field, which needs its dimensions.
//!
//! Symbols: `L` inductance, `r` its series loss, `Q` the loaded Q, `k` the coefficient of
//! coupling, `M` mutual inductance, `Ca Ra` the aerial, `Lp` the primary.

use core::f64::consts::PI;

use libm::{hypot, sqrt};

use crate::units::{Capacitance, Frequency, Inductance, Ratio, Resistance};

/// The Q of a coil by itself.
///
/// `Q = 2πf·L/r`, the unloaded Q: reactance over series loss resistance, both at `f`. A
/// ferrite rod's losses count in `r` too, and `r` climbs with frequency.
///
/// ```
/// use superhet::quantities::coils::coil_q;
/// use superhet::units::{Frequency, Inductance, Resistance};
/// // 2π × 1 MHz × 175 µH = 1100 Ω; over 10 Ω: 110.
/// let q = coil_q(Frequency::mhz(1.0), Inductance::uh(175.0), Resistance::ohm(10.0));
/// assert!((q - 109.956).abs() < 0.001);
/// ```
#[must_use]
pub fn coil_q(frequency: Frequency, inductance: Inductance, loss: Resistance) -> f64 {
    reactance(frequency, inductance) / loss.to_ohm()
}

/// The loss resistance that stands in series with a coil of a certain Q.
///
/// `r = 2πf·L/Q`.
///
/// ```
/// use superhet::quantities::coils::coil_resistance;
/// use superhet::units::{Frequency, Inductance};
/// // 1 mH at 470 kHz is 2953 Ω; over Q 100: 29.53 Ω.
/// let r = coil_resistance(Frequency::khz(470.0), Inductance::h(1e-3), 100.0);
/// assert!((r.to_ohm() - 29.531).abs() < 0.001);
/// ```
#[must_use]
pub fn coil_resistance(frequency: Frequency, inductance: Inductance, q: f64) -> Resistance {
    Resistance::ohm(reactance(frequency, inductance) / q)
}

/// The mutual inductance of two coupled coils.
///
/// `M = k·√(L1·L2)`.
///
/// ```
/// use superhet::quantities::coils::mutual_inductance;
/// use superhet::units::Inductance;
/// // √(1 mH × 4 mH) = 2 mH; a hundredth of it is 20 µH.
/// let m = mutual_inductance(Inductance::h(1e-3), Inductance::h(4e-3), 0.01);
/// assert!((m.to_uh() - 20.0).abs() < 1e-9);
/// ```
#[must_use]
pub fn mutual_inductance(first: Inductance, second: Inductance, coupling: f64) -> Inductance {
    Inductance::h(coupling * sqrt(first.to_h() * second.to_h()))
}

/// An aerial with its primary winding, coupled to a tuned secondary.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AerialCoil {
    /// The capacitance of the aerial to earth, `Ca`.
    pub aerial_capacitance: Capacitance,
    /// The resistance of aerial, earth and primary together, `Ra`.
    pub aerial_resistance: Resistance,
    /// The primary winding, `Lp`.
    pub primary: Inductance,
    /// The tuned winding, `L`.
    pub secondary: Inductance,
    /// The coefficient of coupling between the windings, `k`.
    pub coupling: f64,
}

impl AerialCoil {
    /// How many times the voltage induced in the aerial appears across the tuned circuit,
    /// which is kept tuned to `frequency` and has `loaded_q` there.
    ///
    /// `A = 2πf·M·Q / |Z|`, `M = k·√(Lp·L)`, `Z = Ra + j(2πf·Lp − 1/(2πf·Ca))`.
    ///
    /// `loaded_q` counts what the aerial takes. What remains left out is the reactance
    /// that the aerial reflects: the figure is too large by `k²·2πf·Lp·X/|Z|²` of itself, `X`
    /// the imaginary part of `Z` (k 0.1 and a primary that resonates at half of `f`:
    /// 1.3 %). Close to the primary's own resonance it stops being true.
    ///
    /// Source: F. Langford-Smith, *Radiotron Designer's Handbook*, 4th ed., ch. 23 (form
    /// from memory, derived again here).
    ///
    /// ```
    /// use superhet::quantities::coils::AerialCoil;
    /// use superhet::units::{Capacitance, Frequency, Inductance, Resistance};
    /// let coil = AerialCoil {
    ///     aerial_capacitance: Capacitance::pf(200.0),
    ///     aerial_resistance: Resistance::ohm(25.0),
    ///     primary: Inductance::h(2e-3),
    ///     secondary: Inductance::uh(175.0),
    ///     coupling: 0.1,
    /// };
    /// // At 1 MHz: M = 59.16 µH, 371.7 Ω; Z is 12 566 − 796 = 11 771 Ω; Q 80: 2.526 times.
    /// let times = coil.transfer(Frequency::mhz(1.0), 80.0);
    /// assert!((times.value() - 2.5264).abs() < 0.0001);
    /// ```
    #[must_use]
    pub fn transfer(&self, frequency: Frequency, loaded_q: f64) -> Ratio {
        let mutual = mutual_inductance(self.primary, self.secondary, self.coupling);
        let capacitive = 1.0 / (2.0 * PI * frequency.to_hz() * self.aerial_capacitance.to_f());
        let reactance_left = reactance(frequency, self.primary) - capacitive;
        let impedance = hypot(self.aerial_resistance.to_ohm(), reactance_left);
        Ratio::new(reactance(frequency, mutual) * loaded_q / impedance)
    }
}

fn reactance(frequency: Frequency, inductance: Inductance) -> f64 {
    2.0 * PI * frequency.to_hz() * inductance.to_h()
}

#[cfg(test)]
mod tests {
    use super::*;

    const COIL: AerialCoil = AerialCoil {
        aerial_capacitance: Capacitance::pf(200.0),
        aerial_resistance: Resistance::ohm(25.0),
        primary: Inductance::h(2e-3),
        secondary: Inductance::uh(175.0),
        coupling: 0.1,
    };

    #[test]
    fn q_and_loss_resistance_undo_each_other() {
        let (f, l) = (Frequency::khz(470.0), Inductance::h(0.8e-3));
        let q = coil_q(f, l, coil_resistance(f, l, 83.0));
        assert!((q - 83.0).abs() < 1e-12, "{q}");
    }

    #[test]
    fn coils_alike_share_k_times_one_of_them() {
        let l = Inductance::uh(175.0);
        let m = mutual_inductance(l, l, 0.02);
        assert!((m.to_uh() - 3.5).abs() < 1e-12, "{m}");
    }

    /// The two meshes solved with complex numbers, the secondary tuned so that no
    /// reactance is left in it, and its Q counted with what the aerial takes.
    fn solved(coil: &AerialCoil, frequency: f64, loaded_q: f64) -> f64 {
        let omega = 2.0 * PI * frequency;
        let (lp, l) = (coil.primary.to_h(), coil.secondary.to_h());
        let ra = coil.aerial_resistance.to_ohm();
        let x = omega * lp - 1.0 / (omega * coil.aerial_capacitance.to_f());
        let m = coil.coupling * sqrt(lp * l);
        let squared = ra * ra + x * x;
        // (ωM)²/Z is what the primary puts into the secondary's mesh.
        let reflected = omega * m * omega * m / squared;
        let capacitive = omega * l - reflected * x;
        let whole_resistance = omega * l / loaded_q;
        let current = omega * m / (sqrt(squared) * whole_resistance);
        current * capacitive
    }

    #[test]
    fn the_departure_from_the_two_meshes_is_the_one_stated() {
        for khz in [550.0, 800.0, 1000.0, 1600.0] {
            let f = khz * 1e3;
            let omega = 2.0 * PI * f;
            let lp = COIL.primary.to_h();
            let x = omega * lp - 1.0 / (omega * COIL.aerial_capacitance.to_f());
            let ra = COIL.aerial_resistance.to_ohm();
            let stated = 0.01 * omega * lp * x / (ra * ra + x * x);
            let simple = COIL.transfer(Frequency::hz(f), 80.0).value();
            let exact = solved(&COIL, f, 80.0);
            assert!((exact / simple - (1.0 - stated)).abs() < 1e-12, "{khz} kHz");
        }
    }

    #[test]
    fn a_primary_below_the_band_evens_the_band_out() {
        let times = |khz| COIL.transfer(Frequency::khz(khz), 80.0).value();
        // With constant Q the step-up falls towards the level of a primary alone.
        assert!(times(550.0) > times(1000.0) && times(1000.0) > times(1600.0));
        assert!(times(550.0) / times(1600.0) < 1.4);
    }
}
