//! Mixer, detector and automatic gain control, as their owner would describe them.

use alloc::vec::Vec;

use serde::{Deserialize, Serialize};

use super::Typed;

/// What the mixer does beside turning the wanted station into the IF.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default, rename_all = "kebab-case", deny_unknown_fields)]
pub struct MixerProfile {
    /// How much more it amplifies a signal at the IF itself than it converts a station; 0 dB
    /// when left out.
    #[serde(skip_serializing_if = "Typed::is_absent")]
    pub straight_gain: Typed,
    /// How strongly it converts with the oscillator's second harmonic, third harmonic and so
    /// on, measured against the fundamental; none when left out.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub harmonic_gains: Vec<Typed>,
}

/// The diode detector.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default, rename_all = "kebab-case", deny_unknown_fields)]
pub struct DetectorProfile {
    /// The load resistance for steady current.
    pub load: Typed,
    /// The load resistance for sound; as `load` when left out.
    #[serde(skip_serializing_if = "Typed::is_absent")]
    pub audio_load: Typed,
    /// The capacitor across the load.
    pub capacitor: Typed,
}

/// The automatic gain control.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default, rename_all = "kebab-case", deny_unknown_fields)]
pub struct AgcProfile {
    /// The loop gain: decibels taken off the gain for each decibel at the detector.
    pub loop_gain: Typed,
    /// The resistor of the filter that keeps the sound out.
    pub filter_resistance: Typed,
    /// The capacitor of that filter.
    pub filter_capacitor: Typed,
    /// The voltage at the detector below which it does nothing; 0 V when left out.
    #[serde(skip_serializing_if = "Typed::is_absent")]
    pub delay: Typed,
}
