//! Responses against the mixer's own arithmetic, and pitches against a turned dial.

use super::*;
use crate::quantities::bands::{Place, Region};
use crate::quantities::conversion::{ConversionError, Side, Sign, image};
use crate::units::Frequency;
use alloc::vec::Vec;
use proptest::prelude::{ProptestConfig, prop_assert, prop_assert_eq, proptest};

const IF: Frequency = Frequency::khz(455.0);

fn khz(value: f64) -> Frequency {
    Frequency::khz(value)
}

fn places(found: &[Response]) -> Vec<f64> {
    found.iter().map(|found| found.frequency.to_khz()).collect()
}

/// D. Roddy and J. Coolen, Electronic Communications, example 7.7.1, p. 236: m and n up to
/// 2 at 950 kHz. F and its parts, which the example leaves out, are 455 and 227.5 kHz
/// and 151.667 kHz.
#[test]
fn the_textbook_s_eight_are_all_there() {
    let found = responses(khz(950.0), IF, Side::Above, 4).unwrap();
    let wanted = |found: &&Response| {
        (1..=2).contains(&found.oscillator_harmonic) && found.signal_harmonic <= 2
    };
    let eight: Vec<Response> = found.iter().filter(wanted).copied().collect();
    assert_eq!(
        places(&eight),
        [475.0, 930.0, 950.0, 1177.5, 1632.5, 1860.0, 2355.0, 3265.0]
    );
}

/// The half-IF response: 2fo − 2f = F, above the station by half the IF.
#[test]
fn the_half_if_response_is_half_an_if_away() {
    let found = responses(khz(1000.0), IF, Side::Above, 4).unwrap();
    let half = found
        .iter()
        .find(|found| {
            (found.oscillator_harmonic, found.signal_harmonic, found.sign) == (2, 2, Sign::Minus)
        })
        .unwrap();
    assert_eq!(half.frequency, khz(1227.5));
    assert_eq!(half.pitch_slope, 1);
}

#[test]
fn the_count_is_what_is_promised() {
    for order in 0..=HIGHEST_ORDER {
        let found = responses(khz(1000.0), khz(470.0), Side::Above, order).unwrap();
        // Every pair with both signs, but one of the two where the oscillator has no part.
        assert_eq!(found.len() as u32, order * order);
    }
    let beyond = responses(khz(1000.0), khz(470.0), Side::Above, u32::MAX).unwrap();
    assert_eq!(beyond.len(), 144);
}

#[test]
fn a_dial_under_the_if_has_no_oscillator_below() {
    let refused = responses(khz(400.0), khz(470.0), Side::Below, 3);
    assert!(matches!(refused, Err(ConversionError::NoOscillator { .. })));
}

#[test]
fn an_image_by_the_sum_is_found_and_moves_twice() {
    let (dial, f) = (khz(700.0), khz(470.0));
    let found = responses(dial, f, Side::Below, 2).unwrap();
    let kind = |kind| {
        found
            .iter()
            .find(|found| found.kind == kind)
            .copied()
            .unwrap()
    };
    let by_sum = kind(ResponseKind::Image);
    assert_eq!(Ok(by_sum.frequency), image(dial, f, Side::Below));
    assert!(by_sum.by_sum);
    assert_eq!(by_sum.pitch_slope, 2);
    assert_eq!(kind(ResponseKind::Wanted).frequency, dial);
}

#[test]
fn an_image_on_medium_wave_names_its_channel() {
    let found = responses(khz(600.0), khz(470.0), Side::Above, 2).unwrap();
    let image = found
        .iter()
        .find(|found| found.kind == ResponseKind::Image)
        .unwrap();
    let hit = image.channel(Region::One).unwrap();
    // 1540 kHz: carriers are at 1539 and 1548 kHz.
    assert_eq!((hit.carrier, hit.beat), (khz(1539.0), khz(1.0)));
    assert_eq!(hit.band.name, "medium wave");
    assert_eq!(image.channel(Region::Two).unwrap().beat, khz(0.0));
    assert!(image.is_within(khz(526.5), khz(1606.5)));
    assert!(image.is_within(khz(1540.0), khz(1540.0)));
    assert!(!image.is_within(khz(526.5), khz(1539.0)));
    assert!(!image.is_within(khz(1541.0), khz(1606.5)));
    let breakthrough = found[1];
    assert_eq!(breakthrough.kind, ResponseKind::Breakthrough);
    assert_eq!(
        (breakthrough.sign, breakthrough.by_sum),
        (Sign::Plus, false)
    );
    assert!(breakthrough.channel(Region::One).is_none());
    assert!(matches!(
        breakthrough.place(Region::One),
        Place::Allocated(_)
    ));
}

