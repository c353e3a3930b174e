//! The IF chain as a profile makes it.

use std::string::ToString;

use super::{built_in, khz, receiver};
use crate::quantities::selectivity::selectivity;
use crate::receiver::{AlignablePart, Receiver, SetProfile, Typed, WindingSide};
use crate::units::{Decibels, display};

/// Far out the curve is the product of four offsets, so that one winding moved by 3 kHz
/// moves the middle between two edges by a quarter of it; 60 dB down an edge is 19 kHz off,
/// and the next term is 3/19 of the first. The peak need not follow: a pair with one side out
/// of tune has two humps, and the other pair may favour either.
#[test]
fn a_winding_out_of_tune_takes_the_window_with_it() {
    let mut profile = SetProfile::plain();
    let middle = |profile: &SetProfile| {
        let (lower, upper) = receiver(profile)
            .if_chain()
            .edges(Decibels::db(60.0))
            .unwrap();
        0.5 * (lower.to_khz() + upper.to_khz())
    };
    let was = middle(&profile);
    for moved in [3.0, -3.0] {
        let winding = AlignablePart::IfWinding(1, WindingSide::Secondary);
        profile.set_part(winding, moved * 1e3);
        let share = (middle(&profile) - was) / moved;
        assert!(
            (share - 0.25).abs() < 0.25 * 3.0 / 19.0,
            "{moved} kHz: {share}"
        );
    }
}

#[test]
fn the_switch_makes_the_window_wider() {
    let narrow = receiver(&built_in()[2]);
    let width = |set: &Receiver| set.if_chain().bandwidth(Decibels::db(6.0)).unwrap();
    let before = width(&narrow);
    let wide = narrow.with_selectivity("wide").unwrap();
    assert!(width(&wide).to_hz() > 1.5 * before.to_hz());
    let said = wide.with_selectivity("medium").unwrap_err().to_string();
    assert_eq!(
        said,
        "selectivity: this set has narrow, wide (got \"medium\")"
    );
}

#[test]
fn a_load_takes_its_share_of_the_q() {
    // ωL·Q = 1/(ωC)·100 = 169 kΩ at 470 kHz and 200 pF; as much across it halves the Q.
    let mut profile = SetProfile::plain();
    let dynamic = 100.0 / (core::f64::consts::TAU * 470e3 * 200e-12);
    for transformer in &mut profile.if_transformers {
        transformer.coupling = 1e-6.into();
        for side in [&mut transformer.primary, &mut transformer.secondary] {
            side.load = Typed::Text([&display::exact(dynamic), " ohm"].concat());
        }
    }
    let loaded = receiver(&profile)
        .if_chain()
        .attenuation(khz(479.0))
        .to_db();
    // Hardly coupled, the four circuits are separate, each with Q 50.
    let separate = selectivity(khz(479.0), khz(470.0), 50.0, 4).to_db();
    // Loss across the circuit instead of in the coil: 20·log10(479/470) of each, twice over.
    assert!((loaded - separate).abs() < 0.7, "{loaded} {separate}");
}
