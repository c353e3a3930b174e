//! The parts of a set that a tool can turn.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::{CircuitProfile, SetProfile, Typed, WindingProfile};
use crate::units::{Kind, display, parse};

/// The side of an IF transformer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum WindingSide {
    /// The side that the valve drives.
    Primary,
    /// The side that feeds the next grid or the diode.
    Secondary,
}

/// A part of a set that a tool can turn. Bands and transformers are counted from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum AlignablePart {
    /// The trimmer of a band's aerial circuit: its capacitance.
    AerialTrimmer(usize),
    /// The padder of a band's aerial circuit: its capacitance.
    AerialPadder(usize),
    /// The core of a band's aerial coil, or the coil's place on its rod: its inductance.
    AerialCore(usize),
    /// The trimmer of a band's oscillator circuit: its capacitance.
    OscillatorTrimmer(usize),
    /// The padder of a band's oscillator circuit: its capacitance.
    OscillatorPadder(usize),
    /// The core of a band's oscillator coil: its inductance.
    OscillatorCore(usize),
    /// The core or trimmer of one side of an IF transformer: how far above the IF that side
    /// alone is tuned.
    IfWinding(usize, WindingSide),
}

impl AlignablePart {
    /// The kind of the part's value.
    ///
    /// ```
    /// use superhet::receiver::AlignablePart;
    /// use superhet::units::Kind;
    /// assert_eq!(AlignablePart::OscillatorCore(0).kind(), Kind::Inductance);
    /// ```
    #[must_use]
    pub const fn kind(self) -> Kind {
        match self {
            Self::AerialCore(_) | Self::OscillatorCore(_) => Kind::Inductance,
            Self::IfWinding(..) => Kind::Frequency,
            _ => Kind::Capacitance,
        }
    }

    /// The part's name, for a sentence: `oscillator padder`.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::AerialTrimmer(_) => "aerial trimmer",
            Self::AerialPadder(_) => "aerial padder",
            Self::AerialCore(_) => "aerial core",
            Self::OscillatorTrimmer(_) => "oscillator trimmer",
            Self::OscillatorPadder(_) => "oscillator padder",
            Self::OscillatorCore(_) => "oscillator core",
            Self::IfWinding(_, WindingSide::Primary) => "IF primary",
            Self::IfWinding(_, WindingSide::Secondary) => "IF secondary",
        }
    }
}

impl SetProfile {
    /// Every part of the set that a tool can turn: IF windings from the detector towards the
    /// mixer, then each band's oscillator and aerial circuit, as they are aligned.
    ///
    /// A circuit without parts of its own has none, and one that is fitted to three settings
    /// neither.
    ///
    /// ```
    /// use superhet::receiver::{AlignablePart, SetProfile, WindingSide};
    /// let parts = SetProfile::plain().parts();
    /// // Two IF transformers of two sides each; all else follows exactly.
    /// assert_eq!(parts.len(), 4);
    /// assert_eq!(parts[0], AlignablePart::IfWinding(1, WindingSide::Secondary));
    /// ```
    #[must_use]
    pub fn parts(&self) -> Vec<AlignablePart> {
        let mut parts = Vec::new();
        for transformer in (0..self.if_transformers.len()).rev() {
            for side in [WindingSide::Secondary, WindingSide::Primary] {
                parts.push(AlignablePart::IfWinding(transformer, side));
            }
        }
        for band in 0..self.bands.len() {
            let of_band = [
                AlignablePart::OscillatorCore(band),
                AlignablePart::OscillatorPadder(band),
                AlignablePart::OscillatorTrimmer(band),
                AlignablePart::AerialCore(band),
                AlignablePart::AerialPadder(band),
                AlignablePart::AerialTrimmer(band),
            ];
            parts.extend(
                of_band
                    .into_iter()
                    .filter(|part| self.part(*part).is_some()),
            );
        }
        parts
    }

    /// The value of a part in SI units. None where the set has no such part, or its value
    /// cannot be read.
    ///
    /// ```
    /// use superhet::receiver::{AlignablePart, SetProfile, WindingSide};
    /// let profile = SetProfile::plain();
    /// assert_eq!(profile.part(AlignablePart::IfWinding(0, WindingSide::Primary)), Some(0.0));
    /// assert_eq!(profile.part(AlignablePart::AerialTrimmer(0)), None);
    /// ```
    #[must_use]
    pub fn part(&self, part: AlignablePart) -> Option<f64> {
        match self.typed(part)? {
            // A winding that says nothing stands on the IF; any other part is not there.
            Typed::Absent => (part.kind() == Kind::Frequency).then_some(0.0),
            Typed::Text(text) => parse::value(part.kind(), text, None).ok(),
            Typed::Number(_) => None,
        }
    }

