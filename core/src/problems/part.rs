//! Filling in one part of a problem: its question, answer, mistakes, hints and steps.

use alloc::{
    format,
    string::{String, ToString},
    vec::Vec,
};

use crate::units::{Kind, display, parse};

use super::{
    draw::Draw,
    evaluate::{Trouble, evaluate_number, holds},
    family::{Family, MistakeForm, OptionForm, PartForm, PrecisionForm},
    precision::Precision,
    problem::{Answer, Choice, Mistake, NumberAnswer, Part},
    scope::{Scope, Value},
    text,
};

/// The part of this id, filled in.
pub(super) fn filled(
    family: &Family,
    id: &str,
    scope: &Scope,
    draw: &mut Draw,
) -> Result<Part, Trouble> {
    let form = find(&family.parts, id, |form| &form.id, "part")?;
    let mut scope = scope.clone();
    let answer = match &form.asks {
        Some(asks) => Answer::Number(number(family, form, asks, &mut scope)?),
        None => Answer::Choice(choices(form, &mut scope, draw)?),
    };
    Ok(Part {
        id: form.id.clone(),
        ask: fill(&form.ask, &scope)?,
        answer,
        hints: all(&form.hints, &scope)?,
        steps: all(&form.steps, &scope)?,
    })
}

fn number(
    family: &Family,
    form: &PartForm,
    asks: &str,
    scope: &mut Scope,
) -> Result<NumberAnswer, Trouble> {
    let (kind, value) = evaluate_number(asks, scope)?;
    let precision = precision(form, kind)?;
    let rounded = precision.round(value);
    let text = display::text(kind, rounded);
    scope.set(
        "answer",
        Value::Number {
            kind,
            value: rounded,
        },
    );
    let mut mistakes = Vec::new();
    for id in &form.mistakes {
        let mistake = find(&family.mistakes, id, |mistake| &mistake.id, "mistake")?;
        mistakes.extend(mistaken(mistake, kind, scope)?);
    }
    Ok(NumberAnswer {
        kind,
        value,
        text,
        precision_text: precision.words(),
        precision,
        unit_buttons: form.units.clone(),
        mistakes,
    })
}

/// The mistake with its answer, where this draw has one: a wrong way may lead below
/// zero or outside of a quantity's range, and then nobody can type it.
fn mistaken(form: &MistakeForm, kind: Kind, scope: &Scope) -> Result<Option<Mistake>, Trouble> {
    let (found, value) = match evaluate_number(&form.answer, scope) {
        Ok(number) => number,
        Err(Trouble::Refused(_)) => return Ok(None),
        Err(trouble) => return Err(trouble),
    };
    if found != kind {
        let (found, kind) = (found.name(), kind.name());
        let says = format!(
            "mistake {:?} gives a {found} where a {kind} is asked",
            form.id
        );
        return Err(Trouble::Faulty(says));
    }
    if value <= 0.0 && kind != Kind::Decibels {
        return Ok(None);
    }
    Ok(Some(Mistake {
        id: form.id.clone(),
        value,
        says: fill(&form.says, scope)?,
        misconception: form.misconception.clone(),
    }))
}

fn precision(form: &PartForm, kind: Kind) -> Result<Precision, Trouble> {
    match &form.precision {
        Some(PrecisionForm::Figures(figures)) if (1..=7).contains(figures) => {
            Ok(Precision::Figures(*figures))
        }
        Some(PrecisionForm::Figures(figures)) => {
            faulty(format!("figures run from 1 to 7 (got {figures})"))
        }
        Some(PrecisionForm::Nearest(text)) => {
            let step = parse::value(kind, text, None);
            let step = step.map_err(|refused| Trouble::Faulty(refused.to_string()))?;
            Ok(Precision::Nearest {
                step,
                text: text.clone(),
            })
        }
        None => faulty(format!(
            "part {:?} asks a number and has no precision",
            form.id
        )),
    }
}

fn choices(form: &PartForm, scope: &mut Scope, draw: &mut Draw) -> Result<Vec<Choice>, Trouble> {
    let mut choices = Vec::with_capacity(form.options.len());
    for option in &form.options {
        choices.push(choice(option, scope)?);
    }
    let mut right = choices.iter().filter(|choice| choice.right);
    let (Some(first), None) = (right.next(), right.next()) else {
        let count = choices.iter().filter(|choice| choice.right).count();
        return faulty(format!(
            "part {:?} must have one right choice (got {count})",
            form.id
        ));
    };
    scope.set("answer", Value::Word(first.text.clone()));
    if form.shuffle {
        draw.shuffle(&mut choices);
    }
    Ok(choices)
}

fn choice(form: &OptionForm, scope: &Scope) -> Result<Choice, Trouble> {
    let right = match &form.right_when {
        Some(condition) => holds(condition, scope)?,
        None => false,
    };
    Ok(Choice {
        id: form.id.clone(),
        text: fill(&form.text, scope)?,
        right,
        says: fill(&form.says, scope)?,
        misconception: form.misconception.clone(),
    })
}

fn all(texts: &[String], scope: &Scope) -> Result<Vec<String>, Trouble> {
    texts.iter().map(|text| fill(text, scope)).collect()
}

fn fill(text: &str, scope: &Scope) -> Result<String, Trouble> {
    text::fill(text, scope).map_err(Trouble::Faulty)
}

fn find<'f, T>(
    list: &'f [T],
    id: &str,
    id_of: impl Fn(&T) -> &String,
    what: &str,
) -> Result<&'f T, Trouble> {
    list.iter()
        .find(|item| id_of(item) == id)
        .ok_or_else(|| Trouble::Faulty(format!("there is no {what} {id:?}")))
}

fn faulty<T>(says: String) -> Result<T, Trouble> {
    Err(Trouble::Faulty(says))
}
