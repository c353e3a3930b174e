use super::*;

fn textbook() -> ThreePoints {
    let settings = [600.0, 950.0, 1500.0].map(Frequency::khz);
    ThreePoints::new(settings, Frequency::khz(455.0), Side::Above).unwrap()
}

#[test]
fn the_error_is_nothing_at_the_three_settings() {
    for khz in [600.0, 950.0, 1500.0] {
        assert_eq!(textbook().error(Frequency::khz(khz)).to_hz(), 0.0);
        let oscillator = textbook().oscillator(Frequency::khz(khz)).to_hz();
        // Rounding of a root of sums: a few ulp.
        assert!((oscillator / (khz + 455.0) / 1e3 - 1.0).abs() < 8.0 * f64::EPSILON);
    }
}

#[test]
fn both_forms_of_the_error_agree() {
    let curve = textbook();
    for step in 0..=106 {
        let dial = 540e3 + 10e3 * f64::from(step);
        let plain = curve.oscillator(Frequency::hz(dial)).to_hz() - (dial + 455e3);
        let stable = curve.error(Frequency::hz(dial)).to_hz();
        // The plain difference carries the rounding of two megahertz.
        assert!(
            (plain - stable).abs() < 4.0 * 2e6 * f64::EPSILON,
            "{dial}: {plain} {stable}"
        );
    }
}

#[test]
fn the_order_of_the_settings_does_not_matter() {
    let other = [1500.0, 600.0, 950.0].map(Frequency::khz);
    let other = ThreePoints::new(other, Frequency::khz(455.0), Side::Above).unwrap();
    for khz in [540.0, 800.0, 1605.0] {
        let (one, two) = (
            textbook().error(Frequency::khz(khz)),
            other.error(Frequency::khz(khz)),
        );
        assert!((one.to_hz() - two.to_hz()).abs() < 1e-9);
    }
}

#[test]
fn the_loss_follows_the_error() {
    let at = |khz: f64| textbook().loss(Frequency::khz(khz), 80.0).to_db();
    assert_eq!(at(950.0), 0.0);
    assert!(at(540.0) > at(1600.0));
}

#[test]
fn below_is_refused_with_the_reason() {
    let settings = [600.0, 950.0, 1500.0].map(Frequency::khz);
    let refused = ThreePoints::new(settings, Frequency::khz(455.0), Side::Below).unwrap_err();
    assert_eq!(refused, TrackingError::OscillatorBelow);
    assert!(alloc::format!("{refused}").contains("larger one"));
}
