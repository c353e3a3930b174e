//! The gang, as its owner would describe it.

use alloc::string::String;

use serde::{Deserialize, Serialize};

use super::Typed;

/// The variable capacitors on one spindle.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default, rename_all = "kebab-case", deny_unknown_fields)]
pub struct GangProfile {
    /// A section with its plates fully out, strays not counted.
    pub minimum: Typed,
    /// A section with its plates fully in.
    pub maximum: Typed,
    /// The oscillator's own section, where its plates are cut to their own shape; left out
    /// where the sections are alike.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub shaped: Option<ShapedProfile>,
}

/// An oscillator section whose plates are cut so that, on one band and for one IF, the
/// oscillator follows without a padder.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default, rename_all = "kebab-case", deny_unknown_fields)]
pub struct ShapedProfile {
    /// The id of the band that it was cut for.
    pub band: String,
    /// The IF that it was cut for; the set's when left out.
    #[serde(rename = "if", skip_serializing_if = "Typed::is_absent")]
    pub intermediate: Typed,
    /// The oscillator section with its plates fully out.
    pub minimum: Typed,
    /// The oscillator section with its plates fully in.
    pub maximum: Typed,
}
