//! The core's numbers as a figure shows them.

use crate::{FigureError, Quantity};
use superhet::catalogue::evaluate_with;
use superhet::units::{Kind, display, parse};

/// The frequency typed as `text` for `parameter`, to be shown as the quantity `name`.
pub(crate) fn frequency(
    name: &'static str,
    parameter: &str,
    text: &str,
) -> Result<Quantity, FigureError> {
    match parse::value(Kind::Frequency, text, None) {
        Ok(value) if value > 0.0 => Ok(Quantity {
            name,
            value,
            text: display::text(Kind::Frequency, value),
        }),
        Ok(_) => Err(FigureError::about(
            parameter,
            format!("{parameter} must be above zero (got '{text}')"),
        )),
        Err(error) => Err(FigureError::about(
            parameter,
            format!("{parameter}: {}", error.sentence()),
        )),
    }
}

/// The catalogue's quantity `name` for typed `pairs`.
pub(crate) fn quantity(
    name: &'static str,
    pairs: &[(&str, &str)],
) -> Result<Quantity, FigureError> {
    match evaluate_with(name, pairs) {
        Ok(answer) => Ok(Quantity {
            name,
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
