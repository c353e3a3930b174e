//! The narrow-band pair.

use crate::U;
use proptest::prelude::{Strategy, prop_assert, prop_assert_eq, proptest};
use superhet::quantities::coupled_pair::{CoupledPair, critical_coupling, transitional_coupling};
use superhet::units::{Decibels, Frequency};

const F0: Frequency = Frequency::khz(470.0);

/// Q of both sides, and k as a multiple of 1/√(q1·q2).
fn sides() -> impl Strategy<Value = (f64, f64, f64)> {
    (20.0..500.0_f64, 20.0..500.0_f64, 0.1..4.0_f64)
}

fn pair((q1, q2, index): (f64, f64, f64)) -> CoupledPair {
    CoupledPair::new(q1, q2, index * critical_coupling(q1, q2))
}

proptest! {
    /// The offset of an edge is a difference of two frequencies: it loses f0/offset times U,
    /// and the decibels follow the offset by 12 dB an octave, 17.4 for the whole of it.
    #[test]
    fn the_width_is_where_the_loss_is_the_drop(sides in sides(), drop in 0.1..60.0_f64) {
        let pair = pair(sides);
        let Ok(width) = pair.bandwidth(F0, Decibels::db(drop)) else {
            // Wider than half of f0: refused, as it must be.
            return Ok(());
        };
        for side in [-0.5, 0.5] {
            let edge = Frequency::hz(F0.to_hz() + side * width.to_hz());
            let Ok(loss) = pair.attenuation(edge, F0) else {
                continue;
            };
            // Over the humps, u − w loses u/(u − w) times as much: (u/more)^½ of a deep dip.
            let (v, w) = (width.to_hz() / F0.to_hz(), hump(sides));
            let lost = (4.0 * F0.to_hz() / width.to_hz() + 10.0) * U * (v * v / (v * v - w)).max(1.0);
            prop_assert!((loss.to_db() - drop).abs() <= 17.4 * lost + 20.0 * U * drop, "{loss:?}");
        }
    }

    #[test]
    fn no_place_is_above_the_peak(sides in sides(), share in -0.25..0.25_f64) {
        let loss = pair(sides).attenuation(Frequency::hz(F0.to_hz() * (1.0 + share)), F0).unwrap();
        prop_assert!(loss.to_db() >= 0.0, "{loss:?}");
    }

    #[test]
    fn the_dip_is_the_loss_at_the_centre(sides in sides()) {
        let pair = pair(sides);
        prop_assert_eq!(pair.attenuation(F0, F0).unwrap(), pair.dip());
    }

    /// The mean of squares is never under the product.
    #[test]
    fn transitional_coupling_is_critical_or_more(q1 in 5.0..1000.0_f64, q2 in 5.0..1000.0_f64) {
        let (transitional, critical) = (transitional_coupling(q1, q2), critical_coupling(q1, q2));
        prop_assert!(transitional >= critical * (1.0 - 6.0 * U));
    }

    #[test]
    fn two_humps_begin_at_transitional_coupling(q1 in 5.0..1000.0_f64, q2 in 5.0..1000.0_f64) {
        let k = transitional_coupling(q1, q2);
        let peaks = |k| CoupledPair::new(q1, q2, k).peaks(F0).to_hz();
        prop_assert_eq!(peaks(0.999 * k), 0.0);
        prop_assert!(peaks(1.001 * k) > 0.0);
    }
}

/// w of the pair, or 0 where it has one hump.
fn hump((q1, q2, index): (f64, f64, f64)) -> f64 {
    let k = index * critical_coupling(q1, q2);
    let transitional = transitional_coupling(q1, q2);
    (k * k - transitional * transitional).max(0.0)
}
