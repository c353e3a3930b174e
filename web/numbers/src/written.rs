//! A worked-out number, written like one that an author typed.

use crate::Printed;
use superhet::catalogue::Kind;
use superhet::units::display;

/// Significant digits with which a worked-out number is always shown in full.
const FULL: usize = 5;

/// Significant digits left of a longer one, unless the author typed more.
const ROUNDED: usize = 4;

/// A value written as the trade writes it, about as closely as another was typed, with
/// the same words behind a plain ratio.
#[must_use]
pub fn written_like(typed: &str, kind: Kind, value: f64) -> String {
    let printed = Printed::read(typed).ok();
    let shown = display::text(kind, value);
    let wanted = printed
        .as_ref()
        .map_or(ROUNDED, |printed| ROUNDED.max(printed.digits()));
    let full = Printed::read(&shown).is_ok_and(|shown| shown.digits() <= FULL);
    let text = if full {
        shown
    } else {
        display::text(kind, rounded(value, wanted))
    };
    match printed {
        Some(printed)
            if kind.unit().is_empty() && kind != Kind::Depth && !printed.unit.is_empty() =>
        {
            format!("{text} {}", printed.unit)
        }
        _ => text,
    }
}

/// A value to so many significant digits.
fn rounded(value: f64, digits: usize) -> f64 {
    let text = format!("{value:.*e}", digits.saturating_sub(1));
    text.parse().unwrap_or(value)
}

#[cfg(test)]
mod tests {
    use super::{Kind, written_like};

    #[test]
    fn worked_out_numbers_are_as_close_as_the_typed_ones() {
        let frequency = |typed, value| written_like(typed, Kind::Frequency, value);
        assert_eq!(frequency("1559 kHz", 1.163e6), "1163 kHz");
        assert_eq!(frequency("1559 kHz", 9.08e6), "9.08 MHz");
        assert_eq!(frequency("1670 kHz", 1_173_500.0), "1173.5 kHz");
        assert_eq!(frequency("712 kHz", 711_762.6), "711.8 kHz");
        assert_eq!(written_like("9.346 times", Kind::Ratio, 3.61), "3.61 times");
        assert_eq!(
            written_like("9.346 times", Kind::Ratio, 9.849_123),
            "9.849 times"
        );
        assert_eq!(written_like("2.1", Kind::Ratio, 1.9), "1.9");
    }
}
