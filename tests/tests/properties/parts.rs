//! Parts beside and after each other, coils and stages.

use crate::{U, off};
use proptest::prelude::{prop_assert, prop_assert_eq, proptest};
use superhet::quantities::coils::{coil_q, coil_resistance, mutual_inductance};
use superhet::quantities::combination::{parallel_resistance, series_capacitance};
use superhet::quantities::gain::{coupling_index, stage_gain, transformer_stage_gain};
use superhet::quantities::resonance::{dynamic_resistance, loaded_q};
use superhet::units::{Capacitance, Conductance, Frequency, Inductance, Resistance};

proptest! {
    /// Conductances add: five operations in all on either side.
    #[test]
    fn two_side_by_side_conduct_as_both(one in 1.0..1e7_f64, other in 1.0..1e7_f64) {
        let (r1, r2) = (Resistance::ohm(one), Resistance::ohm(other));
        let both = parallel_resistance(r1, r2);
        prop_assert_eq!(both, parallel_resistance(r2, r1));
        prop_assert!(off(1.0 / both.to_ohm(), 1.0 / one + 1.0 / other) <= 8.0 * U);
        prop_assert!(both.to_ohm() < one.min(other));
    }

    #[test]
    fn two_in_a_row_hold_less_than_either(one in 1.0..1e6_f64, other in 1.0..1e6_f64) {
        let (c1, c2) = (Capacitance::pf(one), Capacitance::pf(other));
        let both = series_capacitance(c1, c2).to_f();
        prop_assert!(both < c1.to_f().min(c2.to_f()));
        prop_assert!(off(1.0 / both, 1.0 / c1.to_f() + 1.0 / c2.to_f()) <= 8.0 * U);
    }

    /// One quotient there, one back, over the same reactance.
    #[test]
    fn a_coils_q_and_its_loss_undo_each_other(
        kilohertz in 100.0..3e4_f64,
        microhenries in 1.0..1e4_f64,
        q in 1.0..1000.0_f64,
    ) {
        let (f, l) = (Frequency::khz(kilohertz), Inductance::uh(microhenries));
        prop_assert!(off(coil_q(f, l, coil_resistance(f, l, q)), q) <= 3.0 * U);
    }

    /// Energy: M² is L1·L2 at most.
    #[test]
    fn no_coupling_gives_more_than_the_mean(one in 1.0..1e4_f64, other in 1.0..1e4_f64, k in 0.0..1.0_f64) {
        let (l1, l2) = (Inductance::uh(one), Inductance::uh(other));
        let m = mutual_inductance(l1, l2, k).to_h();
        prop_assert!(m * m <= l1.to_h() * l2.to_h() * (1.0 + 6.0 * U));
    }

    /// A load as large as the circuit's own dynamic resistance halves its Q: ten operations.
    #[test]
    fn an_equal_load_halves_q(
        kilohertz in 100.0..3e4_f64,
        microhenries in 1.0..1e4_f64,
        q in 1.0..1000.0_f64,
    ) {
        let (f, l) = (Frequency::khz(kilohertz), Inductance::uh(microhenries));
        let own = dynamic_resistance(f, l, q);
        prop_assert!(off(loaded_q(f, l, q, own), q / 2.0) <= 10.0 * U);
    }

    /// b/(1 + b²) is greatest at 1, where it is a half; near it the curve is flat, so that a
    /// rounding may seem to rise.
    #[test]
    fn a_transformer_stage_has_half_the_gain_of_one_circuit_at_most(
        millisiemens in 0.1..10.0_f64,
        kilohms in 1.0..1e3_f64,
        q1 in 5.0..1000.0_f64,
        q2 in 5.0..1000.0_f64,
        k in 1e-5..0.2_f64,
    ) {
        let (g, r) = (Conductance::siemens(millisiemens * 1e-3), Resistance::ohm(kilohms * 1e3));
        let most = stage_gain(g, r).value() / 2.0;
        let gain = transformer_stage_gain(g, [r, r], coupling_index(q1, q2, k)).value();
        prop_assert!(gain <= most * (1.0 + 8.0 * U), "{gain} {most}");
        prop_assert!(off(transformer_stage_gain(g, [r, r], 1.0).value(), most) <= 8.0 * U);
    }
}
