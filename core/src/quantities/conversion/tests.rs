//! Limits, symmetries and error conditions of the superhet's arithmetic.

use super::{
    ConversionError, Side, Sign, capacitance_ratio, dial, difference, frequency_ratio, image,
    image_is_a_sum, image_whistle, old_dial_frequency, old_dial_wavelength, oscillator, spurious,
    sum, whistle,
};
use crate::units::{Frequency, Ratio, Wavelength};
use alloc::string::ToString;
use proptest::prelude::{
    ProptestConfig, Strategy, prop_assert, prop_assert_eq, prop_assume, proptest,
};

const SIDES: [Side; 2] = [Side::Above, Side::Below];

fn khz(value: f64) -> Frequency {
    Frequency::khz(value)
}

#[test]
fn each_refusal_names_its_parameter_and_says_the_rule() {
    let f = khz(470.0);
    for (error, parameter, sentence) in [
        (
            oscillator(khz(400.0), f, Side::Below).unwrap_err(),
            "dial",
            "with the oscillator below, dial must be above the IF (got dial 400 kHz, IF 470 kHz)",
        ),
        (
            image(khz(940.0), f, Side::Below).unwrap_err(),
            "dial",
            "with the oscillator below, dial must not be twice the IF: its image is at 0 Hz \
             (got dial 940 kHz, IF 470 kHz)",
        ),
        (
            dial(khz(400.0), f, Side::Above).unwrap_err(),
            "oscillator",
            "with the oscillator above, oscillator must be above the IF \
             (got oscillator 400 kHz, IF 470 kHz)",
        ),
        (
            frequency_ratio(khz(500.0), khz(500.0)).unwrap_err(),
            "f-high",
            "f-high must be above f-low (got f-low 500 kHz, f-high 500 kHz)",
        ),
    ] {
        assert_eq!(error.parameter(), parameter);
        assert_eq!(error.to_string(), sentence);
    }
}

#[test]
fn below_the_oscillator_has_to_run_above_nothing() {
    for dial in [1.0, 469.0, 470.0] {
        let error = oscillator(khz(dial), khz(470.0), Side::Below);
        assert!(matches!(error, Err(ConversionError::NoOscillator { .. })));
        let error = image(khz(dial), khz(470.0), Side::Below);
        assert!(matches!(error, Err(ConversionError::NoOscillator { .. })));
    }
    assert_eq!(
        oscillator(khz(471.0), khz(470.0), Side::Below),
        Ok(khz(1.0))
    );
}

#[test]
fn below_the_image_is_a_sum_between_f_and_twice_f() {
    let f = khz(470.0);
    let found = |dial| image(khz(dial), f, Side::Below);
    assert_eq!(found(471.0), Ok(khz(469.0)));
    assert_eq!(found(939.0), Ok(khz(1.0)));
    assert!(matches!(found(940.0), Err(ConversionError::NoImage { .. })));
    assert_eq!(found(941.0), Ok(khz(1.0)));
    let sum = |dial, side| image_is_a_sum(khz(dial), f, side);
    assert!(sum(471.0, Side::Below) && sum(939.0, Side::Below));
    assert!(!sum(470.0, Side::Below) && !sum(940.0, Side::Below));
    assert!(!sum(941.0, Side::Below) && !sum(700.0, Side::Above));
}

#[test]
fn above_the_oscillator_has_to_run_above_f() {
    for frequency in [1.0, 470.0] {
        let error = dial(khz(frequency), khz(470.0), Side::Above);
        assert!(matches!(error, Err(ConversionError::NoDial { .. })));
    }
    assert_eq!(dial(khz(1.0), khz(470.0), Side::Below), Ok(khz(471.0)));
}

#[test]
fn differences_may_be_nothing() {
    assert_eq!(difference(khz(909.0), khz(909.0)), Frequency::hz(0.0));
    assert_eq!(whistle(khz(910.0), khz(455.0), 2), Frequency::hz(0.0));
    let zero = image_whistle(khz(1370.0), khz(900.0), khz(1840.0));
    assert_eq!(zero, Frequency::hz(0.0));
}