/// With the oscillator at 4/3 of the IF a third of the IF is the station's own place, and with
/// it at 5/3 both ways of order 3 meet: the lower order stands first, then the lower harmonic
/// of the oscillator.
#[test]
fn at_one_place_the_lower_order_stands_first() {
    let at = |dial: f64| {
        responses(khz(dial), khz(300.0), Side::Above, 3)
            .unwrap()
            .into_iter()
            .filter(|found| found.frequency == khz(100.0))
            .map(|found| (found.order(), found.oscillator_harmonic))
            .collect::<Vec<_>>()
    };
    assert_eq!(at(100.0), [(2, 1), (3, 0)]);
    assert_eq!(at(200.0), [(3, 0), (3, 1)]);
}

#[test]
fn a_harmonic_of_the_if_lies_at_a_multiple_of_it() {
    let third = if_harmonic(khz(1370.0), IF, 3);
    assert_eq!((third.at, third.beat), (khz(1365.0), khz(5.0)));
}

#[test]
fn one_response_is_the_list_s_own() {
    for side in [Side::Above, Side::Below] {
        for listed in responses(khz(1000.0), IF, side, 4).unwrap() {
            let (m, n) = (listed.oscillator_harmonic, listed.signal_harmonic);
            let asked = response(khz(1000.0), IF, side, (m, n, listed.sign));
            assert_eq!(asked, Ok(Some(listed)));
        }
    }
    assert!(response(khz(400.0), IF, Side::Below, (1, 1, Sign::Plus)).is_err());
}

/// Against a dial that is turned by 1 kHz: places move by m/n of that.
#[test]
fn places_move_as_their_slopes_say() {
    for side in [Side::Above, Side::Below] {
        let at = |dial| responses(khz(dial), IF, side, 4).unwrap();
        let (before, after) = (at(700.0), at(701.0));
        for response in &before {
            let same = |other: &&Response| {
                let of = |one: &Response| (one.oscillator_harmonic, one.signal_harmonic, one.sign);
                of(other) == of(response)
            };
            let then = after.iter().find(same).unwrap();
            let moved = then.frequency.to_khz() - response.frequency.to_khz();
            // A thousandth of a hertz: far above the rounding of the two frequencies.
            assert!(
                (moved - response.place_slope()).abs() < 1e-6,
                "{response:?} by {moved}"
            );
        }
    }
}

#[test]
fn a_carrier_beside_a_response_beats_by_its_harmonic() {
    let found = responses(khz(1000.0), IF, Side::Above, 4).unwrap();
    for response in found {
        let carrier = khz(response.frequency.to_khz() + 2.0);
        let beat = response.beat_with(carrier).to_khz();
        assert!((beat - 2.0 * f64::from(response.signal_harmonic)).abs() < 1e-6);
    }
}

#[test]
fn whistles_come_lowest_first_and_stop_at_the_pitch_asked_for() {
    let found = whistles(khz(909.0), IF, Side::Above, Region::One, khz(9.5), 6).unwrap();
    assert!(found.is_sorted_by(|one, next| one.beat <= next.beat));
    assert!(found.iter().all(|whistle| whistle.beat <= khz(9.5)));
    let neighbours = found
        .iter()
        .filter(|whistle| whistle.cause == WhistleCause::Neighbour);
    assert!(
        neighbours
            .map(|whistle| whistle.at)
            .eq([khz(900.0), khz(918.0)])
    );
    let none = whistles(khz(909.0), IF, Side::Above, Region::One, khz(0.5), 1).unwrap();
    assert_eq!(none, []);
}

