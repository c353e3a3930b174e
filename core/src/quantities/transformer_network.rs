//! The IF transformer as an exact network of two lossy coupled circuits.
//!
//! In scope: a current into the primary, the voltage across the secondary, each side with
//! its own inductance, capacitance, series loss, load and therefore its own tuning and Q,
//! at any frequency. Left out: stray capacitance between the windings (a few per cent of
//! the coupling in a well-screened can) and loss that changes with frequency.
//!
//! Symbols: `C1 ∥ load1 ∥ (L1 + r1 in series)` at the primary, likewise at the secondary;
//! `M = k√(L1·L2)`; `zi = ri + jωLi`, `zm = jωM`, `yi = 1/loadi + jωCi`.
//!
//! Solving the two mesh and two node equations gives the catalogue's form
//! `V2/I1 = (zm/Δ)/(Y1Y2 − (zm/Δ)²)` with `Δ = z1z2 − zm²`. Multiplied out it is
//!
//! `V2/I1 = zm / ((1 + z1y1)(1 + z2y2) − zm²y1y2)`,
//!
//! which is what is computed here: each bracket is nearly zero at that side's own
//! resonance and is formed without losing digits there.

use libm::{hypot, sqrt};

use super::coils::coil_resistance;
use super::resonance::{capacitance, reactance_l, resonance};
use crate::units::{Capacitance, Frequency, Inductance, Resistance};

/// One side of a transformer: a coil with its loss, its capacitor and its load.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TunedWinding {
    /// The inductance of the winding alone.
    pub inductance: Inductance,
    /// The whole capacitance across it.
    pub capacitance: Capacitance,
    /// The series resistance of the coil.
    pub series: Resistance,
    /// The resistance across the circuit: a valve's anode, a diode's load.
    pub load: Resistance,
}

impl TunedWinding {
    /// A winding that resonates at a frequency with a Q of its own, and no load.
    ///
    /// `C = 1/(ω²L)`, `r = ωL/Q`. In a curve measured from its own peak the inductance of a
    /// winding without load cancels out.
    ///
    /// ```
    /// use superhet::quantities::transformer_network::TunedWinding;
    /// use superhet::units::{Frequency, Inductance};
    /// // ωL at 470 kHz is 2953 Ω: with Q 100 the loss is 29.53 Ω.
    /// let winding = TunedWinding::tuned(Frequency::khz(470.0), Inductance::mh(1.0), 100.0);
    /// assert!((winding.series.to_ohm() - 29.53).abs() < 0.01);
    /// assert!((winding.loaded_q() - 100.0).abs() < 1e-9);
    /// ```
    #[must_use]
    pub fn tuned(resonant: Frequency, inductance: Inductance, q: f64) -> Self {
        Self {
            inductance,
            capacitance: capacitance(resonant, inductance),
            series: coil_resistance(resonant, inductance, q),
            load: Resistance::ohm(f64::INFINITY),
        }
    }

    /// Where the winding resonates by itself: `1/(2π√(LC))`.
    #[must_use]
    pub fn resonance(&self) -> Frequency {
        resonance(self.inductance, self.capacitance)
    }

    /// Its Q with the load across it, at its own resonance: `1/Q = r/(ωL) + ωL/R`.
    #[must_use]
    pub fn loaded_q(&self) -> f64 {
        let reactance = reactance_l(self.resonance(), self.inductance).to_ohm();
        1.0 / (self.series.to_ohm() / reactance + reactance / self.load.to_ohm())
    }

    /// `1 + z·y` at ω: real and imaginary part. Nearly zero at this side's resonance.
    fn detuning(&self, omega: f64) -> (f64, f64) {
        let (l, c, r, g) = self.raw();
        (1.0 - omega * omega * l * c + r * g, omega * (l * g + r * c))
    }

    /// Henries, farads, ohms and siemens.
    pub(crate) fn raw(&self) -> (f64, f64, f64, f64) {
        (
            self.inductance.to_h(),
            self.capacitance.to_f(),
            self.series.to_ohm(),
            1.0 / self.load.to_ohm(),
        )
    }
}

/// Two tuned windings and the coefficient that couples them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TransformerNetwork {
    /// The side that the valve drives.
    pub primary: TunedWinding,
    /// The side that feeds the next grid or the diode.
    pub secondary: TunedWinding,
    /// The coefficient of coupling, 1e-6 to 0.2.
    pub coupling: f64,
}

impl TransformerNetwork {
    /// The voltage across the secondary for each ampere into the primary.
    ///
    /// The size of `V2/I1` in ohms.
    ///
    /// ```
    /// use superhet::quantities::transformer_network::{TransformerNetwork, TunedWinding};
    /// use superhet::units::{Capacitance, Frequency, Inductance, Resistance};
    /// // Two alike windings tuned to 459.4 kHz, 28.87 Ω and no load to speak of: Q 100.
    /// let winding = TunedWinding {
    ///     inductance: Inductance::h(1e-3),
    ///     capacitance: Capacitance::pf(120.0),
    ///     series: Resistance::ohm(28.87),
    ///     load: Resistance::ohm(1e9),
    /// };
    /// let pair = TransformerNetwork { primary: winding, secondary: winding, coupling: 0.01 };
    /// // At critical coupling half of the dynamic resistance, 288.7 kΩ, appears across.
    /// let z = pair.transfer_impedance(Frequency::khz(459.44));
    /// assert!((z.to_ohm() / 144.3e3 - 1.0).abs() < 0.01);
    /// ```
    #[must_use]
    pub fn transfer_impedance(&self, frequency: Frequency) -> Resistance {
        let omega = 2.0 * core::f64::consts::PI * frequency.to_hz();
        let (real, imaginary) = self.denominator(omega);
        Resistance::ohm(omega * self.mutual() / hypot(real, imaginary))
    }

    /// `M = k√(L1·L2)` in henries.
    pub(crate) fn mutual(&self) -> f64 {
        let product = self.primary.inductance.to_h() * self.secondary.inductance.to_h();
        self.coupling * sqrt(product)
    }

    /// `(1 + z1y1)(1 + z2y2) − zm²y1y2` at ω.
    pub(crate) fn denominator(&self, omega: f64) -> (f64, f64) {
        let (a, b) = self.primary.detuning(omega);
        let (c, d) = self.secondary.detuning(omega);
        let (_, c1, _, g1) = self.primary.raw();
        let (_, c2, _, g2) = self.secondary.raw();
        let reactance = omega * self.mutual();
        // −zm² = (ωM)², times y1·y2.
        let square = reactance * reactance;
        let real = a * c - b * d + square * (g1 * g2 - omega * omega * c1 * c2);
        let imaginary = a * d + b * c + square * omega * (g1 * c2 + g2 * c1);
        (real, imaginary)
    }
}

#[cfg(test)]
mod tests;
