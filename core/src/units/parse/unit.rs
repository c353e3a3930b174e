//! The spellings of units, and which of them leave a question open.
//!
//! Capitals are forgiven where only one unit is thinkable: `khz`, `MH` (no coil has a
//! megahenry) and `60 MFD` are read. They decide where two are: `mW` and `MW`, `0.5 M`
//! of resistance. Where even the exact spelling has been used for two things the reader
//! is asked: `mF` and `MF` stood for microfarad on old parts.

use super::error::Rule;
use crate::units::Kind;
use alloc::string::String;

/// A unit as it was recognised.
#[derive(Clone, Copy)]
pub(super) struct Unit {
    /// Power of ten of the SI unit.
    pub(super) power: i8,
    /// Whether this is a length typed for a frequency.
    pub(super) wavelength: bool,
    /// How the trade writes it.
    pub(super) symbol: &'static str,
}

/// Spellings, power of ten, symbol. Lower case is read in any case, a spelling with a
/// capital only as it stands. `u` and `ohm` also stand for the Greek letters.
type Row = (&'static [&'static str], i8, &'static str);

const FREQUENCY: &[Row] = &[
    (
        &[
            "khz",
            "kc/s",
            "kc",
            "kcs",
            "kilohertz",
            "kilocycle",
            "kilocycles",
            "kilocycles per second",
        ],
        3,
        "kHz",
    ),
    (
        &[
            "mhz",
            "mc/s",
            "mc",
            "mcs",
            "megahertz",
            "megacycle",
            "megacycles",
            "megacycles per second",
        ],
        6,
        "MHz",
    ),
    (
        &[
            "hz",
            "c/s",
            "cps",
            "hertz",
            "cycle",
            "cycles",
            "cycles per second",
        ],
        0,
        "Hz",
    ),
    (&["ghz"], 9, "GHz"),
];
const WAVELENGTH: &[Row] = &[
    (&["m", "metre", "metres", "meter", "meters"], 0, "m"),
    (&["km", "kilometre", "kilometres"], 3, "km"),
    (&["cm"], -2, "cm"),
];
const INDUCTANCE: &[Row] = &[
    (
        &["uh", "microhenry", "microhenries", "microhenrys"],
        -6,
        "µH",
    ),
    (
        &["mh", "millihenry", "millihenries", "millihenrys"],
        -3,
        "mH",
    ),
    (&["h", "henry", "henries", "henrys"], 0, "H"),
    (&["nh"], -9, "nH"),
];
const CAPACITANCE: &[Row] = &[
    (
        &[
            "pf",
            "pfd",
            "mmf",
            "mmfd",
            "uuf",
            "uufd",
            "picofarad",
            "picofarads",
            "micromicrofarad",
            "micromicrofarads",
        ],
        -12,
        "pF",
    ),
    (&["nf", "nfd", "nanofarad", "nanofarads"], -9, "nF"),
    (&["uf", "ufd", "mfd", "microfarad", "microfarads"], -6, "µF"),
    (&["f", "farad", "farads"], 0, "F"),
];
const RESISTANCE: &[Row] = &[
    (&["k", "kohm", "kohms", "kilohm", "kilohms"], 3, "kΩ"),
    (&["M", "meg", "mohm", "mohms", "megohm", "megohms"], 6, "MΩ"),
    (&["ohm", "ohms", "r"], 0, "Ω"),
];
const VOLTAGE: &[Row] = &[
    (&["v", "volt", "volts"], 0, "V"),
    (&["mv", "millivolt", "millivolts"], -3, "mV"),
    (&["uv", "microvolt", "microvolts"], -6, "µV"),
    (&["kv", "kilovolt", "kilovolts"], 3, "kV"),
];
const POWER: &[Row] = &[
    (&["w", "watt", "watts"], 0, "W"),
    (&["mW", "milliwatt", "milliwatts"], -3, "mW"),
    (&["MW", "megawatt", "megawatts"], 6, "MW"),
    (&["kw", "kilowatt", "kilowatts"], 3, "kW"),
    (&["uw"], -6, "µW"),
];
const CONDUCTANCE: &[Row] = &[
    (
        &["ma/v", "mS", "milliamps per volt", "milliamperes per volt"],
        -3,
        "mA/V",
    ),
    (
        &[
            "ua/v",
            "uS",
            "umho",
            "umhos",
            "micromho",
            "micromhos",
            "microamps per volt",
        ],
        -6,
        "µA/V",
    ),
    (&["a/v", "S", "mho", "mhos"], 0, "A/V"),
];
const DURATION: &[Row] = &[
    (&["s", "second", "seconds"], 0, "s"),
    (&["ms", "millisecond", "milliseconds"], -3, "ms"),
    (&["us", "microsecond", "microseconds"], -6, "µs"),
];
const DECIBELS: &[Row] = &[(&["db", "decibel", "decibels"], 0, "dB")];
const DEPTH: &[Row] = &[(&["%", "per cent", "percent"], -2, "%")];

