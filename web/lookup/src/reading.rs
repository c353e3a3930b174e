//! One typed frequency, read and held against the range that is accepted.

use crate::form::Unit;
use crate::problem::{Field, Offer, Problem};
use crate::words;
use alloc::borrow::ToOwned;
use alloc::string::String;
use superhet::quantities::range::RADIO;
use superhet::units::parse::{self, Rule};
use superhet::units::{Frequency, Kind};

/// A frequency as it was read.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Typed {
    /// The frequency.
    pub(crate) frequency: Frequency,
    /// Whether it was typed in metres.
    pub(crate) metres: bool,
    /// What was typed, with its unit: what is kept and linked to.
    pub(crate) text: String,
    /// What else a comma may have meant.
    pub(crate) offer: Option<Offer>,
}

/// Reads a box with the unit button beside it.
pub(crate) fn read(field: Field, text: &str, beside: Unit) -> Result<Typed, Problem> {
    let reading =
        parse::reading(Kind::Frequency, text, Some(beside.symbol())).map_err(|error| {
            let waiting = error.rule() == Rule::Empty;
            let says = if waiting {
                nothing_typed(field)
            } else {
                about(field, &error.sentence())
            };
            Problem {
                says,
                field,
                waiting,
                offer: None,
            }
        })?;
    let offer = reading
        .other
        .filter(|other| RADIO.contains(*other))
        .map(|other| other_comma(field, other));
    if !RADIO.contains(reading.value) {
        let rule = "must lie between 1 kHz and 1000 MHz";
        let got = words::frequency(Frequency::hz(reading.value));
        let says = [field.title(), " ", rule, " (got ", &got, ")."].concat();
        return Err(Problem {
            says,
            field,
            waiting: false,
            offer,
        });
    }
    Ok(Typed {
        frequency: Frequency::hz(reading.value),
        metres: reading.from_wavelength,
        text: with_unit(text, beside),
        offer,
    })
}

fn nothing_typed(field: Field) -> String {
    match field {
        Field::Dial => "Type what the dial says.",
        Field::Oscillator => "Type the oscillator's frequency.",
        Field::Intermediate => "Choose the IF of your set.",
    }
    .to_owned()
}

fn about(field: Field, sentence: &str) -> String {
    [field.title(), ": ", sentence, "."].concat()
}

fn other_comma(field: Field, hertz: f64) -> Offer {
    let text = words::frequency(Frequency::hz(hertz));
    Offer {
        says: ["Or did you mean ", &text, "? Use that"].concat(),
        field,
        text,
    }
}

/// What was typed, with the unit beside the box where none was typed.
fn with_unit(text: &str, beside: Unit) -> String {
    let text = text.trim();
    let has_unit =
        text.ends_with(|letter: char| !letter.is_ascii_digit() && !".,".contains(letter));
    if has_unit {
        text.to_owned()
    } else {
        [text, " ", beside.symbol()].concat()
    }
}
