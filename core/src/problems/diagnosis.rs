//! Naming what went wrong: the family's own mistakes, and slips that any answer can
//! show.

use alloc::{
    format,
    string::{String, ToString},
};

use crate::units::{
    Kind,
    parse::{self, ParseError, Rule},
};

use super::{
    marking::Marking,
    precision::close,
    problem::{Mistake, NumberAnswer},
    scope::shown,
};

/// A typed number as it was read.
pub(super) struct Typed<'t> {
    /// What was typed.
    pub(super) text: &'t str,
    /// In the SI base unit.
    pub(super) value: f64,
    /// The unit that it was read in; empty for a plain number.
    pub(super) unit: &'static str,
}

/// The family's mistake whose answer this is, the nearest where several fit.
pub(super) fn named(answer: &NumberAnswer, typed: f64) -> Option<Marking> {
    let fits = |mistake: &&Mistake| answer.precision.agrees(typed, mistake.value);
    let nearest = answer.mistakes.iter().filter(fits).min_by(|one, other| {
        libm::fabs(one.value - typed).total_cmp(&libm::fabs(other.value - typed))
    });
    nearest.map(told)
}

/// The only mistake whose answer this is, rounded further than asked; none where it is
/// the right answer that was rounded away.
pub(super) fn named_rounded(answer: &NumberAnswer, typed: f64) -> Option<Marking> {
    if answer.set_on.is_some() || answer.precision.rounded_away(typed, answer.value) {
        return None;
    }
    let mut fitting = answer
        .mistakes
        .iter()
        .filter(|mistake| answer.precision.rounded_once(typed, mistake.value));
    match (fitting.next(), fitting.next()) {
        (Some(mistake), None) => Some(told(mistake)),
        _ => None,
    }
}

fn told(mistake: &Mistake) -> Marking {
    Marking::mistaken(
        &mistake.id,
        mistake.misconception.as_ref(),
        mistake.says.clone(),
    )
}

/// A slip that any answer can show.
pub(super) fn slip(answer: &NumberAnswer, typed: &Typed<'_>) -> Option<Marking> {
    thousand_times(answer, typed)
        .or_else(|| rounded_away(answer, typed.value))
        .or_else(|| decimal_point(answer, typed.value))
        .or_else(|| other_unit(answer, typed))
}

/// A stop or two beside the right one, where the answer is set on a figure: the hand or a
/// rounding, hardly the way.
pub(super) fn near(answer: &NumberAnswer, set: f64) -> Option<Marking> {
    let stop = answer.precision.round(answer.value);
    let away = libm::fabs(set - stop) / answer.precision.last_place(stop);
    (answer.set_on.is_some() && away < 2.5).then(|| {
        Marking::wrong(
            "That is very near. Work the last figures out once more, and set it to the very stop.",
        )
    })
}

/// kHz for MHz, pF for nF: the digits are right and the unit is not.
fn thousand_times(answer: &NumberAnswer, typed: &Typed<'_>) -> Option<Marking> {
    if typed.unit.is_empty() {
        return None;
    }
    let factor = [1e3, 1e-3, 1e6, 1e-6, 1e9, 1e-9]
        .into_iter()
        .find(|factor| answer.precision.agrees(typed.value * factor, answer.value))?;
    let size = if factor < 1.0 {
        "too large"
    } else {
        "too small"
    };
    let says = format!(
        "The digits are right, but in {} that is far {size}. Look at the unit again.",
        typed.unit
    );
    Some(Marking::mistaken("thousand-times", None, says))
}

fn decimal_point(answer: &NumberAnswer, typed: f64) -> Option<Marking> {
    [10.0, 0.1, 100.0, 0.01, 1000.0, 0.001]
        .into_iter()
        .any(|factor| answer.precision.agrees(typed * factor, answer.value))
        .then(|| {
            let says = "The digits are right, but the decimal point has slipped. Ask yourself \
                        roughly how large the answer must be.";
            Marking::mistaken("decimal-point", None, says.into())
        })
}