#[test]
fn spurious_excludes_what_is_not_above_nothing() {
    let found = |m, n, sign| spurious(khz(100.0), khz(470.0), m, n, sign);
    assert!(found(0, 1, Sign::Minus).is_err());
    assert!(found(4, 1, Sign::Minus).is_err());
    assert_eq!(found(5, 1, Sign::Minus), Ok(khz(30.0)));
    assert_eq!(found(0, 2, Sign::Plus), Ok(khz(235.0)));
    assert!(found(1, 0, Sign::Plus).is_err());
    assert!(spurious(khz(235.0), khz(470.0), 2, 3, Sign::Minus).is_err());
}

#[test]
fn a_band_has_to_run_upwards() {
    assert!(capacitance_ratio(khz(500.0), khz(500.0)).is_err());
    assert!(capacitance_ratio(khz(1500.0), khz(500.0)).is_err());
    assert!(frequency_ratio(khz(500.0), khz(500.0)).is_err());
    assert!(frequency_ratio(khz(1500.0), khz(500.0)).is_err());
}

/// Half of sum plus difference is the higher frequency, half of sum less difference the
/// lower: no outside value is needed.
#[test]
fn sum_and_difference_hold_both_frequencies() {
    for (signal, oscillator) in [(1089.0, 1559.0), (198.0, 668.0)] {
        let (signal, oscillator) = (khz(signal), khz(oscillator));
        let (high, low) = (sum(signal, oscillator), difference(signal, oscillator));
        assert_eq!(high.to_hz() + low.to_hz(), 2.0 * oscillator.to_hz());
        assert_eq!(high.to_hz() - low.to_hz(), 2.0 * signal.to_hz());
    }
}

/// D. Roddy and J. Coolen, Electronic Communications, examples 7.3.1 and 7.4.1: the ratios
/// of signal and of oscillator over 550 to 1600 kHz with an IF of 455 kHz, as printed.
#[test]
fn frequency_ratios_are_those_of_the_textbook() {
    const PRINTED: f64 = 0.5e-3;
    for (low, high, printed) in [(550.0, 1600.0, 2.909), (1005.0, 2055.0, 2.045)] {
        let found = frequency_ratio(khz(low), khz(high)).map_or(f64::NAN, Ratio::value);
        assert!(
            (found - printed).abs() <= PRINTED,
            "{low} to {high} kHz: {found}, printed {printed}"
        );
    }
}

#[test]
fn sentences_name_the_rule_and_the_values() {
    let sentence = |error: Result<Frequency, ConversionError>| error.unwrap_err().sentence();
    assert_eq!(
        sentence(image(khz(940.0), khz(470.0), Side::Below)),
        "with the oscillator below, dial must not be twice the IF: its image is at 0 Hz \
         (got dial 940 kHz, IF 470 kHz)"
    );
    assert_eq!(
        sentence(dial(khz(400.0), khz(470.0), Side::Above)),
        "with the oscillator above, oscillator must be above the IF (got oscillator 400 kHz, \
         IF 470 kHz)"
    );
    assert_eq!(
        sentence(spurious(khz(100.0), khz(470.0), 4, 1, Sign::Minus)),
        "with sign minus, m times the oscillator must be above the IF, m being 4 (got \
         oscillator 100 kHz, IF 470 kHz)"
    );
}

#[test]
fn old_dials_reckon_with_a_rounder_speed() {
    let metres = old_dial_wavelength(khz(1000.0)).to_m();
    let exact = khz(1000.0).to_wavelength().to_m();
    assert!((metres / exact - 1.000_692_3).abs() < 1e-7);
    assert_eq!(old_dial_frequency(Wavelength::m(1500.0)), khz(200.0));
}

/// Frequencies over the whole range that is accepted, as many low ones as high ones.
fn radio() -> impl Strategy<Value = Frequency> {
    (3.0..9.0_f64).prop_map(|power| Frequency::hz(libm::pow(10.0, power)))
}

