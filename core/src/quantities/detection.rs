//! The diode detector: how deep a modulation it follows before it clips.
//!
//! In scope: a diode with a resistor and a capacitor as load (diagonal clipping), and the
//! ratio of its loads for audio and for steady current (negative-peak clipping). Left
//! out: the diode's own curve, which matters below about half a volt.
//!
//! Symbols: `R`, `C` the load, `fa` audio, `m` the largest depth of modulation.

use core::f64::consts::PI;
use core::fmt;

use libm::{exp, hypot, sqrt};

use crate::units::{Capacitance, Depth, Duration, Frequency, Resistance, Voltage};

/// Why a detector's figure was refused.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum DetectionError {
    /// The load for audio is larger than the load for steady current.
    AudioLoadLarger {
        /// The load for audio.
        audio: Resistance,
        /// The load for steady current.
        steady: Resistance,
    },
}

impl fmt::Display for DetectionError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self::AudioLoadLarger { audio, steady } = self;
        write!(
            out,
            "r-ac must not be above r-dc, since what follows the coupling capacitor only lowers \
             the load (got {audio} and {steady})"
        )
    }
}

impl core::error::Error for DetectionError {}

/// The largest depth of modulation a diode follows without diagonal clipping.
///
/// `m = 1/√(1 + (2π·fa·R·C)²)`: exact for a load of R and C alone and one sine tone. The
/// rougher rule `RC ≤ 1/(2π·fa·m)` allows 15 % more audio at a depth of one half.
///
/// ```
/// use superhet::quantities::detection::detector_depth_limit;
/// use superhet::units::{Capacitance, Frequency, Resistance};
/// // 10 kΩ, 1000 pF, 10 kHz: 2π·fa·RC = 0.628, so 0.847.
/// let limit = detector_depth_limit(
///     Resistance::ohm(10e3),
///     Capacitance::pf(1000.0),
///     Frequency::khz(10.0),
/// );
/// assert!((limit.fraction() - 0.8467).abs() < 0.0001);
/// ```
#[must_use]
pub fn detector_depth_limit(load: Resistance, across: Capacitance, audio: Frequency) -> Depth {
    Depth::new(
        1.0 / hypot(
            1.0,
            2.0 * PI * audio.to_hz() * load.to_ohm() * across.to_f(),
        ),
    )
}

/// The largest depth of modulation a diode follows without clipping the troughs.
///
/// `m = R_ac/R_dc`, the load for audio over the load for steady current. This one
/// usually comes first.
///
/// # Errors
/// When the audio load is the larger.
///
/// ```
/// use superhet::quantities::detection::detector_load_limit;
/// use superhet::units::Resistance;
/// // 470 kΩ with 1 MΩ after the coupling capacitor: 319.7 kΩ for audio, 0.68.
/// let limit = detector_load_limit(Resistance::ohm(319.7e3), Resistance::ohm(470e3)).unwrap();
/// assert!((limit.fraction() - 0.6802).abs() < 0.0001);
/// ```
pub fn detector_load_limit(audio: Resistance, steady: Resistance) -> Result<Depth, DetectionError> {
    if audio.to_ohm() > steady.to_ohm() {
        return Err(DetectionError::AudioLoadLarger { audio, steady });
    }
    Ok(Depth::new(audio.to_ohm() / steady.to_ohm()))
}

/// The time in which a capacitor falls to 1/e, 37 %, through a resistance.
///
/// `RC`: of a detector's load, or of the filter of an automatic gain control.
///
/// ```
/// use superhet::quantities::detection::time_constant;
/// use superhet::units::{Capacitance, Resistance};
/// // 500 kΩ and 100 pF: 50 µs.
/// let time = time_constant(Resistance::kilohm(500.0), Capacitance::pf(100.0));
/// assert!((time.to_us() - 50.0).abs() < 1e-12);
/// ```
#[must_use]
pub fn time_constant(resistance: Resistance, capacitance: Capacitance) -> Duration {
    Duration::s(resistance.to_ohm() * capacitance.to_f())
}

/// The voltage left on a capacitor that runs down through a resistance.
///
/// `V·e^(−t/RC)`, from the voltage `V` at the start.
///
/// ```
/// use superhet::quantities::detection::discharged;
/// use superhet::units::{Duration, Voltage};
/// // After one time constant 1/e is left: 10 V become 3.679 V.
/// let left = discharged(Voltage::v(10.0), Duration::us(22.0), Duration::us(22.0));
/// assert!((left.to_v() - 3.6788).abs() < 0.0001);
/// ```
#[must_use]
pub fn discharged(start: Voltage, time: Duration, time_constant: Duration) -> Voltage {
    Voltage::v(start.to_v() * exp(-time.to_s() / time_constant.to_s()))
}

