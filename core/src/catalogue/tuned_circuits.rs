//! Entries of tuned circuits.

use super::{Entry, Kind, Parameter};
use crate::quantities::conversion;

pub(super) const ENTRIES: &[Entry] = &[Entry {
    name: "capacitance-ratio",
    title: "Capacitance ratio that tunes a band",
    symbol: r"\frac{C_\mathrm{max}}{C_\mathrm{min}}",
    formula: r"\frac{C_\mathrm{max}}{C_\mathrm{min}} = \left(\frac{f_\mathrm{high}}{f_\mathrm{low}}\right)^2",
    parameters: &[
        Parameter::frequency(
            "f-low",
            r"f_\mathrm{low}",
            "the lowest frequency of the band",
        ),
        Parameter::frequency(
            "f-high",
            r"f_\mathrm{high}",
            "the highest frequency of the band",
        ),
    ],
    result: Kind::Ratio,
    model_error: "none with one coil and the whole capacitance of the circuit, strays and \
                  trimmer included",
    source: "E. W. Roddy and J. Coolen, Electronic Communications, example 7.4.1",
    example: "capacitance-ratio?f-low=500kHz&f-high=1500kHz",
    function: |a| {
        let ratio = conversion::capacitance_ratio(a.frequency("f-low"), a.frequency("f-high"))?;
        Ok(ratio.value())
    },
    note: None,
}];
