//! Exact IF chains against ngspice's AC analysis.

use crate::netlist::{Parts, netlists, rows};
use superhet::quantities::chain_curve::ChainCurve;
use superhet::units::Frequency;

const FOLDER: &str = "if-transformers";

/// What the work asks for, relative, from the peak to `DOWN`.
const AGREEMENT: f64 = 1e-9;

/// Decibels under the peak down to which each chain must have been compared.
const DOWN: f64 = 60.0;

/// At least so many circuits.
const CIRCUITS: usize = 12;

struct Compared {
    /// The worst relative error of the voltage.
    worst: f64,
    /// The same of the whole curve drawn at once.
    worst_curve: f64,
    /// Decibels under the peak at the lowest and at the highest frequency.
    ends: [f64; 2],
}

fn compare(circuit: &str) -> Compared {
    let chain = Parts::read(FOLDER, circuit).chain();
    let rows = rows(FOLDER, &format!("{circuit}.csv"));
    let voltages: Vec<(f64, f64)> = rows
        .iter()
        .map(|row| (row[0], row[1].hypot(row[2])))
        .collect();
    let (top, peak) = voltages
        .iter()
        .copied()
        .reduce(|a, b| if b.1 > a.1 { b } else { a })
        .unwrap();
    let curve = ChainCurve::new(&chain, Frequency::hz(top));
    let through = |hertz: f64| -> f64 {
        let f = Frequency::hz(hertz);
        chain
            .iter()
            .map(|one| one.transfer_impedance(f).to_ohm())
            .product()
    };
    let (mut worst, mut worst_curve) = (0.0_f64, 0.0_f64);
    for (hertz, voltage) in &voltages {
        worst = worst.max((through(*hertz) / voltage - 1.0).abs());
        let weaker = curve.times_weaker(Frequency::hz(*hertz));
        worst_curve = worst_curve.max((weaker / (peak / voltage) - 1.0).abs());
    }
    let down = |row: &(f64, f64)| 20.0 * (peak / row.1).log10();
    Compared {
        worst,
        worst_curve,
        ends: [down(&voltages[0]), down(voltages.last().unwrap())],
    }
}

#[test]
fn the_exact_network_agrees_with_ngspice_to_sixty_decibels_down() {
    let circuits = netlists(FOLDER);
    assert!(circuits.len() >= CIRCUITS, "{} circuits", circuits.len());
    println!(
        "{:<30} worst error   of the curve   compared down to",
        "circuit"
    );
    for circuit in &circuits {
        let Compared {
            worst,
            worst_curve,
            ends,
        } = compare(circuit);
        println!(
            "{circuit:<30} {worst:<13.1e} {worst_curve:<14.1e} {:.1} and {:.1} dB",
            ends[0], ends[1]
        );
        assert!(
            worst < AGREEMENT && worst_curve < AGREEMENT,
            "{circuit}: {worst:e} {worst_curve:e}"
        );
        assert!(ends.iter().all(|down| *down >= DOWN), "{circuit}: {ends:?}");
    }
}
