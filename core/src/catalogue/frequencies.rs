//! Entries of the superhet's arithmetic; see [`conversion`].

use super::shared_parameters::{DIAL, F1, F2, IF, OSCILLATOR, SIDE, SIGNAL};
use super::{Arguments, Entry, Kind, Parameter};
use crate::quantities::conversion::{self, Sign};
use crate::quantities::dial_error::dial_error;
use crate::quantities::range;
use crate::quantities::spurious_responses::pitch_slope;

/// The sum is exact; only a number's own rounding is left.
const EXACT: &str = "none: frequencies add exactly";

/// The rule that every superhet is built on.
const CONVERSION: &str = "D. Roddy and J. Coolen, Electronic Communications, section 7.3";

/// The harmonic of the oscillator in a response.
const M: Parameter = Parameter::integer(
    "m",
    "m",
    "which harmonic of the oscillator; 0 for none",
    range::OSCILLATOR_HARMONIC,
);

/// The sign of a response.
const SIGN: Parameter = Parameter::choice(
    "sign",
    r"\pm",
    "plus or minus the intermediate frequency",
    &["plus", "minus"],
);

fn sign(a: &Arguments<'_>) -> Sign {
    match a.choice("sign") {
        "minus" => Sign::Minus,
        _ => Sign::Plus,
    }
}

