//! What is shown, and that it reads back.

use super::{exact, text};
use crate::units::Kind::{
    self, Capacitance, Conductance, Decibels, Depth, Duration, Frequency, Inductance, Integer,
    Power, Ratio, Resistance, Voltage, Wavelength,
};
use crate::units::parse;
use proptest::prelude::{ProptestConfig, any, prop_assert, prop_assert_eq, prop_assume, proptest};

const NUMBERS: [Kind; 11] = [
    Frequency,
    Wavelength,
    Inductance,
    Capacitance,
    Resistance,
    Voltage,
    Power,
    Conductance,
    Duration,
    Decibels,
    Ratio,
];

/// Kind, SI value, text.
const SHOWN: &[(Kind, f64, &str)] = &[
    (Frequency, 0.0, "0 Hz"),
    (Frequency, 1.0, "1 Hz"),
    (Frequency, 440.5, "440.5 Hz"),
    (Frequency, 999.0, "999 Hz"),
    (Frequency, 999.999_94, "999.9999 Hz"),
    (Frequency, 999.999_96, "1 kHz"), // the unit is picked after rounding
    (Frequency, 1000.0, "1 kHz"),
    (Frequency, 455e3, "455 kHz"),
    (Frequency, 1_670e3, "1670 kHz"),
    (Frequency, 1_249_135.241_666, "1249.135 kHz"),
    (Frequency, 2_999_999.0, "2999.999 kHz"),
    (Frequency, 2_999_999.4, "2999.999 kHz"),
    (Frequency, 2_999_999.6, "3 MHz"),
    (Frequency, 3e6, "3 MHz"),
    (Frequency, 3.41e6, "3.41 MHz"),
    (Frequency, 27.91e6, "27.91 MHz"),
    (Frequency, 1e9, "1000 MHz"),
    (Frequency, 1e17, "100000000000 MHz"),
    (Frequency, 1e18, "1e12 MHz"),
    (Frequency, 1e-7, "0.0000001 Hz"),
    (Frequency, 1.5e-8, "1.5e-8 Hz"),
    (Frequency, -4_675.0, "-4.675 kHz"),
    (Wavelength, 250.0, "250 m"),
    (Wavelength, 299.792_458, "299.7925 m"),
    (Inductance, 0.4e-6, "0.4 µH"),
    (Inductance, 175e-6, "175 µH"),
    (Inductance, 1e-3, "1 mH"),
    (Inductance, 2.2e-3, "2.2 mH"),
    (Inductance, 10.0, "10 H"),
    (Capacitance, 2.5e-12, "2.5 pF"),
    (Capacitance, 500e-12, "500 pF"),
    (Capacitance, 1e-9, "1 nF"),
    (Capacitance, 8.374e-9, "8.374 nF"),
    (Capacitance, 0.1e-6, "100 nF"),
    (Capacitance, 8e-6, "8 µF"),
    (Resistance, 0.5, "0.5 Ω"),
    (Resistance, 330.0, "330 Ω"),
    (Resistance, 47e3, "47 kΩ"),
    (Resistance, 2.2e6, "2.2 MΩ"),
    (Voltage, 5e-6, "5 µV"),
    (Voltage, 60e-3, "60 mV"),
    (Voltage, 250.0, "250 V"),
    (Voltage, 1200.0, "1.2 kV"),
    (Power, 50e-3, "50 mW"),
    (Power, 4.5, "4.5 W"),
    (Power, 50e3, "50 kW"),
    (Conductance, 2e-3, "2 mA/V"),
    (Conductance, 0.65e-3, "0.65 mA/V"),
    (Conductance, 50e-6, "50 µA/V"),
    (Duration, 0.1, "100 ms"),
    (Duration, 1.5, "1.5 s"),
    (Duration, 50e-6, "50 µs"),
    (Decibels, 38.686_72, "38.68672 dB"),
    (Decibels, -3.0, "-3 dB"),
    (Ratio, 8.462_809_917, "8.46281"),
    (Ratio, 1e-6, "0.000001"),
    (Depth, 0.8, "0.8"),
    (Integer, 2.0, "2"),
    (Integer, 8.0, "8"),
];

