use super::*;
use crate::quantities::resonance::resonance;
use crate::units::Inductance;

const LOW: Frequency = Frequency::khz(500.0);
const HIGH: Frequency = Frequency::khz(1600.0);
const IF: Frequency = Frequency::khz(465.0);

/// The oscillator's error in mid band when `whole(signal capacitance)` tunes it and it is
/// exact at the low end.
fn error_at_1000(whole: impl Fn(f64) -> f64) -> f64 {
    let largest = 350e-12;
    let at = |khz: f64| whole(largest * (500.0 / khz) * (500.0 / khz));
    // The coil that makes the low end exact.
    let coil = 1.0 / (core::f64::consts::TAU * 965e3).powi(2) / at(500.0);
    let ends = resonance(Inductance::h(coil), Capacitance::f(at(1600.0)));
    assert!(
        (ends.to_khz() - 2065.0).abs() < 1e-6,
        "the high end is exact too: {ends:?}"
    );
    resonance(Inductance::h(coil), Capacitance::f(at(1000.0))).to_khz() - 1465.0
}

#[test]
fn padder_alone_is_46_khz_low_in_mid_band() {
    let padder = padder_two_point(LOW, HIGH, IF, Capacitance::pf(350.0))
        .unwrap()
        .to_f();
    // check-values section 5, mid-band error of the padder-only example: −46.1 kHz.
    let error = error_at_1000(|gang| gang * padder / (gang + padder));
    assert!((error + 46.1).abs() < 0.1, "{error}");
}

#[test]
fn trimmer_alone_is_165_khz_high_in_mid_band() {
    let trimmer = trimmer_two_point(LOW, HIGH, IF, Capacitance::pf(350.0))
        .unwrap()
        .to_f();
    // catalogue.md, "Tracking": +165 kHz.
    let error = error_at_1000(|gang| gang + trimmer);
    assert!((error - 165.0).abs() < 0.5, "{error}");
}

#[test]
fn ends_out_of_order_are_refused() {
    let c = Capacitance::pf(350.0);
    let refused = TrackingError::EndsOutOfOrder {
        low: HIGH,
        high: LOW,
    };
    assert_eq!(padder_two_point(HIGH, LOW, IF, c), Err(refused));
    let refused = TrackingError::EndsOutOfOrder {
        low: LOW,
        high: LOW,
    };
    assert_eq!(trimmer_two_point(LOW, LOW, IF, c), Err(refused));
}