pub(super) const ENTRIES: &[Entry] = &[
    Entry {
        name: "oscillator",
        title: "Oscillator frequency",
        symbol: r"f_\mathrm{osc}",
        formula: r"f_\mathrm{osc} = f_\mathrm{dial} + sF",
        parameters: &[DIAL, IF, SIDE],
        result: Kind::Frequency,
        model_error: EXACT,
        source: CONVERSION,
        example: "oscillator?dial=1200kHz&if=470kHz&side=above",
        function: |a| {
            let found = conversion::oscillator(a.frequency("dial"), a.frequency("if"), a.side())?;
            Ok(found.to_hz())
        },
        note: None,
    },
    Entry {
        name: "image",
        title: "Image frequency",
        symbol: r"f_\mathrm{image}",
        formula: r"f_\mathrm{image} = \left|f_\mathrm{dial} + 2sF\right|",
        parameters: &[DIAL, IF, SIDE],
        result: Kind::Frequency,
        model_error: EXACT,
        source: "G. M. Miller and J. S. Beasley, Modern Electronic Communication, \
                 example 3.2, p. 134",
        example: "image?dial=1200kHz&if=470kHz&side=above",
        function: |a| {
            let found = conversion::image(a.frequency("dial"), a.frequency("if"), a.side())?;
            Ok(found.to_hz())
        },
        note: Some(|a| {
            conversion::image_is_a_sum(a.frequency("dial"), a.frequency("if"), a.side()).then_some(
                "with the oscillator below and dial between F and 2F, the image makes the IF \
                 as a sum with the oscillator, not as a difference",
            )
        }),
    },
    Entry {
        name: "difference",
        title: "Difference frequency of the mixer",
        symbol: r"f_\mathrm{diff}",
        formula: r"f_\mathrm{diff} = \left|f_\mathrm{sig} - f_\mathrm{osc}\right|",
        parameters: &[SIGNAL, OSCILLATOR],
        result: Kind::Frequency,
        model_error: EXACT,
        source: CONVERSION,
        example: "difference?signal=1200kHz&oscillator=1670kHz",
        function: |a| {
            let found = conversion::difference(a.frequency("signal"), a.frequency("oscillator"));
            Ok(found.to_hz())
        },
        note: None,
    },
    Entry {
        name: "sum",
        title: "Sum frequency of the mixer",
        symbol: r"f_\mathrm{sum}",
        formula: r"f_\mathrm{sum} = f_\mathrm{sig} + f_\mathrm{osc}",
        parameters: &[SIGNAL, OSCILLATOR],
        result: Kind::Frequency,
        model_error: EXACT,
        source: CONVERSION,
        example: "sum?signal=1200kHz&oscillator=1670kHz",
        function: |a| Ok(conversion::sum(a.frequency("signal"), a.frequency("oscillator")).to_hz()),
        note: None,
    },
    Entry {
        name: "dial",
        title: "Station from the oscillator's frequency",
        symbol: r"f_\mathrm{dial}",
        formula: r"f_\mathrm{dial} = f_\mathrm{osc} - sF",
        parameters: &[OSCILLATOR, IF, SIDE],
        result: Kind::Frequency,
        model_error: "none in the arithmetic; what the pointer reads is another thing",
        source: CONVERSION,
        example: "dial?oscillator=1670kHz&if=470kHz&side=above",
        function: |a| {
            let found = conversion::dial(a.frequency("oscillator"), a.frequency("if"), a.side())?;
            Ok(found.to_hz())
        },
        note: None,
    },
    Entry {
        name: "dial-error",
        title: "Dial error",
        symbol: r"\Delta f_\mathrm{dial}",
        formula: r"\Delta f_\mathrm{dial} = (f_\mathrm{osc} - sF) - f_\mathrm{read}",
        parameters: &[
            OSCILLATOR,
            IF,
            SIDE,
            Parameter::frequency("reading", r"f_\mathrm{read}", "what the pointer reads"),
        ],
        result: Kind::Frequency,
        model_error: "none in the arithmetic; tracking error, which is the aerial circuit's, is \
                      another thing",
        source: CONVERSION,
        example: "dial-error?oscillator=1678kHz&if=470kHz&side=above&reading=1200kHz",
        function: |a| {
            let (oscillator, intermediate) = (a.frequency("oscillator"), a.frequency("if"));
            let reading = a.frequency("reading");
            Ok(dial_error(oscillator, intermediate, a.side(), reading)?.to_hz())
        },
        note: None,
    },
    Entry {
        name: "wavelength",
        title: "Wavelength of a frequency",
        symbol: r"\lambda",
        formula: r"\lambda = \frac{c}{f}",
        parameters: &[Parameter::frequency("frequency", "f", "the frequency")],
        result: Kind::Wavelength,
        model_error: "none in free space; old dials reckon with 300 000 km/s and show 0.07 % \
                      more",
        source: "SI Brochure, 9th edition, BIPM 2019, section 2.2, for c",
        example: "wavelength?frequency=1MHz",
        function: |a| Ok(a.frequency("frequency").to_wavelength().to_m()),
        note: None,
    },
    Entry {
        name: "frequency",
        title: "Frequency of a wavelength",
        symbol: "f",
        formula: r"f = \frac{c}{\lambda}",
        parameters: &[Parameter::wavelength(
            "wavelength",
            r"\lambda",
            "the wavelength in free space",
        )],
        result: Kind::Frequency,
        model_error: "none in free space; old dials reckon with 300 000 km/s and mean 0.07 % \
                      more",
        source: "SI Brochure, 9th edition, BIPM 2019, section 2.2, for c",
        example: "frequency?wavelength=300m",
        function: |a| Ok(a.wavelength("wavelength").to_frequency().to_hz()),
        note: None,
    },
    Entry {
        name: "beat",
        title: "Beat of two carriers",
        symbol: r"f_\mathrm{beat}",
        formula: r"f_\mathrm{beat} = \left|f_1 - f_2\right|",
        parameters: &[F1, F2],
        result: Kind::Frequency,
        model_error: EXACT,
        source: "common practice, no source",
        example: "beat?f1=909kHz&f2=900kHz",
        function: |a| Ok(conversion::beat(a.frequency("f1"), a.frequency("f2")).to_hz()),
        note: None,
    },
    Entry {
        name: "whistle",
        title: "Whistle of a harmonic of the IF",
        symbol: r"f_\mathrm{whistle}",
        formula: r"f_\mathrm{whistle} = \left|hF - f_\mathrm{sig}\right|",
        parameters: &[
            SIGNAL,
            IF,
            Parameter::integer(
                "harmonic",
                "h",
                "which harmonic of the intermediate frequency",
                range::HARMONIC,
            ),
        ],
        result: Kind::Frequency,
        model_error: "none while the set is exactly in tune; mistuning by d moves the pitch \
                      by h times d",
        source: "common practice, no source",
        example: "whistle?signal=911kHz&if=455kHz&harmonic=2",
        function: |a| {
            let (signal, harmonic) = (a.frequency("signal"), a.integer("harmonic"));
            Ok(conversion::whistle(signal, a.frequency("if"), harmonic).to_hz())
        },
        note: None,
    },
    Entry {
        name: "image-whistle",
        title: "Whistle of a station with its image",
        symbol: r"f_\mathrm{whistle}",
        formula: r"f_\mathrm{whistle} = \left|2f_\mathrm{osc} - f_1 - f_2\right|",
        parameters: &[OSCILLATOR, F1, F2],
        result: Kind::Frequency,
        model_error: EXACT,
        source: "common practice, no source",
        example: "image-whistle?oscillator=1370kHz&f1=900kHz&f2=1842kHz",
        function: |a| {
            let oscillator = a.frequency("oscillator");
            let found = conversion::image_whistle(oscillator, a.frequency("f1"), a.frequency("f2"));
            Ok(found.to_hz())
        },
        note: None,
    },
    Entry {
        name: "spurious",
        title: "Spurious response",
        symbol: r"f_\mathrm{spur}",
        formula: r"f_\mathrm{spur} = \frac{m f_\mathrm{osc} \pm F}{n}",
        parameters: &[
            OSCILLATOR,
            IF,
            M,
            Parameter::integer(
                "n",
                "n",
                "which harmonic of the signal",
                range::SIGNAL_HARMONIC,
            ),
            SIGN,
        ],
        result: Kind::Frequency,
        model_error: "none in the place of a response; how strong it is depends on the mixer",
        source: "D. Roddy and J. Coolen, Electronic Communications, example 7.7.1, p. 236",
        example: "spurious?oscillator=1405kHz&if=455kHz&m=2&n=2&sign=minus",
        function: |a| {
            let sign = sign(a);
            let (oscillator, intermediate) = (a.frequency("oscillator"), a.frequency("if"));
            let (m, n) = (a.integer("m"), a.integer("n"));
            Ok(conversion::spurious(oscillator, intermediate, m, n, sign)?.to_hz())
        },
        note: None,
    },
    Entry {
        name: "pitch-slope",
        title: "How fast a whistle's pitch moves with the dial",
        symbol: r"v",
        formula: r"v = \left|s \pm m\right|",
        parameters: &[M, SIGN, SIDE],
        result: Kind::Ratio,
        model_error: "none while the IF is made as a difference; a harmonic of the set's own IF \
                      moves as many times as it is high",
        source: "derived from where a response lies and what turning the oscillator does to it",
        example: "pitch-slope?m=1&sign=plus&side=above",
        function: |a| {
            let slope = pitch_slope(a.integer("m"), sign(a), a.side(), false);
            Ok(f64::from(slope))
        },
        note: None,
    },
];
