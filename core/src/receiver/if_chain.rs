//! The IF transformers in a row: the set's own window.

use alloc::vec::Vec;

use super::passband::Passband;
use crate::quantities::chain_curve::ChainCurve;
use crate::quantities::transformer_network::{TransformerNetwork, TunedWinding};
use crate::units::{Decibels, Frequency};

/// Looks at a curve in each bandwidth of its sharpest circuit.
const LOOKS_IN_A_BANDWIDTH: f64 = 8.0;

/// A chain of exact IF transformers, with valves between them that pass nothing back.
///
/// ```
/// use superhet::receiver::{Receiver, SetProfile};
/// use superhet::units::{Decibels, Frequency};
/// let receiver = Receiver::new(&SetProfile::plain()).unwrap();
/// let chain = receiver.if_chain();
/// // Two pairs of Q 100 at critical coupling: the narrow-band form says 5.331 kHz wide,
/// // the exact networks a third of a per cent less.
/// let width = chain.bandwidth(Decibels::from_power_ratio(superhet::units::Ratio::new(2.0)));
/// assert!((width.unwrap().to_khz() - 5.313).abs() < 0.001);
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct IfChain {
    transformers: Vec<TransformerNetwork>,
    curve: ChainCurve,
    window: Window,
}

/// Where all humps of the chain lie, and how closely they have to be looked at.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Window {
    pub(super) low: f64,
    pub(super) high: f64,
    pub(super) step: f64,
}

impl IfChain {
    /// A chain for an IF. `spread` is a share of the IF that all humps lie within.
    pub(super) fn new(
        transformers: Vec<TransformerNetwork>,
        intermediate: f64,
        spread: f64,
        sharpest: f64,
    ) -> Self {
        let curve = ChainCurve::new(&transformers, Frequency::hz(intermediate));
        let window = Window {
            low: intermediate * (1.0 - spread).max(0.1),
            high: intermediate * (1.0 + spread),
            step: intermediate / (LOOKS_IN_A_BANDWIDTH * sharpest),
        };
        Self {
            transformers,
            curve,
            window,
        }
    }

    /// The transformers, mixer first.
    #[must_use]
    pub fn transformers(&self) -> &[TransformerNetwork] {
        &self.transformers
    }

    /// Both sides of every transformer, mixer first.
    pub fn windings(&self) -> impl Iterator<Item = &TunedWinding> {
        self.transformers
            .iter()
            .flat_map(|pair| [&pair.primary, &pair.secondary])
    }

    /// How many decibels weaker a frequency comes through than the curve's own peak.
    #[must_use]
    pub fn attenuation(&self, frequency: Frequency) -> Decibels {
        let (_, least) = self.passband().peak();
        Decibels::db(self.under_centre(frequency.to_hz()) - least)
    }

    /// The decibels of [`Self::attenuation`] for many frequencies in hertz. As many are
    /// written as both slices have.
    pub fn attenuations(&self, hertz: &[f64], decibels: &mut [f64]) {
        let (_, least) = self.passband().peak();
        self.curve.attenuations(hertz, decibels);
        for decibels in decibels.iter_mut().take(hertz.len()) {
            *decibels -= least;
        }
    }

    /// Where the chain passes most.
    #[must_use]
    pub fn peak(&self) -> Frequency {
        Frequency::hz(self.passband().peak().0)
    }

    /// The outermost two frequencies that are a drop under the peak, even where the dip
    /// between them is deeper. None where the curve never falls so far.
    #[must_use]
    pub fn edges(&self, drop: Decibels) -> Option<(Frequency, Frequency)> {
        let (lower, upper) = self.passband().edges(drop.to_db())?;
        Some((Frequency::hz(lower), Frequency::hz(upper)))
    }

    /// The distance between the [`Self::edges`].
    #[must_use]
    pub fn bandwidth(&self, drop: Decibels) -> Option<Frequency> {
        let (lower, upper) = self.edges(drop)?;
        Some(Frequency::hz(upper.to_hz() - lower.to_hz()))
    }

    /// The bandwidth at 60 dB over that at 6 dB.
    #[must_use]
    pub fn shape_factor(&self) -> Option<f64> {
        let width = |drop| self.bandwidth(Decibels::db(drop)).map(Frequency::to_hz);
        Some(width(60.0)? / width(6.0)?)
    }

    /// Decibels under the response at the IF itself; infinite at 0 Hz and where there is no
    /// path.
    pub(super) fn under_centre(&self, hertz: f64) -> f64 {
        if hertz > 0.0 {
            self.curve.attenuation(Frequency::hz(hertz)).to_db()
        } else {
            f64::INFINITY
        }
    }

    pub(super) fn window(&self) -> Window {
        self.window
    }

    fn passband(&self) -> Passband<impl Fn(f64) -> f64> {
        let Window { low, high, step } = self.window;
        Passband::new(|hertz| self.under_centre(hertz), low, high, step)
    }
}
