//! Typed values.

use crate::fits_a_line;
use nasty::{MILLION, Maker, Trial};
use superhet::units::Kind;
use superhet::units::parse::{LONGEST, ParseError, Reading, Rule, reading};

/// Each kind with what is read for it.
const VALID: &[(Kind, &[&str])] = &[
    (
        Kind::Frequency,
        &[
            "1.2 MHz",
            "1,200 kc/s",
            "0,455 MHz",
            "1 200\u{a0}kHz",
            "250 metres",
        ],
    ),
    (Kind::Wavelength, &["250 m", "1,500 metres", "1.5 km"]),
    (Kind::Inductance, &["175 µH", "0.2 MH", "2.5e-3 h"]),
    (Kind::Capacitance, &["500 mmfd.", ".0005 uF", "500 µµF"]),
    (Kind::Resistance, &["47k", "0.5 meg", "330R", "10 \u{2126}"]),
    (Kind::Voltage, &["60 mV", "250V", "−5 µV"]),
    (Kind::Power, &["50 kW", "50 mW", "2 MW"]),
    (Kind::Conductance, &["2 mA/V", "2000 micromhos"]),
    (Kind::Duration, &["100 ms", "50 µs"]),
    (Kind::Decibels, &["-6 dB", "+3db"]),
    (Kind::Ratio, &["138.6", "1,200", "-0,707", "1e300"]),
    (Kind::Depth, &["80 %", "0.8"]),
    (Kind::Integer, &["2", "1e1"]),
    (Kind::Choice, &["above"]),
];

/// What values are made of.
const WORDS: &[&str] = &[
    "1", "12", "200", "000", "455", "9", ".", ",", " ", "-", "+", "e", "E", "e-", "e300", "e-300",
    "kHz", "khz", "MHz", "Hz", "kc/s", "Mc/s", "metres", "m", "M", "µ", "u", "H", "uH", "mH", "pF",
    "mmfd", "mfd", "F", "mF", "k", "kΩ", "ohms", "meg", "V", "mV", "W", "mW", "mA/V", "dB", "%",
    "per cent", "s",
];

/// A dozen whole numbers of at most 4000 bits, 500 bytes each, are held where a number is
/// converted exactly, and the digits: no more, however long the text.
const MOST_HELD: u64 = 8_000;

#[test]
fn a_million_typed_values_are_read_or_refused() {
    // The kind of a case is drawn from a seed of its own, since the reader sees the text.
    let mut drawn = Maker::new(2);
    let make = |maker: &mut Maker| {
        let (_, valid) = VALID[maker.below(VALID.len())];
        let valid = maker.one_of(valid);
        maker.near(valid, WORDS)
    };
    Trial {
        seed: 1,
        cases: MILLION,
        most_held: MOST_HELD,
    }
    .run(make, |text| {
        let (kind, valid) = VALID[drawn.below(VALID.len())];
        let beside = drawn.one_in(2).then(|| drawn.one_of(WORDS));
        let read = reading(kind, text, beside);
        check(text, &read);
        assert!(reading(kind, valid[0], None).is_ok() || kind == Kind::Choice);
    });
}

fn check(text: &str, read: &Result<Reading, ParseError>) {
    match read {
        Ok(read) => {
            assert!(read.value.is_finite());
            assert!(read.other.is_none_or(f64::is_finite));
            assert!(text.trim().len() <= LONGEST);
        }
        Err(error) => {
            assert!(fits_a_line(&error.sentence(), 300), "{error}");
            let long = text.trim().len() > LONGEST;
            assert_eq!(error.rule() == Rule::TooLong, long, "{error}");
        }
    }
}