/// Half the distance between 1 and the next number: one operation rounds by at most
/// this share of its result.
const ROUNDING: f64 = f64::EPSILON / 2.0;

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]

    /// dial + sF is rounded once, and so is taking sF away again. Each error is at most
    /// ROUNDING of its own result, and neither result exceeds dial + F (by more than a
    /// rounding): together 2·ROUNDING·(dial + F), and a hair for the hair.
    #[test]
    fn the_dial_comes_back_from_the_oscillator(station in radio(), f in radio()) {
        for side in SIDES {
            let Ok(found) = oscillator(station, f, side) else {
                prop_assert!(side == Side::Below && station <= f);
                continue;
            };
            let bound = 2.001 * ROUNDING * (station.to_hz() + f.to_hz());
            // Back to 0 or less only if the error could reach so far.
            match dial(found, f, side) {
                Ok(back) => prop_assert!((back.to_hz() - station.to_hz()).abs() <= bound),
                Err(_) => prop_assert!(station.to_hz() <= bound),
            }
        }
    }

    /// The image is as far from the oscillator as the station is. Image and oscillator
    /// are rounded once each, below dial + 2F, and so is their difference.
    #[test]
    fn station_and_image_make_the_same_if(station in radio(), f in radio()) {
        for side in SIDES {
            let (Ok(oscillator), Ok(found)) = (oscillator(station, f, side), image(station, f, side))
            else { continue };
            let made = if image_is_a_sum(station, f, side) {
                found.to_hz() + oscillator.to_hz()
            } else {
                difference(found, oscillator).to_hz()
            };
            let bound = 3.001 * ROUNDING * (station.to_hz() + 2.0 * f.to_hz());
            prop_assert!((made - f.to_hz()).abs() <= bound);
        }
    }

    /// Two divisions, each rounded once: 2·ROUNDING of the value, and a hair for their
    /// product.
    #[test]
    fn the_frequency_comes_back_from_the_wavelength(frequency in radio()) {
        let back = frequency.to_wavelength().to_frequency().to_hz();
        let bound = 2.001 * ROUNDING * frequency.to_hz();
        prop_assert!((back - frequency.to_hz()).abs() <= bound);
    }

    /// n·found differs from m·oscillator by F: the product m·oscillator, the sum and the
    /// division are rounded once each, none above m·oscillator + F, and the check rounds
    /// its own product and difference likewise: 6·ROUNDING with room for the hairs.
    #[test]
    fn a_spurious_signal_makes_the_if(
        oscillator in radio(), f in radio(), m in 0..11_u32, n in 1..11_u32
    ) {
        for sign in [Sign::Plus, Sign::Minus] {
            let Ok(found) = spurious(oscillator, f, m, n, sign) else {
                prop_assert_eq!(sign, Sign::Minus);
                continue;
            };
            let carried = f64::from(m) * oscillator.to_hz();
            let made = (f64::from(n) * found.to_hz() - carried).abs();
            let bound = 6.0 * ROUNDING * (carried + f.to_hz());
            prop_assert!((made - f.to_hz()).abs() <= bound);
        }
    }

    /// Each of the three ratios is a division squared, 3·ROUNDING; their product and
    /// quotient round once each.
    #[test]
    fn a_band_in_two_parts_multiplies(one in radio(), two in radio(), three in radio()) {
        let mut edges = [one.to_hz(), two.to_hz(), three.to_hz()];
        edges.sort_by(f64::total_cmp);
        prop_assume!(edges[0] < edges[1] && edges[1] < edges[2]);
        let [low, middle, high] = edges.map(Frequency::hz);
        let ratio = |from, to| capacitance_ratio(from, to).map_or(f64::NAN, Ratio::value);
        let parts = ratio(low, middle) * ratio(middle, high);
        prop_assert!((parts / ratio(low, high) - 1.0).abs() <= 11.001 * ROUNDING);
    }
}
