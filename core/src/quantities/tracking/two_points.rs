//! A padder alone or a trimmer alone: exact at the two ends of a band.
//!
//! Teaching steps, not working sets: over 500 to 1600 kHz with an IF of 465 kHz the
//! padder alone is 46 kHz too low in mid band, the trimmer alone 165 kHz too high.

use super::TrackingError;
use crate::units::{Capacitance, Frequency};

/// The padder that alone makes the oscillator exact at both ends.
///
/// `Cp = c_max·(Ro − 1)/(Rs − Ro)` with `Rs = (f_high/f_low)²` and
/// `Ro = ((f_high + F)/(f_low + F))²`; `c_max` is the whole signal capacitance at
/// `f_low`.
///
/// # Errors
/// When `f_high` is not above `f_low`.
///
/// ```
/// use superhet::quantities::tracking::padder_two_point;
/// use superhet::units::{Capacitance, Frequency};
/// // 500 to 1600 kHz, IF 465 kHz, 350 pF: 221.3 pF.
/// let padder = padder_two_point(
///     Frequency::khz(500.0),
///     Frequency::khz(1600.0),
///     Frequency::khz(465.0),
///     Capacitance::pf(350.0),
/// );
/// assert!((padder.unwrap().to_pf() - 221.29).abs() < 0.01);
/// ```
pub fn padder_two_point(
    low: Frequency,
    high: Frequency,
    intermediate: Frequency,
    largest: Capacitance,
) -> Result<Capacitance, TrackingError> {
    let ratios = Ratios::new(low, high, intermediate)?;
    Ok(Capacitance::f(
        largest.to_f() * ratios.oscillator_less_one / ratios.signal_less_oscillator,
    ))
}

/// The trimmer that alone makes the oscillator exact at both ends.
///
/// `Ct = c_max·(1 − Ro/Rs)/(Ro − 1)`, symbols as for [`padder_two_point`].
///
/// # Errors
/// When `f_high` is not above `f_low`.
///
/// ```
/// use superhet::quantities::tracking::trimmer_two_point;
/// use superhet::units::{Capacitance, Frequency};
/// // The same band: 350 × (1 − 4.579/10.24)/3.579 = 54.06 pF.
/// let trimmer = trimmer_two_point(
///     Frequency::khz(500.0),
///     Frequency::khz(1600.0),
///     Frequency::khz(465.0),
///     Capacitance::pf(350.0),
/// );
/// assert!((trimmer.unwrap().to_pf() - 54.06).abs() < 0.01);
/// ```
pub fn trimmer_two_point(
    low: Frequency,
    high: Frequency,
    intermediate: Frequency,
    largest: Capacitance,
) -> Result<Capacitance, TrackingError> {
    let ratios = Ratios::new(low, high, intermediate)?;
    Ok(Capacitance::f(
        largest.to_f() * ratios.signal_less_oscillator
            / (ratios.signal * ratios.oscillator_less_one),
    ))
}

/// `Rs`, `Rs − Ro` and `Ro − 1`, the differences from their own factors.
struct Ratios {
    signal: f64,
    signal_less_oscillator: f64,
    oscillator_less_one: f64,
}

impl Ratios {
    fn new(
        low: Frequency,
        high: Frequency,
        intermediate: Frequency,
    ) -> Result<Self, TrackingError> {
        if high <= low {
            return Err(TrackingError::EndsOutOfOrder { low, high });
        }
        let (low, high, f) = (low.to_hz(), high.to_hz(), intermediate.to_hz());
        let (signal, oscillator) = (high / low, (high + f) / (low + f));
        // high/low − (high + F)/(low + F) = F(high − low)/(low(low + F)).
        let between = f * (high - low) / (low * (low + f));
        Ok(Self {
            signal: signal * signal,
            signal_less_oscillator: between * (signal + oscillator),
            oscillator_less_one: (high - low) / (low + f) * (oscillator + 1.0),
        })
    }
}

#[cfg(test)]
mod tests;
