//! Amplitude modulation: sidebands, the room they take, depth and power.
//!
//! In scope: one sine tone on one carrier, and the depth that three of them come to.
//! Left out: programme, whose power needs its own statistics, and overmodulation.
//!
//! Symbols: `fc` carrier, `fa` audio, `m` depth of modulation as a fraction, `Pc`
//! carrier power.

use core::f64::consts::PI;
use core::fmt;

use libm::{cos, hypot};

use crate::units::{Depth, Frequency, Power, Voltage};

/// Why a figure of modulation was refused.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum ModulationError {
    /// The audio frequency reaches the carrier, so that there is no lower sideband.
    AudioReachesCarrier {
        /// The carrier.
        carrier: Frequency,
        /// The audio frequency.
        audio: Frequency,
    },
    /// `e-min` is above `e-max`.
    EnvelopeOutOfOrder {
        /// The envelope that is called greatest.
        largest: Voltage,
        /// The envelope that is called least.
        smallest: Voltage,
    },
    /// Both ends of the envelope are zero: there is no carrier.
    NoEnvelope,
    /// Three tones whose peaks meet modulate more than fully; their depths together.
    Overmodulated(Depth),
}

impl fmt::Display for ModulationError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::AudioReachesCarrier { carrier, audio } => write!(
                out,
                "audio must be below the carrier, or there is no lower sideband (got {audio} on \
                 {carrier})"
            ),
            Self::EnvelopeOutOfOrder { largest, smallest } => {
                write!(
                    out,
                    "e-min must not be above e-max (got {smallest} and {largest})"
                )
            }
            Self::Overmodulated(together) => write!(
                out,
                "m1, m2 and m3 together must not be above 1, or the peaks overmodulate when \
                 they meet (got {together})"
            ),
            Self::NoEnvelope => out.write_str("e-max must be above zero (got 0 V)"),
        }
    }
}

impl core::error::Error for ModulationError {}

/// The lower side frequency of a carrier and a tone, `fc − fa`.
///
/// # Errors
/// When the audio frequency is not below the carrier.
///
/// ```
/// use superhet::quantities::modulation::sideband_lower;
/// use superhet::units::Frequency;
/// let lower = sideband_lower(Frequency::khz(1000.0), Frequency::khz(1.6)).unwrap();
/// assert_eq!(lower, Frequency::hz(998_400.0));
/// ```
pub fn sideband_lower(carrier: Frequency, audio: Frequency) -> Result<Frequency, ModulationError> {
    let lower = carrier.to_hz() - audio.to_hz();
    if lower <= 0.0 {
        return Err(ModulationError::AudioReachesCarrier { carrier, audio });
    }
    Ok(Frequency::hz(lower))
}

/// The upper side frequency of a carrier and a tone, `fc + fa`.
///
/// ```
/// use superhet::quantities::modulation::sideband_upper;
/// use superhet::units::Frequency;
/// let upper = sideband_upper(Frequency::khz(1000.0), Frequency::khz(1.6));
/// assert_eq!(upper, Frequency::hz(1_001_600.0));
/// ```
#[must_use]
pub fn sideband_upper(carrier: Frequency, audio: Frequency) -> Frequency {
    Frequency::hz(carrier.to_hz() + audio.to_hz())
}

/// The room that amplitude modulation takes: twice the highest audio frequency.
///
/// `B = 2·fa`, the necessary bandwidth of ITU Radio Regulations No. 1.152; occupied
/// bandwidth, No. 1.153, is another thing.
///
/// ```
/// use superhet::quantities::modulation::necessary_bandwidth;
/// use superhet::units::Frequency;
/// assert_eq!(necessary_bandwidth(Frequency::khz(4.5)), Frequency::khz(9.0));
/// ```
#[must_use]
pub fn necessary_bandwidth(audio: Frequency) -> Frequency {
    Frequency::hz(2.0 * audio.to_hz())
}

/// The depth of modulation from the largest and smallest envelope.
///
/// `m = (e_max − e_min)/(e_max + e_min)`, a fraction from 0 to 1.
///
/// # Errors
/// When `e_min` is above `e_max`, or both are zero.
///
/// ```
/// use superhet::quantities::modulation::modulation_depth;
/// use superhet::units::Voltage;
/// // 150 mV and 70 mV: 80/220 = 0.364.
/// let m = modulation_depth(Voltage::v(0.150), Voltage::v(0.070)).unwrap();
/// assert!((m.fraction() - 0.363636).abs() < 1e-6);
/// ```
pub fn modulation_depth(largest: Voltage, smallest: Voltage) -> Result<Depth, ModulationError> {
    let (high, low) = (largest.to_v(), smallest.to_v());
    if low > high {
        return Err(ModulationError::EnvelopeOutOfOrder { largest, smallest });
    }
    if high <= 0.0 {
        return Err(ModulationError::NoEnvelope);
    }
    Ok(Depth::new((high - low) / (high + low)))
}

