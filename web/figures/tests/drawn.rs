//! The drawings as they were last looked at.
//!
//! A drawing that comes out otherwise fails here. Look at it, then write it anew with
//! `FIGURES_WRITE=1 cargo test -p figures --test drawn`.

use figures::{Input, svg, view};
use std::fs;
use std::path::PathBuf;

/// The files, and what is drawn in each.
const DRAWN: [(&str, &str, &str); 22] = [
    (
        "frequency-line",
        "frequency-line",
        "dial=1200kHz&if=470kHz&side=above",
    ),
    (
        "frequency-line-below",
        "frequency-line",
        "dial=1500kHz&if=455kHz&side=below",
    ),
    (
        "frequency-line-by-the-sum",
        "frequency-line",
        "dial=700kHz&if=470kHz&side=below",
    ),
    (
        "frequency-line-without-image",
        "frequency-line",
        "dial=1089kHz&if=470kHz&side=above&image=hidden",
    ),
    (
        "block-diagram",
        "block-diagram",
        "dial=693kHz&if=470kHz&side=above",
    ),
    ("agc", "agc", ""),
    ("am-wave", "am-wave", ""),
    ("tracking", "tracking", ""),
    ("band-chart", "band-chart", ""),
    ("band-chart-below", "band-chart", "side=below&if=110kHz"),
    ("band-chart-tuned", "band-chart", "dial=900kHz&if=470kHz"),
    (
        "band-chart-without-image",
        "band-chart",
        "dial=900kHz&if=600kHz&image=hidden&move=if",
    ),
    ("spurious-map", "spurious-map", ""),
    (
        "spurious-map-sender",
        "spurious-map",
        "dial=648kHz&n=3&sender=1584kHz",
    ),
    (
        "spurious-map-below",
        "spurious-map",
        "dial=700kHz&side=below&order=4&n=4&axis=4MHz",
    ),
    ("resonance", "resonance", ""),
    ("coupled-pair", "coupled-pair", "k=0.02"),
    ("if-chain", "if-chain", ""),
    ("if-chain-lopsided", "if-chain", "detune=+4kHz"),
    (
        "resonance-in-decibels",
        "resonance",
        "f0=1200kHz&q=60&circuits=2&l=175uH&scale=decibels",
    ),
    ("detector", "detector", "depth=30%"),
    ("detector-clipping", "detector", "c=470pF"),
];

/// A line for each element, so that a difference is seen.
fn lines(text: &str) -> String {
    text.replace("><", ">\n<") + "\n"
}

#[test]
fn drawings_are_as_they_were_last_looked_at() {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/drawn");
    let writes = std::env::var_os("FIGURES_WRITE").is_some();
    for (file, name, query) in DRAWN {
        let drawn = lines(&svg(&view(name, &Input::parse(query).unwrap()).unwrap()));
        let path = folder.join(format!("{file}.svg"));
        if writes {
            fs::write(&path, &drawn).unwrap();
        }
        let kept = fs::read_to_string(&path).unwrap_or_default();
        let same = drawn
            .lines()
            .zip(kept.lines())
            .find(|(new, old)| new != old);
        assert!(drawn == kept, "{file}.svg differs: {same:?}");
    }
}
