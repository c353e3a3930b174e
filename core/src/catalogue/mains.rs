//! Entries of the mains and the supply.

use super::{Entry, Kind, Parameter};
use crate::quantities::mains;

/// An alternating voltage as it is stated.
const RMS: Parameter = Parameter::voltage(
    "rms",
    r"U_\mathrm{rms}",
    "the alternating voltage as it is stated and as a meter shows it",
);

pub(super) const ENTRIES: &[Entry] = &[Entry {
    name: "peak-voltage",
    title: "Peak of an alternating voltage",
    symbol: r"\hat{U}",
    formula: r"\hat{U} = \sqrt{2}\, U_\mathrm{rms}",
    parameters: &[RMS],
    result: Kind::Voltage,
    model_error: "none for a sine; real mains often has flattened tops, and surges go far higher",
    source: "definition of the root-mean-square value of a sine",
    example: "peak-voltage?rms=230V",
    function: |a| Ok(mains::peak_voltage(a.voltage("rms")).to_v()),
    note: None,
}];