/// The power of both sidebands together, for a sine tone.
///
/// `Pc·m²/2`.
///
/// ```
/// use superhet::quantities::modulation::sideband_power;
/// use superhet::units::{Depth, Power};
/// // 400 W at 0.75: 112.5 W.
/// assert_eq!(sideband_power(Power::w(400.0), Depth::new(0.75)), Power::w(112.5));
/// ```
#[must_use]
pub fn sideband_power(carrier: Power, depth: Depth) -> Power {
    let m = depth.fraction();
    Power::w(carrier.to_w() * m * m / 2.0)
}

/// The power of carrier and both sidebands, for a sine tone.
///
/// `Pc·(1 + m²/2)`.
///
/// ```
/// use superhet::quantities::modulation::total_power;
/// use superhet::units::{Depth, Power};
/// // 400 W at 0.75: 512.5 W.
/// assert_eq!(total_power(Power::w(400.0), Depth::new(0.75)), Power::w(512.5));
/// ```
#[must_use]
pub fn total_power(carrier: Power, depth: Depth) -> Power {
    let m = depth.fraction();
    Power::w(carrier.to_w() * (1.0 + m * m / 2.0))
}

/// The outline of a modulated carrier over the carrier's own amplitude.
///
/// `1 + m·cos(2π·t·fa)`, `turns` being `t·fa`: how far the note has gone since its top.
///
/// ```
/// use superhet::quantities::modulation::envelope;
/// use superhet::units::Depth;
/// let depth = Depth::new(0.8);
/// assert_eq!(envelope(depth, 0.0), 1.8);
/// assert!((envelope(depth, 0.5) - 0.2).abs() < 1e-15);
/// ```
#[must_use]
pub fn envelope(depth: Depth, turns: f64) -> f64 {
    1.0 + depth.fraction() * cos(2.0 * PI * turns)
}

/// The amplitude of each of the two sidebands of a sine tone.
///
/// `m·Ec/2`, from the amplitude `Ec` of the carrier.
///
/// ```
/// use superhet::quantities::modulation::sideband_amplitude;
/// use superhet::units::{Depth, Voltage};
/// // 20 V at 0.375: 3.75 V each.
/// let each = sideband_amplitude(Voltage::v(20.0), Depth::new(0.375));
/// assert_eq!(each, Voltage::v(3.75));
/// ```
#[must_use]
pub fn sideband_amplitude(carrier: Voltage, depth: Depth) -> Voltage {
    Voltage::v(carrier.to_v() * depth.fraction() / 2.0)
}

