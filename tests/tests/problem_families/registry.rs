//! The registry only grows. The rows known here are those of every edition so far; a
//! new row is added at the end of both lists, and nothing above it changes.

use crate::families;

/// Number, id and revision of every row ever registered, in the order of registration.
const REGISTERED: [(u16, &str, u8); 51] = [
    (1, "capacitor-swing", 1),
    (2, "oscillator-from-dial", 1),
    (3, "image-of-a-station", 1),
    (4, "note-of-the-doubled-if", 1),
    (5, "what-is-still-live", 1),
    (6, "metres-and-kilohertz", 1),
    (7, "swing-of-the-oscillator", 1),
    (8, "what-stands-on-the-mark", 1),
    (9, "note-of-a-breakthrough", 1),
    (10, "what-the-ear-is-told", 1),
    (11, "where-the-if-stands", 1),
    (12, "read-the-symptom", 1),
    (13, "depth-from-the-wave", 1),
    (14, "room-of-a-station", 1),
    (15, "width-of-a-circuit", 1),
    (16, "decibels-and-times", 1),
    (17, "what-the-other-end-does", 1),
    (18, "shape-of-the-window", 1),
    (19, "how-closely-coupled", 1),
    (20, "pair-against-one", 1),
    (21, "window-of-the-set", 1),
    (22, "ghost-by-its-pace", 1),
    (23, "ghost-by-a-harmonic", 1),
    (24, "oscillator-off-its-place", 1),
    (25, "which-end-which-adjuster", 1),
    (26, "what-is-on-it", 1),
    (27, "who-does-it", 1),
    (28, "what-comes-next", 1),
    (29, "two-places-of-a-trimmer", 1),
    (30, "card-of-a-set", 1),
    (31, "when-it-answers-otherwise", 1),
    (32, "what-agc-does", 1),
    (33, "both-ends-of-a-dial", 1),
    (34, "how-deep-a-detector-follows", 1),
    (35, "decibels-through-a-set", 1),
    (36, "how-far-the-oscillator-swings", 1),
    (37, "when-the-image-leaves-the-band", 1),
    (38, "power-beside-the-carrier", 1),
    (39, "what-comes-out-of-the-mixer", 1),
    (40, "slipped-pointer", 1),
    (41, "how-high-the-circuit-goes", 1),
    (42, "what-the-circuits-are-set-to", 1),
    (43, "neighbour-through-the-cans", 1),
    (44, "note-of-an-image", 1),
    (45, "where-an-if-lies", 1),
    (46, "channel-of-an-old-mark", 1),
    (47, "heard-all-along-the-dial", 1),
    (48, "humps-of-a-pair", 1),
    (49, "bring-the-image-in", 1),
    (50, "q-for-a-width", 1),
    (51, "k-for-a-curve", 1),
];

#[test]
fn the_registry_only_grows() {
    let families = families();
    let rows: Vec<(u16, &str, u8)> = families
        .all()
        .map(|entry| {
            (
                entry.number,
                entry.family.id.as_str(),
                entry.family.revision,
            )
        })
        .collect();
    assert_eq!(rows, REGISTERED, "add new rows to the end of this list too");
}

#[test]
fn every_revision_is_found_by_its_number() {
    let families = families();
    for (number, id, revision) in REGISTERED {
        let found = families
            .numbered(number, revision)
            .expect("it is registered");
        assert_eq!(found.family.id, id);
    }
    assert!(families.numbered(1, 63).is_none());
    assert!(families.find("no-such-family").is_none());
}
