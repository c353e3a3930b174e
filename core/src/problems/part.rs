//! Filling in one part of a problem: its question, answer, mistakes, hints and steps.

use alloc::{
    boxed::Box,
    format,
    string::{String, ToString},
    vec::Vec,
};

use crate::units::{Kind, parse};

use super::{
    draw::Draw,
    evaluate::{evaluate_number, holds},
    family::{Family, OptionForm, PartForm, PrecisionForm},
    fault::{
        Place::{self, Entry, Key},
        Trouble,
    },
    precision::Precision,
    problem::{Answer, Choice, Mistake, NumberAnswer, Part, SetOn},
    scope::{Scope, Value, shown},
    set_on::{self, Stops},
    text,
};

/// The part of this id, filled in.
pub(super) fn filled(
    family: &Family,
    id: &str,
    scope: &Scope,
    draw: &mut Draw,
) -> Result<Part, Trouble> {
    let place = family.parts.iter().position(|form| form.id == id);
    let place = place.ok_or_else(|| Trouble::faulty(format!("there is no part {id:?}")))?;
    let form = &family.parts[place];
    let at = [Key("part"), Entry(place)];
    Filling {
        family,
        form,
        at,
        scope: scope.clone(),
    }
    .part(draw)
}

/// A part on its way from the family to a problem.
struct Filling<'f> {
    family: &'f Family,
    form: &'f PartForm,
    at: [Place; 2],
    scope: Scope,
}

