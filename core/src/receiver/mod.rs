//! A whole receiver as data, and its response to any signal at any setting of its dial.
//!
//! In scope: gang, aerial and oscillator circuits, mixer, IF transformers, a selectivity
//! switch, detector and AGC of one set; which station comes in, how strongly anything else
//! does, tracking and dial errors, the set's own selectivity curve. Left out: noise, gain in
//! absolute terms, overloading, cross-modulation, harmonics of the signal itself (see
//! [`spurious_responses`](crate::quantities::spurious_responses)), traps, and coupling that
//! goes round the aerial circuit.
//!
//! A [`SetProfile`] holds what a person wrote. A [`Receiver`] holds what it means, or every
//! fault of it is named. With the pointer at a reading there is a [`Setting`] (where the
//! circuits are) and a [`Tuning`] (ready for many signals).
//!
//! # The dial and the circuits
//! The marks of a band are taken to be printed for a coil and strays that stay the same
//! along it, plates fully in at the lowest mark and fully out at the highest. The pointer's
//! reading settles the plates, the plates the two sections, and each section with the parts
//! of its own circuit a resonance. The oscillator decides which station is received; the
//! aerial circuit only how strongly. A circuit without parts follows the dial exactly.
//!
//! # The four paths
//! `f` the signal, `fo` the oscillator, `fa` the aerial circuit's resonance, `A(f)` the
//! decibels that the aerial circuits take off, `C(x)` those that the IF chain takes off a
//! signal that stands at `x` in it, `x` above 0 Hz.
//!
//! | path | decibels | where there is none |
//! | --- | --- | --- |
//! | wanted | `A(f) + C(fo − f)`; below `A(f) + C(f − fo)` | `x` not above 0 Hz |
//! | image | `A(f) + C(f − fo)`; below `A(f) + C(fo − f)`, or `C(fo + f)` with `fo` under the IF | likewise |
//! | breakthrough | `A(f) + C(f)`, less the mixer's straight gain | never |
//! | harmonic `h` | `A(f) + C(\|h·fo − f\|)`, less the mixer's gain for it | no such gain |
//!
//! All are measured from the peak of the wanted path, which is 0 dB. `A` holds the loaded Q
//! constant over the curve, and from a wire counts that the voltage in the coil does not
//! climb with frequency. `C` is the exact network of each transformer, each side with its
//! own tuning. Harmonics are summed as powers, and so are the four in
//! [`Response::total`].

mod alignable_part;
mod band;
mod circuit_profile;
mod detector;
mod dial_scale;
mod error;
mod gang_circuit;
mod gang_profile;
mod if_chain;
mod if_transformer_profile;
mod mixer;
mod passband;
mod plain_set;
mod read_band;
mod read_chain;
mod read_circuit;
mod read_set;
mod reader;
mod response;
mod set_profile;
mod setting;
mod stage_profiles;
#[cfg(test)]
mod tests;
mod tuning;
mod typed;
mod whole_receiver;

pub use crate::fault::{Fault, Place};
pub use alignable_part::{AlignablePart, WindingSide};
pub use band::{Band, PickUp};
pub use circuit_profile::CircuitProfile;
pub use detector::{Agc, Detector};
pub use error::ReceiverError;
pub use gang_circuit::GangCircuit;
pub use gang_profile::{GangProfile, ShapedProfile};
pub use if_chain::IfChain;
pub use if_transformer_profile::{IfTransformerProfile, WindingProfile};
pub use mixer::Mixer;
pub use response::Response;
pub use set_profile::{BandProfile, SelectivityProfile, SetProfile};
pub use setting::Setting;
pub use stage_profiles::{AgcProfile, DetectorProfile, MixerProfile};
pub use tuning::Tuning;
pub use typed::Typed;
pub use whole_receiver::{Position, Receiver};