    /// Turns a part to a value in SI units and says whether the set has such a part.
    ///
    /// The value is written so that it reads back to the same bit.
    ///
    /// ```
    /// use superhet::receiver::{AlignablePart, SetProfile, WindingSide};
    /// let mut profile = SetProfile::plain();
    /// let primary = AlignablePart::IfWinding(0, WindingSide::Primary);
    /// assert!(profile.set_part(primary, 3_000.0));
    /// assert_eq!(profile.part(primary), Some(3_000.0));
    /// assert!(!profile.set_part(AlignablePart::AerialTrimmer(0), 30e-12));
    /// ```
    pub fn set_part(&mut self, part: AlignablePart, value: f64) -> bool {
        if self.part(part).is_none() {
            return false;
        }
        let Some(typed) = self.typed_mut(part) else {
            return false;
        };
        *typed = Typed::Text(written(part.kind(), value));
        true
    }

    fn typed(&self, part: AlignablePart) -> Option<&Typed> {
        let band = |band: usize| self.bands.get(band);
        let aerial = |of: usize| band(of)?.aerial.as_ref();
        let oscillator = |of: usize| band(of)?.oscillator.as_ref();
        Some(match part {
            AlignablePart::AerialTrimmer(of) => &aerial(of)?.trimmer,
            AlignablePart::AerialPadder(of) => &aerial(of)?.padder,
            AlignablePart::AerialCore(of) => &aerial(of)?.inductance,
            AlignablePart::OscillatorTrimmer(of) => &oscillator(of)?.trimmer,
            AlignablePart::OscillatorPadder(of) => &oscillator(of)?.padder,
            AlignablePart::OscillatorCore(of) => &oscillator(of)?.inductance,
            AlignablePart::IfWinding(of, side) => {
                let transformer = self.if_transformers.get(of)?;
                match side {
                    WindingSide::Primary => &transformer.primary.detuning,
                    WindingSide::Secondary => &transformer.secondary.detuning,
                }
            }
        })
    }

    fn typed_mut(&mut self, part: AlignablePart) -> Option<&mut Typed> {
        Some(match part {
            AlignablePart::AerialTrimmer(of) => &mut self.aerial_mut(of)?.trimmer,
            AlignablePart::AerialPadder(of) => &mut self.aerial_mut(of)?.padder,
            AlignablePart::AerialCore(of) => &mut self.aerial_mut(of)?.inductance,
            AlignablePart::OscillatorTrimmer(of) => &mut self.oscillator_mut(of)?.trimmer,
            AlignablePart::OscillatorPadder(of) => &mut self.oscillator_mut(of)?.padder,
            AlignablePart::OscillatorCore(of) => &mut self.oscillator_mut(of)?.inductance,
            AlignablePart::IfWinding(of, side) => &mut self.winding_mut(of, side)?.detuning,
        })
    }

    fn aerial_mut(&mut self, band: usize) -> Option<&mut CircuitProfile> {
        self.bands.get_mut(band)?.aerial.as_mut()
    }

    fn oscillator_mut(&mut self, band: usize) -> Option<&mut CircuitProfile> {
        self.bands.get_mut(band)?.oscillator.as_mut()
    }

    fn winding_mut(
        &mut self,
        transformer: usize,
        side: WindingSide,
    ) -> Option<&mut WindingProfile> {
        let transformer = self.if_transformers.get_mut(transformer)?;
        Some(match side {
            WindingSide::Primary => &mut transformer.primary,
            WindingSide::Secondary => &mut transformer.secondary,
        })
    }
}

/// A value as text: as people write it where that reads back to the same bit, else in digits
/// that do.
fn written(kind: Kind, value: f64) -> String {
    let shown = display::text(kind, value);
    match parse::value(kind, &shown, None) {
        Ok(read) if read == value => shown,
        _ => format!("{} {}", display::exact(value), kind.unit()),
    }
}