/// The right answer, rounded until it could be many others.
fn rounded_away(answer: &NumberAnswer, typed: f64) -> Option<Marking> {
    let away = answer.precision.rounded_away(typed, answer.value);
    // A slider's stops are all as fine as asked: another one is another answer.
    (away && answer.set_on.is_none()).then(|| {
        let says = format!(
            "That is rounded so far that it says too little. Answer {}.",
            answer.precision_text
        );
        Marking::mistaken("rounded-away", None, says)
    })
}

/// The right number with a unit of another sort, as far as it could be read: metres
/// typed where a frequency is asked.
fn other_unit(answer: &NumberAnswer, typed: &Typed<'_>) -> Option<Marking> {
    right_number(answer, typed.text).then(|| {
        let says = format!(
            "The number is right, but its unit is not: it cannot be in {}.",
            typed.unit
        );
        Marking::mistaken("other-unit", None, says)
    })
}

/// Whether the digits alone, with one of the units offered or none, are right.
fn right_number(answer: &NumberAnswer, text: &str) -> bool {
    let end = text.trim_end_matches(|c: char| !c.is_ascii_digit()).len();
    let digits = &text[..end];
    let plain = answer.unit_buttons.is_empty().then_some("");
    answer
        .unit_buttons
        .iter()
        .map(String::as_str)
        .chain(plain)
        .any(|unit| {
            parse::value(answer.kind, digits, Some(unit))
                .is_ok_and(|value| answer.precision.agrees(value, answer.value))
        })
}

/// The grouping comma that would be right as a decimal comma. Nobody is marked wrong
/// for the habit of a country: the question is put back.
pub(super) fn comma(kind: Kind, typed: &Typed<'_>, other: f64) -> Marking {
    debug_assert!(
        !close(typed.value, other),
        "two readings of a comma differ a thousandfold"
    );
    Marking::unclear(format!(
        "That was read as {}. If the comma was meant as a decimal point, type {}.",
        shown(kind, typed.value),
        shown(kind, other)
    ))
}

/// What could not be read: nothing, nonsense, no unit, or a unit of another sort.
pub(super) fn unread(answer: &NumberAnswer, text: &str, refused: &ParseError) -> Marking {
    match refused.rule() {
        Rule::UnknownUnit => {}
        Rule::Empty if answer.set_on.is_some() => {
            return Marking::unclear("Move the slider first.".into());
        }
        Rule::Empty => return Marking::unclear("Type an answer first.".into()),
        Rule::MissingUnit if !answer.unit_buttons.is_empty() => {
            let units = answer.unit_buttons.join(" or ");
            return Marking::unclear(format!(
                "A number alone does not say enough: is it {units}?"
            ));
        }
        _ => return Marking::unclear(sentence(refused)),
    }
    match other_kind(answer.kind, text) {
        Some(kind) if right_number(answer, text) => Marking::mistaken(
            "other-unit",
            None,
            format!(
                "The number is right, but you typed {} and {}.",
                kind.with_article(),
                asked(answer)
            ),
        ),
        Some(kind) => Marking::unclear(format!(
            "You typed {}, and {}.",
            kind.with_article(),
            asked(answer)
        )),
        None => Marking::unclear(sentence(refused)),
    }
}

fn asked(answer: &NumberAnswer) -> String {
    format!("{} is asked", answer.kind.with_article())
}

/// The kind whose unit was typed instead.
fn other_kind(asked: Kind, text: &str) -> Option<Kind> {
    const KINDS: [Kind; 10] = [
        Kind::Frequency,
        Kind::Inductance,
        Kind::Capacitance,
        Kind::Resistance,
        Kind::Voltage,
        Kind::Power,
        Kind::Conductance,
        Kind::Duration,
        Kind::Decibels,
        Kind::Depth,
    ];
    KINDS
        .into_iter()
        .find(|&kind| kind != asked && parse::value(kind, text, None).is_ok())
}

fn sentence(refused: &ParseError) -> String {
    let says = refused.to_string();
    let mut letters = says.chars();
    match letters.next() {
        Some(first) => format!("{}{}.", first.to_ascii_uppercase(), letters.as_str()),
        None => says,
    }
}
