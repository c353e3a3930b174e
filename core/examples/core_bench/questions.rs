//! The questions, as `questions.toml` of the site's bench holds them.

use serde::Deserialize;
use superhet::quantities::transformer_network::{TransformerNetwork, TunedWinding};
use superhet::units::{Capacitance, Frequency, Inductance, Resistance};

/// Everything that is asked.
#[derive(Debug, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub(crate) struct Questions {
    pub(crate) curve: Curve,
    pub(crate) tracking: Tracking,
    pub(crate) best_points: BestPoints,
    pub(crate) card: Card,
}

/// The attenuation of a chain of exact pairs.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Curve {
    pub(crate) centre: f64,
    /// l1, c1, r1, load1, l2, c2, r2, load2, k of each.
    pairs: Vec<[f64; 9]>,
    pub(crate) sweeps: Vec<Sweep>,
}

impl Curve {
    /// The chain as the core takes it.
    pub(crate) fn chain(&self) -> Vec<TransformerNetwork> {
        let winding = |[l, c, r, load]: [f64; 4]| TunedWinding {
            inductance: Inductance::h(l),
            capacitance: Capacitance::f(c),
            series: Resistance::ohm(r),
            load: Resistance::ohm(load),
        };
        let pair = |&[l1, c1, r1, load1, l2, c2, r2, load2, coupling]: &[f64; 9]| {
            let (primary, secondary) = ([l1, c1, r1, load1], [l2, c2, r2, load2]);
            TransformerNetwork {
                primary: winding(primary),
                secondary: winding(secondary),
                coupling,
            }
        };
        self.pairs.iter().map(pair).collect()
    }
}

/// Frequencies at which a curve is asked for.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Sweep {
    pub(crate) points: u32,
    first: f64,
    step: f64,
}

impl Sweep {
    pub(crate) fn hertz(&self) -> Vec<f64> {
        let at = |place| self.first + self.step * f64::from(place);
        (0..self.points).map(at).collect()
    }
}

/// A padder, a trimmer and a coil for three settings.
#[derive(Debug, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub(crate) struct Tracking {
    settings: [f64; 3],
    r#if: f64,
    signal_coil: f64,
}

impl Tracking {
    pub(crate) fn settings(&self) -> [Frequency; 3] {
        self.settings.map(Frequency::hz)
    }

    pub(crate) fn intermediate(&self) -> Frequency {
        Frequency::hz(self.r#if)
    }

    pub(crate) fn signal_coil(&self) -> Inductance {
        Inductance::h(self.signal_coil)
    }
}

/// The best three settings of a band.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct BestPoints {
    low: f64,
    high: f64,
    r#if: f64,
}

impl BestPoints {
    pub(crate) fn ends(&self) -> [Frequency; 2] {
        [self.low, self.high].map(Frequency::hz)
    }

    pub(crate) fn intermediate(&self) -> Frequency {
        Frequency::hz(self.r#if)
    }
}

/// What a set does at every channel of a band.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Card {
    channels: u32,
    first: f64,
    step: f64,
    settings: [f64; 3],
    r#if: f64,
    pub(crate) q: f64,
    pub(crate) circuits: u32,
}

impl Card {
    pub(crate) fn dials(&self) -> Vec<Frequency> {
        let at = |place| Frequency::hz(self.first + self.step * f64::from(place));
        (0..self.channels).map(at).collect()
    }

    pub(crate) fn settings(&self) -> [Frequency; 3] {
        self.settings.map(Frequency::hz)
    }

    pub(crate) fn intermediate(&self) -> Frequency {
        Frequency::hz(self.r#if)
    }
}
