//! Entries of amplitude modulation.

use super::shared_parameters::{AUDIO, DEPTH};
use super::{Entry, Kind, Parameter};
use crate::quantities::{modulation, range};

/// What the power formulas hold for.
const SINE: &str = "one sine tone; programme has less sideband power for the same peaks";

/// Powers of an AM signal.
const KENNEDY: &str = "G. Kennedy, B. Davis and S. R. M. Prasanna, Electronic Communication \
                       Systems, example 3.2, p. 38";

/// The carrier's frequency.
const CARRIER: Parameter = Parameter::frequency("carrier", r"f_\mathrm{c}", "the carrier");

/// The power of the carrier alone.
const CARRIER_POWER: Parameter = Parameter::power(
    "carrier-power",
    r"P_\mathrm{c}",
    "the power of the carrier alone",
);

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
        name: "three-tone-depth",
        title: "Depth of modulation by three tones at once",
        symbol: r"m",
        formula: r"m = \sqrt{m_1^2 + m_2^2 + m_3^2}",
        parameters: &[
            Parameter::depth("m1", "m_1", "the depth of the first tone by itself"),
            Parameter::depth("m2", "m_2", "the depth of the second tone by itself"),
            Parameter::depth("m3", "m_3", "the depth of the third tone by itself"),
        ],
        result: Kind::Depth,
        model_error: "for power: the envelope's peaks can reach the plain sum of the three depths",
        source: "R. Blake, Electronic Communication Systems, example 3.3, p. 109",
        example: "three-tone-depth?m1=0.1&m2=0.2&m3=0.3",
        function: |a| {
            let tones = ["m1", "m2", "m3"].map(|tone| a.depth(tone));
            Ok(modulation::three_tone_depth(tones)?.fraction())
        },
        note: None,
    },
    Entry {
        name: "sideband-amplitude",
        title: "Amplitude of each sideband",
        symbol: r"E_\mathrm{sb}",
        formula: r"E_\mathrm{sb} = \frac{m E_\mathrm{c}}{2}",
        parameters: &[
            Parameter::voltage(
                "carrier-voltage",
                r"E_\mathrm{c}",
                "the amplitude of the carrier alone",
            ),
            DEPTH,
        ],
        result: Kind::Voltage,
        model_error: "none for one sine tone",
        source: "Basics of Electrical, Electronics and Communication (Storey, Hughes, Tomasi), \
                 example 4.2, p. 4.9",
        example: "sideband-amplitude?carrier-voltage=20V&depth=0.375",
        function: |a| {
            let carrier = a.voltage("carrier-voltage");
            Ok(modulation::sideband_amplitude(carrier, a.depth("depth")).to_v())
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
];
