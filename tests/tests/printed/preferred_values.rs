//! Preferred values and old units of capacitance: check rows of section 10.
//!
//! # Not used
//! - One uuF and one mmf are 1 pF, one kc/s is 1 kHz: tested with the old units of the
//!   superhet's arithmetic.
//! - A jar in centimetres by the old definition, 1000: superseded; 998.6 with the exact
//!   speed of light is used.

use superhet::quantities::preferred_values::Series;
use superhet::units::Capacitance;

use crate::row::{EXACT, KHZ, PF, Row, check, row, value};

const ESERIES: &str = "IEC 60063, as the documentation of the package eseries has it";
const DERIVED: &str = "derived by a separate program from the circuit, in steps of 100 Hz";

/// IEC 60063, as the package eseries and its documentation have it.
#[test]
fn figures_of_the_series() {
    let e6 = [1.0, 1.5, 2.2, 3.3, 4.7, 6.8];
    assert!(Series::E6.figures().eq(e6));
    let e12 = [1.0, 1.2, 1.5, 1.8, 2.2, 2.7, 3.3, 3.9, 4.7, 5.6, 6.8, 8.2];
    assert!(Series::E12.figures().eq(e12));
    let e24 = [
        1.0, 1.1, 1.2, 1.3, 1.5, 1.6, 1.8, 2.0, 2.2, 2.4, 2.7, 3.0, 3.3, 3.6, 3.9, 4.3, 4.7, 5.1,
        5.6, 6.2, 6.8, 7.5, 8.2, 9.1,
    ];
    assert!(Series::E24.figures().eq(e24));
}

const PRINTED: &[Row] = &[
    row(
        "nearest of E24 to 319",
        "preferred-resistance?r=319ohm&series=E24&rounding=nearest",
        1.0,
        330.0,
        EXACT,
        ESERIES,
    ),
    row(
        "next of E96 from 184 up",
        "preferred-resistance?r=184ohm&series=E96&rounding=up",
        1.0,
        187.0,
        EXACT,
        ESERIES,
    ),
    row(
        "padder of 459.673 pF and trimmer of 11.1264 pF, exact",
        "largest-tracking-error?f-low=540kHz&f-high=1600kHz&f1=600kHz&f2=950kHz&f3=1500kHz\
         &if=455kHz&side=above",
        KHZ,
        6.193,
        0.001,
        DERIVED,
    ),
    row(
        "the same of E12, 470 pF and 12 pF, left so",
        "preferred-tracking-error?f-low=540kHz&f-high=1600kHz&f1=600kHz&f2=950kHz&f3=1500kHz\
         &if=455kHz&side=above&l-signal=200uH&arrangement=across-coil&series=E12&alignment=left",
        KHZ,
        23.760,
        0.001,
        DERIVED,
    ),
    row(
        "470 pF, trimmer and coil aligned again at 600 and 1500 kHz",
        "preferred-tracking-error?f-low=540kHz&f-high=1600kHz&f1=600kHz&f2=950kHz&f3=1500kHz\
         &if=455kHz&side=above&l-signal=200uH&arrangement=across-coil&series=E12\
         &alignment=aligned",
        KHZ,
        6.939,
        0.001,
        DERIVED,
    ),
    row(
        "E12 for the padder",
        "preferred-capacitance?c=459.673pF&series=E12&rounding=nearest",
        PF,
        470.0,
        EXACT,
        "IEC 60063",
    ),
];

#[test]
fn printed_numbers_are_met() {
    check(PRINTED);
}

/// The documentation of eseries: the three values of E24 nearest to 5000.
#[test]
fn three_values_around_5000() {
    let ohms = |rounding, from: f64| {
        let typed = format!("preferred-resistance?r={from}ohm&series=E24&rounding={rounding}");
        value(&typed)
    };
    let middle = ohms("nearest", 5000.0);
    assert_eq!(
        [ohms("down", middle), middle, ohms("up", middle)],
        [4700.0, 5100.0, 5600.0]
    );
}

/// Admiralty Handbook of Wireless Telegraphy, 1938, p. A2: a jar is 10/9 nF, 900 of them
/// 1 uF.
#[test]
fn a_jar() {
    assert_eq!(Capacitance::jar(900.0), Capacitance::uf(1.0));
    assert!((Capacitance::jar(1.0).to_nf() - 10.0 / 9.0).abs() < 1e-15);
}

/// The CGS unit: 1.112 650 056 2 pF by scipy.constants, whose electric constant has been a
/// measured one since 2019 and is 1.5e-10 of itself above the old exact one that goes with
/// `1e5/c²`; the check row's tolerance of 5e-10 covers that. And what it makes of a jar.
#[test]
fn a_centimetre_of_capacitance() {
    assert!((Capacitance::cm(1.0).to_pf() - 1.112_650_056_2).abs() < 5e-10);
    let centimetres = Capacitance::jar(1.0).to_f() / Capacitance::cm(1.0).to_f();
    assert!((centimetres - 998.62).abs() < 0.005);
}
