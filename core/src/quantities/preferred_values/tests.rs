//! The series against their rule, and neighbours by trying all.

use super::{E24, E96, Series};
use alloc::vec::Vec;
use proptest::prelude::{ProptestConfig, prop_assert, prop_assert_eq, proptest};

/// Every value of a series from 1e-13 to 1e8, lowest first.
fn all(series: Series) -> Vec<f64> {
    (-13..8)
        .flat_map(|decade| (0..series.count()).map(move |place| series.value(place, decade)))
        .collect()
}

/// IEC 60063 rounds the geometric series to three digits.
#[test]
fn the_fine_series_are_the_geometric_one_rounded() {
    for (place, figure) in E96.into_iter().enumerate() {
        let exact = 100.0 * libm::pow(10.0, place as f64 / 96.0);
        assert_eq!(f64::from(figure), libm::round(exact), "place {place}");
    }
}

/// The coarse series does not: eight figures of E24 differ from the rounded series by one
/// unit of the second digit, as the standard has them.
#[test]
fn the_coarse_series_departs_where_the_standard_does() {
    let departs = |place: &usize| {
        let exact = 10.0 * libm::pow(10.0, *place as f64 / 24.0);
        f64::from(E24[*place]) != libm::round(exact)
    };
    let departing: Vec<u16> = (0..24).filter(departs).map(|place| E24[place]).collect();
    assert_eq!(departing, [27, 30, 33, 36, 39, 43, 47, 82]);
}

#[test]
fn values_rise_and_are_the_decimal_numbers_own_floats() {
    for series in Series::ALL {
        assert!(all(series).is_sorted_by(|one, next| one < next));
    }
    for (got, wanted) in [
        (Series::E12.nearest(4.6e-10), 470e-12),
        (Series::E6.nearest(2e-12), 2.2e-12),
        (Series::E96.nearest(1e6), 1e6),
        (Series::E48.nearest(1.17e5), 115e3),
    ] {
        assert_eq!(got, wanted);
    }
}

#[test]
fn a_preferred_value_is_its_own_nearest() {
    for series in Series::ALL {
        let values = all(series);
        for neighbours in values.windows(3) {
            let [before, value, after] = [neighbours[0], neighbours[1], neighbours[2]];
            assert_eq!(series.nearest(value), value, "{series:?}");
            assert_eq!(series.next_up(value), after, "{series:?} {value:e}");
            assert_eq!(series.next_down(value), before, "{series:?} {value:e}");
        }
    }
}

#[test]
fn where_floats_end_a_number_is_given_back() {
    for wanted in [0.0, f64::MIN_POSITIVE, f64::MAX] {
        let found = [
            Series::E12.nearest(wanted),
            Series::E12.next_up(wanted),
            Series::E12.next_down(wanted),
        ];
        assert_eq!(found, [wanted; 3]);
    }
    assert!(Series::E12.next_up(1e300) > 1e300 && Series::E12.next_down(1e-300) < 1e-300);
}

#[test]
fn halfway_between_two_the_lower_is_nearest() {
    assert_eq!(Series::E24.nearest(315.0), 300.0);
    assert_eq!(Series::E24.nearest(315.1), 330.0);
    assert_eq!(Series::E6.nearest(840.0), 680.0);
    assert_eq!(Series::E6.nearest(841.0), 1000.0);
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 2_000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn neighbours_are_those_found_by_trying_all(exponent in -12.0..7.0_f64, place in 0..5_usize) {
        let series = Series::ALL[place];
        let wanted = libm::pow(10.0, exponent);
        let values = all(series);
        let up = values.iter().copied().find(|value| *value > wanted);
        let down = values.iter().copied().rev().find(|value| *value < wanted);
        prop_assert_eq!(Some(series.next_up(wanted)), up);
        prop_assert_eq!(Some(series.next_down(wanted)), down);
        let away = |value: f64| (value - wanted).abs();
        let least = values.iter().copied().map(away).fold(f64::INFINITY, f64::min);
        prop_assert_eq!(away(series.nearest(wanted)), least);
        // Half of the widest step of E6, 22/15: no value is farther off by share.
        prop_assert!(away(series.nearest(wanted)) / wanted <= 0.25);
    }
}
