use super::*;

fn best(low: f64, high: f64, f: f64, minimised: Minimised) -> BestPoints {
    best_points(
        [low, high].map(Frequency::khz),
        Frequency::khz(f),
        minimised,
    )
    .unwrap()
}

/// Largest judged error on a fine grid, for settings near the best.
fn largest_on_grid(settings: [f64; 3], minimised: Minimised) -> f64 {
    let curve = ThreePoints::from_hz(settings, 455e3);
    (0..=4_000)
        .map(|step| 540e3 + 1_060e3 * f64::from(step) / 4_000.0)
        .map(|x| match minimised {
            Minimised::Relative => (curve.error_hz(x) / x).abs(),
            Minimised::Kilohertz => curve.error_hz(x).abs(),
        })
        .fold(0.0, f64::max)
}

#[test]
fn the_printed_best_points_come_out() {
    // catalogue.md, "Tracking": 540 to 1600, IF 455, both ways of judging.
    let in_khz = best(540.0, 1600.0, 455.0, Minimised::Kilohertz);
    assert!((in_khz.largest / 1e3 - 4.675).abs() < 0.0005, "{in_khz:?}");
    for (got, expected) in in_khz.settings.iter().zip([596.7, 1010.5, 1513.5]) {
        assert!((got.to_khz() - expected).abs() < 0.05, "{got:?}");
    }
    let relative = best(540.0, 1600.0, 455.0, Minimised::Relative);
    assert!(
        (relative.largest - 0.00513).abs() < 0.000_005,
        "{relative:?}"
    );
    for (got, expected) in relative.settings.iter().zip([579.2, 917.4, 1481.7]) {
        assert!((got.to_khz() - expected).abs() < 0.05, "{got:?}");
    }
}

#[test]
fn no_near_settings_do_better() {
    for minimised in [Minimised::Kilohertz, Minimised::Relative] {
        let found = best(540.0, 1600.0, 455.0, minimised);
        let settings = found.settings.map(Frequency::to_hz);
        let least = largest_on_grid(settings, minimised);
        for which in 0..3 {
            for away in [-2e3, -200.0, 200.0, 2e3] {
                let mut moved = settings;
                moved[which] += away;
                assert!(largest_on_grid(moved, minimised) > least, "{which} {away}");
            }
        }
    }
}

#[test]
fn it_settles_on_every_band_people_have() {
    for (low, high) in [
        (150.0, 300.0),
        (525.0, 1605.0),
        (1_600.0, 4_800.0),
        (5_900.0, 18_000.0),
        (26_000.0, 30_000.0),
        (500.0, 520.0),
    ] {
        for f in [100.0, 175.0, 455.0, 1_600.0, 2_000.0] {
            for minimised in [Minimised::Kilohertz, Minimised::Relative] {
                let found = best(low, high, f, minimised);
                assert!(
                    found.largest > 0.0 && found.settings[0].to_khz() > low,
                    "{low} {high} {f}"
                );
                assert!(found.settings[2].to_khz() < high, "{low} {high} {f}");
            }
        }
    }
}
