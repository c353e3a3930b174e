//! The catalogue as a list.

use serde_json::{Value, json};
use std::io::{Result, Write};
use superhet::catalogue::{Entry, Kind, Parameter, catalogue};

/// Writes the whole catalogue, a line each.
pub(super) fn write(json: bool, output: &mut impl Write) -> Result<()> {
    for entry in catalogue() {
        if json {
            writeln!(output, "{}", object(entry))?;
        } else {
            writeln!(output, "{}: {}", pattern(entry), entry.title)?;
        }
    }
    Ok(())
}

/// The shape of an expression: `beat?f1=frequency&f2=frequency`.
fn pattern(entry: &Entry) -> String {
    let mut pattern = entry.name.to_string();
    for (place, parameter) in entry.parameters.iter().enumerate() {
        pattern.push(if place == 0 { '?' } else { '&' });
        pattern.push_str(parameter.name);
        pattern.push('=');
        match parameter.kind {
            Kind::Choice => pattern.push_str(&parameter.choices.join("|")),
            kind => pattern.push_str(kind.name()),
        }
    }
    pattern
}

fn object(entry: &Entry) -> Value {
    let parameters: Vec<Value> = entry.parameters.iter().map(parameter).collect();
    json!({
        "name": entry.name,
        "title": entry.title,
        "symbol": entry.symbol,
        "formula": entry.formula,
        "parameters": parameters,
        "unit": entry.result.unit(),
        "source": entry.source,
    })
}

/// A choice has words instead of a least and a greatest value.
fn parameter(parameter: &Parameter) -> Value {
    let bound = |value: f64| match parameter.kind {
        Kind::Choice => Value::Null,
        _ => json!(value),
    };
    json!({
        "name": parameter.name,
        "kind": parameter.kind.name(),
        "min": bound(parameter.min),
        "max": bound(parameter.max),
        "choices": parameter.choices,
    })
}
