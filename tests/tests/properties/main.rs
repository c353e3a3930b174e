//! What holds of the quantities whatever the numbers are, each with the bound that rounding
//! leaves.
//!
//! In a bound `U` is half the distance of two doubles near 1: what one operation may lose,
//! relative. A root halves what came before it, a power multiplies it.

#![expect(
    clippy::unwrap_used,
    reason = "an answer that is refused fails its test, where it stands"
)]

mod amplitude;
mod coupled_pairs;
mod parts;
mod tracking;
mod tuned_circuits;

/// What one operation may lose, relative.
pub(crate) const U: f64 = f64::EPSILON / 2.0;

/// How far a number is from what it should be, relative.
pub(crate) fn off(got: f64, expected: f64) -> f64 {
    (got / expected - 1.0).abs()
}