#[test]
fn each_kind_is_shown_as_the_trade_writes_it() {
    for (kind, value, wanted) in SHOWN {
        assert_eq!(text(*kind, *value), *wanted, "{value:e}");
    }
}

#[test]
fn what_is_no_number_is_shown_in_words() {
    assert_eq!(text(Frequency, f64::NAN), "not a number");
    assert_eq!(text(Frequency, f64::INFINITY), "infinite");
    assert_eq!(text(Frequency, f64::NEG_INFINITY), "minus infinity");
    assert_eq!(text(Frequency, -0.0), "0 Hz");
}

#[test]
fn a_tie_goes_to_the_even_digit() {
    assert_eq!(text(Ratio, 1_234_567.5), "1234568");
    assert_eq!(text(Ratio, 1_234_568.5), "1234568");
}

#[test]
fn newtypes_are_padded_like_other_text() {
    let shown = alloc::format!("{:>10}", crate::units::Frequency::khz(455.0));
    assert_eq!(shown, "   455 kHz");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]

    /// Showing rounds to seven digits, an error of at most half a unit of the seventh:
    /// 0.5·10^-6 of the first digit's place, so at most 5·10^-7 of the value. Reading
    /// rounds once more, by at most 2^-53 of it.
    #[test]
    fn what_is_shown_reads_back(bits in any::<u64>(), kind in 0..NUMBERS.len()) {
        let (value, kind) = (f64::from_bits(bits), NUMBERS[kind]);
        prop_assume!(value.is_normal());
        let shown = text(kind, value);
        let read = parse::value(kind, &shown, None);
        let read = read.map_err(|error| proptest::test_runner::TestCaseError::fail(error.sentence()))?;
        prop_assert!((read - value).abs() <= value.abs() * (5e-7 + f64::EPSILON), "{shown}");
        prop_assert_eq!(text(kind, read), shown);
    }

    /// The same in the range where sets are built, where the value is one a person has
    /// typed with at most seven digits: then nothing is lost.
    #[test]
    fn seven_typed_digits_are_shown_again(digits in 1_u32..10_000_000, power in -9_i32..4) {
        let value = parse::value(Ratio, &alloc::format!("{digits}e{power}"), None);
        let value = value.map_err(|error| proptest::test_runner::TestCaseError::fail(error.sentence()))?;
        let read = parse::value(Ratio, &text(Ratio, value), None);
        prop_assert_eq!(read, Ok(value));
    }

    #[test]
    fn at_most_seven_digits_and_no_trailing_zeros(bits in any::<u64>()) {
        let value = f64::from_bits(bits);
        prop_assume!(value.is_finite() && value != 0.0);
        let shown = text(Ratio, value);
        let number = shown.split('e').next().unwrap_or("");
        let digits = number.replace(['-', '.'], "");
        let significant = digits.trim_start_matches('0').trim_end_matches('0');
        prop_assert!(significant.len() <= 7, "{}", shown);
        prop_assert!(!number.contains('.') || !number.ends_with(['0', '.']), "{}", shown);
    }
}

#[test]
fn exact_digits_of_round_numbers_are_short() {
    // The nearest number to a tenth is 0.1000000000000000055: not 1 and zeros.
    for (value, digits) in [(0.0, "0"), (470e3, "47e4"), (0.1, "10000000000000001e-17")] {
        assert_eq!(exact(value), digits);
    }
    assert_eq!(exact(f64::NAN), "not a number");
}

proptest! {
    #[test]
    fn exact_digits_read_back_to_the_same_bit(bits in any::<u64>()) {
        let value = f64::from_bits(bits & (u64::MAX >> 1));
        prop_assume!(value.is_finite());
        let read = parse::value(Decibels, &(exact(value) + " dB"), None);
        // What parsing refuses as too long or too large never comes from a working.
        if let Ok(read) = read {
            prop_assert_eq!(read.to_bits(), value.to_bits());
        } else {
            prop_assert!(!(1e-300..1e300).contains(&value), "{}", exact(value));
        }
    }
}
