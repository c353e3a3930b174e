//! Parameters that several quantities take under the same name and meaning.

use super::Parameter;
use crate::quantities::range;

/// The station that the set is tuned to.
pub(super) const DIAL: Parameter = Parameter::frequency(
    "dial",
    r"f_\mathrm{dial}",
    "the station's frequency, as set on the dial",
)
.from_profile("dial");

/// The intermediate frequency.
pub(super) const IF: Parameter =
    Parameter::frequency("if", "F", "the intermediate frequency").from_profile("if");

/// The side of the signal that the oscillator runs on.
pub(super) const SIDE: Parameter = Parameter::choice(
    "side",
    "s",
    "the side of the signal that the oscillator runs on: +1 above it, −1 below it",
    &["above", "below"],
)
.from_profile("side");

/// The frequency of the oscillator.
pub(super) const OSCILLATOR: Parameter = Parameter::frequency(
    "oscillator",
    r"f_\mathrm{osc}",
    "the oscillator's frequency",
);

/// The frequency of a signal.
pub(super) const SIGNAL: Parameter =
    Parameter::frequency("signal", r"f_\mathrm{sig}", "the signal's frequency");

/// One of two frequencies that are alike.
pub(super) const F1: Parameter = Parameter::frequency("f1", "f_1", "one frequency");

/// The other of two frequencies that are alike.
pub(super) const F2: Parameter = Parameter::frequency("f2", "f_2", "the other frequency");

/// The frequency at which something is asked.
pub(super) const F: Parameter =
    Parameter::frequency("f", "f", "the frequency at which it is asked");

/// A resonant frequency.
pub(super) const F0: Parameter =
    Parameter::frequency("f0", "f_0", "the frequency that the circuit is tuned to");

/// The loaded Q of a single circuit.
pub(super) const Q: Parameter = Parameter::ratio(
    "q",
    "Q",
    "the Q of the circuit, as it works in the set",
    range::Q,
);

/// How many alike circuits there are.
pub(super) const CIRCUITS: Parameter = Parameter::integer(
    "circuits",
    "n",
    "how many circuits, alike and separate",
    range::STAGES,
);

/// An inductance.
pub(super) const L: Parameter = Parameter::inductance("l", "L", "the inductance");

/// A resistance that stands beside a capacitor.
pub(super) const R: Parameter = Parameter::resistance("r", "R", "the resistance");

/// An audio frequency.
pub(super) const AUDIO: Parameter =
    Parameter::audio("audio", r"f_\mathrm{a}", "the audio frequency");

/// The depth of modulation.
pub(super) const DEPTH: Parameter = Parameter::depth("depth", "m", "the depth of modulation");

/// A capacitance.
pub(super) const C: Parameter = Parameter::capacitance(
    "c",
    "C",
    "the whole capacitance, with that of coil and wires",
);

/// The lowest frequency of a band.
pub(super) const F_LOW: Parameter = Parameter::frequency(
    "f-low",
    r"f_\mathrm{low}",
    "the lowest frequency of the band",
);

/// The highest frequency of a band.
pub(super) const F_HIGH: Parameter = Parameter::frequency(
    "f-high",
    r"f_\mathrm{high}",
    "the highest frequency of the band",
);
