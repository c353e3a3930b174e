//! Judging one typed answer: read, right or not, and what to say.
//!
//! What is typed is tried in this order: the right answer as closely as asked, the
//! other reading of its comma, the family's mistakes, the right answer rounded, the
//! mistakes rounded, then the slips that any answer can show. A blank, nonsense or a
//! number without its unit is told so in a sentence and does not count as an attempt.

use alloc::{
    format,
    string::{String, ToString},
};

use crate::units::{
    Kind,
    parse::{self, Reading},
};

use super::{
    diagnosis::{self, Typed},
    problem::{Answer, Choice, NumberAnswer, Part, Problem},
    scope::{shown, shown_in},
};

/// How an answer was judged.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// Right, as closely as asked.
    Right,
    /// The right value, rounded further than asked or rounded on the way: it counts
    /// as right and the rounding is explained.
    RightButRounded,
    /// Read, and not right.
    Wrong,
    /// Not read: blank, nonsense, no unit. It does not count as an attempt.
    Unclear,
}

impl Verdict {
    /// Whether the answer counts as right.
    pub fn is_right(self) -> bool {
        matches!(self, Verdict::Right | Verdict::RightButRounded)
    }

    /// Whether it counts as an attempt.
    pub fn is_attempt(self) -> bool {
        self != Verdict::Unclear
    }
}

/// What is said about one typed answer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Marking {
    /// How it was judged.
    pub verdict: Verdict,
    /// How a number was read, `1.67 MHz`, in the unit that came with it; none when it could
    /// not be read.
    pub read_as: Option<String>,
    /// The mistake that fits, where one does.
    pub mistake: Option<NamedMistake>,
    /// What to say, whole sentences.
    pub says: String,
}

/// A mistake recognised in an answer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NamedMistake {
    /// Id in the family, or one of the slips that any answer can show
    /// (`thousand-times`, `decimal-point`, `rounded-away`, `other-unit`).
    pub id: String,
    /// Id of the misconception that it shows.
    pub misconception: Option<String>,
}

/// Judges what was typed for one part, or the id of what was chosen.
///
/// `unit_beside` is the unit of the pressed button; a unit that was typed wins.
pub fn mark(problem: &Problem, part: usize, typed: &str, unit_beside: Option<&str>) -> Marking {
    match problem.parts.get(part) {
        Some(part) => mark_part(part, typed, unit_beside),
        None => Marking::unclear("this problem has no such part".into()),
    }
}

fn mark_part(part: &Part, typed: &str, unit_beside: Option<&str>) -> Marking {
    match &part.answer {
        Answer::Number(answer) => mark_number(answer, typed, unit_beside),
        Answer::Choice(choices) => mark_choice(choices, typed),
    }
}

fn mark_choice(choices: &[Choice], chosen: &str) -> Marking {
    let Some(choice) = choices.iter().find(|choice| choice.id == chosen) else {
        return Marking::unclear("Pick one of the choices first.".into());
    };
    if choice.right {
        return Marking {
            verdict: Verdict::Right,
            read_as: None,
            mistake: None,
            says: "Right.".into(),
        };
    }
    Marking::mistaken(
        &choice.id,
        choice.misconception.as_ref(),
        choice.says.clone(),
    )
}

fn mark_number(answer: &NumberAnswer, typed: &str, unit_beside: Option<&str>) -> Marking {
    let text = without_times(answer.kind, typed);
    let reading = match parse::reading(answer.kind, text, unit_beside) {
        Ok(reading) => reading,
        Err(refused) => return diagnosis::unread(answer, text, &refused),
    };
    let typed = Typed {
        text,
        value: reading.value,
        unit: reading.unit,
    };
    let read = echo(answer.kind, &reading);
    if reading.value <= 0.0 && answer.kind != Kind::Decibels {
        return not_above_zero(answer.kind, reading.value, &read);
    }
    let marking = judged(answer, &typed, reading.other);
    Marking {
        read_as: Some(read),
        ..marking
    }
}