/// The voltage across a diode detector's capacitor while its input follows an outline.
///
/// Between two points, `step` apart, the capacitor runs down ([`discharged`]); wherever the
/// outline is higher, the diode fills it up. It starts full at the first point. `outline`
/// and `held` are in the same unit, whichever; as many are written as both slices have.
///
/// ```
/// use superhet::quantities::detection::follow;
/// use superhet::units::Duration;
/// let mut held = [0.0; 3];
/// // A step of one time constant: 1/e of 10 is 3.679, more than 1, then less than 5.
/// follow(&[10.0, 1.0, 5.0], Duration::us(20.0), Duration::us(20.0), &mut held);
/// assert!((held[1] - 3.679).abs() < 0.001);
/// assert_eq!([held[0], held[2]], [10.0, 5.0]);
/// ```
pub fn follow(outline: &[f64], step: Duration, time_constant: Duration, held: &mut [f64]) {
    let left = discharged(Voltage::v(1.0), step, time_constant).to_v();
    let mut before = 0.0;
    for (outline, held) in outline.iter().zip(held) {
        before = (before * left).max(*outline);
        *held = before;
    }
}

/// The highest audio frequency that a diode follows at a depth of modulation.
///
/// `fa = √(1 − m²)/(2π·R·C·m)`: [`detector_depth_limit`] solved for the audio frequency. It
/// is 0 at full modulation, which no load of R and C follows.
///
/// ```
/// use superhet::quantities::detection::detector_audio_limit;
/// use superhet::units::{Capacitance, Depth, Resistance};
/// // 0.2 MΩ, 150 pF: 1/(2π·RC) = 5.305 kHz; at a half, times √3: 9.189 kHz.
/// let (r, c) = (Resistance::megohm(0.2), Capacitance::pf(150.0));
/// let limit = detector_audio_limit(r, c, Depth::new(0.5));
/// assert!((limit.to_khz() - 9.189).abs() < 0.001);
/// ```
#[must_use]
pub fn detector_audio_limit(load: Resistance, across: Capacitance, depth: Depth) -> Frequency {
    let m = depth.fraction();
    let corner = 2.0 * PI * time_constant(load, across).to_s();
    // (1 − m)(1 + m) keeps its digits near full modulation, where 1 − m² loses them.
    Frequency::hz(sqrt((1.0 - m) * (1.0 + m)) / (corner * m))
}

#[cfg(test)]
mod tests {
    use super::*;
    use alloc::string::ToString;

    #[test]
    fn no_capacitor_to_speak_of_follows_anything() {
        let limit = detector_depth_limit(
            Resistance::ohm(1e5),
            Capacitance::pf(1e-6),
            Frequency::hz(50.0),
        );
        assert!((limit.fraction() - 1.0).abs() < 1e-12);
    }

    /// At the limit of depth the outline falls, somewhere, just as fast as the capacitor runs
    /// down, and nowhere faster: run down from the outline for a short while, the voltage
    /// meets it there and is under it everywhere else.
    #[test]
    fn at_the_limit_the_capacitor_just_keeps_up() {
        let (r, c) = (Resistance::kilohm(220.0), Capacitance::pf(100.0));
        let audio = 4_500.0;
        let limit = detector_depth_limit(r, c, Frequency::hz(audio)).fraction();
        let (step, turn) = (1e-9, 2.0 * PI * audio);
        let outline = |time: f64, depth: f64| 1.0 + depth * libm::cos(turn * time);
        let worst = |depth: f64| {
            (0..2_000)
                .map(|part| {
                    let time = f64::from(part) / 2_000.0 / audio;
                    let start = Voltage::v(outline(time, depth));
                    let left = discharged(start, Duration::s(step), time_constant(r, c));
                    (left.to_v() - outline(time + step, depth)) / step * turn.recip()
                })
                .fold(f64::MIN, f64::max)
        };
        assert!(worst(0.99 * limit) < 0.0 && worst(1.01 * limit) > 0.0);
    }

    #[test]
    fn the_limit_meets_the_other_published_form() {
        // RC ≤ √(1 − m²)/(2π·fa·m), the same rule solved for RC.
        let (r, c, audio) = (2e5, 150e-12, 5e3);
        let limit =
            detector_depth_limit(Resistance::ohm(r), Capacitance::f(c), Frequency::hz(audio));
        let m = limit.fraction();
        let product = libm::sqrt(1.0 - m * m) / (2.0 * PI * audio * m);
        assert!((product / (r * c) - 1.0).abs() < 1e-12);
    }

    #[test]
    fn the_audio_limit_is_the_depth_limit_the_other_way_round() {
        let (r, c) = (Resistance::kilohm(470.0), Capacitance::pf(220.0));
        for depth in [0.05, 0.3, 0.8, 0.999] {
            let audio = detector_audio_limit(r, c, Depth::new(depth));
            let back = detector_depth_limit(r, c, audio).fraction();
            assert!((back / depth - 1.0).abs() < 1e-12, "{depth}: {back}");
        }
        let full = detector_audio_limit(r, c, Depth::new(1.0));
        assert_eq!(full, Frequency::hz(0.0));
    }

    #[test]
    fn an_audio_load_above_the_steady_load_is_refused() {
        let (small, large) = (Resistance::ohm(1e5), Resistance::ohm(2e5));
        assert_eq!(
            detector_load_limit(large, small),
            Err(DetectionError::AudioLoadLarger {
                audio: large,
                steady: small
            })
        );
        assert_eq!(
            detector_load_limit(large, small).unwrap_err().to_string(),
            "r-ac must not be above r-dc, since what follows the coupling capacitor only lowers \
             the load (got 200 kΩ and 100 kΩ)"
        );
        assert_eq!(detector_load_limit(small, small), Ok(Depth::new(1.0)));
    }
}
