//! The four paths against the closed forms of what lies on them.

use std::vec::Vec;

use super::{ROUNDING, built_in, khz, receiver};
use crate::quantities::conversion::{Side, image};
use crate::quantities::selectivity::{if_rejection, image_rejection, selectivity};
use crate::receiver::{Receiver, SetProfile, Typed};
use crate::units::{Decibels, Frequency};

/// 0 dB is the peak of aerial circuit and chain together, which lies between the chain's
/// own peak and nothing under its response at the IF. So a path that leaves the chain at the
/// IF reads at least the aerial circuit's rejection, and more by no more than the chain is
/// weaker at the IF than at its own peak.
fn assert_rejection(receiver: &Receiver, got: Decibels, expected: Decibels, case: &str) {
    let most = receiver.if_chain().attenuation(receiver.intermediate());
    let more = got.to_db() - expected.to_db();
    let fits = more >= -ROUNDING && more <= most.to_db() + ROUNDING;
    assert!(
        fits,
        "{case}: {got} against {expected}, at most {most} more"
    );
}

#[test]
fn images_and_breakthrough_are_what_the_aerial_circuits_leave() {
    let mut profile = SetProfile::plain();
    profile.bands[0].aerial_circuits = 2.0.into();
    for (intermediate, side) in [("470 kHz", Side::Above), ("125 kHz", Side::Below)] {
        profile.intermediate = intermediate.into();
        profile.side = side.word().into();
        let receiver = receiver(&profile);
        let f = receiver.intermediate();
        for dial in [540.0, 1000.0, 1600.0].map(Frequency::khz) {
            let at = |signal| receiver.response(dial, signal).unwrap();
            let through = at(image(dial, f, side).unwrap()).image;
            let expected = image_rejection(dial, f, side, 80.0, 2).unwrap();
            assert_rejection(&receiver, through, expected, "image");
            let expected = if_rejection(dial, f, 80.0, 2);
            assert_rejection(&receiver, at(f).breakthrough, expected, "breakthrough");
        }
    }
}

#[test]
fn an_image_can_be_a_sum() {
    let mut profile = SetProfile::plain();
    profile.side = "below".into();
    // 700 − 470 = 230 kHz of oscillator, and 230 + 240 = 470.
    let receiver = receiver(&profile);
    let got = receiver.response(khz(700.0), khz(240.0)).unwrap().image;
    let expected = selectivity(khz(240.0), khz(700.0), 80.0, 1);
    assert_rejection(&receiver, got, expected, "sum");
}

#[test]
fn harmonics_are_heard_on_both_their_sides_by_their_own_gain() {
    let mut profile = SetProfile::plain();
    profile.mixer.harmonic_gains = ["-10 dB", "-18 dB"].map(Typed::from).to_vec();
    let receiver = receiver(&profile);
    // The oscillator at 1470 kHz: 2940 ± 470 and 4410 ± 470.
    for (signal, gain) in [
        (2470.0, -10.0),
        (3410.0, -10.0),
        (3940.0, -18.0),
        (4880.0, -18.0),
    ] {
        let got = receiver
            .response(khz(1000.0), khz(signal))
            .unwrap()
            .harmonic;
        let aerial = selectivity(khz(signal), khz(1000.0), 80.0, 1).to_db();
        // The other harmonic stands a megahertz off in the chain, 180 dB down and more.
        assert_rejection(&receiver, got, Decibels::db(aerial - gain), "harmonic");
    }
}

#[test]
fn paths_that_are_not_there_are_infinite() {
    let receiver = receiver(&SetProfile::plain());
    let tuning = receiver.tune(khz(1000.0)).unwrap();
    let below = tuning.response(khz(900.0));
    assert_eq!(below.image.to_db(), f64::INFINITY);
    assert_eq!(below.harmonic.to_db(), f64::INFINITY);
    let above = tuning.response(khz(1500.0));
    assert_eq!(above.wanted.to_db(), f64::INFINITY);
    // On the oscillator itself neither side has a path.
    let on = tuning.response(khz(1470.0));
    assert_eq!(
        (on.wanted.to_db(), on.image.to_db()),
        (f64::INFINITY, f64::INFINITY)
    );
    assert!(on.total() <= on.breakthrough);
}

#[test]
fn nothing_wanted_is_stronger_than_the_peak() {
    for profile in built_in() {
        let receiver = receiver(&profile);
        for band in receiver.bands() {
            let (low, high) = (band.low().to_hz(), band.high().to_hz());
            for step in 0..=4 {
                let reading = Frequency::hz(low + (high - low) * f64::from(step) / 4.0);
                let tuning = receiver.tuned(receiver.setting_on(band, reading).unwrap());
                let wanted = |hertz: f64| tuning.response(Frequency::hz(hertz)).wanted.to_db();
                assert!(wanted(tuning.peak().to_hz()).abs() < ROUNDING);
                let around =
                    (-2000..=2000).map(|look| tuning.peak().to_hz() + f64::from(look) * 20.0);
                let least = around.map(wanted).fold(f64::INFINITY, f64::min);
                assert!(
                    least > -ROUNDING,
                    "{} at {reading}: {least}",
                    receiver.name()
                );
            }
        }
    }
}

#[test]
fn edges_are_at_their_drop_and_beyond_them_it_only_falls() {
    for profile in built_in() {
        let receiver = receiver(&profile);
        let band = &receiver.bands()[0];
        let tuning = receiver.tuned(receiver.setting_on(band, band.low()).unwrap());
        let wanted = |hertz: f64| tuning.response(Frequency::hz(hertz)).wanted.to_db();
        for drop in [3.0, 6.0, 40.0, 60.0] {
            let (lower, upper) = tuning.edges(Decibels::db(drop)).unwrap();
            for (edge, out) in [(lower, -100.0), (upper, 100.0)] {
                let edge = edge.to_hz();
                assert!(
                    (wanted(edge) - drop).abs() < 1e-6,
                    "{}: {drop}",
                    receiver.name()
                );
                let levels: Vec<f64> = (0..50)
                    .map(|far| wanted(edge + f64::from(far) * out))
                    .collect();
                assert!(levels.is_sorted(), "{}: {drop} {levels:?}", receiver.name());
            }
        }
    }
}

#[test]
fn a_wire_favours_what_lies_below() {
    let mut profile = SetProfile::plain();
    let rod = receiver(&profile);
    profile.bands[0].pick_up = "wire".into();
    let wire = receiver(&profile);
    // An exact aerial circuit: the peaks of both differ by thousandths.
    let at = |set: &Receiver, signal| set.response(khz(600.0), khz(signal)).unwrap().image.to_db();
    let more = at(&wire, 1540.0) - at(&rod, 1540.0);
    // 20·log10(1540/600) = 8.19 dB, as the catalogue says of image rejection.
    assert!((more - 8.187).abs() < 0.01, "{more}");
}