/// The depth that stands for three tones at once in the formulas of power.
///
/// `m = √(m1² + m2² + m3²)`: the sideband powers add. The envelope's peaks can reach
/// `m1 + m2 + m3`, whatever this comes to.
///
/// # Errors
/// When the three together are above 1.
///
/// ```
/// use superhet::quantities::modulation::three_tone_depth;
/// use superhet::units::Depth;
/// // 0.1, 0.2, 0.3: √0.14 = 0.374.
/// let m = three_tone_depth([0.1, 0.2, 0.3].map(Depth::new)).unwrap();
/// assert!((m.fraction() - 0.374_166).abs() < 1e-6);
/// ```
pub fn three_tone_depth(tones: [Depth; 3]) -> Result<Depth, ModulationError> {
    let [m1, m2, m3] = tones.map(Depth::fraction);
    let together = m1 + m2 + m3;
    // A tenth and two tenths and seven tenths are 1 and a rounding error.
    if together > 1.0 + 4.0 * f64::EPSILON {
        return Err(ModulationError::Overmodulated(Depth::new(together)));
    }
    Ok(Depth::new(hypot(hypot(m1, m2), m3)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use alloc::string::ToString;

    #[test]
    fn sidebands_lie_alike_on_both_sides() {
        let (carrier, audio) = (Frequency::khz(909.0), Frequency::khz(4.5));
        let lower = sideband_lower(carrier, audio).unwrap().to_hz();
        let upper = sideband_upper(carrier, audio).to_hz();
        assert_eq!(upper - carrier.to_hz(), carrier.to_hz() - lower);
        assert_eq!(upper - lower, necessary_bandwidth(audio).to_hz());
    }

    #[test]
    fn a_tone_at_the_carrier_has_no_lower_sideband() {
        let carrier = Frequency::khz(150.0);
        let refused = ModulationError::AudioReachesCarrier {
            carrier,
            audio: carrier,
        };
        assert_eq!(sideband_lower(carrier, carrier), Err(refused));
    }

    #[test]
    fn depth_runs_from_nothing_to_full() {
        let (v, none) = (Voltage::v(2.0), Voltage::v(0.0));
        assert_eq!(modulation_depth(v, v), Ok(Depth::new(0.0)));
        assert_eq!(modulation_depth(v, none), Ok(Depth::new(1.0)));
        assert_eq!(
            modulation_depth(none, v),
            Err(ModulationError::EnvelopeOutOfOrder {
                largest: none,
                smallest: v
            })
        );
        assert_eq!(
            modulation_depth(none, none),
            Err(ModulationError::NoEnvelope)
        );
    }

    #[test]
    fn three_tones_have_the_power_of_each_added() {
        let tones = [0.5, 0.3, 0.2].map(Depth::new);
        let each = |depth| sideband_power(Power::w(1.0), depth).to_w();
        let whole = each(three_tone_depth(tones).unwrap());
        let sum: f64 = tones.into_iter().map(each).sum();
        assert!((whole - sum).abs() < 1e-15, "{whole} {sum}");
        assert!(three_tone_depth([0.1, 0.2, 0.7].map(Depth::new)).is_ok());
        let too_deep = three_tone_depth([0.5, 0.5, 0.1].map(Depth::new));
        assert_eq!(
            too_deep,
            Err(ModulationError::Overmodulated(Depth::new(1.1)))
        );
    }

    /// From 1 to 2 a float moves by steps of its epsilon, so these sums are exact.
    #[test]
    fn three_tones_may_pass_fullness_by_their_rounding_alone() {
        let with = |extra: f64| three_tone_depth([0.5, 0.5, extra].map(Depth::new));
        assert!(with(0.0).is_ok());
        assert!(with(4.0 * f64::EPSILON).is_ok());
        assert!(with(5.0 * f64::EPSILON).is_err());
    }

    #[test]
    fn the_envelope_swings_by_the_depth_as_a_cosine_does() {
        // cos 60° = 1/2 and cos 90° = 0: 1 + m/2 and 1.
        for (turns, expected) in [(1.0 / 6.0, 1.4), (0.25, 1.0), (1.0 / 3.0, 0.6), (1.0, 1.8)] {
            let got = envelope(Depth::new(0.8), turns);
            // An angle up to 2π is rounded by 2^-51, and a few operations follow.
            assert!(
                (got - expected).abs() < 4.0 * f64::EPSILON,
                "{turns}: {got}"
            );
        }
    }

    #[test]
    fn each_refusal_says_the_rule_and_the_values() {
        let v = Voltage::v;
        for (error, sentence) in [
            (
                sideband_lower(Frequency::khz(4.0), Frequency::khz(5.0)).unwrap_err(),
                "audio must be below the carrier, or there is no lower sideband (got 5 kHz on \
                 4 kHz)",
            ),
            (
                modulation_depth(v(1.0), v(2.0)).unwrap_err(),
                "e-min must not be above e-max (got 2 V and 1 V)",
            ),
            (
                modulation_depth(v(0.0), v(0.0)).unwrap_err(),
                "e-max must be above zero (got 0 V)",
            ),
            (
                three_tone_depth([0.5; 3].map(Depth::new)).unwrap_err(),
                "m1, m2 and m3 together must not be above 1, or the peaks overmodulate when they \
                 meet (got 1.5)",
            ),
        ] {
            assert_eq!(error.to_string(), sentence);
        }
    }

    #[test]
    fn sidebands_and_carrier_are_the_envelope() {
        let (carrier, depth) = (Voltage::v(20.0), Depth::new(0.375));
        let both = 2.0 * sideband_amplitude(carrier, depth).to_v();
        let envelope = [carrier.to_v() + both, carrier.to_v() - both].map(Voltage::v);
        assert_eq!(modulation_depth(envelope[0], envelope[1]), Ok(depth));
    }

    #[test]
    fn total_power_is_carrier_and_sidebands() {
        let (carrier, depth) = (Power::w(50e3), Depth::new(0.8));
        let sum = carrier.to_w() + sideband_power(carrier, depth).to_w();
        assert!((total_power(carrier, depth).to_w() - sum).abs() < 1e-9);
    }
}
