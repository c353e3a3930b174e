//! What is worked out in whole columns, point by point: curves, a card, and the logarithm
//! and root that are the core's own. A processor that takes several points at once has to
//! round as one that takes them singly.

use superhet::quantities::band_card::{BandCard, SignalCircuits};
use superhet::quantities::chain_curve::ChainCurve;
use superhet::quantities::conversion::Side;
use superhet::quantities::decimal_log::log10;
use superhet::quantities::square_root::square_root;
use superhet::quantities::tracking::ThreePoints;
use superhet::quantities::transformer_network::{TransformerNetwork, TunedWinding};
use superhet::units::{Capacitance, Decibels, Frequency, Inductance, Resistance};

/// A number of points that no processor's width divides.
const POINTS: u32 = 31;

/// All columns, a line each: the bits of every entry.
pub(super) fn lines() -> Vec<String> {
    let mut lines: Vec<String> = (1..=4).map(curve).collect();
    lines.extend(card());
    let larger = |number: &f64| Some(number * 3.3);
    let numbers = std::iter::successors(Some(1.7e-9), larger);
    let numbers: Vec<f64> = numbers.take(POINTS as usize).collect();
    lines.push(line("log10", numbers.iter().map(|x| log10(*x))));
    lines.push(line("square root", numbers.iter().map(|x| square_root(*x))));
    lines
}

fn line(name: &str, column: impl Iterator<Item = f64>) -> String {
    let bits = column.map(|entry| format!("{:016x}", entry.to_bits()));
    format!("column {name} = {}", bits.collect::<Vec<_>>().join(" "))
}

/// Transformers that are no two alike.
fn curve(transformers: u32) -> String {
    let winding = |microhenries: f64, ohms: f64| TunedWinding {
        inductance: Inductance::uh(microhenries),
        capacitance: Capacitance::pf(200.0),
        series: Resistance::ohm(ohms),
        load: Resistance::ohm(400e3),
    };
    let network = |number: u32| TransformerNetwork {
        primary: winding(611.8 + f64::from(number), 17.0),
        secondary: winding(610.2, 15.0 + f64::from(number)),
        coupling: 0.009 + 0.001 * f64::from(number),
    };
    let chain: Vec<TransformerNetwork> = (0..transformers).map(network).collect();
    let hertz: Vec<f64> = (0..POINTS).map(|n| 425e3 + 2e3 * f64::from(n)).collect();
    let mut decibels = vec![0.0; hertz.len()];
    ChainCurve::new(&chain, Frequency::khz(455.0)).attenuations(&hertz, &mut decibels);
    line(&format!("curve of {transformers}"), decibels.into_iter())
}

fn card() -> [String; 4] {
    let settings = [600.0, 950.0, 1500.0].map(Frequency::khz);
    let curve = ThreePoints::new(settings, Frequency::khz(470.0), Side::Above);
    let curve = curve.expect("above the signal there is a curve");
    let dials = (0..POINTS).map(|n| Frequency::khz(531.0 + 36.0 * f64::from(n)));
    let signal = SignalCircuits {
        loaded_q: 80.0,
        circuits: 2,
    };
    let card = BandCard::new(&dials.collect::<Vec<_>>(), &curve, signal);
    let of = |name, column: &[Decibels]| line(name, column.iter().map(|entry| entry.to_db()));
    [
        of("image rejection", &card.image_rejection),
        of("IF rejection", &card.if_rejection),
        of("loss", &card.loss),
        line(
            "tracking error",
            card.tracking_error.iter().map(|error| error.to_hz()),
        ),
    ]
}
