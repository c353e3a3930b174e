//! Decibels of attenuation from how much more than at the peak a signal is divided.

use crate::units::Decibels;

/// Decibels for one neper of power, `10 / ln 10`: turns `ln(power ratio)` into decibels.
pub(crate) const DECIBELS_PER_NEPER_OF_POWER: f64 = 10.0 / core::f64::consts::LN_10;

/// `10·log10(1 + excess)` decibels, with all its digits for a small excess.
pub(crate) fn weaker(excess: f64) -> Decibels {
    Decibels::db(DECIBELS_PER_NEPER_OF_POWER * libm::log1p(excess))
}
