//! Whole curves of a chain of exact IF transformers, many points at a time.
//!
//! In scope: what [`TransformerNetwork::transfer_impedance`] says of each transformer,
//! multiplied over the chain; coefficients once a curve, a few products and one logarithm
//! a point. Left out: one point alone, for which the network itself is as good.
//!
//! Symbols: `ω` at the asked frequency, `ωr` at the frequency the curve is drawn round,
//! `s = (ω/ωr)² − 1`. In `|V2/I1|² = ω²M² / (Re² + ω²B²)` both `Re` (a quadratic) and `B`
//! (a straight line) are polynomials in `s`, since a coil gives `jωL` and a capacitor `jωC`
//! and the network has two of each. Round `ωr` the small differences stand in the
//! coefficients, where they were formed once without losing digits.
//!
//! DIFFERENCE: the answer departs from the network's own by rounding alone: 1e-12 of the
//! voltage ratio within an octave of `ωr` for Q up to 1 000 (tested).

use alloc::vec::Vec;
use libm::sqrt;

use super::decimal_log::log10;
use super::transformer_network::TransformerNetwork;
use crate::units::{Decibels, Frequency};

/// One transformer's polynomials in s.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Polynomials {
    /// `Re`, constant term first.
    real: [f64; 3],
    /// `ωr·B`, constant term first.
    imaginary: [f64; 2],
}

impl Polynomials {
    /// `(Re² + ω²B²)` at s.
    #[inline]
    fn square(&self, s: f64) -> f64 {
        let real = self.real[0] + s * (self.real[1] + s * self.real[2]);
        let imaginary = self.imaginary[0] + s * self.imaginary[1];
        real * real + (1.0 + s) * (imaginary * imaginary)
    }

    fn of(network: &TransformerNetwork, omega: f64) -> Self {
        let (l1, c1, r1, g1) = network.primary.raw();
        let (l2, c2, r2, g2) = network.secondary.raw();
        let mutual = omega * network.mutual();
        // 1 + z·y of each side is (a − b·s) + jω·d.
        let (b1, b2) = (omega * omega * l1 * c1, omega * omega * l2 * c2);
        let (a1, a2) = ((1.0 - b1) + r1 * g1, (1.0 - b2) + r2 * g2);
        let (d1, d2) = (omega * (l1 * g1 + r1 * c1), omega * (l2 * g2 + r2 * c2));
        // −zm²·y1·y2 is (1 + s)·(conductances − (1 + s)·susceptances) + jω·(1 + s)·crossed.
        let square = mutual * mutual;
        let conductances = square * (g1 * g2) - d1 * d2;
        let susceptances = square * (omega * c1) * (omega * c2);
        let crossed = square * (omega * c2 * g1 + omega * c1 * g2);
        Self {
            real: [
                a1 * a2 + conductances - susceptances,
                conductances - (a1 * b2 + a2 * b1) - 2.0 * susceptances,
                b1 * b2 - susceptances,
            ],
            imaginary: [a1 * d2 + a2 * d1 + crossed, crossed - (b1 * d2 + b2 * d1)],
        }
    }
}

/// A chain of transformers, each of which feeds the next through a valve, made ready for
/// many frequencies.
///
/// ```
/// use superhet::quantities::chain_curve::ChainCurve;
/// use superhet::quantities::transformer_network::{TransformerNetwork, TunedWinding};
/// use superhet::units::{Capacitance, Frequency, Inductance, Resistance};
/// let winding = TunedWinding {
///     inductance: Inductance::h(1e-3),
///     capacitance: Capacitance::pf(120.0),
///     series: Resistance::ohm(28.87),
///     load: Resistance::ohm(1e9),
/// };
/// let pair = TransformerNetwork { primary: winding, secondary: winding, coupling: 0.01 };
/// let one = ChainCurve::new(&[pair], Frequency::khz(459.44));
/// let three = ChainCurve::new(&[pair; 3], Frequency::khz(459.44));
/// let beside = Frequency::khz(468.44);
/// // Alike transformers weaken a neighbour alike: three times the decibels of one.
/// let (one, three) = (one.attenuation(beside).to_db(), three.attenuation(beside).to_db());
/// assert!((three - 3.0 * one).abs() < 1e-9);
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct ChainCurve {
    /// 1/fr².
    per_square: f64,
    /// The frequency the curve is drawn round, in hertz.
    centre: f64,
    transformers: Vec<Polynomials>,
    /// `|V2/I1|²` of the whole chain at the centre, over the product of the denominators
    /// there: what each point's own product is measured by.
    at_centre: f64,
}

