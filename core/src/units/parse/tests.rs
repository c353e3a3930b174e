//! What is read, what is refused, and that nothing makes it fall over.

use super::{Reading, Rule, reading, value};
use crate::units::Kind::{
    self, Capacitance, Choice, Conductance, Decibels, Depth, Duration, Frequency, Inductance,
    Integer, Power, Ratio, Resistance, Voltage, Wavelength,
};
use alloc::string::{String, ToString};
use proptest::prelude::{ProptestConfig, any, prop_assert, prop_assert_eq, proptest};

const KINDS: [Kind; 14] = [
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
    Depth,
    Integer,
    Choice,
];

/// Kind, what is typed, the SI value to the last bit, the unit as it is shown back.
const READ: &[(Kind, &str, f64, &str)] = &[
    (Frequency, "1.2 MHz", 1.2e6, "MHz"),
    (Frequency, "1200kHz", 1.2e6, "kHz"),
    (Frequency, "1,200 kHz", 1.2e6, "kHz"),
    (Frequency, "1 200 kHz", 1.2e6, "kHz"),
    (Frequency, "1\u{a0}200\u{a0}kHz", 1.2e6, "kHz"),
    (Frequency, "1\u{202f}200 kHz", 1.2e6, "kHz"),
    (Frequency, "1200 kc/s", 1.2e6, "kHz"),
    (Frequency, "1200 kc", 1.2e6, "kHz"),
    (Frequency, "1200 KC.", 1.2e6, "kHz"),
    (Frequency, "1.2 Mc/s", 1.2e6, "MHz"),
    (Frequency, "1.2 mc", 1.2e6, "MHz"),
    (Frequency, "1.2e6 Hz", 1.2e6, "Hz"),
    (Frequency, "1.2E+6hz", 1.2e6, "Hz"),
    (Frequency, "12e-1 MHZ", 1.2e6, "MHz"),
    (Frequency, "1,200,000 c/s", 1.2e6, "Hz"),
    (Frequency, "1 200 000 Hz", 1.2e6, "Hz"),
    (Frequency, "1,2 MHz", 1.2e6, "MHz"),
    (Frequency, "1,2000 MHz", 1.2e6, "MHz"),
    (Frequency, "0,455 MHz", 455e3, "MHz"),
    (Frequency, ",455 MHz", 455e3, "MHz"),
    (Frequency, "0,5 MHz", 500e3, "MHz"),
    (Frequency, "1 200,5 kHz", 1_200_500.0, "kHz"),
    (Frequency, "1 200.5 kHz", 1_200_500.0, "kHz"),
    (Frequency, "+455 kHz", 455e3, "kHz"),
    (Frequency, "-5 kHz", -5e3, "kHz"),
    (Frequency, "\u{2212}5 kHz", -5e3, "kHz"),
    (Frequency, "1.200 kHz", 1200.0, "kHz"),
    (Frequency, "0 kHz", 0.0, "kHz"),
    (Frequency, "0.1 GHz", 100e6, "GHz"),
    (Frequency, "300 m", 299_792_458.0 / 300.0, "m"),
    (Frequency, "250 metres", 299_792_458.0 / 250.0, "m"),
    (Wavelength, "250 m", 250.0, "m"),
    (Wavelength, "250m", 250.0, "m"),
    (Wavelength, "1,500 Metres", 1500.0, "m"),
    (Wavelength, "1.5 km", 1500.0, "km"),
    (Inductance, "175 µH", 175e-6, "µH"),
    (Inductance, "175 \u{3bc}H", 175e-6, "µH"),
    (Inductance, "175uH", 175e-6, "µH"),
    (Inductance, "175 UH", 175e-6, "µH"),
    (Inductance, "0.2 mH", 0.2e-3, "mH"),
    (Inductance, "0.2 MH", 0.2e-3, "mH"),
    (Inductance, "10 H", 10.0, "H"),
    (Capacitance, "500 pF", 500e-12, "pF"),
    (Capacitance, "500 pf", 500e-12, "pF"),
    (Capacitance, "500 PF", 500e-12, "pF"),
    (Capacitance, "500 mmf", 500e-12, "pF"),
    (Capacitance, "500 MMFD.", 500e-12, "pF"),
    (Capacitance, "500 mmfd", 500e-12, "pF"),
    (Capacitance, "500 µµF", 500e-12, "pF"),
    (Capacitance, "500 uuf", 500e-12, "pF"),
    (Capacitance, "0.0005 mfd", 500e-12, "µF"),
    (Capacitance, "0.0005 MFD", 500e-12, "µF"),
    (Capacitance, "0.0005 µF", 500e-12, "µF"),
    (Capacitance, "0,0005 µF", 500e-12, "µF"),
    (Capacitance, ".01 uF", 0.01e-6, "µF"),
    (Capacitance, "2 nF", 2e-9, "nF"),
    (Resistance, "47k", 47e3, "kΩ"),
    (Resistance, "47 K", 47e3, "kΩ"),
    (Resistance, "47 kΩ", 47e3, "kΩ"),
    (Resistance, "47 kohm", 47e3, "kΩ"),
    (Resistance, "0.5 meg", 0.5e6, "MΩ"),
    (Resistance, "0.5M", 0.5e6, "MΩ"),
    (Resistance, "0.5 MΩ", 0.5e6, "MΩ"),
    (Resistance, "2.2 megohm", 2.2e6, "MΩ"),
    (Resistance, "2.2 Megohms", 2.2e6, "MΩ"),
    (Resistance, "330 ohm", 330.0, "Ω"),
    (Resistance, "330R", 330.0, "Ω"),
    (Resistance, "10 Ω", 10.0, "Ω"),
    (Resistance, "10 \u{2126}", 10.0, "Ω"),
    (Voltage, "60 mV", 60e-3, "mV"),
    (Voltage, "60 mv", 60e-3, "mV"),
    (Voltage, "250V", 250.0, "V"),
    (Voltage, "5 µV", 5e-6, "µV"),
    (Power, "50 kW", 50e3, "kW"),
    (Power, "50 KW", 50e3, "kW"),
    (Power, "50 mW", 50e-3, "mW"),
    (Power, "2 MW", 2e6, "MW"),
    (Conductance, "2 mA/V", 2e-3, "mA/V"),
    (Conductance, "2 ma/v", 2e-3, "mA/V"),
    (Conductance, "2mS", 2e-3, "mA/V"),
    (Conductance, "650 µA/V", 650e-6, "µA/V"),
    (Conductance, "2000 micromhos", 2e-3, "µA/V"),
    (Conductance, "0.002 A/V", 2e-3, "A/V"),
    (Duration, "0.1 s", 0.1, "s"),
    (Duration, "100 ms", 0.1, "ms"),
    (Duration, "50 µs", 50e-6, "µs"),
    (Frequency, "465 kilocycles", 465e3, "kHz"),
    (Frequency, "1 kilocycle", 1e3, "kHz"),
    (Frequency, "1.2 megacycles per second", 1.2e6, "MHz"),
    (Frequency, "800 cycles", 800.0, "Hz"),
    (Frequency, "465 kilohertz", 465e3, "kHz"),
    (Frequency, "1.2 Megahertz", 1.2e6, "MHz"),
    (Frequency, "250 meters", 299_792_458.0 / 250.0, "m"),
    (Wavelength, "1 metre", 1.0, "m"),
    (Wavelength, "1.5 kilometres", 1500.0, "km"),
    (Inductance, "175 microhenries", 175e-6, "µH"),
    (Inductance, "175 microhenrys", 175e-6, "µH"),
    (Inductance, "1 millihenry", 1e-3, "mH"),
    (Inductance, "10 henries", 10.0, "H"),
    (Capacitance, "500 picofarads", 500e-12, "pF"),
    (Capacitance, "500 micromicrofarads", 500e-12, "pF"),
    (Capacitance, "0.1 Microfarad", 0.1e-6, "µF"),
    (Resistance, "47 kilohms", 47e3, "kΩ"),
    (Resistance, "330 ohms", 330.0, "Ω"),
    (Voltage, "297 volts", 297.0, "V"),
    (Voltage, "1 Volt.", 1.0, "V"),
    (Voltage, "60 millivolts", 60e-3, "mV"),
    (Voltage, "5 microvolts", 5e-6, "µV"),
    (Power, "50 kilowatts", 50e3, "kW"),
    (Power, "50 milliwatts", 50e-3, "mW"),
    (Power, "3 watts", 3.0, "W"),
    (Conductance, "2 milliamps per volt", 2e-3, "mA/V"),
    (Conductance, "1 mho", 1.0, "A/V"),
    (Duration, "100 milliseconds", 0.1, "ms"),
    (Duration, "1 second", 1.0, "s"),
    (Decibels, "6 decibels", 6.0, "dB"),
    (Decibels, "-1 decibel", -1.0, "dB"),
    (Depth, "80 per cent", 0.8, "%"),
    (Depth, "80 Percent", 0.8, "%"),
    (Decibels, "-6db", -6.0, "dB"),
    (Ratio, "138.6", 138.6, ""),
    (Ratio, "0,7", 0.7, ""),
    (Ratio, "500.", 500.0, ""),
    (Ratio, "1,200", 1200.0, ""),
    (Ratio, "-0,707", -0.707, ""),
    (Depth, "0.8", 0.8, ""),
    (Depth, "80 %", 0.8, "%"),
    (Depth, "80%", 0.8, "%"),
    (Depth, "1", 1.0, ""),
    (Depth, "120 %", 1.2, "%"),
    (Integer, "2", 2.0, ""),
    (Integer, "2.0", 2.0, ""),
    (Integer, "1e1", 10.0, ""),
];

