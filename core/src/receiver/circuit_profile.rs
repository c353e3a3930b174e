//! A circuit that the gang tunes, as its owner would describe it.

use alloc::vec::Vec;

use serde::{Deserialize, Serialize};

use super::Typed;

/// The parts of an aerial circuit or of an oscillator circuit, beside its gang section.
///
/// Either the parts, or, for an oscillator, three dial settings at which it is exact.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default, rename_all = "kebab-case", deny_unknown_fields)]
pub struct CircuitProfile {
    /// The coil as its core stands.
    #[serde(skip_serializing_if = "Typed::is_absent")]
    pub inductance: Typed,
    /// What wiring, valve and coil add across the gang section; 0 pF when left out.
    #[serde(skip_serializing_if = "Typed::is_absent")]
    pub strays: Typed,
    /// The trimmer as it stands; left out where there is none.
    #[serde(skip_serializing_if = "Typed::is_absent")]
    pub trimmer: Typed,
    /// What the trimmer lies across: `coil` or `gang`; the coil when left out. The same
    /// where there is no padder.
    #[serde(skip_serializing_if = "Typed::is_absent")]
    pub trimmer_across: Typed,
    /// The padder in series with the gang section; left out where there is none.
    #[serde(skip_serializing_if = "Typed::is_absent")]
    pub padder: Typed,
    /// For an oscillator in place of its parts: three dial settings at which it is exact.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub exact_at: Vec<Typed>,
}
