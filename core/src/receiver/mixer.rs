//! What the mixer does beside its work, its values read.

use alloc::vec::Vec;

use crate::units::Decibels;

/// The gains of a mixer's other ways through, measured against its conversion gain.
#[derive(Clone, Debug, PartialEq)]
pub struct Mixer {
    /// How much more it amplifies a signal at the IF itself than it converts a station.
    pub straight_gain: Decibels,
    /// How strongly it converts with the oscillator's second harmonic, third and so on.
    pub harmonic_gains: Vec<Decibels>,
}
