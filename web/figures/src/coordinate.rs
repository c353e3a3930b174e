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

/// Writes a whole number at the end of `text`.
pub(crate) fn push_whole(text: &mut String, value: i64) {
    if value < 0 {
        text.push('-');
    }
    let mut digits = [0_u8; 20];
    let mut rest = value.unsigned_abs();
    let mut start = digits.len();
    loop {
        start -= 1;
        digits[start] = b'0' + (rest % 10) as u8;
        rest /= 10;
        if rest == 0 {
            break;
        }
    }
    text.extend(digits[start..].iter().map(|&digit| char::from(digit)));
}

/// `value` to a thousandth: as finely as any handle steps.
pub(crate) fn thousandths(value: f64) -> String {
    decimal(value, 1000)
}

/// `value` rounded to one part in `parts` (10, 100 or 1000), without trailing zeros.
fn decimal(value: f64, parts: i64) -> String {
    let scaled = rounded(value * parts as f64);
    let mut text = String::with_capacity(8);
    if scaled < 0 {
        text.push('-');
    }
    push_whole(&mut text, scaled.abs() / parts);
    let mut rest = scaled.abs() % parts;
    let mut place = parts / 10;
    if rest > 0 {
        text.push('.');
    }
    while rest > 0 {
        push_whole(&mut text, rest / place);
        rest %= place;
        place /= 10;
    }
    text
}

/// The nearest whole number, halves away from zero.
///
/// A drawing is at most a few thousand pixels, far inside the range of `i64`. A NaN,
/// which no figure may produce, would become 0.
pub(crate) fn rounded(value: f64) -> i64 {
    if value < 0.0 {
        (value - 0.5) as i64
    } else {
        (value + 0.5) as i64
    }
}

/// `value`, or the nearer of two ends. What `f64::clamp` does, but for its panic about ends
/// that lie the wrong way round: that names them, by the float machinery of `core::fmt`.
pub(crate) fn held_within(value: f64, low: f64, high: f64) -> f64 {
    value.max(low).min(high)
}

#[cfg(test)]
mod tests {
    use super::{along_axis, held_within, percent, pixels, thousandths};

    #[test]
    fn what_lies_outside_is_held_at_the_nearer_end() {
        let held = [-1.0, 0.5, 7.0].map(|value| held_within(value, 0.0, 2.0));
        assert_eq!(held, [0.0, 0.5, 2.0]);
    }

    #[test]
    fn digits_are_few_and_right() {
        assert_eq!(pixels(12.0), "12");
        assert_eq!(pixels(-0.04), "0");
        assert_eq!(pixels(-3.26), "-3.3");
        assert_eq!(percent(37.456), "37.46%");
        assert_eq!(percent(5.004), "5%");
        assert_eq!(percent(5.05), "5.05%");
        assert_eq!(percent(0.5), "0.5%");
        assert_eq!(thousandths(-120.0), "-120");
        assert_eq!(thousandths(0.012), "0.012");
    }

    #[test]
    fn an_axis_runs_from_5_to_95_percent() {
        assert_eq!(percent(along_axis(0.0)), "5%");
        assert_eq!(percent(along_axis(1.0)), "95%");
    }
}
