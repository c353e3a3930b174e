//! Parameters that several quantities take under the same name and meaning.

use super::Parameter;

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