impl ChainCurve {
    /// Makes ready for a curve round a frequency, which is 0 dB on it.
    #[must_use]
    pub fn new(chain: &[TransformerNetwork], centre: Frequency) -> Self {
        let centre = centre.to_hz();
        let omega = 2.0 * core::f64::consts::PI * centre;
        let transformers: Vec<Polynomials> = chain
            .iter()
            .map(|network| Polynomials::of(network, omega))
            .collect();
        let at_centre = transformers.iter().map(|one| one.square(0.0)).product();
        Self {
            per_square: 1.0 / (centre * centre),
            centre,
            transformers,
            at_centre,
        }
    }

    /// `(f/fr)² − 1`, formed without losing digits near fr.
    #[inline]
    fn offset(&self, hertz: f64) -> f64 {
        (hertz - self.centre) * (hertz + self.centre) * self.per_square
    }

    /// The square of (voltage at the centre over voltage at this frequency).
    fn weakening(&self, hertz: f64) -> f64 {
        self.weakening_by(&self.transformers, hertz)
    }

    /// The same, with the transformers given: their number is known to the compiler where
    /// they stand in an array.
    #[inline(always)]
    fn weakening_by(&self, transformers: &[Polynomials], hertz: f64) -> f64 {
        let s = self.offset(hertz);
        let mut denominators = 1.0;
        let mut numerators = self.at_centre;
        for one in transformers {
            denominators *= one.square(s);
            numerators *= 1.0 + s;
        }
        denominators / numerators
    }

    /// How many decibels weaker the chain passes a frequency than its centre.
    #[must_use]
    pub fn attenuation(&self, frequency: Frequency) -> Decibels {
        Decibels::db(10.0 * log10(self.weakening(frequency.to_hz())))
    }

    /// How many times weaker the chain passes a frequency than its centre.
    #[must_use]
    pub fn times_weaker(&self, frequency: Frequency) -> f64 {
        sqrt(self.weakening(frequency.to_hz()))
    }

    /// The decibels of [`Self::attenuation`] for many frequencies in hertz, to the same bits.
    /// As many are written as both slices have.
    ///
    /// Two passes, of which each is short enough for a processor to take several points at
    /// once.
    pub fn attenuations(&self, hertz: &[f64], decibels: &mut [f64]) {
        let points = hertz.len().min(decibels.len());
        let (hertz, decibels) = (&hertz[..points], &mut decibels[..points]);
        match self.transformers[..] {
            [one] => self.weakenings([one], hertz, decibels),
            [one, two] => self.weakenings([one, two], hertz, decibels),
            [one, two, three] => self.weakenings([one, two, three], hertz, decibels),
            _ => {
                for (hertz, weakening) in hertz.iter().zip(&mut *decibels) {
                    *weakening = self.weakening(*hertz);
                }
            }
        }
        for decibels in decibels {
            *decibels = 10.0 * log10(*decibels);
        }
    }

    /// The weakening at each frequency, for a chain as short as sets have.
    fn weakenings<const N: usize>(
        &self,
        transformers: [Polynomials; N],
        hertz: &[f64],
        weakenings: &mut [f64],
    ) {
        for (hertz, weakening) in hertz.iter().zip(weakenings) {
            *weakening = self.weakening_by(&transformers, *hertz);
        }
    }
}

#[cfg(test)]
mod tests;
