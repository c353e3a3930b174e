//! Entries of tracking: the parts of an oscillator that follows a signal circuit.

use super::shared_parameters::{DIAL, F_HIGH, F_LOW, IF, Q, SIDE};
use super::{Arguments, Entry, Kind, Parameter};
use crate::quantities::tracking::{
    Arrangement, OscillatorParts, ThreePoints, TrackingError, padder_two_point, trimmer_two_point,
};
use crate::units::{Capacitance, Frequency};

/// What three exact settings leave.
const EXACT_AT_THREE: &str = "exact at the three settings; the error between them is \
                              tracking-error. l², m², n² and K as in the notes on tracking";

/// The textbook treatment of tracking.
pub(super) const RDH: &str = "F. Langford-Smith, Radiotron Designer's Handbook, 4th edition 1953, chapter \
                   25 (cited from memory, derived again)";

/// The first exact setting.
pub(super) const POINT_1: Parameter =
    Parameter::frequency("f1", "f_1", "the first exact dial setting");

/// The second exact setting.
pub(super) const POINT_2: Parameter =
    Parameter::frequency("f2", "f_2", "the second exact dial setting");

/// The third exact setting.
pub(super) const POINT_3: Parameter =
    Parameter::frequency("f3", "f_3", "the third exact dial setting");

/// The coil of the signal circuit.
pub(super) const SIGNAL_COIL: Parameter =
    Parameter::inductance("l-signal", "L", "the inductance of the signal circuit");

/// Where the oscillator's trimmer sits.
pub(super) const ARRANGEMENT: Parameter = Parameter::choice(
    "arrangement",
    "",
    "where the trimmer sits: across the coil, or across the gang",
    &["across-coil", "across-gang"],
);

/// The whole signal capacitance at the low end.
const C_MAX: Parameter = Parameter::capacitance(
    "c-max",
    r"C_\mathrm{max}",
    "the whole signal capacitance at the low end",
);

pub(super) fn curve(a: &Arguments<'_>) -> Result<ThreePoints, TrackingError> {
    let settings = ["f1", "f2", "f3"].map(|point| a.frequency(point));
    ThreePoints::new(settings, a.frequency("if"), a.side())
}

pub(super) fn parts(a: &Arguments<'_>) -> Result<OscillatorParts, TrackingError> {
    let arrangement = match a.choice("arrangement") {
        "across-gang" => Arrangement::AcrossGang,
        _ => Arrangement::AcrossCoil,
    };
    OscillatorParts::new(&curve(a)?, a.inductance("l-signal"), arrangement)
}

type TwoPoint =
    fn(Frequency, Frequency, Frequency, Capacitance) -> Result<Capacitance, TrackingError>;

fn two_points(a: &Arguments<'_>, solve: TwoPoint) -> Result<Capacitance, TrackingError> {
    let (low, high) = (a.frequency("f-low"), a.frequency("f-high"));
    solve(low, high, a.frequency("if"), a.capacitance("c-max"))
}

