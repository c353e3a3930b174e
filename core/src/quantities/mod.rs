//! The physics, one subject a file, in typed units or plain SI numbers.
//!
//! A function here knows its formula and when it stops making sense. Which range a
//! parameter may be typed in is [`range`]'s; names and texts are the catalogue's.

pub mod agc;
mod attenuation;
pub mod band_card;
pub mod bands;
pub mod cascade;
pub mod chain_curve;
pub mod coils;
pub mod combination;
pub mod conversion;
pub mod coupled_pair;
pub mod decimal_log;
pub mod detection;
pub mod dial_error;
pub mod gain;
pub mod mains;
pub mod modulation;
pub mod preferred_values;
pub mod range;
pub mod resonance;
pub mod selectivity;
pub mod spurious_responses;
pub mod square_root;
pub mod tracking;
pub mod transformer_network;
