//! The core's numbers as a figure shows them.

use crate::{FigureError, Quantity};

/// The frequency typed as `text` for `parameter`.
pub(crate) fn frequency(parameter: &str, text: &str) -> Result<Quantity, FigureError> {
    let digits = text.trim().trim_end_matches("kHz").trim();
    match digits.parse::<f64>() {
        Ok(kilohertz) if kilohertz > 0.0 => Ok(shown("frequency", kilohertz * 1e3)),
        _ => Err(FigureError::about(
            parameter,
            format!("{parameter} must be a frequency such as 1200 kHz (got '{text}')"),
        )),
    }
}

fn shown(name: &'static str, value: f64) -> Quantity {
    Quantity {
        name,
        value,
        text: format!("{} kHz", value / 1e3),
    }
}

/// The catalogue's quantity `name` for `pairs`.
pub(crate) fn quantity(
    name: &'static str,
    pairs: &[(&str, &str)],
) -> Result<Quantity, FigureError> {
    let dial = frequency("dial", pairs[0].1)?.value;
    let intermediate = frequency("if", pairs[1].1)?.value;
    let sign = if pairs[2].1 == "above" { 1.0 } else { -1.0 };
    let steps = if name == "oscillator" { 1.0 } else { 2.0 };
    let value = dial + sign * steps * intermediate;
    if value <= 0.0 && name == "oscillator" {
        return Err(FigureError::about(
            "if",
            format!(
                "the oscillator must be above 0 Hz (got {} kHz)",
                value / 1e3
            ),
        ));
    }
    Ok(shown(name, value.abs()))
}
