//! Working out expressions over the names of one draw.

use alloc::{
    format,
    string::{String, ToString},
    vec::Vec,
};

use crate::{
    catalogue,
    units::{Kind, parse},
};

use super::{
    expression::{Binding, Comparison, Condition, Expression, ExpressionError, Operator},
    scope::{Scope, Value},
};

/// Why an expression has no value.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Trouble {
    /// The family is at fault: no draw could give a value.
    Faulty(String),
    /// This draw gives none: outside the range of a quantity, or not finite.
    Refused(String),
}

impl From<ExpressionError> for Trouble {
    fn from(error: ExpressionError) -> Trouble {
        Trouble::Faulty(error.to_string())
    }
}

/// The value of an expression, read first.
pub fn evaluate(text: &str, scope: &Scope) -> Result<Value, Trouble> {
    value_of(&Expression::read(text)?, scope)
}

/// The value of an expression that must be a number, with its kind.
pub fn evaluate_number(text: &str, scope: &Scope) -> Result<(Kind, f64), Trouble> {
    number(&Expression::read(text)?, scope)
}

/// Whether a condition holds, read first.
pub fn holds(text: &str, scope: &Scope) -> Result<bool, Trouble> {
    let condition = Condition::read(text)?;
    let left = value_of(&condition.left, scope)?;
    let right = value_of(&condition.right, scope)?;
    match (&left, &right) {
        (Value::Word(one), Value::Word(other)) => same_or_other(condition.comparison, one == other),
        (
            Value::Number { kind, value },
            Value::Number {
                kind: other_kind,
                value: other,
            },
        ) if kind == other_kind => Ok(compare(condition.comparison, *value, *other)),
        _ => faulty(format!("{text:?} compares things of different kinds")),
    }
}

fn same_or_other(comparison: Comparison, same: bool) -> Result<bool, Trouble> {
    match comparison {
        Comparison::Same => Ok(same),
        Comparison::Other => Ok(!same),
        _ => faulty("words can be compared with = and != only".into()),
    }
}

fn compare(comparison: Comparison, left: f64, right: f64) -> bool {
    match comparison {
        Comparison::Under => left < right,
        Comparison::AtMost => left <= right,
        Comparison::Over => left > right,
        Comparison::AtLeast => left >= right,
        Comparison::Same => left == right,
        Comparison::Other => left != right,
    }
}

fn value_of(expression: &Expression, scope: &Scope) -> Result<Value, Trouble> {
    match expression {
        Expression::Text(word) => Ok(Value::Word(word.clone())),
        Expression::Name(name) => match scope.find(name) {
            Some(value) => Ok(value.clone()),
            None => quantity(name, &[], scope),
        },
        Expression::Call {
            quantity: name,
            bindings,
        } => quantity(name, bindings, scope),
        _ => {
            let (kind, value) = number(expression, scope)?;
            Ok(Value::Number { kind, value })
        }
    }
}

fn number(expression: &Expression, scope: &Scope) -> Result<(Kind, f64), Trouble> {
    let (kind, value) = match expression {
        Expression::Number(number) => (Kind::Ratio, *number),
        Expression::Quantity(text) => literal(text)?,
        Expression::Root(inside) => root(number(inside, scope)?)?,
        Expression::Joined(operator, left, right) => {
            joined(*operator, number(left, scope)?, number(right, scope)?)?
        }
        other => match value_of(other, scope)? {
            Value::Number { kind, value } => (kind, value),
            Value::Word(word) => return faulty(format!("{word:?} is no number")),
        },
    };
    if value.is_finite() {
        Ok((kind, value))
    } else {
        Err(Trouble::Refused("the result is not a finite number".into()))
    }
}

/// A number with a unit. Metres mean a wavelength here: a frequency given in metres is
/// a given of its own.
fn literal(text: &str) -> Result<(Kind, f64), Trouble> {
    const KINDS: [Kind; 8] = [
        Kind::Frequency,
        Kind::Inductance,
        Kind::Capacitance,
        Kind::Resistance,
        Kind::Voltage,
        Kind::Power,
        Kind::Decibels,
        Kind::Depth,
    ];
    let unit = text.trim_start_matches(|c: char| c.is_ascii_digit() || matches!(c, '.' | ' '));
    let kinds: &[Kind] = if unit == "m" {
        &[Kind::Wavelength]
    } else {
        &KINDS
    };
    kinds
        .iter()
        .find_map(|&kind| Some((kind, parse::value(kind, text, None).ok()?)))
        .ok_or_else(|| Trouble::Faulty(format!("{text:?} has a unit that is not read here")))
}

fn root((kind, value): (Kind, f64)) -> Result<(Kind, f64), Trouble> {
    match kind {
        Kind::Ratio if value < 0.0 => Err(Trouble::Refused(
            "a negative number has no square root".into(),
        )),
        Kind::Ratio => Ok((Kind::Ratio, libm::sqrt(value))),
        other => faulty(format!("a {} has no square root here", other.name())),
    }
}

fn joined(
    operator: Operator,
    (left, one): (Kind, f64),
    (right, other): (Kind, f64),
) -> Result<(Kind, f64), Trouble> {
    match operator {
        Operator::Plus if left == right => Ok((left, one + other)),
        Operator::Minus if left == right => Ok((left, one - other)),
        Operator::Times if right == Kind::Ratio => Ok((left, one * other)),
        Operator::Times if left == Kind::Ratio => Ok((right, one * other)),
        Operator::Over if right == Kind::Ratio => Ok((left, one / other)),
        Operator::Over if left == right => Ok((Kind::Ratio, one / other)),
        _ => faulty(format!(
            "a {} and a {} cannot be joined so",
            left.name(),
            right.name()
        )),
    }
}

/// A catalogue quantity; parameters that are not bound come from the names.
fn quantity(name: &str, bindings: &[(String, Binding)], scope: &Scope) -> Result<Value, Trouble> {
    let entry = catalogue::find(name)
        .ok_or_else(|| Trouble::Faulty(format!("{name:?} is no given, value or quantity")))?;
    if let Some((unknown, _)) = bindings.iter().find(|(key, _)| {
        !entry
            .parameters
            .iter()
            .any(|parameter| parameter.name == key)
    }) {
        return faulty(format!("{name:?} has no parameter {unknown:?}"));
    }
    let mut typed: Vec<(&str, String)> = Vec::with_capacity(entry.parameters.len());
    for parameter in entry.parameters {
        typed.push((parameter.name, bound(parameter.name, bindings, scope)?));
    }
    let pairs: Vec<(&str, &str)> = typed
        .iter()
        .map(|(key, text)| (*key, text.as_str()))
        .collect();
    catalogue::evaluate_with(name, &pairs)
        .map(|answer| Value::Number {
            kind: answer.kind,
            value: answer.value,
        })
        .map_err(|refusal| Trouble::Refused(refusal.to_string()))
}

fn bound(
    parameter: &str,
    bindings: &[(String, Binding)],
    scope: &Scope,
) -> Result<String, Trouble> {
    let binding = bindings
        .iter()
        .find(|(key, _)| key == parameter)
        .map(|(_, binding)| binding);
    let name = match binding {
        Some(Binding::Literal(text)) => return Ok(text.clone()),
        Some(Binding::Name(name)) => name,
        None => parameter,
    };
    scope
        .typed(name)
        .ok_or_else(|| Trouble::Faulty(format!("{parameter:?} needs a given or value {name:?}")))
}

fn faulty<T>(says: String) -> Result<T, Trouble> {
    Err(Trouble::Faulty(says))
}