/// Kind, what is typed, the rule that it breaks.
const REFUSED: &[(Kind, &str, Rule)] = &[
    (Frequency, "", Rule::Empty),
    (Frequency, "  \u{a0} ", Rule::Empty),
    (Frequency, "abc", Rule::NoNumber),
    (Frequency, "kHz", Rule::NoNumber),
    (Frequency, ".", Rule::NoNumber),
    (Frequency, "-", Rule::NoNumber),
    (Frequency, "e6 Hz", Rule::NoNumber),
    (Frequency, "NaN kHz", Rule::NoNumber),
    (Frequency, "inf", Rule::NoNumber),
    (Frequency, "١٢٠٠ kHz", Rule::NoNumber),
    (Frequency, "1200", Rule::MissingUnit),
    (Frequency, "1e999 MHz", Rule::TooLarge),
    (Frequency, "1e99999999999999999999 MHz", Rule::TooLarge),
    (Frequency, "1e-999 MHz", Rule::TooSmall),
    (Frequency, "1.200,5 kHz", Rule::MixedMarks),
    (Frequency, "1,200.5 kHz", Rule::MixedMarks),
    (Frequency, "1.2.3 kHz", Rule::MisplacedMark),
    (Frequency, "1,2,3 kHz", Rule::MisplacedMark),
    (Frequency, "1,200,00 kHz", Rule::MisplacedMark),
    (Frequency, "1200,000,000 Hz", Rule::MisplacedMark),
    (Frequency, "0,455,000 Hz", Rule::MisplacedMark),
    (Frequency, "12 00 kHz", Rule::MisplacedMark),
    (Frequency, "1200 000 Hz", Rule::MisplacedMark),
    (Frequency, "1 200,500 kHz", Rule::MisplacedMark),
    (Frequency, "1  200 kHz", Rule::MisplacedMark),
    (Frequency, "1200, kHz", Rule::MisplacedMark),
    (Frequency, "1 . 2 MHz", Rule::MisplacedMark),
    (Frequency, "1200 furlongs", Rule::UnknownUnit),
    (Frequency, "1200 kilo", Rule::UnknownUnit),
    (Frequency, "1200 millicycles", Rule::UnknownUnit),
    (Frequency, "1200 volts", Rule::UnknownUnit),
    (Voltage, "2 megavolts", Rule::UnknownUnit),
    (Decibels, "6 kilodecibels", Rule::UnknownUnit),
    (Frequency, "1200 kHz kHz", Rule::UnknownUnit),
    (Frequency, "1200 pF", Rule::UnknownUnit),
    (Frequency, "1.2 e6 Hz", Rule::UnknownUnit),
    (Frequency, "0x10 Hz", Rule::UnknownUnit),
    (Frequency, "0 m", Rule::NotPositive),
    (Wavelength, "250", Rule::MissingUnit),
    (Wavelength, "1200 kHz", Rule::UnknownUnit),
    (Inductance, "175", Rule::MissingUnit),
    (Decibels, "6", Rule::MissingUnit),
    (Ratio, "6 dB", Rule::UnknownUnit),
    (Ratio, "80 %", Rule::UnknownUnit),
    (Depth, "80", Rule::DepthOverOne),
    (Depth, "1.01", Rule::DepthOverOne),
    (Integer, "2.5", Rule::NotWhole),
    (Integer, "2 Hz", Rule::UnknownUnit),
    (Choice, "above", Rule::NotNumeric),
];

