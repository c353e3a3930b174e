//! An IF transformer, as its owner would describe it.

use serde::{Deserialize, Serialize};

use super::Typed;

/// Two coupled windings, each tuned for itself.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default, rename_all = "kebab-case", deny_unknown_fields)]
pub struct IfTransformerProfile {
    /// The coefficient of coupling k.
    pub coupling: Typed,
    /// The side that the valve drives.
    pub primary: WindingProfile,
    /// The side that feeds the next grid or the diode.
    pub secondary: WindingProfile,
}

/// One side of an IF transformer.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default, rename_all = "kebab-case", deny_unknown_fields)]
pub struct WindingProfile {
    /// The fixed capacitor, where a core tunes the winding. One of this and `inductance`.
    #[serde(skip_serializing_if = "Typed::is_absent")]
    pub capacitance: Typed,
    /// The fixed coil, where a trimmer tunes the winding.
    #[serde(skip_serializing_if = "Typed::is_absent")]
    pub inductance: Typed,
    /// The Q: loaded, unless `load` is given; then the winding's own.
    pub q: Typed,
    /// The resistance across the winding, where `q` does not count it yet.
    #[serde(skip_serializing_if = "Typed::is_absent")]
    pub load: Typed,
    /// How far above the IF the winding alone is tuned; below zero for lower; 0 Hz when
    /// left out.
    #[serde(skip_serializing_if = "Typed::is_absent")]
    pub detuning: Typed,
}
