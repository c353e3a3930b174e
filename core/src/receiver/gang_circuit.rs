//! A coil with a section of the gang, a trimmer, strays and perhaps a padder.

use crate::quantities::resonance::resonance;
use crate::quantities::tracking::Arrangement;
use crate::units::{Capacitance, Frequency, Inductance};

/// The parts of a circuit that the gang tunes.
///
/// Strays and, in one arrangement, the trimmer lie across the gang section; a padder
/// stands in series with these; in the other arrangement the trimmer lies across the coil.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GangCircuit {
    /// The coil.
    pub inductance: Inductance,
    /// What lies across the section beside the trimmer.
    pub strays: Capacitance,
    /// The trimmer; 0 pF where there is none.
    pub trimmer: Capacitance,
    /// What the trimmer lies across.
    pub arrangement: Arrangement,
    /// The padder, where there is one.
    pub padder: Option<Capacitance>,
}

impl GangCircuit {
    /// Where the circuit resonates with so much in the gang section.
    ///
    /// ```
    /// use superhet::quantities::tracking::Arrangement;
    /// use superhet::receiver::GangCircuit;
    /// use superhet::units::{Capacitance, Inductance};
    /// let mut circuit = GangCircuit {
    ///     inductance: Inductance::uh(200.0),
    ///     strays: Capacitance::pf(20.0),
    ///     trimmer: Capacitance::pf(30.0),
    ///     arrangement: Arrangement::AcrossCoil,
    ///     padder: None,
    /// };
    /// // 450 + 20 + 30 = 500 pF across 200 µH: 503.3 kHz.
    /// let found = circuit.resonance(Capacitance::pf(450.0));
    /// assert!((found.to_khz() - 503.292).abs() < 0.001);
    /// // A padder of 470 pF halves 450 + 20 pF: 235 + 30 = 265 pF, 691.3 kHz.
    /// circuit.padder = Some(Capacitance::pf(470.0));
    /// let found = circuit.resonance(Capacitance::pf(450.0));
    /// assert!((found.to_khz() - 691.324).abs() < 0.001);
    /// ```
    #[must_use]
    pub fn resonance(&self, section: Capacitance) -> Frequency {
        let (across_gang, across_coil) = match self.arrangement {
            Arrangement::AcrossCoil => (0.0, self.trimmer.to_f()),
            Arrangement::AcrossGang => (self.trimmer.to_f(), 0.0),
        };
        let beside = section.to_f() + self.strays.to_f() + across_gang;
        let held_back = match self.padder.map(Capacitance::to_f) {
            Some(padder) => beside * padder / (beside + padder),
            None => beside,
        };
        resonance(self.inductance, Capacitance::f(held_back + across_coil))
    }
}
