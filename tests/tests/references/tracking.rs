//! Three-point tracking against ngspice: where the susceptance of the oscillator circuit
//! passes through zero.

use crate::netlist::{Parts, rows};
use superhet::quantities::conversion::Side;
use superhet::quantities::tracking::{Arrangement, OscillatorParts, ThreePoints, gang_capacitance};
use superhet::units::{Frequency, Inductance};

const FOLDER: &str = "tracking";

/// The practice of the books: 600, 950 and 1500 kHz (given).
const DIALS: [f64; 3] = [600e3, 950e3, 1500e3];
const IF: f64 = 455e3;

/// The signal coil in henries (given).
const SIGNAL_COIL: f64 = 200e-6;

/// What the work asks for, relative.
const AGREEMENT: f64 = 1e-9;

/// The netlists' values are the core's, printed with all their digits.
const SAME_PARTS: f64 = 1e-13;

/// Where the imaginary part of the admittance is zero, from two rows round it. Between
/// them, 2 Hz apart, it is straight to one part in 10¹².
fn resonance(rows: &[Vec<f64>], dial: usize) -> f64 {
    let susceptance = |row: &[f64]| {
        let (real, imaginary) = (row[1 + 2 * dial], row[2 + 2 * dial]);
        -imaginary / (real * real + imaginary * imaginary)
    };
    let expected = DIALS[dial] + IF;
    let near: Vec<&Vec<f64>> = rows
        .iter()
        .filter(|row| (row[0] - expected).abs() < 10.0)
        .collect();
    let (low, high) = (near[0], near[near.len() - 1]);
    let (below, above) = (susceptance(low), susceptance(high));
    assert!(below * above < 0.0, "no crossing at {expected} Hz");
    low[0] + (high[0] - low[0]) * below / (below - above)
}

#[test]
fn the_parts_resonate_in_ngspice_where_the_core_says() {
    let dials = DIALS.map(Frequency::hz);
    let coil = Inductance::h(SIGNAL_COIL);
    let points = ThreePoints::new(dials, Frequency::hz(IF), Side::Above).unwrap();
    for (arrangement, name) in [
        (Arrangement::AcrossCoil, "across-coil"),
        (Arrangement::AcrossGang, "across-gang"),
    ] {
        let parts = OscillatorParts::new(&points, coil, arrangement).unwrap();
        let netlist = Parts::read(FOLDER, name);
        let rows = rows(FOLDER, &format!("{name}.csv"));
        for (place, dial) in dials.into_iter().enumerate() {
            let khz = DIALS[place] / 1e3;
            for (letters, ours) in [
                ("CP", parts.padder.to_f()),
                ("CT", parts.trimmer.to_f()),
                ("L", parts.inductance.to_h()),
                ("CG", gang_capacitance(dial, coil).to_f()),
            ] {
                let theirs = netlist.value(&format!("{letters}{khz}"));
                assert!(
                    (ours / theirs - 1.0).abs() < SAME_PARTS,
                    "{name} {letters}{khz}: {ours:e}"
                );
            }
            let error = resonance(&rows, place) / (DIALS[place] + IF) - 1.0;
            println!("{name} at {khz} kHz: {error:.1e}");
            assert!(error.abs() < AGREEMENT, "{name} at {khz} kHz: {error:e}");
        }
    }
}
