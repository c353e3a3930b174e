//! The IF transformers in a row: the set's own window.

use alloc::vec::Vec;

use super::passband::{Passband, shape_factor};
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
    /// The frequency of least attenuation, in hertz, and that attenuation under the IF's own.
    peak: f64,
    least: f64,
}

/// Where all humps of the chain lie, and how closely they have to be looked at.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Window {
    pub(super) low: f64,
    pub(super) high: f64,
    pub(super) step: f64,
}

impl IfChain {
    /// A chain for an IF, each transformer tuned to it or near it.
    ///
    /// Humps stand apart by the coupling at most, and by what the sides are out of tune;
    /// beside them a bandwidth of the dullest side is looked at.
    #[must_use]
    pub fn new(transformers: Vec<TransformerNetwork>, intermediate: Frequency) -> Self {
        let curve = ChainCurve::new(&transformers, intermediate);
        let intermediate = intermediate.to_hz();
        let sides = || {
            transformers
                .iter()
                .flat_map(|pair| [pair.primary, pair.secondary])
        };
        let greatest = |values: &mut dyn Iterator<Item = f64>| values.fold(0.0, f64::max);
        let coupling = greatest(&mut transformers.iter().map(|pair| pair.coupling));
        let off = |side: TunedWinding| (side.resonance().to_hz() - intermediate).abs();
        let detuning = greatest(&mut sides().map(off));
        let sharpest = greatest(&mut sides().map(|side| side.loaded_q())).max(1.0);
        let dullest = sides().map(|side| side.loaded_q()).fold(f64::MAX, f64::min);
        let spread = coupling + 2.0 * detuning / intermediate + 2.0 / dullest;
        let window = Window {
            low: intermediate * (1.0 - spread).max(0.1),
            high: intermediate * (1.0 + spread),
            step: intermediate / (LOOKS_IN_A_BANDWIDTH * sharpest),
        };
        let mut chain = Self {
            transformers,
            curve,
            window,
            peak: 0.0,
            least: 0.0,
        };
        (chain.peak, chain.least) = chain.passband().peak();
        chain
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
        Decibels::db(self.under_centre(frequency.to_hz()) - self.least)
    }

    /// The decibels of [`Self::attenuation`] for many frequencies in hertz. As many are
    /// written as both slices have.
    pub fn attenuations(&self, hertz: &[f64], decibels: &mut [f64]) {
        self.curve.attenuations(hertz, decibels);
        for decibels in decibels.iter_mut().take(hertz.len()) {
            *decibels -= self.least;
        }
    }

    /// Where the chain passes most.
    #[must_use]
    pub fn peak(&self) -> Frequency {
        Frequency::hz(self.peak)
    }

    /// The outermost two frequencies that are a drop under the peak, even where the dip
    /// between them is deeper. None where the curve never falls so far.
    #[must_use]
    pub fn edges(&self, drop: Decibels) -> Option<(Frequency, Frequency)> {
        let (lower, upper) = self
            .passband()
            .edges(self.peak, self.least + drop.to_db())?;
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
        shape_factor(|drop| self.bandwidth(drop))
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
