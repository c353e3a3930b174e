//! Entries of preferred values, and of what they cost in tracking.

use super::shared_parameters::{F_HIGH, F_LOW, IF, SIDE};
use super::tracking::{self, ARRANGEMENT, POINT_1, POINT_2, POINT_3, SIGNAL_COIL};
use super::{Arguments, Entry, Kind, Parameter, Refusal};
use crate::quantities::preferred_values::Series;
use crate::quantities::tracking::{Band, TrackingError};

/// The standard.
const IEC: &str = "IEC 60063, Preferred number series for resistors and capacitors";

/// A definition.
const TABLE: &str = "none: a table; the part itself is within its tolerance of it";

/// Which series is meant.
const SERIES: Parameter = Parameter::choice(
    "series",
    r"\mathrm{E}n",
    "the series: how many values there are in a decade",
    &["E6", "E12", "E24", "E48", "E96"],
);

/// Which neighbour is meant.
const ROUNDING: Parameter = Parameter::choice(
    "rounding",
    "",
    "the nearest value, or the next one up or down",
    &["nearest", "up", "down"],
);

fn series(a: &Arguments<'_>) -> Series {
    Series::from_name(a.choice("series")).unwrap_or(Series::E12)
}

fn preferred(a: &Arguments<'_>, wanted: f64) -> f64 {
    match a.choice("rounding") {
        "up" => series(a).next_up(wanted),
        "down" => series(a).next_down(wanted),
        _ => series(a).nearest(wanted),
    }
}

/// The greatest error with parts of preferred values.
fn tracking_with_preferred_parts(a: &Arguments<'_>) -> Result<f64, Refusal> {
    let (low, high) = (a.frequency("f-low"), a.frequency("f-high"));
    if high <= low {
        return Err(TrackingError::EndsOutOfOrder { low, high }.into());
    }
    let band = Band {
        ends: [low, high],
        intermediate: a.frequency("if"),
        signal_coil: a.inductance("l-signal"),
    };
    let exact = tracking::parts(a)?;
    let outer = ["f1", "f3"].map(|point| a.frequency(point));
    let cost = band.cost(&exact, series(a), outer);
    let greatest = match a.choice("alignment") {
        "left" => cost.rounded,
        _ => cost.aligned.ok_or(TrackingError::NoPositiveParts)?,
    };
    Ok(greatest.to_hz())
}

pub(super) const ENTRIES: &[Entry] = &[
    Entry {
        name: "preferred-capacitance",
        title: "Preferred capacitance",
        symbol: r"C_\mathrm{E}",
        formula: r"C_\mathrm{E} \approx C, \quad C_\mathrm{E} \approx 10^{i/n}\,\mathrm{pF}",
        parameters: &[
            Parameter::capacitance("c", "C", "the capacitance that is wanted"),
            SERIES,
            ROUNDING,
        ],
        result: Kind::Capacitance,
        model_error: TABLE,
        source: IEC,
        example: "preferred-capacitance?c=459.673pF&series=E12&rounding=nearest",
        function: |a| Ok(preferred(a, a.number("c"))),
        note: None,
    },
    Entry {
        name: "preferred-resistance",
        title: "Preferred resistance",
        symbol: r"R_\mathrm{E}",
        formula: r"R_\mathrm{E} \approx R, \quad R_\mathrm{E} \approx 10^{i/n}\,\Omega",
        parameters: &[
            Parameter::resistance("r", "R", "the resistance that is wanted"),
            SERIES,
            ROUNDING,
        ],
        result: Kind::Resistance,
        model_error: TABLE,
        source: IEC,
        example: "preferred-resistance?r=319ohm&series=E24&rounding=nearest",
        function: |a| Ok(preferred(a, a.number("r"))),
        note: None,
    },
    Entry {
        name: "preferred-tracking-error",
        title: "Greatest tracking error with preferred parts",
        symbol: r"\Delta f_\mathrm{E}",
        formula: r"\Delta f_\mathrm{E} = \max_{f_\mathrm{low} \le f \le f_\mathrm{high}} \left|\frac{1}{2\pi\sqrt{L_\mathrm{osc} C_\mathrm{osc}(f)}} - (f + F)\right|",
        parameters: &[
            F_LOW,
            F_HIGH,
            POINT_1,
            POINT_2,
            POINT_3,
            IF,
            SIDE,
            SIGNAL_COIL,
            ARRANGEMENT,
            SERIES,
            Parameter::choice(
                "alignment",
                "",
                "padder and trimmer nearest in the series and left so, or the trimmer and the \
                 coil then aligned again at the first and the third setting",
                &["left", "aligned"],
            ),
        ],
        result: Kind::Frequency,
        model_error: "ideal parts of exactly their marked value; a part's own tolerance adds to it",
        source: tracking::RDH,
        example: "preferred-tracking-error?f-low=540kHz&f-high=1600kHz&f1=600kHz&f2=950kHz&f3=1500kHz&if=455kHz&side=above&l-signal=200uH&arrangement=across-coil&series=E12&alignment=aligned",
        function: tracking_with_preferred_parts,
        note: None,
    },
];