/// Spellings that leave a question open.
const ASKED: &[(Kind, &str)] = &[
    (Capacitance, "2 mF"),
    (Capacitance, "2 MF"),
    (Capacitance, "2 mf"),
    (Frequency, "250 M"),
    (Frequency, "465 k"),
    (Frequency, "465K"),
    (Resistance, "2 m"),
    (Resistance, "2 mΩ"),
    (Resistance, "2 mohm"),
    (Voltage, "60 MV"),
    (Power, "60 mw"),
];

#[test]
fn each_spelling_is_read_to_the_last_bit() {
    for (kind, typed, wanted, unit) in READ {
        let read = reading(*kind, typed, None);
        let read = read.unwrap_or_else(|error| panic!("{typed}: {error}"));
        assert_eq!(read.value.to_bits(), wanted.to_bits(), "{typed}");
        assert_eq!(read.unit, *unit, "{typed}");
    }
}

#[test]
fn each_slip_is_refused_by_its_rule() {
    for (kind, typed, rule) in REFUSED {
        let error = reading(*kind, typed, None).expect_err(typed);
        assert_eq!(error.rule(), *rule, "{typed}");
    }
}

#[test]
fn open_spellings_are_asked_about() {
    for (kind, typed) in ASKED {
        let error = value(*kind, typed, None).expect_err(typed);
        assert!(matches!(error.rule(), Rule::Ambiguous(_)), "{typed}");
        assert!(error.to_string().contains('?'), "{error}");
    }
}