pub(super) const ENTRIES: &[Entry] = &[
    Entry {
        name: "padder",
        title: "Padder for three exact settings",
        symbol: r"C_\mathrm{p}",
        formula: r"C_\mathrm{p} = \frac{K}{n^2}\ \text{or}\ K\left(\frac{1}{n^2} - \frac{1}{l^2}\right)",
        parameters: &[
            POINT_1,
            POINT_2,
            POINT_3,
            IF,
            SIGNAL_COIL,
            SIDE,
            ARRANGEMENT,
        ],
        result: Kind::Capacitance,
        model_error: EXACT_AT_THREE,
        source: RDH,
        example: "padder?f1=600kHz&f2=950kHz&f3=1500kHz&if=455kHz&l-signal=200uH&side=above&arrangement=across-coil",
        function: |a| Ok(parts(a)?.padder.to_f()),
        note: None,
    },
    Entry {
        name: "trimmer",
        title: "Oscillator trimmer for three exact settings",
        symbol: r"C_\mathrm{t}",
        formula: r"C_\mathrm{t} = \frac{K}{l^2 - n^2}\ \text{or}\ \frac{K}{l^2}",
        parameters: &[
            POINT_1,
            POINT_2,
            POINT_3,
            IF,
            SIGNAL_COIL,
            SIDE,
            ARRANGEMENT,
        ],
        result: Kind::Capacitance,
        model_error: EXACT_AT_THREE,
        source: RDH,
        example: "trimmer?f1=600kHz&f2=950kHz&f3=1500kHz&if=455kHz&l-signal=200uH&side=above&arrangement=across-coil",
        function: |a| Ok(parts(a)?.trimmer.to_f()),
        note: None,
    },
    Entry {
        name: "oscillator-inductance",
        title: "Oscillator coil for three exact settings",
        symbol: r"L_\mathrm{osc}",
        formula: r"L_\mathrm{osc} = L\,\frac{l^2 - n^2}{m^2}\ \text{or}\ L\,\frac{l^4}{m^2\left(l^2 - n^2\right)}",
        parameters: &[
            POINT_1,
            POINT_2,
            POINT_3,
            IF,
            SIGNAL_COIL,
            SIDE,
            ARRANGEMENT,
        ],
        result: Kind::Inductance,
        model_error: EXACT_AT_THREE,
        source: RDH,
        example: "oscillator-inductance?f1=600kHz&f2=950kHz&f3=1500kHz&if=455kHz&l-signal=200uH&side=above&arrangement=across-coil",
        function: |a| Ok(parts(a)?.inductance.to_h()),
        note: None,
    },
    Entry {
        name: "tracking-error",
        title: "Tracking error",
        symbol: r"\Delta f",
        formula: r"\Delta f = f_\mathrm{osc} - \left(f_\mathrm{dial} + sF\right)",
        parameters: &[DIAL, POINT_1, POINT_2, POINT_3, IF, SIDE],
        result: Kind::Frequency,
        model_error: "exact for ideal parts; it is not dial error, which is what the pointer shows wrong",
        source: RDH,
        example: "tracking-error?dial=540kHz&f1=600kHz&f2=950kHz&f3=1500kHz&if=455kHz&side=above",
        function: |a| Ok(curve(a)?.error(a.frequency("dial")).to_hz()),
        note: None,
    },
    Entry {
        name: "largest-tracking-error",
        title: "Greatest tracking error over a band",
        symbol: r"\Delta f_\mathrm{max}",
        formula: r"\Delta f_\mathrm{max} = \max_{f_\mathrm{low} \le f \le f_\mathrm{high}} \left|\Delta f(f)\right|",
        parameters: &[F_LOW, F_HIGH, POINT_1, POINT_2, POINT_3, IF, SIDE],
        result: Kind::Frequency,
        model_error: "exact for ideal parts; without its sign",
        source: RDH,
        example: "largest-tracking-error?f-low=540kHz&f-high=1600kHz&f1=600kHz&f2=950kHz&f3=1500kHz&if=455kHz&side=above",
        function: |a| {
            let ends = ["f-low", "f-high"].map(|end| a.frequency(end));
            Ok(curve(a)?.largest_error(ends)?.to_hz())
        },
        note: None,
    },
    Entry {
        name: "tracking-loss",
        title: "Loss by tracking error",
        symbol: r"A_\mathrm{track}",
        formula: r"A_\mathrm{track} = 10 \log_{10}\left(1 + Q^2\left(\frac{f_\mathrm{dial} + \Delta f}{f_\mathrm{dial}} - \frac{f_\mathrm{dial}}{f_\mathrm{dial} + \Delta f}\right)^2\right)",
        parameters: &[DIAL, POINT_1, POINT_2, POINT_3, IF, SIDE, Q],
        result: Kind::Decibels,
        model_error: "one aerial circuit, tuned exactly to the dial",
        source: RDH,
        example: "tracking-loss?dial=540kHz&f1=600kHz&f2=950kHz&f3=1500kHz&if=455kHz&side=above&q=80",
        function: |a| Ok(curve(a)?.loss(a.frequency("dial"), a.number("q")).to_db()),
        note: None,
    },
    Entry {
        name: "padder-two-point",
        title: "Padder alone, exact at both ends",
        symbol: r"C_\mathrm{p}",
        formula: r"C_\mathrm{p} = C_\mathrm{max}\,\frac{R_\mathrm{o} - 1}{R_\mathrm{s} - R_\mathrm{o}}",
        parameters: &[F_LOW, F_HIGH, IF, C_MAX],
        result: Kind::Capacitance,
        model_error: "a teaching step: 46 kHz too low in mid band for 500 to 1600 kHz and an IF of 465 kHz",
        source: "communication-engineering text, Scilab TBC book 1409, examples 8.14 and 8.19",
        example: "padder-two-point?f-low=500kHz&f-high=1600kHz&if=465kHz&c-max=350pF",
        function: |a| Ok(two_points(a, padder_two_point)?.to_f()),
        note: None,
    },
    Entry {
        name: "trimmer-two-point",
        title: "Trimmer alone, exact at both ends",
        symbol: r"C_\mathrm{t}",
        formula: r"C_\mathrm{t} = C_\mathrm{max}\,\frac{1 - R_\mathrm{o}/R_\mathrm{s}}{R_\mathrm{o} - 1}",
        parameters: &[F_LOW, F_HIGH, IF, C_MAX],
        result: Kind::Capacitance,
        model_error: "a teaching step: 165 kHz too high in mid band for 500 to 1600 kHz and an IF of 465 kHz",
        source: "derived here from the same two conditions",
        example: "trimmer-two-point?f-low=500kHz&f-high=1600kHz&if=465kHz&c-max=350pF",
        function: |a| Ok(two_points(a, trimmer_two_point)?.to_f()),
        note: None,
    },
];
