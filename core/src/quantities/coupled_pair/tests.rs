use super::*;

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
