//! One tuned circuit and several in a row.

use crate::{U, off};
use proptest::prelude::{prop_assert, proptest};
use superhet::quantities::cascade::{StageKind, cascade_bandwidth};
use superhet::quantities::resonance::{bandwidth, capacitance, detuning, inductance, q, resonance};
use superhet::quantities::selectivity::selectivity;
use superhet::units::{Capacitance, Frequency, Inductance};

proptest! {
    /// Seven operations there (a root among them) and five back, a square among them: 3.5 U
    /// twice, and 5 U. 2π is rounded alike both times.
    #[test]
    fn a_coil_and_its_resonance_give_the_capacitor_back(
        microhenries in 1e-1..1e5_f64,
        picofarads in 1e-1..1e6_f64,
    ) {
        let (l, c) = (Inductance::uh(microhenries), Capacitance::pf(picofarads));
        let f0 = resonance(l, c);
        let found = capacitance(f0, l).to_f();
        prop_assert!(off(found, c.to_f()) <= 12.0 * U, "{found:e}");
        let found = inductance(c, f0).to_h();
        prop_assert!(off(found, l.to_h()) <= 12.0 * U, "{found:e}");
    }

    /// A quotient and its inverse: one rounding each.
    #[test]
    fn bandwidth_and_q_undo_each_other(kilohertz in 1.0..1e6_f64, loaded in 1.0..1000.0_f64) {
        let f0 = Frequency::khz(kilohertz);
        prop_assert!(off(q(f0, bandwidth(f0, loaded)), loaded) <= 2.0 * U);
    }

    /// The difference of two resonances carries 3.5 U of each; the form that is kept, less.
    #[test]
    fn detuning_is_the_difference_of_two_resonances(
        microhenries in 1.0..1e4_f64,
        picofarads in 10.0..1e3_f64,
        added in 0.0..100.0_f64,
    ) {
        let (l, before) = (Inductance::uh(microhenries), Capacitance::pf(picofarads));
        let after = Capacitance::f(before.to_f() + Capacitance::pf(added).to_f());
        let f0 = resonance(l, before);
        let plain = resonance(l, after).to_hz() - f0.to_hz();
        let moved = detuning(f0, before, Capacitance::pf(added)).to_hz();
        prop_assert!((plain - moved).abs() <= 10.0 * U * f0.to_hz(), "{plain} {moved}");
    }

    /// f0·r and f0/r lose alike. Each is one rounding off, which y, their distance from f0,
    /// multiplies by r/(r − 1); decibels follow y by 8.7·n at most.
    #[test]
    fn selectivity_is_the_same_at_equal_ratios_to_both_sides(
        kilohertz in 100.0..3e4_f64,
        ratio in 1.001..10.0_f64,
        q in 1.0..1000.0_f64,
        circuits in 1_u32..8,
    ) {
        let f0 = Frequency::khz(kilohertz);
        let at = |hertz| selectivity(Frequency::hz(hertz), f0, q, circuits).to_db();
        let (above, below) = (at(f0.to_hz() * ratio), at(f0.to_hz() / ratio));
        // Five operations more for y, and the logarithm's own on what comes out.
        let of_y = 2.0 * (5.0 + ratio / (ratio - 1.0)) * U * 8.7 * f64::from(circuits);
        prop_assert!((above - below).abs() <= of_y + 8.0 * U * above, "{above} {below}");
    }

    /// Farther off is weaker: a step of a thousandth outweighs every rounding.
    #[test]
    fn selectivity_grows_with_the_distance(
        kilohertz in 100.0..3e4_f64,
        ratio in 1.001..10.0_f64,
        q in 1.0..1000.0_f64,
    ) {
        let f0 = Frequency::khz(kilohertz);
        let at = |ratio| selectivity(Frequency::hz(f0.to_hz() * ratio), f0, q, 3).to_db();
        prop_assert!(at(ratio * 1.001) > at(ratio));
    }

    /// At the edge of the whole, each of n circuits is half power over n down:
    /// n·10·log10(1 + x²), or x⁴ for a transitional pair, with x the share of its own width.
    /// 2^(1/n) − 1 loses n times what its power does, and the exponents some U besides.
    #[test]
    fn stages_in_a_row_are_half_power_down_at_their_edge(
        kilohertz in 1.0..100.0_f64,
        stages in 1_u32..9,
    ) {
        let one = Frequency::khz(kilohertz);
        for (kind, power) in [(StageKind::Single, 2), (StageKind::Double, 4)] {
            let x = cascade_bandwidth(one, stages, kind).to_hz() / one.to_hz();
            let db = f64::from(stages) * 10.0 * (1.0 + x.powi(power)).log10();
            let half_power = 10.0 * 2.0_f64.log10();
            prop_assert!(off(db, half_power) <= 20.0 * f64::from(stages) * U, "{stages}: {db}");
        }
    }
}
