//! Texts with slots, and filling them.
//!
//! `{dial}` is what the name stands for, written as the family writes it or, worked
//! out, in the unit the trade would use. `{ratio:3}` shows three figures,
//! `{oscillator:MHz}` another unit. There is no other mark-up: the texts are shown as
//! text, never as HTML.

use alloc::{format, string::String, vec::Vec};

use super::scope::Scope;

/// One piece of a text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Piece<'t> {
    /// Shown as it stands.
    Words(&'t str),
    /// A name to be filled in.
    Slot {
        /// The name.
        name: &'t str,
        /// Figures or unit to show it in.
        form: Option<&'t str>,
    },
}

/// Cuts a text into words and slots; an error says what is wrong with it.
pub fn pieces(text: &str) -> Result<Vec<Piece<'_>>, String> {
    let mut found = Vec::new();
    let mut rest = text;
    while let Some(open) = rest.find(['{', '}']) {
        if rest[open..].starts_with('}') {
            return Err(format!("a brace is closed that was not opened in {text:?}"));
        }
        let close = rest[open..].find('}');
        let close = open + close.ok_or_else(|| format!("a brace is not closed in {text:?}"))?;
        if open > 0 {
            found.push(Piece::Words(&rest[..open]));
        }
        found.push(slot(&rest[open + 1..close])?);
        rest = &rest[close + 1..];
    }
    if !rest.is_empty() {
        found.push(Piece::Words(rest));
    }
    Ok(found)
}

fn slot(inside: &str) -> Result<Piece<'_>, String> {
    let (name, form) = match inside.split_once(':') {
        Some((name, form)) => (name, Some(form)),
        None => (inside, None),
    };
    let plain = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-';
    if name.is_empty() || !name.chars().all(plain) {
        return Err(format!("{inside:?} is no name for a slot"));
    }
    Ok(Piece::Slot { name, form })
}

/// Units that stay with their numbers.
const UNITS: [&str; 20] = [
    "Hz", "kHz", "MHz", "kc/s", "Mc/s", "m", "pF", "nF", "µF", "µH", "mH", "kΩ", "MΩ", "ohm", "V",
    "mV", "W", "kW", "times", "dB",
];

/// The text with no line's end between a number and its unit: no-break spaces there.
///
/// ```
/// let whole = superhet::problems::text::unbroken("Set it to 525 kHz, 3 times.");
/// assert_eq!(whole, "Set it to 525\u{a0}kHz, 3\u{a0}times.");
/// ```
pub fn unbroken(text: &str) -> String {
    let mut whole = String::with_capacity(text.len());
    let mut before = "";
    for (place, word) in text.split(' ').enumerate() {
        if place > 0 {
            let unit = UNITS.contains(&word.trim_end_matches(['.', ',', '?', ';', ':', ')']));
            let counted = before.ends_with(|letter: char| letter.is_ascii_digit());
            whole.push(if unit && counted { '\u{a0}' } else { ' ' });
        }
        whole.push_str(word);
        before = word;
    }
    whole
}

/// The text with its slots filled; an error names the slot that could not be. Apostrophes
/// come out as printers set them, as in the lessons, whatever key the author pressed.
pub fn fill(text: &str, scope: &Scope) -> Result<String, String> {
    let mut filled = String::with_capacity(text.len());
    for piece in pieces(text)? {
        match piece {
            Piece::Words(words) => filled.push_str(words),
            Piece::Slot { name, form: None } => {
                let shown = scope.shown(name);
                filled.push_str(&shown.ok_or_else(|| format!("nothing is named {name:?}"))?);
            }
            Piece::Slot {
                name,
                form: Some(form),
            } => {
                let shown = scope.shown_as(name, form);
                filled.push_str(
                    &shown.ok_or_else(|| format!("{name:?} cannot be shown as {form:?}"))?,
                );
            }
        }
    }
    Ok(filled.replace('\'', "’"))
}

#[cfg(test)]
mod tests {
    use crate::units::Kind;

    use super::super::scope::Value;
    use super::*;

    fn scope() -> Scope {
        let mut scope = Scope::default();
        scope.give("dial", Kind::Frequency, "250 m").unwrap();
        scope.give("side", Kind::Choice, "above").unwrap();
        scope.set(
            "oscillator",
            Value::Number {
                kind: Kind::Frequency,
                value: 1_669_169.832,
            },
        );
        scope.set(
            "ratio",
            Value::Number {
                kind: Kind::Ratio,
                value: 8.462_81,
            },
        );
        scope
    }

    #[test]
    fn slots_are_filled() {
        for (text, filled) in [
            ("At {dial}, {side}.", "At 250 m, above."),
            ("{oscillator}", "1669.17 kHz"),
            ("{oscillator:4}", "1669 kHz"),
            ("{oscillator:MHz}", "1.66917 MHz"),
            ("{dial:kHz}", "1199.17 kHz"),
            ("{ratio:3} times", "8.46 times"),
            ("The set's dial: {dial}.", "The set’s dial: 250 m."),
            ("No slot.", "No slot."),
            ("", ""),
        ] {
            assert_eq!(fill(text, &scope()).as_deref(), Ok(filled));
        }
    }

    #[test]
    fn slots_that_cannot_be_filled_are_named() {
        for (text, says) in [
            ("{nobody}", "nothing is named \"nobody\""),
            ("{side:3}", "cannot be shown as"),
            ("{ratio:kHz}", "cannot be shown as"),
            ("{ratio:9}", "cannot be shown as"),
            ("{dial", "not closed"),
            ("dial}", "not opened"),
            ("{}", "no name for a slot"),
            ("{Dial}", "no name for a slot"),
        ] {
            let error = fill(text, &scope()).unwrap_err();
            assert!(error.contains(says), "{text}: {error}");
        }
    }
}
