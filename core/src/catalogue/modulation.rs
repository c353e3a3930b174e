//! Entries of amplitude modulation, its detector, and decibels.

use super::shared_parameters::C;
use super::{Entry, Kind, Parameter};
use crate::quantities::{detection, modulation, range};
use crate::units::Decibels;

/// What the power formulas hold for.
const SINE: &str = "one sine tone; programme has less sideband power for the same peaks";

/// Powers of an AM signal.
const KENNEDY: &str = "G. Kennedy, B. Davis and S. R. M. Prasanna, Electronic Communication \
                       Systems, example 3.2, p. 38";

/// Decibels of a field quantity.
const DEFINITION: &str = "definition of the decibel for a ratio of voltages, ISO 80000-1:2009, \
                          annex C (cited from memory)";

/// The carrier's frequency.
const CARRIER: Parameter = Parameter::frequency("carrier", r"f_\mathrm{c}", "the carrier");

/// An audio frequency.
const AUDIO: Parameter = Parameter::audio("audio", r"f_\mathrm{a}", "the audio frequency");

/// The power of the carrier alone.
const CARRIER_POWER: Parameter = Parameter::power(
    "carrier-power",
    r"P_\mathrm{c}",
    "the power of the carrier alone",
);

/// The depth of modulation.
const DEPTH: Parameter = Parameter::depth("depth", "m", "the depth of modulation");

