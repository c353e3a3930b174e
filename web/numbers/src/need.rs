//! A condition under which the sentences of a unit stay true.

use crate::{Expression, Given, Givens};
use serde::{Deserialize, Serialize};
use superhet::catalogue::{Kind, find};

/// A condition, and what is said where it does not hold.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Need {
    /// `side is above`, `image?dial=strong < 1606.5kHz`: names of inputs, expressions or
    /// values, with `is`, `<`, `<=`, `>` or `>=` between them.
    pub holds: String,
    /// The reason, in a sentence.
    pub says: String,
}

impl Need {
    /// Whether it holds for these inputs.
    ///
    /// # Errors
    /// What cannot be read or worked out, in a sentence.
    pub fn is_met(&self, givens: &Givens) -> Result<bool, String> {
        let words: Vec<&str> = self.holds.split_whitespace().collect();
        let [left, sign, right] = words[..] else {
            let holds = &self.holds;
            return Err(format!(
                "a condition is two names with a sign between them (got \"{holds}\")"
            ));
        };
        if sign == "is" {
            let known = givens.get(left).filter(|given| given.kind == Kind::Choice);
            let known = known.ok_or_else(|| format!("\"{left}\" is no choice of this lesson"))?;
            return Ok(known.typed == right);
        }
        let (left, right) = (side(left, givens)?, side(right, givens)?);
        match sign {
            "<" => Ok(left < right),
            "<=" => Ok(left <= right),
            ">" => Ok(left > right),
            ">=" => Ok(left >= right),
            _ => Err(format!(
                "a condition compares by is, <, <=, > or >= (got \"{sign}\")"
            )),
        }
    }
}

/// The value of one side: an input, an expression, or a value with its unit.
fn side(text: &str, givens: &Givens) -> Result<f64, String> {
    if let Some(given) = givens.get(text) {
        return Ok(given.value);
    }
    if text.contains('?') || find(text).is_some() {
        let found = givens.work_out(&Expression::read(text)?)?;
        return Ok(found.answer.value);
    }
    let given = Given::with_unit(text);
    given
        .map(|given| given.value)
        .ok_or_else(|| format!("\"{text}\" is no input, quantity or value with a unit"))
}

#[cfg(test)]
mod tests {
    use super::Need;
    use crate::Givens;
    use std::collections::BTreeMap;

    #[test]
    fn conditions_are_worked_out_from_the_inputs() {
        let raw: BTreeMap<String, String> = [
            ("dial", "1200 kHz"),
            ("if", "470 kHz"),
            ("side", "above"),
            ("top", "1606.5 kHz"),
        ]
        .map(|(key, value)| (key.to_owned(), value.to_owned()))
        .into();
        let (givens, _) = Givens::read(&raw);
        let met = |holds: &str| {
            let need = Need {
                holds: holds.to_owned(),
                says: String::new(),
            };
            need.is_met(&givens)
        };
        assert_eq!(met("side is above"), Ok(true));
        assert_eq!(met("image > top"), Ok(true));
        assert_eq!(met("image?dial=600kHz >= top"), Ok(false));
        assert_eq!(met("if < 0.5MHz"), Ok(true));
        assert!(met("dial is above").is_err());
        assert!(met("if = 470kHz").is_err());
        assert!(met("if <").is_err());
        assert!(met("nothing < dial").is_err());
        assert!(met("image?dial=0kHz < dial").is_err());
    }
}
