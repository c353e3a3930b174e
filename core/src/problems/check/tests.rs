use super::super::fixture::{changed, family};
use super::{Place::Entry, Place::Key, *};

#[test]
fn the_trial_family_is_sound() {
    assert_eq!(faults(&family()), []);
}

/// Each change breaks one rule; the fault stands where the change was made.
#[test]
fn every_rule_is_held_at_its_place() {
    let part = |entry, key| vec![Key("part"), Entry(entry), Key(key)];
    for (change, place, says) in [
        (
            ("trial-family", "Trial Family"),
            vec![Key("id")],
            "lower-case words",
        ),
        (
            ("revision = 1", "revision = 0"),
            vec![Key("revision")],
            "from 1 to 63",
        ),
        (
            ("A family to try things on", ""),
            vec![Key("title")],
            "title is empty",
        ),
        (
            ("\"subtracted\", ", ""),
            vec![Key("mistake"), Entry(0)],
            "no part names",
        ),
        (
            ("id = \"twice\"", "id = \"subtracted\""),
            vec![Key("mistake"), Entry(1)],
            "taken",
        ),
        (
            ("Where does it run?", "Where in 7 bands?"),
            part(0, "ask"),
            "must stand in a slot",
        ),
        (
            ("Where does it run?", "Why {if?"),
            part(0, "ask"),
            "not closed",
        ),
        (
            ("Think of the gap.", "Think of a {if} gap."),
            part(0, "hints"),
            "article",
        ),
        (
            ("hints = [\"Divide.\"]", "hints = []"),
            vec![Key("part"), Entry(1)],
            "no hints",
        ),
        (
            ("precision = { figures = 3 }", ""),
            vec![Key("part"), Entry(1)],
            "either asks",
        ),
        (
            ("parts = [\"swing\"]", "parts = []"),
            vec![Key("part"), Entry(1)],
            "no level asks",
        ),
        (
            (
                "[level-2]",
                "[level-1.own-set]\nscene = \"Yours: {if}.\"\ngivens = [\"station\"]\n[level-2]",
            ),
            vec![Key("level-1"), Key("own-set")],
            "a set's value is one of if, side",
        ),
        (
            (
                "[level-2]",
                "[level-1.own-set]\nscene = \"Yours.\"\ngivens = [\"side\"]\n[level-2]",
            ),
            vec![Key("level-1"), Key("own-set")],
            "there is no given \"side\"",
        ),
        (
            (
                "[level-2]",
                "[level-1.own-set]\nscene = \"Yours.\"\ngivens = []\n[level-2]",
            ),
            vec![Key("level-1"), Key("own-set")],
            "nothing in it belongs",
        ),
        (
            ("parts = [\"swing\"]", "parts = []"),
            vec![Key("level-2"), Key("parts")],
            "needs",
        ),
        (
            ("to = 1602", "to = 1603"),
            vec![Key("level-1"), Key("given"), Entry(0)],
            "whole steps",
        ),
        (
            ("470 kHz\"]\n\n[level-2", "470\"]\n\n[level-2"),
            level_given("level-1", 1),
            "a unit",
        ),
        (
            ("values = [\"250 m\", \"300 m\"]", ""),
            level_given("transfer", 0),
            "either values",
        ),
        (
            ("Where does it run?", "Some lesson: where does it run?"),
            vec![Key("level-1")],
            "names what is asked",
        ),
        (
            ("Where does it run?", "The oscillator?"),
            vec![Key("level-1")],
            "names what is asked",
        ),
        (
            ("asks = \"capacitance-ratio\"", "asks = \"wobble\""),
            part(1, "asks"),
            "wobble",
        ),
        (
            ("IF is {if}.\", \"An", "IF is {if} .\", \"An"),
            vec![Key("level-1")],
            "reads badly",
        ),
        (
            ("station - if\"", "station - 9 MHz\""),
            part(0, "mistakes"),
            "in any trial draw",
        ),
    ] {
        let found = faults(&changed(&[change]));
        let here = |fault: &&Fault| fault.place.starts_with(&place) && fault.says.contains(says);
        assert!(
            found.iter().any(|fault| here(&fault)),
            "{change:?}: {found:#?}"
        );
    }
}

fn level_given(level: &'static str, entry: usize) -> Vec<Place> {
    vec![Key(level), Key("given"), Entry(entry)]
}
