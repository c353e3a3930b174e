//! Against the network itself, circuit by circuit.

use super::ChainCurve;
use crate::quantities::transformer_network::{TransformerNetwork, TunedWinding};
use crate::units::{Capacitance, Frequency, Inductance, Resistance};
use proptest::prelude::{Strategy, prop_assert, proptest};

/// A winding tuned near 455 kHz: its Q, how far it is off and its load.
fn winding(pf: f64, kilohertz: f64, q: f64, load: f64) -> TunedWinding {
    let omega = 2.0 * core::f64::consts::PI * kilohertz * 1e3;
    let c = pf * 1e-12;
    let l = 1.0 / (omega * omega * c);
    TunedWinding {
        inductance: Inductance::h(l),
        capacitance: Capacitance::pf(pf),
        series: Resistance::ohm(omega * l / q),
        load: Resistance::ohm(load),
    }
}

fn pair() -> impl Strategy<Value = TransformerNetwork> {
    let side = || (50.0..500.0, 440.0..470.0, 20.0..1000.0, 1e4..1e8);
    (side(), side(), 1e-4..0.2).prop_map(|(one, other, coupling)| TransformerNetwork {
        primary: winding(one.0, one.1, one.2, one.3),
        secondary: winding(other.0, other.1, other.2, other.3),
        coupling,
    })
}

/// Both are a few dozen operations on numbers near 1; a bracket 1/Q of its terms loses as
/// many digits as Q has, three at Q 1 000, and so does the network's own. Two brackets of
/// a pair: 2^-53 · 40 operations · 1 000 / 3, rounded up.
const PER_PAIR: f64 = 2e-12;

proptest! {
    #[test]
    fn a_curve_is_its_network_point_by_point(
        chain in proptest::collection::vec(pair(), 1..4),
        centre in 440.0..470.0,
        asked in proptest::collection::vec(230.0..900.0, 1..20),
    ) {
        let centre = Frequency::khz(centre);
        let curve = ChainCurve::new(&chain, centre);
        let through = |f| chain.iter().map(|one| one.transfer_impedance(f).to_ohm()).product::<f64>();
        for khz in asked {
            let f = Frequency::khz(khz);
            let exact: f64 = through(centre) / through(f);
            let error = (curve.times_weaker(f) / exact - 1.0).abs();
            prop_assert!(error < PER_PAIR * chain.len() as f64, "{khz} kHz: {error:e}");
            let db = 20.0 * libm::log10(exact);
            prop_assert!((curve.attenuation(f).to_db() - db).abs() < 1e-10, "{khz} kHz");
        }
    }
}

#[test]
fn many_points_are_as_one_by_one() {
    let network = TransformerNetwork {
        primary: winding(120.0, 455.0, 100.0, 1e6),
        secondary: winding(120.0, 456.0, 80.0, 2e5),
        coupling: 0.012,
    };
    let curve = ChainCurve::new(&[network; 3], Frequency::khz(455.0));
    let hertz: [f64; 5] = [430e3, 450e3, 455e3, 460e3, 480e3];
    let mut decibels = [0.0; 5];
    curve.attenuations(&hertz, &mut decibels);
    for (hertz, decibels) in hertz.iter().zip(decibels) {
        assert_eq!(curve.attenuation(Frequency::hz(*hertz)).to_db(), decibels);
    }
    assert_eq!(decibels[2], 0.0);
}

#[test]
fn an_empty_chain_weakens_nothing() {
    let curve = ChainCurve::new(&[], Frequency::khz(455.0));
    assert_eq!(curve.attenuation(Frequency::khz(600.0)).to_db(), 0.0);
}
