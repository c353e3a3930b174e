//! The cost of rounded parts against a plain search, and the alignment at two settings.

use super::*;
use crate::quantities::conversion::Side;
use crate::quantities::tracking::ThreePoints;

const SETTINGS: [f64; 3] = [600.0, 950.0, 1500.0];

fn band() -> Band {
    Band {
        ends: [540.0, 1600.0].map(Frequency::khz),
        intermediate: Frequency::khz(455.0),
        signal_coil: Inductance::uh(200.0),
    }
}

fn exact(arrangement: Arrangement) -> OscillatorParts {
    let settings = SETTINGS.map(Frequency::khz);
    let curve = ThreePoints::new(settings, band().intermediate, Side::Above).unwrap();
    OscillatorParts::new(&curve, band().signal_coil, arrangement).unwrap()
}

const OUTER: [Frequency; 2] = [Frequency::khz(600.0), Frequency::khz(1500.0)];

#[test]
fn the_exact_parts_have_the_error_of_the_curve() {
    let curve = ThreePoints::new(
        SETTINGS.map(Frequency::khz),
        band().intermediate,
        Side::Above,
    )
    .unwrap();
    for arrangement in [Arrangement::AcrossCoil, Arrangement::AcrossGang] {
        for khz in [540.0, 750.0, 1200.0, 1600.0] {
            let dial = Frequency::khz(khz);
            let circuit = band().error(&exact(arrangement), dial).to_hz();
            // A few bits of 2 MHz.
            assert!((circuit - curve.error(dial).to_hz()).abs() < 1e-7, "{khz}");
        }
    }
}

#[test]
fn the_greatest_error_is_that_of_a_plain_search() {
    for series in Series::ALL {
        for arrangement in [Arrangement::AcrossCoil, Arrangement::AcrossGang] {
            let parts = preferred_parts(&exact(arrangement), series);
            let found = band().largest_error(&parts).to_hz();
            let searched = (0..=106_000)
                .map(|step| {
                    let dial = Frequency::hz(540e3 + 10.0 * f64::from(step));
                    band().error(&parts, dial).to_hz().abs()
                })
                .fold(0.0, f64::max);
            // The search steps 10 Hz: at most 5 Hz from the top of a hump, where the error
            // bends by less than 1e-6 each hertz, so that it misses under 0.001 Hz.
            assert!(
                (found - searched).abs() < 1e-3,
                "{series:?} {found} {searched}"
            );
        }
    }
}

#[test]
fn alignment_at_two_settings_is_exact_there() {
    for arrangement in [Arrangement::AcrossCoil, Arrangement::AcrossGang] {
        for padder in [430.0, 470.0, 510.0] {
            let parts = band()
                .aligned(Capacitance::pf(padder), arrangement, OUTER)
                .unwrap();
            for dial in OUTER {
                assert!(band().error(&parts, dial).to_hz().abs() < 1e-6, "{padder}");
            }
        }
    }
}

#[test]
fn aligning_with_the_exact_padder_finds_the_exact_parts() {
    for arrangement in [Arrangement::AcrossCoil, Arrangement::AcrossGang] {
        let exact = exact(arrangement);
        let aligned = band().aligned(exact.padder, arrangement, OUTER).unwrap();
        let near = |one: f64, other: f64| (one / other - 1.0).abs() < 1e-9;
        assert!(near(aligned.trimmer.to_f(), exact.trimmer.to_f()));
        assert!(near(aligned.inductance.to_h(), exact.inductance.to_h()));
    }
}

#[test]
fn a_padder_far_too_large_leaves_no_trimmer() {
    let tiny = Capacitance::pf(20.0);
    let refused = band().aligned(tiny, Arrangement::AcrossCoil, OUTER);
    assert_eq!(refused, Err(TrackingError::NoPositiveParts));
    let [low, high] = OUTER;
    let disordered = band().aligned(tiny, Arrangement::AcrossCoil, [high, low]);
    assert!(matches!(
        disordered,
        Err(TrackingError::EndsOutOfOrder { .. })
    ));
}

#[test]
fn aligning_again_wins_back_most_of_what_rounding_costs() {
    for arrangement in [Arrangement::AcrossCoil, Arrangement::AcrossGang] {
        let cost = band().cost(&exact(arrangement), Series::E12, OUTER);
        let (lost, left) = (cost.rounded.to_hz(), cost.aligned.unwrap().to_hz());
        assert!(cost.exact.to_hz() < left && left < lost, "{cost:?}");
    }
}

/// 460 pF lies between 390 and 470 pF, 31 pF between 27 and 33 pF.
#[test]
fn padder_and_trimmer_become_the_nearest_made() {
    let wanted = OscillatorParts {
        padder: Capacitance::pf(460.0),
        trimmer: Capacitance::pf(31.0),
        ..exact(Arrangement::AcrossCoil)
    };
    let made = OscillatorParts {
        padder: Capacitance::pf(470.0),
        trimmer: Capacitance::pf(33.0),
        ..wanted
    };
    assert_eq!(preferred_parts(&wanted, Series::E12), made);
}
