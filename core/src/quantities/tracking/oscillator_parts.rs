//! The padder, trimmer and coil that make an oscillator exact at three dial settings.

use core::f64::consts::PI;

use super::{ThreePoints, TrackingError};
use crate::quantities::resonance::resonance;
use crate::units::{Capacitance, Frequency, Inductance};

/// Where the oscillator's trimmer sits.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Arrangement {
    /// The trimmer across the coil; the gang with the padder in series.
    AcrossCoil,
    /// The trimmer across the gang; both with the padder in series.
    AcrossGang,
}

/// The three parts of an oscillator circuit beside its gang section.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OscillatorParts {
    /// The capacitor in series.
    pub padder: Capacitance,
    /// The capacitor in parallel, beyond what the gang section counts.
    pub trimmer: Capacitance,
    /// The oscillator coil.
    pub inductance: Inductance,
    /// Where the trimmer sits.
    pub arrangement: Arrangement,
}

impl OscillatorParts {
    /// The parts that put `curve` into a circuit, for one signal coil.
    ///
    /// Across the coil: `Cp = K/n²`, `Ct = K/(l² − n²)`, `L = L_signal·(l² − n²)/m²`.
    /// Across the gang: `Cp = K(1/n² − 1/l²)`, `Ct = K/l²`,
    /// `L = L_signal·l⁴/(m²(l² − n²))`.
    ///
    /// # Errors
    /// When a part would not be above zero.
    ///
    /// ```
    /// use superhet::quantities::conversion::Side;
    /// use superhet::quantities::tracking::{Arrangement, OscillatorParts, ThreePoints};
    /// use superhet::units::{Frequency, Inductance};
    /// let settings = [600.0, 950.0, 1500.0].map(Frequency::khz);
    /// let curve = ThreePoints::new(settings, Frequency::khz(455.0), Side::Above).unwrap();
    /// let coil = Inductance::uh(200.0);
    /// let parts = OscillatorParts::new(&curve, coil, Arrangement::AcrossCoil).unwrap();
    /// assert!((parts.padder.to_pf() - 459.673).abs() < 0.001);
    /// assert!((parts.trimmer.to_pf() - 11.1264).abs() < 0.0001);
    /// assert!((parts.inductance.to_uh() - 108.1592).abs() < 0.0001);
    /// ```
    pub fn new(
        curve: &ThreePoints,
        signal_coil: Inductance,
        arrangement: Arrangement,
    ) -> Result<Self, TrackingError> {
        let (l2, m2, n2, gap) = (
            curve.l_squared(),
            curve.m_squared(),
            curve.n_squared(),
            curve.gap(),
        );
        if !(gap > 0.0 && n2 > 0.0) {
            return Err(TrackingError::NoPositiveParts);
        }
        let k = gang_constant(signal_coil);
        let coil = signal_coil.to_h();
        let (padder, trimmer, inductance) = match arrangement {
            Arrangement::AcrossCoil => (k / n2, k / gap, coil * gap / m2),
            // 1/n² − 1/l² is the gap over n²l².
            Arrangement::AcrossGang => (k * gap / (n2 * l2), k / l2, coil * l2 / m2 * (l2 / gap)),
        };
        Ok(Self {
            padder: Capacitance::f(padder),
            trimmer: Capacitance::f(trimmer),
            inductance: Inductance::h(inductance),
            arrangement,
        })
    }

    /// Where the oscillator circuit resonates with `gang` across its section.
    ///
    /// The circuit's own arithmetic, not the tracking formula: series, parallel, then
    /// `1/(2π√(LC))`.
    #[must_use]
    pub fn oscillator(&self, gang: Capacitance) -> Frequency {
        let (gang, padder, trimmer) = (gang.to_f(), self.padder.to_f(), self.trimmer.to_f());
        let whole = match self.arrangement {
            Arrangement::AcrossCoil => trimmer + in_series(gang, padder),
            Arrangement::AcrossGang => in_series(gang + trimmer, padder),
        };
        resonance(self.inductance, Capacitance::f(whole))
    }
}

/// The gang's capacitance at a signal frequency, strays and trimmer of the signal
/// circuit with it: `K/f²`, `K = 1/(4π²·L_signal)`.
#[must_use]
pub fn gang_capacitance(signal: Frequency, signal_coil: Inductance) -> Capacitance {
    let f = signal.to_hz();
    Capacitance::f(gang_constant(signal_coil) / (f * f))
}

fn gang_constant(signal_coil: Inductance) -> f64 {
    1.0 / (4.0 * PI * PI * signal_coil.to_h())
}

fn in_series(one: f64, other: f64) -> f64 {
    one * other / (one + other)
}

#[cfg(test)]
mod tests;
