//! One tuned circuit: where it resonates, what its parts are worth there, how sharp it is.
//!
//! In scope: inductance and capacitance without their own losses, and one loaded Q that
//! stands for every loss. Left out: self-capacitance of the coil (add it to the
//! capacitance) and the slow change of Q along a band.
//!
//! Symbols: `L` inductance, `C` capacitance, `f0` the resonant frequency, `Q` the loaded
//! Q at `f0`, `B` the width between the half-power points.
//!
//! Sources: the forms are those of every circuit textbook, for instance F. E. Terman,
//! *Radio Engineers' Handbook* (1943), section 3; the numbers in the tests name theirs.

use core::f64::consts::PI;

use libm::sqrt;

use crate::units::{Capacitance, Frequency, Inductance, Resistance};

/// The resonant frequency of an inductance and a capacitance.
///
/// `f0 = 1 / (2π√(LC))`, in hertz from henries and farads. Both must be above zero.
///
/// Losses are left out: a coil of Q 10 in parallel with a capacitor peaks 0.5 % lower,
/// one of Q 100 0.005 % lower.
///
/// ```
/// use superhet::quantities::resonance::resonance;
/// use superhet::units::{Capacitance, Inductance};
/// // 2π√(200 µH × 500 pF) = 1.9869 µs, so a medium-wave coil reaches 503.3 kHz.
/// let f0 = resonance(Inductance::uh(200.0), Capacitance::pf(500.0));
/// assert!((f0.to_khz() - 503.292).abs() < 0.001);
/// ```
#[must_use]
pub fn resonance(inductance: Inductance, capacitance: Capacitance) -> Frequency {
    Frequency::hz(1.0 / (2.0 * PI * sqrt(inductance.to_h() * capacitance.to_f())))
}

/// The inductance that resonates with a capacitance at `f0`.
///
/// `L = 1 / ((2πf0)² C)`, in henries. The capacitance includes every stray.
///
/// ```
/// use superhet::quantities::resonance::inductance;
/// use superhet::units::{Capacitance, Frequency};
/// // Textbook example, 965 kHz with 135.5 pF: about 200.7 µH.
/// let l = inductance(Capacitance::pf(135.5), Frequency::khz(965.0));
/// assert!((l.to_uh() - 200.74).abs() < 0.01);
/// ```
#[must_use]
pub fn inductance(capacitance: Capacitance, resonant: Frequency) -> Inductance {
    let omega = angular(resonant);
    Inductance::h(1.0 / (omega * omega * capacitance.to_f()))
}

/// The capacitance that resonates with an inductance at `f0`.
///
/// `C = 1 / ((2πf0)² L)`, in farads: the whole of it, gang, trimmer and strays together.
///
/// ```
/// use superhet::quantities::resonance::capacitance;
/// use superhet::units::{Frequency, Inductance};
/// // 10 µH at 550 kHz wants 8.374 nF.
/// let c = capacitance(Frequency::khz(550.0), Inductance::uh(10.0));
/// assert!((c.to_nf() - 8.374).abs() < 0.001);
/// ```
#[must_use]
pub fn capacitance(resonant: Frequency, inductance: Inductance) -> Capacitance {
    let omega = angular(resonant);
    Capacitance::f(1.0 / (omega * omega * inductance.to_h()))
}

/// How far a circuit moves when capacitance is added across it; below zero, since it
/// moves down.
///
/// `f0/√(1 + ΔC/C) − f0`, from the whole capacitance `C` before. A small addition moves it
/// by half its share: 1 % more capacitance, 0.5 % less frequency.
///
/// ```
/// use superhet::quantities::resonance::detuning;
/// use superhet::units::{Capacitance, Frequency};
/// // 21 % more capacitance is 1/1.1 of the frequency: 440 kHz down to 400 kHz.
/// let moved = detuning(Frequency::khz(440.0), Capacitance::pf(100.0), Capacitance::pf(21.0));
/// assert!((moved.to_khz() + 40.0).abs() < 1e-9);
/// ```
#[must_use]
pub fn detuning(resonant: Frequency, before: Capacitance, added: Capacitance) -> Frequency {
    let share = added.to_f() / before.to_f();
    let root = sqrt(1.0 + share);
    // 1/√(1+s) − 1 = −s/(√(1+s)·(1 + √(1+s))), which keeps its digits for a small share.
    Frequency::hz(-resonant.to_hz() * share / (root * (1.0 + root)))
}

