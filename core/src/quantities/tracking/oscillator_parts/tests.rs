use super::*;
use crate::quantities::conversion::Side;

#[test]
fn put_back_into_the_circuit_they_resonate_at_dial_plus_if() {
    let coil = Inductance::uh(180.0);
    for (settings, f) in [
        ([600.0, 950.0, 1500.0], 455.0),
        ([160.0, 205.0, 270.0], 470.0),
        ([6e3, 9e3, 17e3], 1600.0),
    ] {
        let settings = settings.map(Frequency::khz);
        let curve = ThreePoints::new(settings, Frequency::khz(f), Side::Above).unwrap();
        for arrangement in [Arrangement::AcrossCoil, Arrangement::AcrossGang] {
            let parts = OscillatorParts::new(&curve, coil, arrangement).unwrap();
            for setting in settings {
                let got = parts.oscillator(gang_capacitance(setting, coil)).to_hz();
                let expected = setting.to_hz() + f * 1e3;
                assert!(
                    (got / expected - 1.0).abs() < 1e-12,
                    "{setting:?} {arrangement:?}"
                );
            }
        }
    }
}

#[test]
fn both_arrangements_are_the_same_curve_between_the_settings() {
    let settings = [600.0, 950.0, 1500.0].map(Frequency::khz);
    let curve = ThreePoints::new(settings, Frequency::khz(455.0), Side::Above).unwrap();
    let coil = Inductance::uh(200.0);
    let across = |arrangement| OscillatorParts::new(&curve, coil, arrangement).unwrap();
    let (one, two) = (
        across(Arrangement::AcrossCoil),
        across(Arrangement::AcrossGang),
    );
    for khz in [540.0, 700.0, 1200.0, 1600.0] {
        let gang = gang_capacitance(Frequency::khz(khz), coil);
        let expected = curve.oscillator(Frequency::khz(khz)).to_hz();
        assert!((one.oscillator(gang).to_hz() / expected - 1.0).abs() < 1e-12);
        assert!((two.oscillator(gang).to_hz() / expected - 1.0).abs() < 1e-12);
    }
}
