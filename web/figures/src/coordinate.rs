//! Numbers as they stand in a drawing: pixels to a tenth, percentages to a hundredth.
//!
//! Written with integers: a drawing needs no more digits, and the float machinery of
//! `core::fmt` would be the largest thing in the page's wasm.

/// The share of the drawing's width at which every axis begins, and after which
/// [`AXIS_SHARE`] of the width it ends: 5 % to 95 %.
const AXIS_START: f64 = 5.0;
/// The length of an axis in percent of the drawing's width.
const AXIS_SHARE: f64 = 90.0;

/// The place on an axis, in percent of the drawing's width, of `share` of its length.
pub(crate) fn along_axis(share: f64) -> f64 {
    AXIS_START + AXIS_SHARE * share
}

/// `value` percent, as an SVG length.
pub(crate) fn percent(value: f64) -> String {
    let mut text = decimal(value, 100);
    text.push('%');
    text
}

/// `value` pixels.
pub(crate) fn pixels(value: f64) -> String {
    decimal(value, 10)
}

/// `value` rounded to one part in `parts` (10 or 100), without trailing zeros.
fn decimal(value: f64, parts: i64) -> String {
    // A drawing is at most a few thousand pixels: far inside i64, and a NaN, which no
    // figure may produce, becomes 0 here and fails the figures' own tests upstream.
    #[allow(clippy::cast_possible_truncation, clippy::cast_precision_loss)]
    let scaled = {
        let shifted = value * parts as f64;
        (if shifted < 0.0 {
            shifted - 0.5
        } else {
            shifted + 0.5
        }) as i64
    };
    let sign = if scaled < 0 { "-" } else { "" };
    let (whole, rest) = (scaled.abs() / parts, scaled.abs() % parts);
    let width = if parts == 100 { 2 } else { 1 };
    let digits = format!("{rest:0width$}");
    match digits.trim_end_matches('0') {
        "" => format!("{sign}{whole}"),
        fraction => format!("{sign}{whole}.{fraction}"),
    }
}

#[cfg(test)]
mod tests {
    use super::{along_axis, percent, pixels};

    #[test]
    fn digits_are_few_and_right() {
        assert_eq!(pixels(12.0), "12");
        assert_eq!(pixels(-0.04), "0");
        assert_eq!(pixels(-3.26), "-3.3");
        assert_eq!(percent(37.456), "37.46%");
        assert_eq!(percent(5.004), "5%");
        assert_eq!(percent(5.05), "5.05%");
    }

    #[test]
    fn an_axis_runs_from_5_to_95_percent() {
        assert_eq!(percent(along_axis(0.0)), "5%");
        assert_eq!(percent(along_axis(1.0)), "95%");
    }
}