#[test]
fn the_other_reading_of_a_comma_is_offered() {
    let other = |typed| reading(Frequency, typed, Some("kHz")).map(|read| read.other);
    assert_eq!(other("1,200"), Ok(Some(1200.0)));
    assert_eq!(other("1,200 MHz"), Ok(Some(1.2e6)));
    assert_eq!(other("1200,500"), Ok(Some(1_200_500.0)));
    assert_eq!(other("1,2"), Ok(None));
    assert_eq!(other("0,455 MHz"), Ok(None));
    assert_eq!(other("1,200,000 Hz"), Ok(None));
    assert_eq!(other("1 200"), Ok(None));
    assert_eq!(other("1.200"), Ok(None));
}

#[test]
fn the_unit_beside_the_box_serves_until_one_is_typed() {
    let beside = |typed, unit| value(Frequency, typed, Some(unit));
    assert_eq!(beside("1200", "kHz"), Ok(1.2e6));
    assert_eq!(beside("1.2 MHz", "kHz"), Ok(1.2e6));
    assert_eq!(beside("300", "m"), Ok(299_792_458.0 / 300.0));
    assert_eq!(value(Depth, "80", Some("%")), Ok(0.8));
    assert_eq!(value(Depth, "0.8", Some("")), Ok(0.8));
}

#[test]
fn a_wavelength_for_a_frequency_is_marked() {
    let read = |typed| reading(Frequency, typed, None).map(|read| read.from_wavelength);
    assert_eq!(read("250 m"), Ok(true));
    assert_eq!(read("250 kHz"), Ok(false));
}

#[test]
fn unit_and_exponent_are_merged_before_rounding() {
    // 0.455 is no binary number, and neither is 1e-12: multiplying them would round
    // three times.
    assert_eq!(value(Frequency, "0.455 MHz", None), Ok(455_000.0));
    for pf in 1..2000 {
        let (pf, uf) = (pf.to_string(), alloc::format!("0.{pf:06}"));
        let read = |number: &str, unit| value(Capacitance, &(number.to_string() + unit), None);
        assert_eq!(read(&pf, "pF"), read(&uf, "uF"), "{pf}");
        let standard: f64 = (pf.clone() + "e-12").parse().unwrap();
        assert_eq!(read(&pf, "pF"), Ok(standard), "{pf}");
    }
}