impl Filling<'_> {
    fn part(mut self, draw: &mut Draw) -> Result<Part, Trouble> {
        let form = self.form;
        let answer = match &form.asks {
            Some(asks) => Answer::Number(self.number(asks)?),
            None => Answer::Choice(self.choices(draw)?),
        };
        Ok(Part {
            id: form.id.clone(),
            ask: self.fill(&form.ask, &[Key("ask")])?,
            answer,
            hints: self.all(&form.hints, "hints")?,
            steps: self.all(&form.steps, "steps")?,
        })
    }

    fn number(&mut self, asks: &str) -> Result<NumberAnswer, Trouble> {
        let asked = evaluate_number(asks, &self.scope);
        let (kind, value) = asked.map_err(|trouble| trouble.at(&self.within(&[Key("asks")])))?;
        let precision = precision(self.form, kind)
            .map_err(|trouble| trouble.at(&self.within(&[Key("precision")])))?;
        let rounded = precision.round(value);
        if let Some(stops) = self.stops(kind)? {
            stops.lead_to(rounded, value, &precision)?;
        }
        self.scope.set(
            "answer",
            Value::Number {
                kind,
                value: rounded,
            },
        );
        let mut mistakes = Vec::with_capacity(self.form.mistakes.len());
        for (entry, id) in self.form.mistakes.iter().enumerate() {
            let place = [Key("mistakes"), Entry(entry)];
            let mistake = self.mistake(id, kind);
            mistakes.extend(mistake.map_err(|trouble| trouble.at(&self.within(&place)))?);
        }
        Ok(NumberAnswer {
            kind,
            value,
            text: shown(kind, rounded),
            precision_text: precision.words(),
            precision,
            unit_buttons: self.form.units.clone(),
            mistakes,
            set_on: self.set_on()?,
        })
    }

    /// The stops of the slider that the number is set with, where there is one.
    fn stops(&self, kind: Kind) -> Result<Option<Stops>, Trouble> {
        let form = self.form.set_on.as_ref();
        let stops = form.map(|form| Stops::read(form, kind)).transpose();
        stops.map_err(|trouble| trouble.at(&self.within(&[Key("set-on")])))
    }

    /// The figure on which the number is set, where there is one.
    fn set_on(&self) -> Result<Option<Box<SetOn>>, Trouble> {
        let form = self.form.set_on.as_ref();
        let filled = form.map(|form| set_on::filled(form, &self.scope, &self.at).map(Box::new));
        filled.transpose()
    }

    /// The mistake with its answer, where this draw has one: a wrong way may lead below
    /// zero or outside of a quantity's range, and then nobody can type it.
    fn mistake(&self, id: &str, kind: Kind) -> Result<Option<Mistake>, Trouble> {
        let place = self.family.mistakes.iter().position(|form| form.id == id);
        let place = place.ok_or_else(|| Trouble::faulty(format!("there is no mistake {id:?}")))?;
        let form = &self.family.mistakes[place];
        let at = |key| [Key("mistake"), Entry(place), Key(key)];
        let (found, value) = match evaluate_number(&form.answer, &self.scope) {
            Ok(number) => number,
            Err(Trouble::Refused(_)) => return Ok(None),
            Err(trouble) => return Err(trouble.at(&at("answer"))),
        };
        if found != kind {
            let says = format!(
                "it gives a {} where a {} is asked",
                found.name(),
                kind.name()
            );
            return Err(Trouble::faulty(says).at(&at("answer")));
        }
        if value <= 0.0 && kind != Kind::Decibels {
            return Ok(None);
        }
        let says = text::fill(&form.says, &self.scope);
        Ok(Some(Mistake {
            id: form.id.clone(),
            value,
            says: says.map_err(|says| Trouble::faulty(says).at(&at("says")))?,
            misconception: form.misconception.clone(),
        }))
    }

    fn choices(&mut self, draw: &mut Draw) -> Result<Vec<Choice>, Trouble> {
        let mut choices = Vec::with_capacity(self.form.options.len());
        for (entry, option) in self.form.options.iter().enumerate() {
            choices.push(self.choice(entry, option)?);
        }
        let right = choices.iter().filter(|choice| choice.right).count();
        match choices.iter().find(|choice| choice.right) {
            Some(choice) if right == 1 => {
                self.scope.set("answer", Value::Word(choice.text.clone()));
            }
            _ => {
                let says = format!("one choice must be right (got {right})");
                return Err(Trouble::faulty(says).at(&self.within(&[Key("option")])));
            }
        }
        if self.form.shuffle {
            draw.shuffle(&mut choices);
        }
        Ok(choices)
    }

    fn choice(&self, entry: usize, form: &OptionForm) -> Result<Choice, Trouble> {
        let at = |key| [Key("option"), Entry(entry), Key(key)];
        let right = match &form.right_when {
            Some(condition) => holds(condition, &self.scope)
                .map_err(|trouble| trouble.at(&self.within(&at("right-when"))))?,
            None => false,
        };
        Ok(Choice {
            id: form.id.clone(),
            text: self.fill(&form.text, &at("text"))?,
            right,
            says: self.fill(&form.says, &at("says"))?,
            misconception: form.misconception.clone(),
        })
    }

    fn all(&self, texts: &[String], key: &'static str) -> Result<Vec<String>, Trouble> {
        let filled = |(entry, text): (usize, &String)| self.fill(text, &[Key(key), Entry(entry)]);
        texts.iter().enumerate().map(filled).collect()
    }

    fn fill(&self, text: &str, place: &[Place]) -> Result<String, Trouble> {
        text::fill(text, &self.scope).map_err(|says| Trouble::faulty(says).at(&self.within(place)))
    }

    fn within(&self, place: &[Place]) -> Vec<Place> {
        [&self.at, place].concat()
    }
}

fn precision(form: &PartForm, kind: Kind) -> Result<Precision, Trouble> {
    match &form.precision {
        Some(PrecisionForm::Figures(figures)) if (1..=7).contains(figures) => {
            Ok(Precision::Figures(*figures))
        }
        Some(PrecisionForm::Figures(figures)) => Err(Trouble::faulty(format!(
            "figures run from 1 to 7 (got {figures})"
        ))),
        Some(PrecisionForm::Nearest(text)) => {
            let step = parse::value(kind, text, None);
            let step = step.map_err(|refused| Trouble::faulty(refused.to_string()))?;
            Ok(Precision::Nearest {
                step,
                text: text.clone(),
            })
        }
        None => Err(Trouble::faulty(
            "a number is asked and no precision is given",
        )),
    }
}
