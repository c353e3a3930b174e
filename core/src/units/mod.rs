//! Values with units: one type a quantity, how they are typed and how they are shown.
//!
//! In scope: the units that a broadcast receiver of the valve age and its papers use.
//! Left out: complex values, angles and temperature, which nothing here needs, and
//! arithmetic between units, which the formulas write out in SI numbers.
//!
//! - A type holds one private `f64` in the SI unit and is made and read by named units:
//!   [`Frequency::khz`], [`Frequency::to_khz`].
//! - [`parse`] reads what people type, [`display`] writes what people expect to see.
//! - Reading and writing decimal numbers is exact up to one rounding and uses neither
//!   `core::fmt` nor `core::num` on floats: the look-up page's program has to stay small.

mod capacitance;
mod conductance;
mod decibels;
mod depth;
pub mod display;
mod duration;
mod frequency;
mod inductance;
mod kind;
mod natural;
pub mod parse;
mod power;
mod ratio;
mod resistance;
mod rounding;
#[cfg(test)]
mod tests;
mod voltage;
mod wavelength;

pub use capacitance::Capacitance;
pub use conductance::Conductance;
pub use decibels::Decibels;
pub use depth::Depth;
pub use duration::Duration;
pub use frequency::Frequency;
pub use inductance::Inductance;
pub use kind::Kind;
pub use power::Power;
pub use ratio::Ratio;
pub use resistance::Resistance;
pub use voltage::Voltage;
pub use wavelength::{SPEED_OF_LIGHT, Wavelength};
