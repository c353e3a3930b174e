//! Detector and automatic gain control of a receiver, their values read.

use crate::quantities::agc::closed_loop_time_constant;
use crate::quantities::detection::detector_depth_limit;
use crate::units::{Capacitance, Depth, Duration, Frequency, Resistance, Voltage};

/// A diode detector with its loads.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Detector {
    /// The load for steady current.
    pub load: Resistance,
    /// The load for sound; never more than `load`.
    pub audio_load: Resistance,
    /// The capacitor across the load.
    pub capacitor: Capacitance,
}

impl Detector {
    /// The depth of modulation that it follows at an audio frequency.
    ///
    /// The lesser of the two limits: the capacitor's, `1/√(1 + (2π·audio·R·C)²)`, and the
    /// audio load's, `R_audio/R`.
    ///
    /// ```
    /// use superhet::receiver::Detector;
    /// use superhet::units::{Capacitance, Frequency, Resistance};
    /// let detector = Detector {
    ///     load: Resistance::kilohm(220.0),
    ///     audio_load: Resistance::kilohm(150.0),
    ///     capacitor: Capacitance::pf(100.0),
    /// };
    /// // 150/220 = 68 %, less than the 85 % that 22 µs leave at 4.5 kHz.
    /// let limit = detector.depth_limit(Frequency::khz(4.5));
    /// assert!((limit.fraction() - 0.6818).abs() < 0.0001);
    /// ```
    #[must_use]
    pub fn depth_limit(&self, audio: Frequency) -> Depth {
        let clipping = self.audio_load.to_ohm() / self.load.to_ohm();
        let following = detector_depth_limit(self.load, self.capacitor, audio).fraction();
        Depth::new(clipping.min(following))
    }
}

/// An automatic gain control.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Agc {
    /// Decibels taken off the gain for each decibel at the detector.
    pub loop_gain: f64,
    /// The resistor of the filter.
    pub filter_resistance: Resistance,
    /// The capacitor of the filter.
    pub filter_capacitor: Capacitance,
    /// The voltage at the detector below which it does nothing.
    pub delay: Voltage,
}

impl Agc {
    /// How fast the gain follows a small change.
    ///
    /// ```
    /// use superhet::receiver::Agc;
    /// use superhet::units::{Capacitance, Resistance, Voltage};
    /// let agc = Agc {
    ///     loop_gain: 9.0,
    ///     filter_resistance: Resistance::megohm(1.0),
    ///     filter_capacitor: Capacitance::uf(0.1),
    ///     delay: Voltage::v(0.0),
    /// };
    /// // 100 ms, shortened ten times by the loop.
    /// assert!((agc.time_constant().to_ms() - 10.0).abs() < 1e-12);
    /// ```
    #[must_use]
    pub fn time_constant(&self) -> Duration {
        closed_loop_time_constant(
            self.filter_resistance,
            self.filter_capacitor,
            self.loop_gain,
        )
    }
}
