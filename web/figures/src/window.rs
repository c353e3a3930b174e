//! The curve of exact IF transformers, and what is read off it.
//!
//! The inductance of a winding cancels out of a curve that is measured from its own peak;
//! all loss is put in series with the coils.

use crate::plot::Frame;
use superhet::quantities::chain_curve::ChainCurve;
use superhet::quantities::resonance::{capacitance, reactance_l};
use superhet::quantities::transformer_network::{TransformerNetwork, TunedWinding};
use superhet::units::{Frequency, Inductance, Resistance};

/// The winding that stands for all.
const INDUCTANCE: Inductance = Inductance::h(1e-3);
/// A load too large to count, in ohms.
const NO_LOAD: f64 = 1e15;
/// Halvings that place an edge to a millionth of a step of the curve.
const HALVINGS: u32 = 20;

/// One tuned winding: where it resonates, in hertz, and its loaded Q.
pub(crate) fn winding(hertz: f64, q: f64) -> TunedWinding {
    let resonant = Frequency::hz(hertz);
    TunedWinding {
        inductance: INDUCTANCE,
        capacitance: capacitance(resonant, INDUCTANCE),
        series: Resistance::ohm(reactance_l(resonant, INDUCTANCE).to_ohm() / q),
        load: Resistance::ohm(NO_LOAD),
    }
}

/// A chain's curve under its own peak.
pub(crate) struct Window {
    curve: ChainCurve,
    places: Vec<f64>,
    /// The least loss on the line, against that in the middle.
    best: f64,
}

impl Window {
    pub(crate) fn new(chain: &[TransformerNetwork], middle: f64, frame: &Frame) -> Self {
        let mut window = Self {
            curve: ChainCurve::new(chain, Frequency::hz(middle)),
            places: frame.places_about_middle().to_vec(),
            best: 0.0,
        };
        let losses = window.places.iter().map(|hertz| window.loss(*hertz));
        window.best = losses.fold(f64::INFINITY, f64::min);
        window
    }

    /// Decibels under the peak.
    pub(crate) fn loss(&self, hertz: f64) -> f64 {
        self.curve.attenuation(Frequency::hz(hertz)).to_db() - self.best
    }

    /// Where the curve is worked out, and the decibels lost there.
    pub(crate) fn points(&self) -> (&[f64], Vec<f64>) {
        let losses = self.places.iter().map(|hertz| self.loss(*hertz));
        (&self.places, losses.collect())
    }

    /// The outermost two frequencies that lose so many decibels; an end of the line where the
    /// curve leaves it higher up.
    pub(crate) fn edges(&self, decibels: f64) -> (f64, f64) {
        let high = |place: &usize| self.loss(self.places[*place]) <= decibels;
        let last = self.places.len() - 1;
        let first = (0..=last).find(high).unwrap_or(0);
        let end = (0..=last).rev().find(high).unwrap_or(last);
        let edge = |inside: usize, outside: usize| {
            self.crossing(self.places[inside], self.places[outside], decibels)
        };
        (
            edge(first, first.saturating_sub(1)),
            edge(end, (end + 1).min(last)),
        )
    }

    fn crossing(&self, mut inside: f64, mut outside: f64, decibels: f64) -> f64 {
        for _ in 0..HALVINGS {
            let middle = f64::midpoint(inside, outside);
            if self.loss(middle) <= decibels {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        inside
    }
}

#[cfg(test)]
mod tests {
    use super::{Window, winding};
    use crate::plot::Frame;
    use superhet::quantities::coupled_pair::CoupledPair;
    use superhet::quantities::transformer_network::TransformerNetwork;
    use superhet::units::{Decibels, Frequency};

    #[test]
    fn the_width_of_a_pair_is_that_of_the_narrow_band_form() {
        // At Q 100 and critical coupling that form is 0.2 % too wide, as it says itself.
        let pair = TransformerNetwork {
            primary: winding(470e3, 100.0),
            secondary: winding(470e3, 100.0),
            coupling: 0.01,
        };
        let frame = Frame::new(0.0, 100.0, (450e3, 490e3), (0.0, 60.0));
        let (low, high) = Window::new(&[pair], 470e3, &frame).edges(3.0);
        let expected = CoupledPair::new(100.0, 100.0, 0.01)
            .bandwidth(Frequency::khz(470.0), Decibels::db(3.0))
            .unwrap()
            .to_hz();
        let error = (high - low) / expected - 1.0;
        assert!(
            error.abs() < 0.004,
            "{} Hz, expected {expected}",
            high - low
        );
    }
}
