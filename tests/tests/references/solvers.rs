//! Closed forms against SciPy's general solvers and NumPy's matrices.

use crate::netlist::rows;
use superhet::quantities::chain_curve::ChainCurve;
use superhet::quantities::conversion::Side;
use superhet::quantities::tracking::{
    Arrangement, Minimised, OscillatorParts, ThreePoints, best_points,
};
use superhet::quantities::transformer_network::{TransformerNetwork, TunedWinding};
use superhet::units::{Capacitance, Frequency, Inductance, Resistance};

const FOLDER: &str = "solvers";

/// Agreement asked of outside computations, relative.
const AGREEMENT: f64 = 1e-9;

/// The minimiser looks at 20 001 dial settings where the core looks for the very peak. Over
/// the band the error makes about four half swings, so near a peak it falls as
/// `1 − (4π·t)²/2`, `t` being the distance over the band; the nearest setting looked at is
/// at most t = 1/40 000 away: 5e-8.
const LEAST_ERROR: f64 = 5e-8;

#[test]
fn three_points_are_what_a_general_solver_finds() {
    let rows = rows(FOLDER, "three-points.csv");
    assert_eq!(rows.len(), 48);
    for row in rows {
        let [
            f1,
            f2,
            f3,
            intermediate,
            coil,
            arrangement,
            padder,
            trimmer,
            inductance,
        ] = row[..]
        else {
            panic!("nine cells, not {row:?}");
        };
        let points = [f1, f2, f3].map(Frequency::hz);
        let curve = ThreePoints::new(points, Frequency::hz(intermediate), Side::Above).unwrap();
        let arrangement = if arrangement == 0.0 {
            Arrangement::AcrossCoil
        } else {
            Arrangement::AcrossGang
        };
        let parts = OscillatorParts::new(&curve, Inductance::h(coil), arrangement).unwrap();
        for (what, ours, theirs) in [
            ("padder", parts.padder.to_f(), padder),
            ("trimmer", parts.trimmer.to_f(), trimmer),
            ("inductance", parts.inductance.to_h(), inductance),
        ] {
            let error = ours / theirs - 1.0;
            assert!(
                error.abs() < AGREEMENT,
                "{what} of {row:?}: {ours:e}, {error:e}"
            );
        }
    }
}

#[test]
fn no_minimiser_finds_better_points() {
    for row in rows(FOLDER, "best-points.csv") {
        let [low, high, intermediate, what, least] = row[..] else {
            panic!("five cells, not {row:?}");
        };
        let minimised = if what == 0.0 {
            Minimised::Relative
        } else {
            Minimised::Kilohertz
        };
        let best = best_points(
            [Frequency::hz(low), Frequency::hz(high)],
            Frequency::hz(intermediate),
            minimised,
        )
        .unwrap();
        let error = best.largest / least - 1.0;
        assert!(
            error.abs() < LEAST_ERROR,
            "{row:?}: {}, {error:e}",
            best.largest
        );
    }
}

#[test]
fn a_curve_of_three_pairs_is_what_a_matrix_gives() {
    let omega = 2.0 * std::f64::consts::PI * 455e3;
    let (c, q) = (200e-12, 100.0);
    let l = 1.0 / (omega * omega * c);
    let winding = TunedWinding {
        inductance: Inductance::h(l),
        capacitance: Capacitance::f(c),
        series: Resistance::ohm(omega * l / q),
        load: Resistance::ohm(f64::INFINITY),
    };
    let pair = TransformerNetwork {
        primary: winding,
        secondary: winding,
        coupling: 0.01,
    };
    let curve = ChainCurve::new(&[pair; 3], Frequency::khz(455.0));
    let rows = rows(FOLDER, "pair-curve.csv");
    assert_eq!(rows.len(), 401);
    for row in rows {
        let ours = curve.attenuation(Frequency::hz(row[0])).to_db();
        let allowed = AGREEMENT * row[1].abs().max(1.0);
        assert!(
            (ours - row[1]).abs() < allowed,
            "{} Hz: {ours}, {}",
            row[0],
            row[1]
        );
    }
}
