use super::*;
use alloc::string::ToString;

/// Decibels of half power, as a width "at 3 dB" means it.
const HALF_POWER: f64 = 3.010_299_956_639_812;

fn db(value: f64) -> Decibels {
    Decibels::db(value)
}

fn close(got: f64, expected: f64, tolerance: f64, case: &str) {
    assert!(
        (got - expected).abs() <= tolerance,
        "{case}: got {got}, expected {expected}"
    );
}

#[test]
fn loss_is_nothing_at_the_peak_and_one_hump_sits_at_the_centre() {
    let f0 = Frequency::khz(470.0);
    for k in [0.001, 0.005, 0.01] {
        let pair = CoupledPair::new(100.0, 100.0, k);
        assert_eq!(pair.attenuation(f0, f0), Ok(db(0.0)));
        close(pair.peaks(f0).to_hz(), 0.0, 1.0, "no humps");
    }
}

#[test]
fn humps_are_where_the_loss_is_nothing() {
    let f0 = Frequency::khz(470.0);
    let pair = CoupledPair::new(80.0, 120.0, 0.03);
    let half_apart = pair.peaks(f0).to_hz() / 2.0;
    for f in [f0.to_hz() - half_apart, f0.to_hz() + half_apart] {
        let loss = pair.attenuation(Frequency::hz(f), f0).unwrap().to_db();
        // The square of a rounding difference: far below any printed digit.
        close(loss, 0.0, 1e-12, "hump");
    }
    let centre = pair.attenuation(f0, f0).unwrap().to_db();
    close(centre, pair.dip().to_db(), 1e-12, "dip");
}

#[test]
fn the_width_is_where_the_loss_is_the_drop() {
    let f0 = Frequency::khz(455.0);
    for (q1, q2, k) in [
        (100.0, 100.0, 0.002),
        (100.0, 100.0, 0.01),
        (60.0, 140.0, 0.025),
    ] {
        let pair = CoupledPair::new(q1, q2, k);
        for drop in [0.01, HALF_POWER, 6.0, 40.0] {
            let width = pair.bandwidth(f0, db(drop)).unwrap().to_hz();
            let edge = Frequency::hz(f0.to_hz() + width / 2.0);
            let loss = pair.attenuation(edge, f0).unwrap().to_db();
            // f − f0 loses about 1e-13 of itself, the loss at most a few times that.
            close(loss, drop, 1e-10 * drop.max(1.0), "loss at the edge");
        }
    }
}

#[test]
fn far_off_the_loss_rises_by_twelve_decibels_an_octave() {
    let f0 = Frequency::mhz(10.0);
    let pair = CoupledPair::new(1000.0, 1000.0, 0.001);
    let at = |off: f64| {
        pair.attenuation(Frequency::hz(10e6 + off), f0)
            .unwrap()
            .to_db()
    };
    // 1 + x⁴/4 against x⁴/4 alone at x = 100: a part in 25 million.
    close(at(1e6) - at(0.5e6), 12.041_2, 1e-4, "octave");
}

#[test]
fn outside_the_narrow_band_it_refuses() {
    let f0 = Frequency::khz(455.0);
    let pair = CoupledPair::new(100.0, 100.0, 0.01);
    assert!(pair.attenuation(Frequency::khz(568.75), f0).is_ok());
    let refused = pair.attenuation(Frequency::khz(569.0), f0).unwrap_err();
    assert!(matches!(refused, NarrowBandError::TooFar { .. }));
    let wide = CoupledPair::new(5.0, 5.0, 0.2)
        .bandwidth(f0, db(40.0))
        .unwrap_err();
    assert!(matches!(wide, NarrowBandError::TooWide(_)));
}

/// With k towards 0 each side is a single circuit: both together weaken by 1 + x², x being
/// Q·2δ/f0. Doubling that at x = 1 is 20·log10 2 decibels.
#[test]
fn hardly_coupled_sides_are_two_single_circuits() {
    let f0 = Frequency::khz(400.0);
    let pair = CoupledPair::new(100.0, 100.0, 1e-9);
    for x in [1.0, 2.0, 3.0] {
        let f = Frequency::hz(f0.to_hz() * (1.0 + x / 200.0));
        let expected = 20.0 * libm::log10(1.0 + x * x);
        let got = pair.attenuation(f, f0).unwrap().to_db();
        // k·Q is 1e-7 and counts by its square; the rest are roundings.
        close(got, expected, 1e-12 * expected, "two circuits");
    }
}

/// At critical coupling, Q 5 and k 0.2, a drop of 1 + e in power is as wide as
/// √(2·√e/Q²) of f0: half of it, where the narrow band ends, for √e = 25/8.
#[test]
fn a_width_is_refused_from_half_the_tuned_frequency() {
    let pair = CoupledPair::new(5.0, 5.0, 0.2);
    let last = 10.0 * libm::log10(1.0 + (25.0_f64 / 8.0) * (25.0 / 8.0));
    let width = |drop: f64| pair.fractional_bandwidth(db(drop));
    let just = width(last - 1e-6).unwrap();
    close(just, 0.5, 1e-7, "just narrow enough");
    assert!(width(last + 1e-6).is_err());
}

#[test]
fn each_refusal_says_the_rule_and_the_values() {
    let f0 = Frequency::khz(455.0);
    let pair = CoupledPair::new(5.0, 5.0, 0.2);
    let far = pair.attenuation(Frequency::khz(600.0), f0).unwrap_err();
    assert_eq!(
        far.to_string(),
        "the narrow-band form holds within a quarter of the tuned frequency: 600 kHz is too far \
         from 455 kHz"
    );
    let wide = pair.bandwidth(f0, db(40.0)).unwrap_err();
    // √e is √9999, so √(0.08·√9999) = 2.83.
    assert_eq!(
        wide.to_string(),
        "the narrow-band form holds for widths up to half the tuned frequency: this one would be \
         2.83 times it"
    );
}

#[test]
fn swapping_the_two_sides_changes_nothing() {
    let (one, other) = (
        CoupledPair::new(50.0, 150.0, 0.02),
        CoupledPair::new(150.0, 50.0, 0.02),
    );
    let f0 = Frequency::khz(470.0);
    assert_eq!(one.bandwidth(f0, db(6.0)), other.bandwidth(f0, db(6.0)));
    assert_eq!(one.dip(), other.dip());
}

#[test]
fn transitional_is_critical_only_for_equal_sides() {
    close(
        critical_coupling(80.0, 80.0),
        transitional_coupling(80.0, 80.0),
        1e-17,
        "equal",
    );
    close(
        critical_coupling(150.0, 50.0),
        0.011_547,
        1e-6,
        "critical 150/50",
    );
    close(
        transitional_coupling(150.0, 50.0),
        0.014_907,
        1e-6,
        "transitional 150/50",
    );
}