#[test]
fn typed_functions_refuse_what_their_unit_cannot_be() {
    for typed in ["0 kHz", "-5 kHz", "-250 m"] {
        let error = super::frequency(typed).expect_err(typed);
        assert_eq!(error.rule(), Rule::NotPositive);
    }
    assert!(super::wavelength("0 m").is_err());
    assert!(super::inductance("0 uH").is_err());
    assert!(super::capacitance("-1 pF").is_err());
    assert!(super::resistance("0 ohm").is_err());
    assert!(super::voltage("0 V").is_ok() && super::voltage("-1 V").is_err());
    assert!(super::power("0 W").is_ok() && super::power("-1 W").is_err());
    assert!(super::ratio("0").is_ok() && super::ratio("-1").is_err());
    assert!(super::depth("0").is_ok() && super::depth("-0.1").is_err());
    assert!(super::decibels("-6 dB").is_ok());
}

#[test]
fn messages_say_what_the_rule_and_the_value() {
    let message = |kind, typed| value(kind, typed, None).expect_err(typed).to_string();
    assert_eq!(
        message(Frequency, "abc"),
        "a frequency starts with a number, such as 1200 kHz (got \"abc\")"
    );
    assert_eq!(
        message(Frequency, "1e999 MHz"),
        "too large for a frequency (got \"1e999 MHz\")"
    );
    assert_eq!(
        message(Frequency, "12\u{202e}\n"),
        "a frequency is typed in Hz, kHz, MHz, kc/s, Mc/s, or in metres as a wavelength \
         (got \"12  \")"
    );
    let long = message(Frequency, &"9".repeat(10_000));
    assert!(
        long.ends_with("9…\")") && long.chars().count() < 100,
        "{long}"
    );
}

fn check_any(kind: Kind, typed: &str, beside: Option<&str>) -> Result<(), String> {
    match reading(kind, typed, beside) {
        Ok(Reading { value, other, .. }) if value.is_finite() => match other {
            Some(other) if !other.is_finite() => Err("an infinite other reading".to_string()),
            _ => Ok(()),
        },
        Ok(_) => Err("a value that is not finite".to_string()),
        Err(error) => {
            let sentence = error.sentence();
            let fits = sentence.chars().count() <= 300 && !sentence.contains(char::is_control);
            if fits { Ok(()) } else { Err(sentence) }
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]

    #[test]
    fn anything_typed_is_read_or_refused_in_one_line(typed in any::<String>()) {
        for kind in KINDS {
            prop_assert_eq!(check_any(kind, &typed, None), Ok(()));
            prop_assert_eq!(check_any(kind, &typed, Some(&typed)), Ok(()));
        }
    }

    #[test]
    fn anything_like_a_number_is_read_or_refused(
        typed in "[-+−]{0,2}[0-9., \u{a0}]{0,12}([eE][-+]?[0-9]{0,20})?[ kKmMuµpnhHzZcCfFsSΩoOgG/%dB.V]{0,7}"
    ) {
        for kind in KINDS {
            prop_assert_eq!(check_any(kind, &typed, None), Ok(()));
        }
    }

    #[test]
    fn plain_numbers_are_read_as_the_standard_library_does(
        whole in 0_u64..1_000_000_000, decimals in "[0-9]{0,12}"
    ) {
        let number = alloc::format!("{whole}.{decimals}");
        let standard: f64 = number.parse().unwrap();
        prop_assert_eq!(value(Ratio, &number, None), Ok(standard));
        let khz: f64 = (number.clone() + "e3").parse().unwrap();
        prop_assert_eq!(value(Frequency, &(number + " kHz"), None), Ok(khz));
    }

    #[test]
    fn grouping_by_comma_or_blank_changes_nothing(number in 1000_u32..1_000_000) {
        let (thousands, rest) = (number / 1000, number % 1000);
        for mark in [",", " ", "\u{a0}", "\u{2009}"] {
            let typed = alloc::format!("{thousands}{mark}{rest:03} Hz");
            let read = value(Frequency, &typed, None);
            prop_assert!(read == Ok(f64::from(number)), "{typed}: {read:?}");
        }
    }
}
