//! One tuned circuit against ngspice: the universal curve is exact for a voltage induced
//! in proportion to frequency and an output across the capacitor.

use crate::netlist::{Parts, netlists, rows};
use superhet::quantities::resonance::resonance;
use superhet::quantities::selectivity::selectivity;
use superhet::units::{Capacitance, Frequency, Inductance};

const FOLDER: &str = "single-circuit";

/// Of a decibel, or of the whole where that is more: what is asked of outside computations.
const AGREEMENT: f64 = 1e-9;

#[test]
fn selectivity_is_that_of_a_coil_and_a_capacitor() {
    for circuit in netlists(FOLDER) {
        let parts = Parts::read(FOLDER, &circuit);
        let (l, c, r) = (parts.value("L1"), parts.value("C1"), parts.value("R1"));
        let f0 = resonance(Inductance::h(l), Capacitance::f(c));
        let q = 2.0 * std::f64::consts::PI * f0.to_hz() * l / r;
        let mut most = 0.0_f64;
        for row in rows(FOLDER, &format!("{circuit}.csv")) {
            // ngspice's volt is the same at all frequencies; the induced one grows with it.
            let voltage = row[1].hypot(row[2]) * row[0] / f0.to_hz();
            let theirs = 20.0 * (q / voltage).log10();
            let ours = selectivity(Frequency::hz(row[0]), f0, q, 1).to_db();
            let allowed = AGREEMENT * theirs.abs().max(1.0);
            assert!(
                (ours - theirs).abs() < allowed,
                "{circuit} at {} Hz: {ours} {theirs}",
                row[0]
            );
            most = most.max(theirs);
        }
        println!("{circuit}: down to {most:.1} dB");
        assert!(most > 60.0, "{circuit} reaches only {most} dB down");
    }
}