/// The reactance of an inductance at `f`, as a positive number of ohms.
///
/// `X = 2πfL`.
///
/// ```
/// use superhet::quantities::resonance::reactance_l;
/// use superhet::units::{Frequency, Inductance};
/// // 2π × 1 MHz × 200 µH = 1256.6 Ω.
/// let x = reactance_l(Frequency::mhz(1.0), Inductance::uh(200.0));
/// assert!((x.to_ohm() - 1256.637).abs() < 0.001);
/// ```
#[must_use]
pub fn reactance_l(frequency: Frequency, inductance: Inductance) -> Resistance {
    Resistance::ohm(angular(frequency) * inductance.to_h())
}

/// The reactance of a capacitance at `f`, as a positive number of ohms.
///
/// `X = 1 / (2πfC)`.
///
/// ```
/// use superhet::quantities::resonance::reactance_c;
/// use superhet::units::{Capacitance, Frequency};
/// // 1 / (2π × 1 MHz × 100 pF) = 1591.5 Ω.
/// let x = reactance_c(Frequency::mhz(1.0), Capacitance::pf(100.0));
/// assert!((x.to_ohm() - 1591.549).abs() < 0.001);
/// ```
#[must_use]
pub fn reactance_c(frequency: Frequency, capacitance: Capacitance) -> Resistance {
    Resistance::ohm(1.0 / (angular(frequency) * capacitance.to_f()))
}

/// The resistance that a parallel tuned circuit shows at its resonance.
///
/// `R = 2πf0·L·Q`, the dynamic resistance. With Q from series loss in the coil alone the
/// exact figure is `(1 + 1/Q²)` times as large: 1 % at Q 10.
///
/// ```
/// use superhet::quantities::resonance::dynamic_resistance;
/// use superhet::units::{Frequency, Inductance};
/// // 2π × 470 kHz × 1 mH × 100 = 295.3 kΩ.
/// let r = dynamic_resistance(Frequency::khz(470.0), Inductance::h(1e-3), 100.0);
/// assert!((r.to_ohm() - 295_309.7).abs() < 0.1);
/// ```
#[must_use]
pub fn dynamic_resistance(
    resonant: Frequency,
    inductance: Inductance,
    loaded_q: f64,
) -> Resistance {
    Resistance::ohm(angular(resonant) * inductance.to_h() * loaded_q)
}

/// The width between the half-power points of one tuned circuit.
///
/// `B = f0 / Q`. Exact for `y = f/f0 − f0/f`; the two edges lie at equal ratios from
/// `f0`, so their middle is a little above it (42 Hz at 1200 kHz and Q 60).
///
/// ```
/// use superhet::quantities::resonance::bandwidth;
/// use superhet::units::Frequency;
/// // 1200 kHz at Q 60: 20 kHz.
/// assert_eq!(bandwidth(Frequency::khz(1200.0), 60.0), Frequency::khz(20.0));
/// ```
#[must_use]
pub fn bandwidth(resonant: Frequency, loaded_q: f64) -> Frequency {
    Frequency::hz(resonant.to_hz() / loaded_q)
}

/// The loaded Q of a circuit with a measured width between its half-power points.
///
/// `Q = f0 / B`.
///
/// ```
/// use superhet::quantities::resonance::q;
/// use superhet::units::Frequency;
/// // 8 MHz and 140 kHz wide: 57.14.
/// assert!((q(Frequency::mhz(8.0), Frequency::khz(140.0)) - 57.142857).abs() < 1e-6);
/// ```
#[must_use]
pub fn q(resonant: Frequency, bandwidth: Frequency) -> f64 {
    resonant.to_hz() / bandwidth.to_hz()
}

