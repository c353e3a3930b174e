//! One typed frequency, read and held against what can be meant by it.
//!
//! A number without a unit takes the unit pressed beside its box. Where that makes no
//! sense for a receiver (1.2 kHz, 9545 MHz) it is refused and the unit that would is
//! offered: a confident answer to the wrong unit would be carried to the bench. A typed
//! unit is believed.

use crate::form::{Form, Unit};
use crate::problem::{Field, Offer, Problem};
use crate::words;
use alloc::borrow::ToOwned;
use alloc::string::String;
use superhet::quantities::bands::band_at;
use superhet::quantities::range::{RADIO, Range};
use superhet::units::parse::{self, Reading, Rule};
use superhet::units::{Frequency, Kind};

/// What a number without a unit can mean as a dial setting or an oscillator: from below
/// long wave to twice the highest broadcast band (common practice, no source).
const TUNED: Range = Range::new(100e3, 60e6);

/// Likewise as an IF (common practice, no source). In both ranges the most is less than a
/// thousand times the least, so that never both readings of a comma lie inside.
const INTERMEDIATE: Range = Range::new(50e3, 45e6);

/// What is said of a number without a unit outside them.
const DOUBTED: &str = " is no figure of such a set. If it is meant, type the unit too.";

/// A frequency as it was read.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Typed {
    /// The frequency.
    pub(crate) frequency: Frequency,
    /// Whether it was typed in metres.
    pub(crate) metres: bool,
    /// What was typed, with its unit: what is kept and linked to.
    pub(crate) text: String,
    /// "read as 1200 kHz", so that a slip is seen.
    pub(crate) says: String,
}

/// Reads a box with the unit button beside it.
pub(crate) fn read(field: Field, text: &str, beside: Unit) -> Result<Typed, Problem> {
    let reading = parse::reading(Kind::Frequency, text, Some(beside.symbol()))
        .map_err(|error| unreadable(field, error.rule(), &error.sentence()))?;
    let (value, turned) = comma_that_fits(field, &reading);
    let got = words::frequency(Frequency::hz(value));
    if !RADIO.contains(value) {
        let rule = " must lie between 1 kHz and 1000 MHz (got ";
        let says = [field.title(), rule, &got, ")."].concat();
        return Err(refused(field, says, other_unit(field, text)));
    }
    if !has_unit(text) && !range_of(field).contains(value) {
        let says = [field.title(), ": ", &got, DOUBTED].concat();
        return Err(refused(field, says, other_unit(field, text)));
    }
    Ok(Typed {
        frequency: Frequency::hz(value),
        metres: reading.from_wavelength,
        text: if turned {
            got.clone()
        } else {
            with_unit(text, beside)
        },
        says: said(&got, &reading, turned),
    })
}

/// Whether a number means something in a box with this unit pressed.
pub(crate) fn makes_sense(number: &str, beside: Unit) -> bool {
    read(Field::Dial, number, beside).is_ok()
}

/// The unit typed into a box, where a button stands for it.
pub(crate) fn typed_unit(text: &str) -> Option<Unit> {
    let reading = parse::reading(Kind::Frequency, text, None).ok()?;
    Unit::from_symbol(reading.unit)
}

/// A number typed with metres pressed that is also a station's place in kHz: "198 kHz?".
pub(crate) fn kilohertz_instead(form: &Form) -> Option<Offer> {
    if form.dial_unit != Unit::Metres || has_unit(&form.dial) {
        return None;
    }
    let unit = Unit::Kilohertz;
    let typed = parse::value(Kind::Frequency, &form.dial, Some(unit.symbol())).ok()?;
    band_at(Frequency::hz(typed), form.region)?;
    Some(in_unit(Field::Dial, &form.dial, unit))
}

const fn range_of(field: Field) -> Range {
    match field {
        Field::Dial | Field::Oscillator => TUNED,
        Field::Intermediate => INTERMEDIATE,
    }
}

/// The value, and whether its comma was turned from parting thousands into a decimal
/// one, since only so it lies where a receiver works.
fn comma_that_fits(field: Field, reading: &Reading) -> (f64, bool) {
    let range = range_of(field);
    match reading.other {
        Some(other) if range.contains(other) && !range.contains(reading.value) => (other, true),
        _ => (reading.value, false),
    }
}

fn unreadable(field: Field, rule: Rule, sentence: &str) -> Problem {
    let waiting = rule == Rule::Empty;
    let says = if waiting {
        nothing_typed(field).to_owned()
    } else {
        [field.title(), ": ", sentence, "."].concat()
    };
    Problem {
        waiting,
        ..refused(field, says, None)
    }
}

const fn refused(field: Field, says: String, offer: Option<Offer>) -> Problem {
    Problem {
        says,
        field,
        waiting: false,
        offer,
    }
}

const fn nothing_typed(field: Field) -> &'static str {
    match field {
        Field::Dial => "Type what the dial says.",
        Field::Oscillator => "Type the oscillator's frequency.",
        Field::Intermediate => "Choose the IF of your set.",
    }
}

/// The same digits in the unit in which they make sense: "1.2 MHz?".
fn other_unit(field: Field, text: &str) -> Option<Offer> {
    if has_unit(text) {
        return None;
    }
    let makes_sense = |unit: &Unit| {
        let reading = parse::reading(Kind::Frequency, text, Some(unit.symbol()));
        reading.is_ok_and(|reading| range_of(field).contains(comma_that_fits(field, &reading).0))
    };
    let units = [Unit::Kilohertz, Unit::Megahertz];
    let unit = units.into_iter().find(makes_sense)?;
    Some(in_unit(field, text, unit))
}

fn in_unit(field: Field, text: &str, unit: Unit) -> Offer {
    let text = with_unit(text, unit);
    Offer {
        says: [&text, "?"].concat(),
        field,
        text,
    }
}

/// How the box was read. A comma is the one mark with two meanings, so it is told.
fn said(got: &str, reading: &Reading, turned: bool) -> String {
    let comma = match reading.other {
        Some(_) if turned => ", with a decimal comma".to_owned(),
        Some(_) if got.ends_with("kHz") => [
            ", that is ",
            &words::megahertz(Frequency::hz(reading.value)),
        ]
        .concat(),
        _ => String::new(),
    };
    ["read as ", got, &comma].concat()
}

/// Whether a unit was typed behind the number.
fn has_unit(text: &str) -> bool {
    let last = text.trim().as_bytes().last();
    last.is_some_and(|last| !last.is_ascii_digit() && !matches!(last, b'.' | b','))
}

/// What was typed, with the unit beside the box where none was typed.
fn with_unit(text: &str, beside: Unit) -> String {
    let text = text.trim();
    if has_unit(text) {
        text.to_owned()
    } else {
        [text, " ", beside.symbol()].concat()
    }
}
