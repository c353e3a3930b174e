//! The receiver against closed forms, limits, and the quantities it is made of.

mod chain;
mod circuits;
mod paths;
mod profiles;

use std::vec::Vec;

use super::{Receiver, SetProfile};
use crate::units::Frequency;

/// Sums and logarithms of a few hundred decibels: some units of the last place.
const ROUNDING: f64 = 1e-9;

#[derive(serde::Deserialize)]
struct List {
    set: Vec<SetProfile>,
}

/// The file of the built-in sets.
const PROFILES: &str = include_str!("../../../lessons/set-profiles.toml");

fn built_in() -> Vec<SetProfile> {
    toml::from_str::<List>(PROFILES).unwrap().set
}

fn receiver(profile: &SetProfile) -> Receiver {
    Receiver::new(profile).unwrap_or_else(|faults| panic!("{}: {faults:?}", profile.name))
}

fn khz(value: f64) -> Frequency {
    Frequency::khz(value)
}
