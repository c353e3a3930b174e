//! Any two of dial, IF and oscillator give the third.

use crate::form::{Find, Form, Unit};
use crate::problem::{Field, Problem};
use crate::reading::{Typed, read};
use crate::words;
use alloc::string::String;
use superhet::quantities::conversion::{
    ConversionError, Side, dial, difference, image, oscillator,
};
use superhet::quantities::range::RADIO;
use superhet::units::Frequency;

/// The IF of the example set, until the reader has said theirs.
pub const EXAMPLE_INTERMEDIATE: Frequency = Frequency::khz(470.0);

/// A set in tune: everything the page shows follows from this.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Solved {
    pub(crate) dial: Frequency,
    pub(crate) intermediate: Frequency,
    pub(crate) oscillator: Frequency,
    pub(crate) image: Frequency,
    pub(crate) side: Side,
    /// The dial setting in metres, where it was typed so.
    pub(crate) typed_in_metres: bool,
    /// The dial setting as it is kept and linked to.
    pub(crate) dial_text: String,
    /// The IF likewise.
    pub(crate) intermediate_text: String,
    /// The oscillator likewise.
    pub(crate) oscillator_text: String,
}

/// The IF of the set and whether it is the reader's own.
pub(crate) fn intermediate(form: &Form) -> Result<(Typed, bool), Problem> {
    if form.intermediate.trim().is_empty() {
        let text = words::frequency(EXAMPLE_INTERMEDIATE);
        let typed = Typed {
            frequency: EXAMPLE_INTERMEDIATE,
            metres: false,
            says: ["empty: the example's ", &text].concat(),
            text,
        };
        return Ok((typed, false));
    }
    read(Field::Intermediate, &form.intermediate, Unit::Kilohertz).map(|typed| (typed, true))
}

/// Works out the third frequency, and the image.
pub(crate) fn solve(form: &Form) -> Result<Solved, Problem> {
    match form.find {
        Find::Oscillator => find_oscillator(form),
        Find::Dial => find_dial(form),
        Find::Intermediate => find_intermediate(form),
    }
}

fn find_oscillator(form: &Form) -> Result<Solved, Problem> {
    let station = read_dial(form)?;
    let (set, _) = intermediate(form)?;
    let found = oscillator(station.frequency, set.frequency, form.side).map_err(refused)?;
    in_tune(
        [&station, &set],
        station.frequency,
        set.frequency,
        found,
        form.side,
    )
}

fn find_dial(form: &Form) -> Result<Solved, Problem> {
    let running = read_oscillator(form)?;
    let (set, _) = intermediate(form)?;
    let found = dial(running.frequency, set.frequency, form.side).map_err(refused)?;
    in_range(Field::Dial, found)?;
    in_tune(
        [&running, &set],
        found,
        set.frequency,
        running.frequency,
        form.side,
    )
}

fn find_intermediate(form: &Form) -> Result<Solved, Problem> {
    let station = read_dial(form)?;
    let running = read_oscillator(form)?;
    let found = difference(station.frequency, running.frequency);
    if found.to_hz() == 0.0 {
        let value = words::frequency(station.frequency);
        let says = [
            "Dial and oscillator are the same frequency, so there is no IF (got ",
            &value,
            " twice).",
        ];
        return Err(Problem {
            says: says.concat(),
            field: Field::Oscillator,
            waiting: false,
            offer: None,
        });
    }
    in_range(Field::Intermediate, found)?;
    let side = if running.frequency > station.frequency {
        Side::Above
    } else {
        Side::Below
    };
    in_tune(
        [&station, &running],
        station.frequency,
        found,
        running.frequency,
        side,
    )
}

pub(crate) fn read_dial(form: &Form) -> Result<Typed, Problem> {
    read(Field::Dial, &form.dial, form.dial_unit)
}

pub(crate) fn read_oscillator(form: &Form) -> Result<Typed, Problem> {
    read(Field::Oscillator, &form.oscillator, form.oscillator_unit)
}

/// Adds the image and what was typed.
fn in_tune(
    typed: [&Typed; 2],
    dial: Frequency,
    intermediate: Frequency,
    oscillator: Frequency,
    side: Side,
) -> Result<Solved, Problem> {
    let as_typed = |frequency: Frequency| {
        let found = typed.iter().find(|typed| typed.frequency == frequency);
        found.map_or_else(|| words::frequency(frequency), |typed| typed.text.clone())
    };
    Ok(Solved {
        dial,
        intermediate,
        oscillator,
        image: image(dial, intermediate, side).map_err(refused)?,
        side,
        typed_in_metres: typed
            .iter()
            .any(|typed| typed.metres && typed.frequency == dial),
        dial_text: as_typed(dial),
        intermediate_text: as_typed(intermediate),
        oscillator_text: as_typed(oscillator),
    })
}

/// What was found must be usable as a setting of its own.
fn in_range(field: Field, found: Frequency) -> Result<(), Problem> {
    if RADIO.contains(found.to_hz()) {
        return Ok(());
    }
    let value = words::frequency(found);
    let says = [
        field.title(),
        " would be ",
        &value,
        ", outside 1 kHz to 1000 MHz.",
    ]
    .concat();
    Err(Problem {
        says,
        field: Field::Oscillator,
        waiting: false,
        offer: None,
    })
}

/// The core's refusal as a sentence of the page.
fn refused(error: ConversionError) -> Problem {
    let field = match error.parameter() {
        "oscillator" => Field::Oscillator,
        _ => Field::Dial,
    };
    let sentence = error.sentence();
    let mut says = String::with_capacity(sentence.len() + 1);
    let mut letters = sentence.chars();
    says.extend(letters.next().map(|first| first.to_ascii_uppercase()));
    says.push_str(letters.as_str());
    says.push('.');
    Problem {
        says,
        field,
        waiting: false,
        offer: None,
    }
}