/// A number as it was read, in the unit that was typed or stood beside it.
fn echo(kind: Kind, reading: &Reading) -> String {
    let has_unit = !reading.unit.is_empty() && !reading.from_wavelength;
    let in_its_unit = has_unit.then(|| shown_in(kind, reading.value, reading.unit));
    let in_its_unit = in_its_unit.flatten();
    in_its_unit.unwrap_or_else(|| shown(kind, reading.value))
}

/// A difference has a size, and a sign that is not asked for; nothing else is below zero.
fn not_above_zero(kind: Kind, value: f64, read: &str) -> Marking {
    let why = if value < 0.0 {
        ". Only the size is asked: leave the sign off.".into()
    } else {
        format!(", and {} is above zero.", kind.with_article())
    };
    Marking::unclear(format!("That was read as {read}{why}"))
}

fn judged(answer: &NumberAnswer, typed: &Typed<'_>, other: Option<f64>) -> Marking {
    if answer.precision.agrees(typed.value, answer.value) {
        return right(answer);
    }
    if let Some(other) = other.filter(|&other| answer.precision.agrees(other, answer.value)) {
        return diagnosis::comma(answer.kind, typed, other);
    }
    diagnosis::named(answer, typed.value)
        .or_else(|| rounded(answer, typed.value))
        .or_else(|| diagnosis::named_rounded(answer, typed.value))
        .or_else(|| diagnosis::slip(answer, typed))
        .or_else(|| diagnosis::near(answer, typed.value))
        .unwrap_or_else(|| {
            Marking::wrong("That is not the answer, and none of the mistakes known here leads to it. Take it step by step.")
        })
}

fn right(answer: &NumberAnswer) -> Marking {
    Marking {
        verdict: Verdict::Right,
        read_as: None,
        mistake: None,
        says: format!("Right: {}{}.", answer.text, as_asked(answer)),
    }
}

/// Where the working comes to something finer: that the answer is given as closely as asked.
fn as_asked(answer: &NumberAnswer) -> String {
    if shown(answer.kind, answer.value) == answer.text {
        String::new()
    } else {
        format!(", {}", answer.precision_text)
    }
}

/// Right, but rounded further than asked, or rounded on the way.
fn rounded(answer: &NumberAnswer, typed: f64) -> Option<Marking> {
    let says = if answer.precision.rounded_too_far(typed, answer.value) {
        format!(
            "Right, but rounded further than was asked. Answer {}: {}.",
            answer.precision_text, answer.text
        )
    } else if answer.precision.rounded_on_the_way(typed, answer.value) {
        format!(
            "Right but for the last figure: something was rounded on the way. Keep every figure \
             until the end, and it comes to {}.",
            answer.text
        )
    } else {
        return None;
    };
    Some(Marking {
        verdict: Verdict::RightButRounded,
        read_as: None,
        mistake: None,
        says,
    })
}

/// A plain number may be typed as people say it: `9.3 times`, `9.3 x`, `9.3 to 1`.
fn without_times(kind: Kind, typed: &str) -> &str {
    let typed = typed.trim();
    if kind != Kind::Ratio {
        return typed;
    }
    [
        "times", "to 1", "to one", ": 1", ":1", "x", "X", "×", "fold",
    ]
    .iter()
    .find_map(|words| typed.strip_suffix(words))
    .map_or(typed, |number| number.trim_end_matches([' ', '-']))
}

impl Marking {
    pub(super) fn unclear(says: String) -> Marking {
        Marking {
            verdict: Verdict::Unclear,
            read_as: None,
            mistake: None,
            says,
        }
    }

    pub(super) fn wrong(says: &str) -> Marking {
        Marking {
            verdict: Verdict::Wrong,
            read_as: None,
            mistake: None,
            says: says.to_string(),
        }
    }

    pub(super) fn mistaken(id: &str, misconception: Option<&String>, says: String) -> Marking {
        let mistake = NamedMistake {
            id: id.into(),
            misconception: misconception.cloned(),
        };
        Marking {
            verdict: Verdict::Wrong,
            read_as: None,
            mistake: Some(mistake),
            says,
        }
    }
}

#[cfg(test)]
mod tests;
