//! The core's numbers as a figure shows them.

use crate::{FigureError, Input, Quantity};
use superhet::catalogue::evaluate_with;
use superhet::units::{Kind, display, parse};

/// The frequency typed as `text` for `parameter`, to be shown as the quantity `name`.
pub(crate) fn frequency(
    name: &'static str,
    parameter: &str,
    text: &str,
) -> Result<Quantity, FigureError> {
    let read = typed(Kind::Frequency, name, parameter, text)?;
    if read.value > 0.0 {
        return Ok(read);
    }
    let sentence = format!("{parameter} must be above zero (got '{text}')");
    Err(FigureError::about(parameter, sentence))
}

/// The value typed as `text` for `parameter`, to be shown as the quantity `name`. Any sign
/// is read: what makes sense is for the core to say.
pub(crate) fn typed(
    kind: Kind,
    name: &'static str,
    parameter: &str,
    text: &str,
) -> Result<Quantity, FigureError> {
    match parse::value(kind, text, None) {
        Ok(value) => Ok(Quantity {
            name,
            kind,
            value,
            text: display::text(kind, value),
        }),
        Err(error) => Err(FigureError::about(
            parameter,
            format!("{parameter}: {}", error.sentence()),
        )),
    }
}

/// What an input gives for a parameter that has a default.
pub(crate) fn given(
    kind: Kind,
    input: &Input,
    parameter: &'static str,
    default: &str,
) -> Result<Quantity, FigureError> {
    typed(
        kind,
        parameter,
        parameter,
        input.get(parameter).unwrap_or(default),
    )
}

/// As [`given`], and not outside of what the figure can draw, in the kind's SI unit.
pub(crate) fn given_within(
    kind: Kind,
    input: &Input,
    parameter: &'static str,
    default: &str,
    (low, high): (f64, f64),
) -> Result<Quantity, FigureError> {
    let read = given(kind, input, parameter, default)?;
    if (low..=high).contains(&read.value) {
        return Ok(read);
    }
    let (low, high) = (display::text(kind, low), display::text(kind, high));
    let sentence = format!(
        "in this figure {parameter} must be from {low} to {high} (got {})",
        read.text
    );
    Err(FigureError::about(parameter, sentence))
}

/// The place of what an input chooses among `options`; the first where it chooses nothing.
pub(crate) fn chosen(
    input: &Input,
    parameter: &str,
    options: &[&str],
) -> Result<usize, FigureError> {
    let Some(text) = input.get(parameter) else {
        return Ok(0);
    };
    let found = options.iter().position(|option| *option == text.trim());
    found.ok_or_else(|| {
        let options = options.join(" or ");
        let sentence = format!("{parameter} must be {options} (got '{text}')");
        FigureError::about(parameter, sentence)
    })
}

/// The catalogue's quantity `name` for typed `pairs`.
pub(crate) fn quantity(
    name: &'static str,
    pairs: &[(&str, &str)],
) -> Result<Quantity, FigureError> {
    match evaluate_with(name, pairs) {
        Ok(answer) => Ok(Quantity {
            name,
            kind: answer.kind,
            value: answer.value,
            text: answer.text,
        }),
        Err(refusal) => {
            let sentence = refusal.sentence().to_owned();
            Err(match refusal.parameter() {
                Some(parameter) => FigureError::about(parameter, sentence),
                None => FigureError::new(sentence),
            })
        }
    }
}

/// The catalogue's quantity `name`, its text rounded to three digits: what is worked out
/// from a Q that nobody knows to more.
pub(crate) fn rough(name: &'static str, pairs: &[(&str, &str)]) -> Result<Quantity, FigureError> {
    quantity(name, pairs).map(Quantity::roughly)
}

/// A value worked out in the core, its text rounded to three digits.
pub(crate) fn roughly(kind: Kind, name: &'static str, value: f64) -> Quantity {
    let text = display::text(kind, three_digits(value));
    Quantity {
        name,
        kind,
        value,
        text,
    }
}

/// A value rounded to three significant digits; a thousandth or less of its unit is 0.
fn three_digits(value: f64) -> f64 {
    let size = value.abs();
    if size < 1e-15 {
        return 0.0;
    }
    let (mut scaled, mut unit) = (size, 1.0);
    while scaled >= 1000.0 {
        scaled /= 10.0;
        unit *= 10.0;
    }
    let mut finer = 1.0;
    while scaled < 100.0 {
        scaled *= 10.0;
        finer *= 10.0;
    }
    let whole = libm::round(scaled);
    let rounded = if finer > 1.0 {
        whole / finer
    } else {
        whole * unit
    };
    if value < 0.0 { -rounded } else { rounded }
}

#[cfg(test)]
mod tests {
    use super::three_digits;

    #[test]
    fn three_digits_are_left() {
        for (value, expected) in [
            (17.4372, 17.4),
            (-3.3451e6, -3.35e6),
            (999.96, 1000.0),
            (0.001_234, 0.001_23),
            (0.0, 0.0),
        ] {
            assert_eq!(three_digits(value), expected);
        }
    }
}
