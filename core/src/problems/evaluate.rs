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
    fault::Trouble,
    scope::{Scope, Value},
};

impl From<ExpressionError> for Trouble {
    fn from(error: ExpressionError) -> Trouble {
        Trouble::faulty(error.to_string())
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
    let unit = text.trim_start_matches(|c: char| c.is_ascii_digit() || matches!(c, '.' | ' '));
    let kinds: &[Kind] = if unit == "m" {
        &[Kind::Wavelength]
    } else {
        &KINDS
    };
    kinds
        .iter()
        .find_map(|&kind| Some((kind, parse::value(kind, text, None).ok()?)))
        .ok_or_else(|| Trouble::faulty(format!("{text:?} has a unit that is not read here")))
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
        .ok_or_else(|| Trouble::faulty(format!("{name:?} is no given, value or quantity")))?;
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
        .ok_or_else(|| Trouble::faulty(format!("{parameter:?} needs a given or value {name:?}")))
}

fn faulty<T>(says: String) -> Result<T, Trouble> {
    Err(Trouble::faulty(says))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn scope() -> Scope {
        let mut scope = Scope::default();
        for (name, kind, written) in [
            ("dial", Kind::Frequency, "1200 kHz"),
            ("station", Kind::Frequency, "250 m"),
            ("if", Kind::Frequency, "470 kHz"),
            ("side", Kind::Choice, "above"),
            ("times", Kind::Ratio, "4"),
            ("f-low", Kind::Frequency, "500 kHz"),
        ] {
            scope.give(name, kind, written).unwrap();
        }
        scope
    }

    fn khz(text: &str) -> f64 {
        let (kind, value) = evaluate_number(text, &scope()).unwrap();
        assert_eq!(kind, Kind::Frequency, "{text}");
        value / 1e3
    }

    #[test]
    fn quantities_take_what_is_left_out_from_the_names() {
        assert_eq!(khz("oscillator"), 1670.0);
        assert_eq!(khz("oscillator?side=below"), 730.0);
        assert_eq!(khz("oscillator?dial=909kHz"), 1379.0);
        assert_eq!(khz("image?dial={f-low}"), 1440.0);
    }

    #[test]
    fn sums_and_products_keep_their_kind() {
        assert_eq!(khz("dial + 2 * if"), 2140.0);
        assert_eq!(khz("(dial + if) * 2"), 3340.0);
        assert_eq!(khz("f-low * root(times) - 9 kHz"), 991.0);
        assert_eq!(
            evaluate_number("dial / 1 kHz", &scope()),
            Ok((Kind::Ratio, 1200.0))
        );
        let metres = evaluate_number("wavelength?frequency={station}", &scope()).unwrap();
        assert_eq!(metres.0, Kind::Wavelength);
        assert!((metres.1 - 250.0).abs() < 1e-12);
        assert_eq!(
            evaluate_number("300 m / 100 m", &scope()),
            Ok((Kind::Ratio, 3.0))
        );
    }

    /// What was worked out is handed on to a quantity with every bit.
    #[test]
    fn worked_out_values_keep_every_bit() {
        let mut scope = scope();
        for text in [
            "dial / 7",
            "if * 1.000000000001",
            "frequency?wavelength=251.3m",
        ] {
            let (kind, value) = evaluate_number(text, &scope).unwrap();
            scope.set("odd", Value::Number { kind, value });
            let back = evaluate_number("difference?signal={odd}&oscillator=1kHz", &scope).unwrap();
            assert_eq!(back.1.to_bits(), (value - 1e3).to_bits(), "{text}");
        }
    }

    #[test]
    fn conditions_hold_or_not() {
        for (text, expected) in [
            ("dial > 1 MHz", true),
            ("image <= 1606.5 kHz", false),
            ("side = 'above'", true),
            ("side != 'above'", false),
            ("times >= 4", true),
            ("times < 4", false),
        ] {
            assert_eq!(holds(text, &scope()), Ok(expected), "{text}");
        }
    }

    #[test]
    fn troubles_tell_a_faulty_family_from_an_unlucky_draw() {
        for text in [
            "wobble",
            "oscillator?tone=5kHz",
            "oscillator?dial={nobody}",
            "capacitance-ratio",
            "dial + times",
            "dial * dial",
            "root(dial)",
            "side + side",
            "5 wobbles",
            "dial +",
        ] {
            let trouble = evaluate_number(text, &scope()).unwrap_err();
            assert!(matches!(trouble, Trouble::Faulty(_)), "{text}: {trouble:?}");
        }
        for text in [
            "oscillator?dial=100kHz&side=below",
            "times / 0",
            "root(1 - times)",
        ] {
            let trouble = evaluate_number(text, &scope()).unwrap_err();
            assert!(
                matches!(trouble, Trouble::Refused(_)),
                "{text}: {trouble:?}"
            );
        }
        for text in ["dial > 4", "side > 'above'", "side = 4"] {
            assert!(
                matches!(holds(text, &scope()), Err(Trouble::Faulty(_))),
                "{text}"
            );
        }
    }
}
