//! The unit behind a number: every spelling that the catalogue reads, and a few more.

use superhet::units::{Kind, parse};

/// Symbols that the catalogue does not read, as the trade writes them.
const MORE_SYMBOLS: [&str; 6] = ["A", "mA", "µA", "uA", "mm", "dBm"];

/// Sorts of voltage and current that are written behind the unit.
const SORTS: [&str; 7] = ["AC", "DC", "ac", "dc", "rms", "RMS", "pp"];

/// The kinds with a unit.
const KINDS: [Kind; 11] = [
    Kind::Frequency,
    Kind::Wavelength,
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

/// Words, each behind one of the prefixes or none.
const WORDS: [&str; 20] = [
    "hertz", "cycle", "cycles", "metre", "metres", "farad", "farads", "henry", "henrys", "henries",
    "ohm", "ohms", "volt", "volts", "watt", "watts", "amp", "amps", "ampere", "amperes",
];

/// Units in an answer box, and words like others in running text: "one second later", "a
/// hundred cycles". A pace ("cycles a second") is found as a phrase.
const PLAIN_WORDS: [&str; 4] = ["cycle", "cycles", "second", "seconds"];

/// Prefixes of the words.
const PREFIXES: [&str; 10] = [
    "micromicro",
    "kilo",
    "mega",
    "giga",
    "centi",
    "milli",
    "micro",
    "nano",
    "pico",
    "",
];

/// Spaces, and signs that nobody sees, that may stand between number and unit.
const SPACES: [char; 9] = [
    ' ', '\n', '\t', '\u{a0}', '\u{202f}', '\u{2009}', '\u{200b}', '\u{2060}', '\u{ad}',
];

/// Where the unit behind a number that ends at `at` ends.
pub(super) fn end(text: &str, at: usize, spelled: bool) -> Option<usize> {
    let rest = &text[at..];
    let trimmed = rest.trim_start_matches(SPACES);
    let trimmed = trimmed.strip_prefix(['-', '\u{2011}']).unwrap_or(trimmed);
    let attached = trimmed.len() == rest.len();
    let already_apart = text[..at].ends_with(SPACES);
    if spelled && attached && !already_apart {
        return None;
    }
    // "The 1930s" are no seconds.
    if attached && matches!(letters(trimmed), "s" | "S") {
        return None;
    }
    let found = length(trimmed).or_else(|| bracketed(trimmed));
    found.map(|length| text.len() - trimmed.len() + length)
}

/// The length of a unit in brackets: "470 (kHz)".
fn bracketed(text: &str) -> Option<usize> {
    let inside = text.strip_prefix(['(', '['])?;
    let length = length(inside)?;
    inside[length..]
        .starts_with([')', ']'])
        .then_some(length + 2)
}

/// Whether the heading of a table's column ends in a unit: "Dial, kHz", "IF (kHz)".
pub(crate) fn ends_in_unit(heading: &str) -> bool {
    let heading = heading.trim_end().trim_end_matches([')', ']']);
    let from = heading.rfind([' ', '(', '[', ',', '\n', '/']);
    let slash = heading.rfind([' ', '(', '[', ',', '\n']);
    [from, slash].into_iter().any(|from| {
        let last = &heading[from.map_or(0, |from| from + 1)..];
        length(last) == Some(last.len())
    })
}

/// The length of the unit with which a text begins.
fn length(text: &str) -> Option<usize> {
    if let Some(sign) = text.chars().next().filter(|sign| "%‰℃".contains(*sign)) {
        return Some(sign.len_utf8());
    }
    if let Some(rest) = text.strip_prefix('°') {
        let rest = rest.trim_start_matches(SPACES);
        let celsius = letters(rest);
        return matches!(celsius, "C" | "F").then(|| text.len() - rest.len() + celsius.len());
    }
    symbol(text).or_else(|| phrase(text))
}

/// The letters, micro signs and ohm signs with which a text begins.
fn letters(text: &str) -> &str {
    let end = text.find(|sign: char| !sign.is_alphabetic());
    &text[..end.unwrap_or(text.len())]
}

fn symbol(text: &str) -> Option<usize> {
    let first = letters(text);
    let per_second = text[first.len()..]
        .strip_prefix('/')
        .map(letters)
        .map(|second| &text[..first.len() + 1 + second.len()]);
    let token = [per_second, Some(first)]
        .into_iter()
        .flatten()
        .find(|token| is_symbol(token))?;
    let after = text[token.len()..].chars().next();
    (!after.is_some_and(char::is_alphanumeric)).then_some(token.len())
}

fn is_symbol(token: &str) -> bool {
    !token.is_empty()
        && !PLAIN_WORDS.contains(&token.to_lowercase().as_str())
        && (MORE_SYMBOLS.contains(&token)
            || is_word(&token.to_lowercase())
            || KINDS.iter().any(|kind| is_read(*kind, token))
            || is_voltage_or_current_of_a_sort(token))
}

/// Whether the token is a voltage or current with its sort behind it: "VAC", "mVrms".
fn is_voltage_or_current_of_a_sort(token: &str) -> bool {
    SORTS.iter().any(|sort| {
        let unit = token.strip_suffix(sort).filter(|unit| !unit.is_empty());
        unit.is_some_and(|unit| MORE_SYMBOLS[..4].contains(&unit) || is_read(Kind::Voltage, unit))
    })
}

/// Whether the catalogue reads the token as a unit of a kind, or asks which one it is.
fn is_read(kind: Kind, token: &str) -> bool {
    match parse::value(kind, &format!("1 {token}"), None) {
        Ok(_) => true,
        Err(error) => matches!(error.rule(), parse::Rule::Ambiguous(_)),
    }
}

fn is_word(lower: &str) -> bool {
    if matches!(lower, "decibel" | "decibels" | "percent") {
        return true;
    }
    PREFIXES.iter().any(|prefix| {
        lower.strip_prefix(prefix).is_some_and(|word| {
            WORDS.contains(&word) && !(prefix.is_empty() && word.starts_with("cycle"))
        })
    })
}

/// Units of several words: "per cent", "degrees C", "cycles a second", "micro-henries".
fn phrase(text: &str) -> Option<usize> {
    let first = letters(text);
    let gap = text[first.len()..].trim_start_matches(SPACES);
    let gap = gap.strip_prefix('-').unwrap_or(gap);
    let second = letters(gap);
    let end = text.len() - gap.len() + second.len();
    let (first, second) = (first.to_lowercase(), second.to_lowercase());
    let joined = match first.as_str() {
        "per" => second == "cent",
        "degree" | "degrees" => matches!(
            second.as_str(),
            "c" | "celsius" | "centigrade" | "f" | "fahrenheit"
        ),
        "cycle" | "cycles" => matches!(second.as_str(), "a" | "per" | "each"),
        prefix => {
            !prefix.is_empty() && PREFIXES.contains(&prefix) && WORDS.contains(&second.as_str())
        }
    };
    joined.then_some(end)
}

#[cfg(test)]
mod tests {
    use super::ends_in_unit;

    #[test]
    fn headings_that_carry_a_unit() {
        for heading in [
            "kHz",
            "Dial, kHz",
            "IF (kHz)",
            "Depth %",
            "Swing / kc/s",
            "length [m]",
            "Coil in µH",
        ] {
            assert!(ends_in_unit(heading), "{heading}");
        }
        for heading in ["", "Dial", "The set", "kHz and more", "Lesson", "Times"] {
            assert!(!ends_in_unit(heading), "{heading}");
        }
    }
}
