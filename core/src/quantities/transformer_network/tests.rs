use super::*;
use crate::quantities::resonance::{self, resonance};
use crate::units::{Decibels, Ratio};

fn winding(q: f64) -> TunedWinding {
    let (l, c) = (Inductance::h(0.6e-3), Capacitance::pf(200.0));
    let omega = core::f64::consts::TAU * resonance(l, c).to_hz();
    TunedWinding {
        inductance: l,
        capacitance: c,
        series: Resistance::ohm(omega * l.to_h() / q),
        load: Resistance::ohm(1e12),
    }
}

/// The catalogue's form with complex arithmetic written out, as a second way.
fn by_admittances(network: &TransformerNetwork, frequency: Frequency) -> f64 {
    type Complex = (f64, f64);
    let mul = |a: Complex, b: Complex| (a.0 * b.0 - a.1 * b.1, a.0 * b.1 + a.1 * b.0);
    let add = |a: Complex, b: Complex| (a.0 + b.0, a.1 + b.1);
    let sub = |a: Complex, b: Complex| (a.0 - b.0, a.1 - b.1);
    let div = |a: Complex, b: Complex| {
        let size = b.0 * b.0 + b.1 * b.1;
        (
            (a.0 * b.0 + a.1 * b.1) / size,
            (a.1 * b.0 - a.0 * b.1) / size,
        )
    };
    let omega = core::f64::consts::TAU * frequency.to_hz();
    let (l1, c1, r1, g1) = network.primary.raw();
    let (l2, c2, r2, g2) = network.secondary.raw();
    let (z1, z2, zm) = (
        (r1, omega * l1),
        (r2, omega * l2),
        (0.0, omega * network.mutual()),
    );
    let delta = sub(mul(z1, z2), mul(zm, zm));
    let y1 = add(div(z2, delta), (g1, omega * c1));
    let y2 = add(div(z1, delta), (g2, omega * c2));
    let across = div(zm, delta);
    let answer = div(across, sub(mul(y1, y2), mul(across, across)));
    hypot(answer.0, answer.1)
}

#[test]
fn the_multiplied_form_is_the_catalogue_form() {
    let mut secondary = winding(60.0);
    secondary.load = Resistance::ohm(250e3);
    secondary.capacitance = Capacitance::pf(203.0);
    let network = TransformerNetwork {
        primary: winding(110.0),
        secondary,
        coupling: 0.015,
    };
    for khz in [200.0, 440.0, 455.0, 459.4, 460.0, 480.0, 900.0] {
        let f = Frequency::khz(khz);
        let (got, expected) = (
            network.transfer_impedance(f).to_ohm(),
            by_admittances(&network, f),
        );
        // Δ loses up to Q² of its digits in the second way: 1e-16 × 110² × a few.
        assert!(
            (got / expected - 1.0).abs() < 1e-11,
            "{khz}: {got} {expected}"
        );
    }
}

#[test]
fn narrow_and_exact_differ_as_stated() {
    // catalogue: q 100, k·q 1, 30 kHz off 455: exact 38.82 and 38.80 dB, narrow 38.79.
    let (c, f0) = (Capacitance::pf(200.0), Frequency::khz(455.0));
    let l = resonance::inductance(c, f0);
    let omega = core::f64::consts::TAU * f0.to_hz();
    let side = TunedWinding {
        inductance: l,
        capacitance: c,
        series: Resistance::ohm(omega * l.to_h() / 100.0),
        load: Resistance::ohm(1e15),
    };
    let network = TransformerNetwork {
        primary: side,
        secondary: side,
        coupling: 0.01,
    };
    let at = |khz: f64| network.transfer_impedance(Frequency::khz(khz)).to_ohm();
    let peak = (4_530..=4_570)
        .map(|tenth| at(f64::from(tenth) / 10.0))
        .fold(0.0, f64::max);
    let below = Decibels::from_voltage_ratio(Ratio::new(peak / at(425.0))).to_db();
    let above = Decibels::from_voltage_ratio(Ratio::new(peak / at(485.0))).to_db();
    assert!(
        (below - 38.82).abs() < 0.01 && (above - 38.80).abs() < 0.01,
        "{below} {above}"
    );
}

#[test]
fn no_coupling_to_speak_of_passes_next_to_nothing() {
    let network = TransformerNetwork {
        primary: winding(100.0),
        secondary: winding(100.0),
        coupling: 1e-6,
    };
    let critical = TransformerNetwork {
        coupling: 0.01,
        ..network
    };
    let f0 = resonance(network.primary.inductance, network.primary.capacitance);
    let ratio = network.transfer_impedance(f0).to_ohm() / critical.transfer_impedance(f0).to_ohm();
    // 2b/(1 + b²) with b = 1e-4.
    assert!((ratio / 2e-4 - 1.0).abs() < 1e-3, "{ratio}");
}
