//! The inputs of a lesson's numbers, and the numbers that follow from them.

use crate::Expression;
use std::collections::{BTreeMap, BTreeSet};
use superhet::catalogue::{Answer, Kind, catalogue, evaluate_with, find};
use superhet::units::parse;

/// The inputs of a lesson, or of one example, each with its value.
#[derive(Clone, Debug, Default)]
pub struct Givens {
    known: BTreeMap<String, Given>,
}

/// One input.
#[derive(Clone, Debug, PartialEq)]
pub struct Given {
    /// As an expression takes it: `1200 kHz`, `above`.
    pub typed: String,
    /// What it is a number of.
    pub kind: Kind,
    /// Its value in the SI unit; 0 for a choice.
    pub value: f64,
    /// Whether it follows from other inputs.
    pub worked_out: bool,
}

/// A number worked out, with everything it was worked out from.
#[derive(Clone, Debug)]
pub struct WorkedOut {
    /// The answer.
    pub answer: Answer,
    /// The whole expression: `oscillator?dial=1200kHz&if=470kHz&side=above`.
    pub expression: String,
}

/// Kinds whose unit says what a number is a number of. A wavelength stands before the
/// frequencies, which may be typed in metres too.
const KINDS_WITH_UNIT: [Kind; 11] = [
    Kind::Wavelength,
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

/// An input that is itself worked out is written `calc:` and an expression.
const WORKED_OUT: &str = "calc:";

impl Givens {
    /// Works out the values of inputs; those that have none come back with the reason.
    #[must_use]
    pub fn read(raw: &BTreeMap<String, String>) -> (Self, Vec<(String, String)>) {
        let mut givens = Self::default();
        let mut refused = Vec::new();
        for name in raw.keys() {
            let mut open = BTreeSet::new();
            if let Err(message) = givens.settle(name, raw, &mut open) {
                refused.push((name.clone(), message));
            }
        }
        (givens, refused)
    }

    /// The input of that name.
    #[must_use]
    pub fn get(&self, name: &str) -> Option<&Given> {
        self.known.get(name)
    }

    /// The value of a parameter of an expression: as typed in it, or from the inputs. None
    /// where its quantity takes no such parameter, or nobody says it.
    #[must_use]
    pub fn parameter(&self, expression: &Expression, name: &str) -> Option<f64> {
        let parameter = find(&expression.quantity)?.parameter(name)?;
        let typed = expression.typed.iter().find(|(key, _)| key == name);
        let text = typed.map_or(name, |(_, value)| value);
        match self.known.get(text) {
            Some(given) => Some(given.value),
            None => parse::value(parameter.kind, text, None).ok(),
        }
    }

    /// Works out one input, and before it those that it is worked out from.
    fn settle(
        &mut self,
        name: &str,
        raw: &BTreeMap<String, String>,
        open: &mut BTreeSet<String>,
    ) -> Result<(), String> {
        let Some(text) = raw.get(name).filter(|_| !self.known.contains_key(name)) else {
            return Ok(());
        };
        let given = match text.strip_prefix(WORKED_OUT) {
            None => Given::read(name, text)?,
            Some(rest) => {
                if !open.insert(name.to_owned()) {
                    return Err(format!("\"{name}\" is worked out from itself"));
                }
                let expression = Expression::read(rest)?;
                for needed in expression.names_it_may_need() {
                    self.settle(&needed, raw, open)?;
                }
                Given::worked_out(&self.work_out(&expression)?.answer)
            }
        };
        self.known.insert(name.to_owned(), given);
        Ok(())
    }

    /// Works out an expression; parameters left out come from the inputs.
    ///
    /// # Errors
    /// As the catalogue refuses it, in a sentence.
    pub fn work_out(&self, expression: &Expression) -> Result<WorkedOut, String> {
        let name = &expression.quantity;
        let mut pairs: Vec<(&str, &str)> = Vec::new();
        for (key, value) in &expression.typed {
            let value = self.known.get(value).map_or(value, |given| &given.typed);
            pairs.push((key, value));
        }
        for parameter in find(name).map_or(&[][..], |entry| entry.parameters) {
            let typed = pairs.iter().any(|(key, _)| *key == parameter.name);
            if let Some(given) = self.known.get(parameter.name).filter(|_| !typed) {
                pairs.push((parameter.name, &given.typed));
            }
        }
        match evaluate_with(name, &pairs) {
            Ok(answer) => Ok(WorkedOut {
                expression: written(name, &pairs),
                answer,
            }),
            Err(refusal) => Err(refusal.sentence().to_owned()),
        }
    }
}

/// An expression in the order of the quantity's parameters, without spaces.
fn written(name: &str, pairs: &[(&str, &str)]) -> String {
    let order = find(name).map_or(&[][..], |entry| entry.parameters);
    let ordered = order
        .iter()
        .filter_map(|parameter| pairs.iter().find(|(key, _)| *key == parameter.name));
    let pairs: Vec<String> = ordered
        .map(|(key, value)| format!("{key}={}", value.replace(char::is_whitespace, "")))
        .collect();
    format!("{name}?{}", pairs.join("&"))
}

impl Given {
    /// Reads an input. One named like a parameter is of that parameter's kind, for any
    /// other the unit says it.
    ///
    /// # Errors
    /// Why it is none, in a sentence.
    pub fn read(name: &str, text: &str) -> Result<Self, String> {
        let mut reason = None;
        let mut named = false;
        for entry in catalogue() {
            let Some(parameter) = entry.parameter(name) else {
                continue;
            };
            named = true;
            match Self::of_kind(parameter.kind, parameter.choices, text) {
                Ok(given) => return Ok(given),
                Err(message) => reason = reason.or(Some(message)),
            }
        }
        if !named {
            return Self::with_unit(text).ok_or_else(|| {
                format!("\"{name}\" is no parameter of the catalogue, so it needs a number with a unit (got \"{text}\")")
            });
        }
        Err(reason.unwrap_or_default())
    }

    /// Reads a number whose unit says what it is a number of.
    pub fn with_unit(text: &str) -> Option<Self> {
        KINDS_WITH_UNIT
            .iter()
            .find_map(|kind| Self::of_kind(*kind, &[], text).ok())
    }

    /// Reads an input of a kind.
    ///
    /// # Errors
    /// Why it is none, in a sentence.
    pub fn of_kind(kind: Kind, choices: &[&str], text: &str) -> Result<Self, String> {
        let value = if kind != Kind::Choice {
            parse::value(kind, text, None).map_err(|error| error.sentence())?
        } else if choices.contains(&text) {
            0.0
        } else {
            return Err(format!("this is {} (got \"{text}\")", choices.join(" or ")));
        };
        Ok(Self {
            typed: text.to_owned(),
            kind,
            value,
            worked_out: false,
        })
    }

    fn worked_out(answer: &Answer) -> Self {
        Self {
            typed: format!("{}{}", answer.value, answer.unit),
            kind: answer.kind,
            value: answer.value,
            worked_out: true,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Given, Givens, Kind};
    use crate::Expression;
    use std::collections::BTreeMap;

    fn givens(pairs: &[(&str, &str)]) -> (Givens, Vec<(String, String)>) {
        let raw: BTreeMap<String, String> = pairs
            .iter()
            .map(|(key, value)| ((*key).to_owned(), (*value).to_owned()))
            .collect();
        Givens::read(&raw)
    }

    fn worked_out(pairs: &[(&str, &str)], expression: &str) -> Result<(String, String), String> {
        let expression = Expression::read(expression)?;
        givens(pairs)
            .0
            .work_out(&expression)
            .map(|found| (found.answer.text, found.expression))
    }

    const SET: [(&str, &str); 4] = [
        ("dial", "1200 kHz"),
        ("if", "470 kHz"),
        ("side", "above"),
        ("second", "909 kHz"),
    ];

    #[test]
    fn parameters_come_from_the_link_then_from_the_inputs() {
        let whole = |text: &str, expression: &str| Ok((text.to_owned(), expression.to_owned()));
        assert_eq!(
            worked_out(&SET, "oscillator"),
            whole("1670 kHz", "oscillator?dial=1200kHz&if=470kHz&side=above")
        );
        assert_eq!(
            worked_out(&SET, "oscillator?side=below&dial=second"),
            whole("439 kHz", "oscillator?dial=909kHz&if=470kHz&side=below")
        );
        assert_eq!(
            worked_out(&SET[..2], "oscillator"),
            Err("oscillator takes dial, if and side; side is missing".to_owned())
        );
        assert_eq!(
            worked_out(&SET, "oscillator?q=80"),
            Err("oscillator takes dial, if and side; it has no \"q\"".to_owned())
        );
    }

    #[test]
    fn an_input_may_be_worked_out_from_others() {
        let mut pairs = SET.to_vec();
        pairs.push(("above-it", "calc:oscillator"));
        pairs.push(("again", "calc:difference?signal=dial&oscillator=above-it"));
        let (givens, refused) = givens(&pairs);
        assert_eq!(refused, []);
        assert_eq!(
            givens.get("above-it").map(|given| given.value),
            Some(1_670_000.0)
        );
        assert_eq!(
            givens.get("again").map(|given| given.value),
            Some(470_000.0)
        );
    }

    #[test]
    fn metres_stay_metres() {
        let wave = Given::with_unit("330 m").expect("a wavelength");
        assert_eq!((wave.kind, wave.value), (Kind::Wavelength, 330.0));
        let station = Given::with_unit("909 kHz").expect("a frequency");
        assert_eq!(station.kind, Kind::Frequency);
    }

    #[test]
    fn inputs_without_a_value_say_why() {
        let (_, refused) = givens(&[
            ("dial", "1200"),
            ("side", "beside"),
            ("mine", "12"),
            ("round", "calc:beat?f1=about&f2=dial"),
            ("about", "calc:beat?f1=round&f2=dial"),
        ]);
        let said: Vec<String> = refused
            .into_iter()
            .map(|(name, why)| format!("{name}: {why}"))
            .collect();
        assert_eq!(
            said,
            [
                "about: \"about\" is worked out from itself",
                "dial: a frequency needs a unit, such as 1200 kHz (got \"1200\")",
                "mine: \"mine\" is no parameter of the catalogue, so it needs a number with a unit (got \"12\")",
                "round: \"round\" is worked out from itself",
                "side: this is above or below (got \"beside\")",
            ]
        );
    }
}
