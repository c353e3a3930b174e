//! Profiles as text: what is read, refused and written back.

use std::string::{String, ToString};
use std::vec::Vec;

use super::{List, PROFILES, built_in};
use crate::receiver::{CircuitProfile, SetProfile, Typed};

#[test]
fn every_part_of_the_practice_set_can_be_turned() {
    let mut profile = built_in().remove(0);
    let parts = profile.parts();
    // Four windings; two bands with coil, padder, trimmer and aerial coil and trimmer.
    assert_eq!(parts.len(), 14);
    for part in parts {
        let was = profile.part(part).unwrap();
        let value = was * 1.0123 + 1e-15;
        assert!(profile.set_part(part, value), "{}", part.name());
        assert_eq!(profile.part(part), Some(value), "{}", part.name());
    }
    assert_eq!(profile.faults(), []);
}

fn said(profile: &SetProfile) -> Vec<String> {
    profile.faults().iter().map(ToString::to_string).collect()
}

#[test]
fn all_faults_are_named_with_field_rule_and_value() {
    let mut profile = built_in().remove(0);
    profile.intermediate = "50 kHz".into();
    profile.gang.as_mut().unwrap().maximum = "100 pF".into();
    profile.bands[0].high = "140 kHz".into();
    profile.bands[1].oscillator.as_mut().unwrap().padder = "2 mF".into();
    profile.bands[1].aerial_circuits = 1.5.into();
    profile.if_transformers[1].primary.inductance = "1 mH".into();
    profile.if_transformers[0].secondary.q = Typed::Absent;
    profile.detector.as_mut().unwrap().audio_load = "1 MΩ".into();
    profile.agc.as_mut().unwrap().loop_gain = (-1.0).into();
    let said = said(&profile);
    let expected = [
        "if: this is from 100 kHz to 2000 kHz (got 50 kHz)",
        "band 1, high: this is above the lowest mark, 150 kHz (got 140 kHz)",
        "band 2, low: 525 kHz to 1605 kHz takes a gang that shrinks 9.35 times (got 8.33 times)",
        "band 2, aerial-circuits: this must be a whole number, such as 2 (got \"1.5\")",
        "if-transformer 1, secondary, q: this is missing; it is from 5 to 1000",
        "if-transformer 2, primary: one of capacitance and inductance is given; the other \
         follows (got both)",
        "detector, audio-load: this is at most the load, 220 kΩ (got 1 MΩ)",
        "agc, loop-gain: this is from 0 to 1000000 (got -1)",
    ];
    for line in expected {
        assert!(said.iter().any(|one| one == line), "{line}: {said:#?}");
    }
    assert!(
        said.iter()
            .any(|one| one.starts_with("band 2, oscillator, padder: ")),
        "{said:#?}"
    );
    assert_eq!(said.len(), expected.len() + 1, "{said:#?}");
}

#[test]
fn what_cannot_work_is_explained() {
    let mut profile = built_in().remove(2);
    profile.side = "below".into();
    let lines = said(&profile);
    assert!(
        lines
            .iter()
            .any(|line| line.contains("no padder and trimmer make an oscillator"))
    );
    assert!(
        lines
            .iter()
            .any(|line| line.starts_with("band 1, low: an oscillator below"))
    );
    let mut profile = SetProfile::plain();
    profile.bands[0].aerial = Some(CircuitProfile::default());
    assert_eq!(
        said(&profile),
        ["band 1, aerial: a circuit with parts needs a gang (got none)"]
    );
}

#[test]
fn a_profile_comes_back_from_text_as_it_was() {
    for profile in built_in() {
        let value = toml::Value::try_from(&profile);
        let back: SetProfile = value.unwrap().try_into().unwrap();
        assert_eq!(back, profile);
    }
}

#[test]
fn unknown_keys_are_refused_at_every_depth() {
    for (key, slip) in [
        ("\nside =", "\nsides ="),
        ("\nminimum =", "\nminimun ="),
        ("\npick-up =", "\npickup ="),
        ("\npadder =", "\npader ="),
        ("\nstraight-gain =", "\nstrait-gain ="),
        ("\ncoupling =", "\nk ="),
        ("{ capacitance =", "{ capacity ="),
        ("\naudio-load =", "\nac-load ="),
        ("\nloop-gain =", "\ngain ="),
        ("\ncouplings =", "\nks ="),
    ] {
        assert!(PROFILES.contains(key), "{key}");
        let broken = PROFILES.replacen(key, slip, 1);
        let said = toml::from_str::<List>(&broken).err().unwrap().to_string();
        assert!(said.contains("unknown field"), "{slip}: {said}");
    }
}
