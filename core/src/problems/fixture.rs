//! A small family for the tests of this folder.

use alloc::string::String;

use super::{Family, Level, Problem, generate_with};

/// An oscillator above, asked to the nearest kilohertz; its second level asks a swing
/// to three figures, its third a choice after a number.
pub(super) const TEXT: &str = r#"
id = "trial-family"
revision = 1
title = "A family to try things on"
lesson = "some-lesson"

[[mistake]]
id = "subtracted"
answer = "station - if"
says = "You took the IF away."

[[mistake]]
id = "twice"
answer = "station + 2 * if"
says = "You added the IF twice."
misconception = "one-is-two"

[[mistake]]
id = "nothing-added"
answer = "station"
says = "That is the station."

[[mistake]]
id = "not-squared"
answer = "f-high / f-low"
says = "Multiply that by itself."

[[mistake]]
id = "halved"
answer = "capacitance-ratio / 2"
says = "You took half of it."

[[mistake]]
id = "upside-down"
answer = "1 / capacitance-ratio"
says = "It is upside down."

[[part]]
id = "runs-at"
ask = "Where does it run?"
asks = "oscillator?dial={station}&side=above"
precision = { nearest = "1 kHz" }
units = ["kHz", "MHz"]
hints = ["Think of the gap.", "Add the IF."]
steps = ["From {station}, one IF of {if} more is {answer}."]
mistakes = ["subtracted", "twice", "nothing-added"]

[[part]]
id = "swing"
ask = "How many times does it shrink?"
asks = "capacitance-ratio"
precision = { figures = 3 }
hints = ["Divide."]
steps = ["It shrinks {answer} times."]
mistakes = ["not-squared", "halved", "upside-down"]

[[part]]
id = "choice"
ask = "Is it high?"
hints = ["Look."]
steps = ["{answer}"]
shuffle = true

[[part.option]]
id = "high"
text = "High."
right-when = "station > 1 MHz"
says = "It is not high."

[[part.option]]
id = "low"
text = "Low."
right-when = "station <= 1 MHz"
says = "It is not low."
misconception = "all-is-low"

[[part.option]]
id = "neither"
text = "Neither."
says = "It must be one of the two."

[level-1]
scenes = ["A set is tuned to {station}, and its IF is {if}.", "An IF of {if} brings in {station}."]
parts = ["runs-at"]
[[level-1.given]]
name = "station"
kind = "frequency"
range = { from = 531, to = 1602, step = 9, unit = "kHz" }
[[level-1.given]]
name = "if"
kind = "frequency"
values = ["455 kHz", "470 kHz"]

[level-2]
scenes = ["A dial runs from {f-low} to {f-high}."]
parts = ["swing"]
[[level-2.given]]
name = "f-low"
kind = "frequency"
values = ["550 kHz"]
[[level-2.given]]
name = "f-high"
kind = "frequency"
values = ["1600 kHz"]

[level-3]
scenes = ["A set is tuned to {station}, and its IF is {if}."]
keep = ["station != 1.3 MHz"]
parts = ["runs-at", "choice"]
[[level-3.given]]
name = "station"
kind = "frequency"
range = { from = 7, to = 14, step = 1, places = 1, unit = "MHz" }
[[level-3.given]]
name = "if"
kind = "frequency"
values = ["470 kHz"]

[transfer]
scenes = ["Somewhere else a set is tuned to {station}, and its IF is {if}."]
parts = ["runs-at"]
[[transfer.given]]
name = "station"
kind = "frequency"
values = ["250 m", "300 m"]
[[transfer.given]]
name = "if"
kind = "frequency"
values = ["465 kHz"]
"#;

/// The family as written.
pub(super) fn family() -> Family {
    changed(&[])
}

/// The family with pieces of its text replaced; each must be there.
pub(super) fn changed(changes: &[(&str, &str)]) -> Family {
    let text = changes.iter().fold(String::from(TEXT), |text, (from, to)| {
        assert!(text.contains(from), "{from:?} is not in the trial family");
        text.replacen(from, to, 1)
    });
    toml::from_str(&text).expect("the trial family can be read")
}

/// The oscillator of a station on 1200 kHz with an IF of 470 kHz: 1670 kHz.
pub(super) fn oscillator() -> Problem {
    let fixed = [("station", "1200 kHz"), ("if", "470 kHz")];
    generate_with(&family(), Level::One, 0, &fixed).expect("it can be drawn")
}

/// The swing from 550 to 1600 kHz: 8.4628 times.
pub(super) fn swing() -> Problem {
    generate_with(&family(), Level::Two, 0, &[]).expect("it can be drawn")
}

/// An oscillator, then a choice, for a station on 1200 kHz.
pub(super) fn two_parts() -> Problem {
    generate_with(&family(), Level::Three, 0, &[("station", "1.2 MHz")]).expect("it can be drawn")
}
