//! A set as its owner would describe it: one record, read from TOML or from JSON.
//!
//! Every value is held as it was written. Nothing is worked out here; see
//! [`Receiver`](super::Receiver). The keys are explained, one by one, in the file of the
//! built-in sets.

use alloc::string::String;
use alloc::vec::Vec;

use serde::{Deserialize, Serialize};

use super::circuit_profile::CircuitProfile;
use super::gang_profile::GangProfile;
use super::if_transformer_profile::IfTransformerProfile;
use super::stage_profiles::{AgcProfile, DetectorProfile, MixerProfile};
use super::{Fault, Receiver, Typed};

/// A whole set as data.
///
/// ```
/// use superhet::receiver::SetProfile;
/// let profile = SetProfile::plain();
/// assert_eq!(profile.bands[0].name, "Medium wave");
/// assert!(profile.faults().is_empty());
/// ```
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default, rename_all = "kebab-case", deny_unknown_fields)]
pub struct SetProfile {
    /// A built-in set's permanent number, which codes carry.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub number: Option<u32>,
    /// Its short name in links and files.
    pub id: String,
    /// What people call it.
    pub name: String,
    /// The intermediate frequency.
    #[serde(rename = "if")]
    pub intermediate: Typed,
    /// Where the oscillator runs: `above` or `below`.
    pub side: Typed,
    /// ITU Region 1, 2 or 3; 1 when left out.
    #[serde(skip_serializing_if = "Typed::is_absent")]
    pub region: Typed,
    /// The gang; left out where every circuit follows the dial exactly.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub gang: Option<GangProfile>,
    /// The bands, in the order of the wave-change switch.
    #[serde(rename = "band")]
    pub bands: Vec<BandProfile>,
    /// What the mixer does beside its work.
    pub mixer: MixerProfile,
    /// The IF transformers, mixer first.
    #[serde(rename = "if-transformer")]
    pub if_transformers: Vec<IfTransformerProfile>,
    /// The positions of the selectivity switch, where one is fitted.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub selectivity: Vec<SelectivityProfile>,
    /// The detector.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub detector: Option<DetectorProfile>,
    /// The automatic gain control.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub agc: Option<AgcProfile>,
}

/// One band of the dial, with the circuits that are switched in for it.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default, rename_all = "kebab-case", deny_unknown_fields)]
pub struct BandProfile {
    /// Its short name in links and files.
    pub id: String,
    /// What the switch calls it.
    pub name: String,
    /// The lowest dial mark, where the gang is fully in.
    pub low: Typed,
    /// The highest dial mark, where the gang is fully out.
    pub high: Typed,
    /// How the aerial circuit gets its signal: `rod`, the same for a loop, or `wire`; a rod
    /// when left out.
    #[serde(skip_serializing_if = "Typed::is_absent")]
    pub pick_up: Typed,
    /// The loaded Q of each aerial circuit.
    pub aerial_q: Typed,
    /// How many alike circuits stand before the mixer; 1 when left out.
    #[serde(skip_serializing_if = "Typed::is_absent")]
    pub aerial_circuits: Typed,
    /// The parts of the aerial circuit; left out where it follows the dial exactly.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub aerial: Option<CircuitProfile>,
    /// The parts of the oscillator circuit; left out where it runs exactly one IF from the
    /// dial.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub oscillator: Option<CircuitProfile>,
}

/// One position of a selectivity switch.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default, rename_all = "kebab-case", deny_unknown_fields)]
pub struct SelectivityProfile {
    /// Its short name in links and files.
    pub id: String,
    /// What the switch calls it.
    pub name: String,
    /// The coupling of each transformer in this position, mixer first.
    pub couplings: Vec<Typed>,
}

impl SetProfile {
    /// Everything that is wrong with the profile; nothing when it describes a receiver.
    ///
    /// ```
    /// use superhet::receiver::SetProfile;
    /// let mut profile = SetProfile::plain();
    /// profile.intermediate = "470".into();
    /// profile.side = "beside".into();
    /// let said: Vec<String> = profile.faults().iter().map(ToString::to_string).collect();
    /// assert_eq!(said[0], "if: a frequency needs a unit, such as 1200 kHz (got \"470\")");
    /// assert_eq!(said[1], "side: this is above or below (got \"beside\")");
    /// ```
    #[must_use]
    pub fn faults(&self) -> Vec<Fault> {
        Receiver::new(self).err().unwrap_or_default()
    }
}