/// The IF that a signal makes, as a mixer makes it: the difference or the sum of the two
/// harmonics.
fn made(response: &Response, oscillator: f64, signal: f64) -> f64 {
    let carried = f64::from(response.oscillator_harmonic) * oscillator;
    let harmonic = f64::from(response.signal_harmonic) * signal;
    if response.by_sum {
        harmonic + carried
    } else {
        (harmonic - carried).abs()
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 500, failure_persistence: None, ..ProptestConfig::default() })]

    /// A signal put at each response makes the IF, to the rounding of m·fo and n·f: under
    /// 1e-14 of the larger, at most 12 × 32 MHz.
    #[test]
    fn a_signal_at_a_response_makes_the_if(
        dial in 150.0..30_000.0_f64, intermediate in 100.0..2_000.0_f64, above in proptest::bool::ANY,
    ) {
        let side = if above { Side::Above } else { Side::Below };
        let found = responses(khz(dial), khz(intermediate), side, HIGHEST_ORDER);
        let oscillator = (dial + if above { intermediate } else { -intermediate }) * 1e3;
        let Ok(found) = found else {
            prop_assert!(oscillator <= 0.0);
            return Ok(());
        };
        prop_assert!(found.is_sorted_by(|one, next| one.frequency <= next.frequency));
        for response in &found {
            let error = made(response, oscillator, response.frequency.to_hz()) - intermediate * 1e3;
            prop_assert!(error.abs() < 1e-5, "{response:?}: {error}");
        }
        for kind in [ResponseKind::Wanted, ResponseKind::Breakthrough] {
            prop_assert_eq!(found.iter().filter(|found| found.kind == kind).count(), 1);
        }
    }

    /// The dial turned by 10 Hz with the station at rest, and a signal 1 kHz of IF away from
    /// each response: the beat moves by 10 Hz times the slope.
    #[test]
    fn the_pitch_moves_as_many_times_as_is_said(
        dial in 150.0..30_000.0_f64, intermediate in 100.0..2_000.0_f64, above in proptest::bool::ANY,
    ) {
        let side = if above { Side::Above } else { Side::Below };
        let Ok(found) = responses(khz(dial), khz(intermediate), side, HIGHEST_ORDER) else {
            return Ok(());
        };
        let (station, turn) = (dial * 1e3, 10.0);
        let oscillator = station + if above { intermediate } else { -intermediate } * 1e3;
        for response in &found {
            let away = 1e3 / f64::from(response.signal_harmonic);
            let signal = response.frequency.to_hz() + away;
            let beat = |oscillator: f64| {
                made(response, oscillator, signal) - (oscillator - station).abs()
            };
            let moved = (beat(oscillator + turn) - beat(oscillator)).abs() / turn;
            // Neither side of the set nor the product changes its sense within 10 Hz.
            let steady = (oscillator - station).abs() > 100.0
                && f64::from(response.oscillator_harmonic) * turn < intermediate * 1e3;
            prop_assert!(steady);
            prop_assert!((moved - f64::from(response.pitch_slope)).abs() < 1e-4, "{response:?} {moved}");
        }
    }

    /// The set's own IF and its harmonic, made of a station at rest while the dial turns.
    #[test]
    fn a_harmonic_of_the_if_moves_as_fast_as_it_is_high(harmonic in 2..=10_u32, offset in 0.5..5.0_f64) {
        let intermediate = 470.0;
        let station = f64::from(harmonic) * intermediate + offset;
        let beat = |oscillator: f64| f64::from(harmonic) * (oscillator - station) - station;
        let moved = (beat(station + intermediate + 0.01) - beat(station + intermediate)).abs();
        prop_assert!((moved / 0.01 - f64::from(harmonic)).abs() < 1e-6);
        let listed = whistles(khz(station), khz(intermediate), Side::Above, Region::One, khz(6.0), 1);
        let own = WhistleCause::IfHarmonic(harmonic);
        let listed = listed.map(|all| all.into_iter().find(|whistle| whistle.cause == own));
        let found = listed.ok().flatten().map(|found| (found.pitch_slope, (found.beat.to_khz() - offset).abs() < 1e-6));
        prop_assert_eq!(found, Some((harmonic, true)));
    }
}
