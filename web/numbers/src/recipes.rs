//! The recipes of a lesson: its inputs, its units, and how each number came about.
//!
//! The site writes them beside the lesson as it draws it; the page reads them only for a
//! reader with a set of their own. Numbers and figures are in the order in which they stand
//! in the page.

use crate::{Expression, Need};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// How everything in a lesson that was worked out came about.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Recipes {
    /// The lesson's inputs as its author typed them.
    pub givens: BTreeMap<String, String>,
    /// Which of them belong to the set: input to field of the set, `side` or `region`.
    pub own: BTreeMap<String, String>,
    /// Inputs that a worked example lays over them.
    pub over: Vec<BTreeMap<String, String>>,
    /// The parts that follow the reader's set, or stay, as a whole.
    pub units: Vec<Unit>,
    /// Every marked number of the page.
    pub numbers: Vec<Number>,
    /// Every figure of the page.
    pub figures: Vec<Figure>,
}

/// A part that follows the reader's set, or stays, as a whole.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Unit {
    /// Its heading's name, `opening`, `figure-1`, `worked-1`, or a misconception's id.
    pub id: String,
    /// Whether it follows the set, and under which conditions.
    pub rule: Rule,
}

/// What a unit does with the reader's set.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Rule {
    /// It follows, where all of this holds.
    Follows(Vec<Need>),
    /// It stays, for this reason.
    Stays(String),
}

/// How a number came about.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Number {
    /// `calc:EXPRESSION`, `given:NAME`, or nothing where no set can change it.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub what: String,
    /// As its author typed it.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub typed: String,
    /// The unit that it stands in, where it is one's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub unit: Option<usize>,
    /// Which inputs are laid over the lesson's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub over: Option<usize>,
}

/// A figure, as its author called it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Figure {
    /// Its unit.
    pub unit: usize,
    /// Key and value; a value may be the name of an input.
    pub pairs: Vec<(String, String)>,
}

impl Recipes {
    /// Whether every place that is spoken of is there.
    #[must_use]
    pub fn is_sound(&self) -> bool {
        let unit = |unit: usize| unit < self.units.len();
        let number = |number: &Number| {
            number.unit.is_none_or(unit) && number.over.is_none_or(|over| over < self.over.len())
        };
        self.numbers.iter().all(number) && self.figures.iter().all(|figure| unit(figure.unit))
    }

    /// Whether an input follows from the reader's set.
    #[must_use]
    pub fn belongs_to_set(&self, given: &str) -> bool {
        self.follows_from(given, 0)
    }

    /// Inputs form no circle longer than there are inputs.
    fn follows_from(&self, given: &str, steps: usize) -> bool {
        if self.own.contains_key(given) {
            return true;
        }
        let Some(rest) = self
            .givens
            .get(given)
            .and_then(|raw| raw.strip_prefix("calc:"))
        else {
            return false;
        };
        let needs = |expression: Expression| {
            let names = expression.names_it_may_need();
            names.iter().any(|name| self.follows_from(name, steps + 1))
        };
        steps <= self.givens.len() && Expression::read(rest).is_ok_and(needs)
    }

    /// Whether a number can change with the reader's set.
    #[must_use]
    pub fn depends_on_set(&self, number: &Number) -> bool {
        match number.what.split_once(':') {
            Some(("given", name)) => self.belongs_to_set(name),
            Some(("calc", rest)) => Expression::read(rest).is_ok_and(|expression| {
                let names = expression.names_it_may_need();
                names.iter().any(|name| self.belongs_to_set(name))
            }),
            _ => false,
        }
    }

    /// Whether a figure can change with the reader's set.
    #[must_use]
    pub fn figure_depends(&self, figure: &Figure) -> bool {
        figure
            .pairs
            .iter()
            .any(|(key, value)| key != "move" && self.belongs_to_set(value))
    }
}

#[cfg(test)]
mod tests {
    use super::{Number, Recipes};
    use std::collections::BTreeMap;

    #[test]
    fn what_follows_from_the_set_is_found_through_other_inputs() {
        let texts = |pairs: &[(&str, &str)]| -> BTreeMap<String, String> {
            let pairs = pairs.iter();
            pairs
                .map(|(key, value)| ((*key).to_owned(), (*value).to_owned()))
                .collect()
        };
        let recipes = Recipes {
            givens: texts(&[
                ("dial", "909 kHz"),
                ("if", "470 kHz"),
                ("side", "above"),
                ("runs-at", "calc:oscillator"),
                ("round", "calc:sum?signal=round&oscillator=round"),
            ]),
            own: texts(&[("if", "if"), ("side", "side")]),
            ..Recipes::default()
        };
        let depends = |what: &str| {
            recipes.depends_on_set(&Number {
                what: what.to_owned(),
                typed: String::new(),
                unit: None,
                over: None,
            })
        };
        assert!(depends("given:if") && depends("calc:image") && depends("given:runs-at"));
        assert!(depends("calc:sum?signal=dial&oscillator=runs-at"));
        assert!(!depends("given:dial") && !depends("calc:wavelength?frequency=dial"));
        assert!(!depends("given:round") && !depends(""));
    }
}
