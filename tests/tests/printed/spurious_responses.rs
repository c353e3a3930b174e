//! Spurious responses and whistles: check rows of section 7.
//!
//! # Not used
//! - Blake, example 6.6, the printed array: corrupted in the companion; its inputs and
//!   rule are used.
//! - Two stations an IF apart, 455/10 and 455/9: ratios that no entry works out; their
//!   nearest spacings are tested below with `beat`.
//! - A signal on the IF itself: no arithmetic.

use crate::row::{EXACT, KHZ, MHZ, Row, check, row, value};

const RODDY: &str = "Roddy & Coolen, Electronic Communications, ex. 7.7.1, p. 236";
const BLAKE: &str = "Blake, Electronic Communication Systems, ex. 6.6, p. 239 (rule and inputs)";
const DERIVED: &str = "derived from the same rule";

const PRINTED: &[Row] = &[
    row(
        "IF 455, m 1, n 1, minus",
        "spurious?oscillator=1405kHz&if=455kHz&m=1&n=1&sign=minus",
        KHZ,
        950.0,
        EXACT,
        RODDY,
    ),
    row(
        "IF 455, m 1, n 1, plus",
        "spurious?oscillator=1405kHz&if=455kHz&m=1&n=1&sign=plus",
        KHZ,
        1860.0,
        EXACT,
        RODDY,
    ),
    row(
        "IF 455, m 2, n 1, minus",
        "spurious?oscillator=1405kHz&if=455kHz&m=2&n=1&sign=minus",
        KHZ,
        2355.0,
        EXACT,
        RODDY,
    ),
    row(
        "IF 455, m 2, n 1, plus",
        "spurious?oscillator=1405kHz&if=455kHz&m=2&n=1&sign=plus",
        KHZ,
        3265.0,
        EXACT,
        RODDY,
    ),
    row(
        "IF 455, m 1, n 2, minus",
        "spurious?oscillator=1405kHz&if=455kHz&m=1&n=2&sign=minus",
        KHZ,
        475.0,
        EXACT,
        RODDY,
    ),
    row(
        "IF 455, m 1, n 2, plus",
        "spurious?oscillator=1405kHz&if=455kHz&m=1&n=2&sign=plus",
        KHZ,
        930.0,
        EXACT,
        RODDY,
    ),
    row(
        "IF 455, m 2, n 2, minus",
        "spurious?oscillator=1405kHz&if=455kHz&m=2&n=2&sign=minus",
        KHZ,
        1177.5,
        EXACT,
        RODDY,
    ),
    row(
        "IF 455, m 2, n 2, plus",
        "spurious?oscillator=1405kHz&if=455kHz&m=2&n=2&sign=plus",
        KHZ,
        1632.5,
        EXACT,
        RODDY,
    ),
    row(
        "IF 1.8 MHz, m 1, n 1, minus",
        "spurious?oscillator=11.8MHz&if=1.8MHz&m=1&n=1&sign=minus",
        MHZ,
        10.0,
        EXACT,
        BLAKE,
    ),
    row(
        "IF 1.8 MHz, m 1, n 1, plus",
        "spurious?oscillator=11.8MHz&if=1.8MHz&m=1&n=1&sign=plus",
        MHZ,
        13.6,
        EXACT,
        BLAKE,
    ),
    row(
        "IF 1.8 MHz, m 1, n 2, minus",
        "spurious?oscillator=11.8MHz&if=1.8MHz&m=1&n=2&sign=minus",
        MHZ,
        5.0,
        EXACT,
        BLAKE,
    ),
    row(
        "IF 1.8 MHz, m 1, n 2, plus",
        "spurious?oscillator=11.8MHz&if=1.8MHz&m=1&n=2&sign=plus",
        MHZ,
        6.8,
        EXACT,
        BLAKE,
    ),
    row(
        "IF 1.8 MHz, m 2, n 1, minus",
        "spurious?oscillator=11.8MHz&if=1.8MHz&m=2&n=1&sign=minus",
        MHZ,
        21.8,
        EXACT,
        BLAKE,
    ),
    row(
        "IF 1.8 MHz, m 2, n 1, plus",
        "spurious?oscillator=11.8MHz&if=1.8MHz&m=2&n=1&sign=plus",
        MHZ,
        25.4,
        EXACT,
        BLAKE,
    ),
    row(
        "IF 1.8 MHz, m 2, n 2, minus",
        "spurious?oscillator=11.8MHz&if=1.8MHz&m=2&n=2&sign=minus",
        MHZ,
        10.9,
        EXACT,
        BLAKE,
    ),
    row(
        "IF 1.8 MHz, m 2, n 2, plus",
        "spurious?oscillator=11.8MHz&if=1.8MHz&m=2&n=2&sign=plus",
        MHZ,
        12.7,
        EXACT,
        BLAKE,
    ),
    row(
        "half-IF response at 1000 kHz",
        "spurious?oscillator=1455kHz&if=455kHz&m=2&n=2&sign=minus",
        KHZ,
        1227.5,
        EXACT,
        DERIVED,
    ),
    row(
        "tuned to 911 kHz, twice 455 kHz beats",
        "whistle?signal=911kHz&if=455kHz&harmonic=2",
        KHZ,
        1.0,
        EXACT,
        DERIVED,
    ),
    row(
        "three times 455 kHz is 1365 kHz",
        "whistle?signal=1365kHz&if=455kHz&harmonic=3",
        KHZ,
        0.0,
        EXACT,
        DERIVED,
    ),
    row(
        "twice 465 kHz is 930 kHz",
        "whistle?signal=930kHz&if=465kHz&harmonic=2",
        KHZ,
        0.0,
        EXACT,
        DERIVED,
    ),
    row(
        "three times 465 kHz is 1395 kHz",
        "whistle?signal=1395kHz&if=465kHz&harmonic=3",
        KHZ,
        0.0,
        EXACT,
        DERIVED,
    ),
    row(
        "twice 470 kHz is 940 kHz",
        "whistle?signal=940kHz&if=470kHz&harmonic=2",
        KHZ,
        0.0,
        EXACT,
        DERIVED,
    ),
    row(
        "three times 470 kHz is 1410 kHz",
        "whistle?signal=1410kHz&if=470kHz&harmonic=3",
        KHZ,
        0.0,
        EXACT,
        DERIVED,
    ),
];

#[test]
fn printed_numbers_are_met() {
    check(PRINTED);
}

/// Stations one IF of 455 kHz apart miss each other by 5 kHz on a raster of 10 kHz, and by
/// 4 or 5 kHz on one of 9 kHz (residues derived).
#[test]
fn stations_an_if_apart_miss_by_half_a_channel() {
    let beat = |apart: f64| value(&format!("beat?f1={apart}kHz&f2=455kHz")) / KHZ;
    assert_eq!([450.0, 460.0].map(beat), [5.0, 5.0]);
    assert_eq!([50.0 * 9.0, 51.0 * 9.0].map(beat), [5.0, 4.0]);
}