pub(super) const ENTRIES: &[Entry] = &[
    Entry {
        name: "sideband-lower",
        title: "Lower side frequency",
        symbol: r"f_\mathrm{lower}",
        formula: r"f_\mathrm{lower} = f_\mathrm{c} - f_\mathrm{a}",
        parameters: &[CARRIER, AUDIO],
        result: Kind::Frequency,
        model_error: "none for one sine tone",
        source: "G. M. Miller and J. S. Beasley, Modern Electronic Communication, example 2.1, p. 74",
        example: "sideband-lower?carrier=1400kHz&audio=10kHz",
        function: |a| {
            Ok(modulation::sideband_lower(a.frequency("carrier"), a.frequency("audio"))?.to_hz())
        },
        note: None,
    },
    Entry {
        name: "sideband-upper",
        title: "Upper side frequency",
        symbol: r"f_\mathrm{upper}",
        formula: r"f_\mathrm{upper} = f_\mathrm{c} + f_\mathrm{a}",
        parameters: &[CARRIER, AUDIO],
        result: Kind::Frequency,
        model_error: "none for one sine tone",
        source: "G. M. Miller and J. S. Beasley, Modern Electronic Communication, example 2.1, p. 74",
        example: "sideband-upper?carrier=1400kHz&audio=10kHz",
        function: |a| {
            Ok(modulation::sideband_upper(a.frequency("carrier"), a.frequency("audio")).to_hz())
        },
        note: None,
    },
    Entry {
        name: "necessary-bandwidth",
        title: "Necessary bandwidth of a broadcast",
        symbol: r"B_\mathrm{n}",
        formula: r"B_\mathrm{n} = 2 f_\mathrm{a}",
        parameters: &[AUDIO],
        result: Kind::Frequency,
        model_error: "a definition; occupied bandwidth, No. 1.153, is another thing",
        source: "ITU Radio Regulations No. 1.152; ITU-R BS.639 (1986), considering a)",
        example: "necessary-bandwidth?audio=4.5kHz",
        function: |a| Ok(modulation::necessary_bandwidth(a.frequency("audio")).to_hz()),
        note: None,
    },
    Entry {
        name: "modulation-depth",
        title: "Depth of modulation",
        symbol: r"m",
        formula: r"m = \frac{E_\mathrm{max} - E_\mathrm{min}}{E_\mathrm{max} + E_\mathrm{min}}",
        parameters: &[
            Parameter::voltage("e-max", r"E_\mathrm{max}", "the envelope at its greatest"),
            Parameter::voltage("e-min", r"E_\mathrm{min}", "the envelope at its least")
                .within(range::ZERO_OR_MORE),
        ],
        result: Kind::Depth,
        model_error: "none for an envelope that does not reach zero and stay there",
        source: "R. Blake, Electronic Communication Systems, example 3.4, p. 110",
        example: "modulation-depth?e-max=150mV&e-min=70mV",
        function: |a| {
            Ok(modulation::modulation_depth(a.voltage("e-max"), a.voltage("e-min"))?.fraction())
        },
        note: None,
    },
    Entry {
        name: "sideband-power",
        title: "Power of both sidebands",
        symbol: r"P_\mathrm{sb}",
        formula: r"P_\mathrm{sb} = P_\mathrm{c}\,\frac{m^2}{2}",
        parameters: &[CARRIER_POWER, DEPTH],
        result: Kind::Power,
        model_error: SINE,
        source: KENNEDY,
        example: "sideband-power?carrier-power=400W&depth=75%",
        function: |a| {
            Ok(modulation::sideband_power(a.power("carrier-power"), a.depth("depth")).to_w())
        },
        note: None,
    },
    Entry {
        name: "total-power",
        title: "Power of carrier and sidebands",
        symbol: r"P",
        formula: r"P = P_\mathrm{c}\left(1 + \frac{m^2}{2}\right)",
        parameters: &[CARRIER_POWER, DEPTH],
        result: Kind::Power,
        model_error: SINE,
        source: KENNEDY,
        example: "total-power?carrier-power=400W&depth=75%",
        function: |a| {
            Ok(modulation::total_power(a.power("carrier-power"), a.depth("depth")).to_w())
        },
        note: None,
    },
    Entry {
        name: "detector-depth-limit",
        title: "Depth that a detector follows: diagonal clipping",
        symbol: r"m_\mathrm{max}",
        formula: r"m_\mathrm{max} = \frac{1}{\sqrt{1 + \left(2\pi f_\mathrm{a} R C\right)^2}}",
        parameters: &[
            Parameter::resistance("r", "R", "the load resistance"),
            C,
            AUDIO,
        ],
        result: Kind::Depth,
        model_error: "a load of R and C alone; the rougher rule RC < 1/(2π·f·m) allows more",
        source: "D. Roddy and J. Coolen, Electronic Communications, example 8.11.1, p. 274",
        example: "detector-depth-limit?r=10k&c=1000pF&audio=10kHz",
        function: |a| {
            let (load, across) = (a.resistance("r"), a.capacitance("c"));
            Ok(detection::detector_depth_limit(load, across, a.frequency("audio")).fraction())
        },
        note: None,
    },
    Entry {
        name: "detector-load-limit",
        title: "Depth that a detector follows: clipped troughs",
        symbol: r"m_\mathrm{max}",
        formula: r"m_\mathrm{max} = \frac{R_\mathrm{ac}}{R_\mathrm{dc}}",
        parameters: &[
            Parameter::resistance("r-ac", r"R_\mathrm{ac}", "the load for audio"),
            Parameter::resistance("r-dc", r"R_\mathrm{dc}", "the load for steady current"),
        ],
        result: Kind::Depth,
        model_error: "resistive loads and an ideal diode; it usually comes before diagonal clipping",
        source: "communication-engineering text, Scilab TBC book 1409, example 8.8, p. 8-29",
        example: "detector-load-limit?r-ac=319.7k&r-dc=470k",
        function: |a| {
            Ok(
                detection::detector_load_limit(a.resistance("r-ac"), a.resistance("r-dc"))?
                    .fraction(),
            )
        },
        note: None,
    },
    Entry {
        name: "decibels",
        title: "Decibels of a voltage ratio",
        symbol: r"A",
        formula: r"A = 20 \log_{10} r",
        parameters: &[Parameter::ratio(
            "ratio",
            "r",
            "the ratio of the two voltages",
            range::ABOVE_ZERO,
        )],
        result: Kind::Decibels,
        model_error: "exact for voltages across equal resistances",
        source: DEFINITION,
        example: "decibels?ratio=100",
        function: |a| Ok(Decibels::from_voltage_ratio(a.ratio("ratio")).to_db()),
        note: None,
    },
    Entry {
        name: "voltage-ratio",
        title: "Voltage ratio of decibels",
        symbol: r"r",
        formula: r"r = 10^{A/20}",
        parameters: &[Parameter::decibels("decibels", "A", "the decibels")],
        result: Kind::Ratio,
        model_error: "exact for voltages across equal resistances",
        source: DEFINITION,
        example: "voltage-ratio?decibels=6dB",
        function: |a| Ok(a.decibels("decibels").to_voltage_ratio().value()),
        note: None,
    },
];