/// The Q left when a circuit of unloaded Q is loaded by a resistance across it.
///
/// `1/Q = 1/Q_unloaded + 2πf0·L / R`.
///
/// ```
/// use superhet::quantities::resonance::loaded_q;
/// use superhet::units::{Frequency, Inductance, Resistance};
/// // 1 mH at 470 kHz is 2953 Ω: Q 100 unloaded and 300 kΩ across it leave 50.4.
/// let q = loaded_q(
///     Frequency::khz(470.0),
///     Inductance::h(1e-3),
///     100.0,
///     Resistance::ohm(300e3),
/// );
/// assert!((q - 50.394).abs() < 0.001);
/// ```
#[must_use]
pub fn loaded_q(
    resonant: Frequency,
    inductance: Inductance,
    unloaded_q: f64,
    across: Resistance,
) -> f64 {
    let reactance = angular(resonant) * inductance.to_h();
    1.0 / (1.0 / unloaded_q + reactance / across.to_ohm())
}

/// ω = 2πf in radians a second.
fn angular(frequency: Frequency) -> f64 {
    2.0 * PI * frequency.to_hz()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Rounding of a handful of multiplications and one root.
    const FEW_ULP: f64 = 8.0 * f64::EPSILON;

    fn close(got: f64, expected: f64, relative: f64, case: &str) {
        assert!(
            (got - expected).abs() <= relative * expected.abs(),
            "{case}: got {got}, expected {expected}"
        );
    }

    #[test]
    fn resonance_inductance_and_capacitance_undo_each_other() {
        for khz in [150.0, 455.0, 1605.0, 26_100.0] {
            for pf in [11.0, 100.0, 528.0] {
                let c = Capacitance::pf(pf);
                let f0 = Frequency::khz(khz);
                let l = inductance(c, f0);
                close(resonance(l, c).to_hz(), f0.to_hz(), FEW_ULP, "f0");
                close(capacitance(f0, l).to_f(), c.to_f(), FEW_ULP, "C");
            }
        }
    }

    #[test]
    fn both_reactances_are_equal_at_resonance() {
        let (l, c) = (Inductance::uh(175.0), Capacitance::pf(300.0));
        let f0 = resonance(l, c);
        close(
            reactance_l(f0, l).to_ohm(),
            reactance_c(f0, c).to_ohm(),
            FEW_ULP,
            "X",
        );
    }

    #[test]
    fn four_times_the_capacitance_halves_the_frequency() {
        let l = Inductance::uh(175.0);
        let high = resonance(l, Capacitance::pf(50.0));
        let low = resonance(l, Capacitance::pf(200.0));
        close(low.to_hz() * 2.0, high.to_hz(), FEW_ULP, "halved");
    }

    #[test]
    fn a_circuit_moves_to_where_the_larger_capacitance_resonates() {
        let (c, l) = (Capacitance::pf(115.0), Inductance::h(1e-3));
        let f0 = resonance(l, c);
        for added in [0.1, 2.0, 50.0, 4000.0] {
            let moved = detuning(f0, c, Capacitance::pf(added)).to_hz();
            let after = resonance(l, Capacitance::pf(115.0 + added)).to_hz();
            close(f0.to_hz() + moved, after, FEW_ULP, "moved");
        }
        // Half a part in a million for a part in a million.
        let tiny = detuning(Frequency::mhz(1.0), c, Capacitance::pf(115e-6)).to_hz();
        assert!((tiny + 0.5).abs() < 1e-6, "{tiny}");
    }

    #[test]
    fn bandwidth_and_q_undo_each_other() {
        let f0 = Frequency::khz(470.0);
        close(q(f0, bandwidth(f0, 83.0)), 83.0, FEW_ULP, "Q");
    }

    #[test]
    fn a_load_equal_to_the_dynamic_resistance_halves_q() {
        let (f0, l) = (Frequency::khz(470.0), Inductance::h(0.8e-3));
        let r = dynamic_resistance(f0, l, 120.0);
        close(loaded_q(f0, l, 120.0, r), 60.0, FEW_ULP, "half");
    }
}
