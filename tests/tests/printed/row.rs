//! A printed number and what the core makes of it.

use superhet::catalogue::evaluate;

/// What is worked out, what is printed, half a unit of the last printed digit, whose
/// number it is. `unit` divides the SI value: 1e3 for kilohertz.
pub(crate) struct Row {
    case: &'static str,
    expression: &'static str,
    unit: f64,
    expected: f64,
    tolerance: f64,
    source: &'static str,
}

/// For numbers that are printed without rounding: a few parts in 10^16 of a megahertz
/// are left to binary fractions such as 0.455.
pub(crate) const EXACT: f64 = 1e-9;

pub(crate) const HZ: f64 = 1.0;
pub(crate) const KHZ: f64 = 1e3;
pub(crate) const MHZ: f64 = 1e6;
pub(crate) const NF: f64 = 1e-9;
pub(crate) const PF: f64 = 1e-12;
pub(crate) const UH: f64 = 1e-6;
pub(crate) const KW: f64 = 1e3;
pub(crate) const RATIO: f64 = 1.0;
pub(crate) const DB: f64 = 1.0;
pub(crate) const W: f64 = 1.0;
pub(crate) const V: f64 = 1.0;
pub(crate) const MS: f64 = 1e-3;

pub(crate) const fn row(
    case: &'static str,
    expression: &'static str,
    unit: f64,
    expected: f64,
    tolerance: f64,
    source: &'static str,
) -> Row {
    Row {
        case,
        expression,
        unit,
        expected,
        tolerance,
        source,
    }
}

/// The core's answer in SI units.
pub(crate) fn value(expression: &str) -> f64 {
    evaluate(expression)
        .unwrap_or_else(|refusal| panic!("{expression}: {refusal}"))
        .value
}

/// The voltage ratio of an answer in decibels, since textbooks print rejections so.
pub(crate) fn times(expression: &str) -> f64 {
    10f64.powf(value(expression) / 20.0)
}

/// Holds every row, and says all that are wrong at once.
pub(crate) fn check(rows: &[Row]) {
    check_by(rows, value);
}

/// The same, with the answer turned into what is printed.
pub(crate) fn check_by(rows: &[Row], answer: fn(&str) -> f64) {
    let wrong: Vec<String> = rows
        .iter()
        .filter_map(|row| {
            let got = answer(row.expression) / row.unit;
            let error = got - row.expected;
            // A number that is not one is wrong too.
            (error.abs() > row.tolerance || error.is_nan()).then(|| {
                let (case, expected, source) = (row.case, row.expected, row.source);
                format!("{case}: got {got}, expected {expected}, error {error:e} ({source})")
            })
        })
        .collect();
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}
