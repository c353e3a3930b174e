//! One band of a receiver, its values read.

use alloc::string::String;

use super::GangCircuit;
use super::dial_scale::{DialScale, Gang};
use crate::quantities::selectivity::selectivity;
use crate::units::Frequency;

/// How an aerial circuit gets its signal.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PickUp {
    /// A rod or loop: the voltage induced in its coil climbs with frequency.
    Rod,
    /// A wire on a coupling coil that resonates far below the band: as much voltage in the
    /// tuned coil at every frequency.
    Wire,
}

/// One band of the dial with its circuits.
#[derive(Clone, Debug, PartialEq)]
pub struct Band {
    /// Its short name in links and files.
    pub id: String,
    /// What the switch calls it.
    pub name: String,
    /// How the aerial circuit gets its signal.
    pub pick_up: PickUp,
    /// The loaded Q of each aerial circuit.
    pub aerial_q: f64,
    /// How many alike circuits stand before the mixer.
    pub aerial_circuits: u32,
    /// The parts of the aerial circuit; none where it follows the dial exactly.
    pub aerial: Option<GangCircuit>,
    /// The parts of the oscillator circuit; none where it runs exactly one IF from the dial.
    pub oscillator: Option<GangCircuit>,
    pub(super) scale: DialScale,
}

impl Band {
    /// The lowest dial mark.
    #[must_use]
    pub const fn low(&self) -> Frequency {
        Frequency::hz(self.scale.low)
    }

    /// The highest dial mark.
    #[must_use]
    pub const fn high(&self) -> Frequency {
        Frequency::hz(self.scale.high)
    }

    /// Whether the pointer can stand at a reading.
    #[must_use]
    pub fn covers(&self, reading: Frequency) -> bool {
        self.low() <= reading && reading <= self.high()
    }

    /// Where the aerial circuit is tuned with the pointer at a reading.
    pub(super) fn aerial_resonance(&self, reading: Frequency, gang: Option<&Gang>) -> Frequency {
        match (&self.aerial, gang) {
            (Some(circuit), Some(gang)) => {
                let plates_in = self.scale.plates_in(reading.to_hz());
                circuit.resonance(gang.signal.at(plates_in))
            }
            _ => reading,
        }
    }

    /// Where the oscillator's own parts put it with the pointer at a reading; none where it
    /// has no parts and follows exactly.
    pub(super) fn oscillator_resonance(
        &self,
        reading: Frequency,
        gang: Option<&Gang>,
    ) -> Option<Frequency> {
        let (circuit, gang) = (self.oscillator.as_ref()?, gang?);
        let plates_in = self.scale.plates_in(reading.to_hz());
        Some(circuit.resonance(gang.oscillator_section(plates_in)))
    }

    /// Decibels that the aerial circuits, tuned to `resonant`, take off a frequency.
    ///
    /// From a rod `selectivity(f, resonant, Q, circuits)`; from a wire the voltage in the
    /// coil does not climb with frequency, and `20·log10(f/resonant)` is added.
    pub(super) fn aerial_attenuation(&self, hertz: f64, resonant: Frequency) -> f64 {
        if hertz <= 0.0 {
            return f64::INFINITY;
        }
        let frequency = Frequency::hz(hertz);
        let circuits = selectivity(frequency, resonant, self.aerial_q, self.aerial_circuits);
        match self.pick_up {
            PickUp::Rod => circuits.to_db(),
            PickUp::Wire => circuits.to_db() + 20.0 * libm::log10(hertz / resonant.to_hz()),
        }
    }
}
