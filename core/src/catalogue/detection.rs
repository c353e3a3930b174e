//! Entries of the detector and of automatic gain control.

use super::shared_parameters::{AUDIO, C, R};
use super::{Entry, Kind, Parameter};
use crate::quantities::range::{self, Range};
use crate::quantities::{agc, detection};

/// Where the AGC formulas are from.
const NOLLE: &str = "A. W. Nolle, Automatic gain control, Proc. IRE vol. 36 no. 7, pp. 911-916, \
                     July 1948 (abstract seen)";

/// Depths that have a highest audio frequency.
const FOLLOWED: Range = Range::new(0.01, 1.0);

/// How strongly the loop works.
const LOOP_GAIN: Parameter = Parameter::ratio(
    "loop-gain",
    "K",
    "the loop gain: decibels of gain taken off for each decibel that the output rises",
    range::ZERO_OR_MORE,
);

pub(super) const ENTRIES: &[Entry] = &[
    Entry {
        name: "detector-depth-limit",
        title: "Depth that a detector follows: diagonal clipping",
        symbol: r"m_\mathrm{max}",
        formula: r"m_\mathrm{max} = \frac{1}{\sqrt{1 + \left(2\pi f_\mathrm{a} R C\right)^2}}",
        parameters: &[R, C, AUDIO],
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
        name: "detector-audio-limit",
        title: "Highest audio that a detector follows",
        symbol: r"f_\mathrm{a,max}",
        formula: r"f_\mathrm{a,max} = \frac{\sqrt{1 - m^2}}{2\pi R C m}",
        parameters: &[
            R,
            C,
            Parameter::depth("depth", "m", "the depth of modulation").within(FOLLOWED),
        ],
        result: Kind::Frequency,
        model_error: "a load of R and C alone and one sine tone; 0 at full modulation",
        source: "D. Roddy and J. Coolen, Electronic Communications, example 8.11.1, p. 274, the \
                 same rule solved for the audio",
        example: "detector-audio-limit?r=0.2meg&c=150pF&depth=50%",
        function: |a| {
            let (load, across) = (a.resistance("r"), a.capacitance("c"));
            Ok(detection::detector_audio_limit(load, across, a.depth("depth")).to_hz())
        },
        note: None,
    },
    Entry {
        name: "time-constant",
        title: "Time constant of a resistance and a capacitor",
        symbol: r"\tau",
        formula: r"\tau = RC",
        parameters: &[R, C],
        result: Kind::Duration,
        model_error: "none for one resistance and one capacitor: after it, 37 % of a change is left",
        source: "F. E. Terman, Radio Engineers' Handbook, McGraw-Hill 1943 (cited from memory)",
        example: "time-constant?r=1meg&c=0.1uF",
        function: |a| {
            let (r, c) = (a.resistance("r"), a.capacitance("c"));
            Ok(detection::time_constant(r, c).to_s())
        },
        note: None,
    },
    Entry {
        name: "agc-flatness",
        title: "Flatness of an AGC: decibels in for each decibel out",
        symbol: r"M",
        formula: r"M = 1 + K",
        parameters: &[LOOP_GAIN],
        result: Kind::Ratio,
        model_error: "the same loop gain at every level; a valve's changes with its bias",
        source: NOLLE,
        example: "agc-flatness?loop-gain=9",
        function: |a| Ok(agc::flatness(a.number("loop-gain"))),
        note: None,
    },
    Entry {
        name: "agc-output-change",
        title: "Change of the output with AGC",
        symbol: r"\Delta_\mathrm{out}",
        formula: r"\Delta_\mathrm{out} = \frac{\Delta_\mathrm{in}}{1 + K}",
        parameters: &[
            Parameter::decibels(
                "input-change",
                r"\Delta_\mathrm{in}",
                "how much the signal at the aerial changes by, above the delay",
            ),
            LOOP_GAIN,
        ],
        result: Kind::Decibels,
        model_error: "the same loop gain at every level; below the delay the output follows the \
                      input",
        source: NOLLE,
        example: "agc-output-change?input-change=60dB&loop-gain=9",
        function: |a| {
            let change = a.decibels("input-change");
            Ok(agc::output_change(change, a.number("loop-gain")).to_db())
        },
        note: None,
    },
    Entry {
        name: "agc-time-constant",
        title: "Time constant of an AGC at work",
        symbol: r"\tau_\mathrm{c}",
        formula: r"\tau_\mathrm{c} = \frac{RC}{1 + K}",
        parameters: &[R, C, LOOP_GAIN],
        result: Kind::Duration,
        model_error: "one filter and small changes; after a large step up it settles faster than \
                      after a large step down",
        source: NOLLE,
        example: "agc-time-constant?r=1meg&c=0.1uF&loop-gain=9",
        function: |a| {
            let (r, c) = (a.resistance("r"), a.capacitance("c"));
            Ok(agc::closed_loop_time_constant(r, c, a.number("loop-gain")).to_s())
        },
        note: None,
    },
];
