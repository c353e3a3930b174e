//! Two and three settings of the dial, and the best of them.

use crate::{U, off};
use proptest::prelude::{Strategy, prop_assert, proptest};
use superhet::quantities::conversion::Side;
use superhet::quantities::tracking::{
    Minimised, ThreePoints, best_points, padder_two_point, trimmer_two_point,
};
use superhet::units::{Capacitance, Frequency};

/// The ends of a band and an IF.
fn bands() -> impl Strategy<Value = ([f64; 2], f64)> {
    (1e5..1e7_f64, 1.1..3.0_f64, 1e5..2e6_f64)
        .prop_map(|(low, ratio, middle)| ([low, low * ratio], middle))
}

fn curve([low, high]: [f64; 2], middle: f64) -> ThreePoints {
    let settings = [0.07, 0.5, 0.93].map(|share| Frequency::hz(low + share * (high - low)));
    ThreePoints::new(settings, Frequency::hz(middle), Side::Above).unwrap()
}

/// The last exchange moves the settings by less than 1e-12 of the band. A level cubic is at
/// most 18 times its largest error steep over a band's width (the third Chebyshev polynomial
/// has a slope of 9 on a band 2 wide), so each setting moves the error by 2e-11 of itself.
/// The ends' distances from the settings, a hundredth of the band or more, add U of ten
/// bands over that. Rounded up.
const LEVEL: f64 = 1e-9;

proptest! {
    /// The plain difference loses some ten U of the oscillator's frequency, and so does the
    /// oscillator itself.
    #[test]
    fn the_error_is_the_oscillator_less_what_it_should_be(
        (ends, middle) in bands(),
        share in 0.0..1.0_f64,
    ) {
        let curve = curve(ends, middle);
        let dial = Frequency::hz(ends[0] + share * (ends[1] - ends[0]));
        let wanted = dial.to_hz() + middle;
        let plain = curve.oscillator(dial).to_hz() - wanted;
        let error = curve.error(dial).to_hz();
        prop_assert!((plain - error).abs() <= 20.0 * U * wanted, "{plain} {error}");
    }

    /// Too low above the highest setting, too high below the lowest, and by turns between.
    #[test]
    fn the_error_changes_its_sign_at_each_setting((ends, middle) in bands()) {
        let curve = curve(ends, middle);
        let at = |share: f64| curve.error(Frequency::hz(ends[0] + share * (ends[1] - ends[0])));
        let signs = [0.0, 0.3, 0.7, 1.0].map(|share| at(share).to_hz() > 0.0);
        prop_assert!(signs == [true, false, true, false], "{signs:?}");
    }

    /// Least and greatest of the gang's capacitance, made to fit by the padder or by the
    /// trimmer alone, have the ratio that the oscillator needs. Rs − Ro, the padder's
    /// divisor, may be a tenth of Ro for a low IF: the roundings count that much more.
    #[test]
    fn two_points_fit_both_ends((ends, middle) in bands(), picofarads in 50.0..600.0_f64) {
        let [low, high] = ends.map(Frequency::hz);
        let (f, largest) = (Frequency::hz(middle), Capacitance::pf(picofarads));
        let ratio = high.to_hz() / low.to_hz();
        let smallest = largest.to_f() / (ratio * ratio);
        let wanted = (high.to_hz() + middle) / (low.to_hz() + middle);
        let lost = 40.0 * (ratio * ratio) / (ratio * ratio - wanted * wanted);
        let padder = padder_two_point(low, high, f, largest).unwrap().to_f();
        let padded = |gang: f64| gang * padder / (gang + padder);
        prop_assert!(off(padded(largest.to_f()) / padded(smallest), wanted * wanted) <= lost * U);
        let trimmer = trimmer_two_point(low, high, f, largest).unwrap().to_f();
        let trimmed = (largest.to_f() + trimmer) / (smallest + trimmer);
        prop_assert!(off(trimmed, wanted * wanted) <= lost * U);
    }

    /// By the alternation theorem the best curve reaches its largest error at both ends, with
    /// opposite signs, and once between each two settings.
    #[test]
    fn the_best_points_leave_level_errors((ends, middle) in bands(), relative: bool) {
        let minimised = if relative { Minimised::Relative } else { Minimised::Kilohertz };
        let best = best_points(ends.map(Frequency::hz), Frequency::hz(middle), minimised).unwrap();
        let curve = ThreePoints::new(best.settings, Frequency::hz(middle), Side::Above).unwrap();
        let judged = |dial: f64| {
            let error = curve.error(Frequency::hz(dial)).to_hz();
            if relative { error / dial } else { error }
        };
        prop_assert!(off(judged(ends[0]), best.largest) <= LEVEL);
        prop_assert!(off(-judged(ends[1]), best.largest) <= LEVEL);
        let [f1, f2, f3] = best.settings.map(Frequency::to_hz);
        for (from, to) in [(f1, f2), (f2, f3)] {
            // The highest of 2 000 places in a hump: within a millionth of its top.
            let places = (0..=2_000).map(|step| from + (to - from) * f64::from(step) / 2_000.0);
            let highest = places.map(|dial| judged(dial).abs()).fold(0.0, f64::max);
            prop_assert!(off(highest, best.largest) <= 1e-6, "{highest} {best:?}");
        }
    }
}