const fn rows(kind: Kind) -> &'static [Row] {
    match kind {
        Kind::Frequency => FREQUENCY,
        Kind::Wavelength => WAVELENGTH,
        Kind::Inductance => INDUCTANCE,
        Kind::Capacitance => CAPACITANCE,
        Kind::Resistance => RESISTANCE,
        Kind::Voltage => VOLTAGE,
        Kind::Power => POWER,
        Kind::Conductance => CONDUCTANCE,
        Kind::Duration => DURATION,
        Kind::Decibels => DECIBELS,
        Kind::Depth => DEPTH,
        Kind::Ratio | Kind::Integer | Kind::Choice => &[],
    }
}

/// The unit that is spelled so for this kind of value.
pub(super) fn find(kind: Kind, spelled: &str) -> Result<Unit, Rule> {
    let spelled = plain(spelled);
    if let Some(question) = question(kind, &spelled) {
        return Err(Rule::Ambiguous(question));
    }
    let unit = |rows: &[Row], wavelength| {
        rows.iter()
            .find(|row| row.0.iter().any(|known| is_spelled(known, &spelled)))
            .map(|row| Unit {
                power: row.1,
                wavelength,
                symbol: row.2,
            })
    };
    unit(rows(kind), false)
        .or_else(|| match kind {
            Kind::Frequency => unit(WAVELENGTH, true),
            _ => None,
        })
        .ok_or(Rule::UnknownUnit)
}

fn is_spelled(known: &str, spelled: &str) -> bool {
    let free = known.bytes().all(|byte| !byte.is_ascii_uppercase());
    known == spelled || (free && known.eq_ignore_ascii_case(spelled))
}

/// The spelling with plain letters for the Greek ones and without a closing full stop.
fn plain(spelled: &str) -> String {
    let mut plain = String::new();
    for letter in spelled.strip_suffix('.').unwrap_or(spelled).chars() {
        match letter {
            '\u{b5}' | '\u{3bc}' => plain.push('u'),
            '\u{3a9}' | '\u{2126}' => plain.push_str("ohm"),
            letter => plain.push(letter),
        }
    }
    plain
}

/// What to ask where a spelling leaves two units open.
fn question(kind: Kind, spelled: &str) -> Option<&'static str> {
    let any_case = |word: &str| spelled.eq_ignore_ascii_case(word);
    let small_m = spelled.starts_with('m');
    match kind {
        Kind::Capacitance if any_case("mf") => Some(
            "is this microfarad or millifarad? Type uF (or mfd) for microfarad, or count in uF",
        ),
        Kind::Frequency if spelled == "M" => {
            Some("is this megahertz or metres? Type MHz or a small m")
        }
        Kind::Frequency if any_case("k") => {
            Some("is k for kilohertz? Type kHz, since k alone only says a thousand")
        }
        Kind::Resistance if small_m && (any_case("m") || any_case("mohm") || any_case("mohms")) => {
            Some("is this megohm or milliohm? Type meg for megohm, or count in ohm")
        }
        Kind::Voltage if any_case("mv") && !small_m => {
            Some("is this millivolt or megavolt? Type mV for millivolt, or count in kV")
        }
        Kind::Power if any_case("mw") && !spelled.ends_with('W') => {
            Some("is this milliwatt or megawatt? Type mW or MW")
        }
        _ => None,
    }
}
