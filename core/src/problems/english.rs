//! What makes a filled-in text read badly: a slot left open, a unit twice, a plural
//! unit, the wrong article before a number.
//!
//! This finds what filling slots can break. It does not judge style.

use alloc::{format, string::String, vec::Vec};

/// Unit symbols that a problem's text can hold.
const UNITS: [&str; 20] = [
    "Hz", "kHz", "MHz", "m", "pF", "nF", "µF", "H", "mH", "µH", "Ω", "kΩ", "MΩ", "V", "mV", "W",
    "mW", "kW", "dB", "%",
];

/// What reads badly in a text; nothing when it reads well.
pub fn complaints(text: &str) -> Vec<String> {
    let words: Vec<&str> = text.split_whitespace().collect();
    let mut found = of_the_whole(text);
    found.extend(words.iter().filter_map(|word| of_one(word)));
    found.extend(
        words
            .windows(2)
            .filter_map(|pair| of_a_pair(pair[0], pair[1])),
    );
    found
}

fn of_the_whole(text: &str) -> Vec<String> {
    let mut found = Vec::new();
    if text.contains(['{', '}']) {
        found.push("a slot was not filled".into());
    }
    if text.contains("  ") || text.trim() != text || text.contains(['\n', '\t']) {
        found.push("it holds stray white space".into());
    }
    if [" .", " ,", " ;", " :", " ?", " !"]
        .iter()
        .any(|stop| text.contains(stop))
    {
        found.push("a space stands before a stop".into());
    }
    if ["..", ",,", "()", "( ", " )"]
        .iter()
        .any(|pair| text.contains(pair))
    {
        found.push("a stop or bracket stands idle".into());
    }
    if !text.starts_with(|c: char| c.is_uppercase() || c.is_ascii_digit() || c == '“') {
        found.push("it does not begin as a sentence does".into());
    }
    if !text.ends_with(['.', '?', '!', ':', '”']) {
        found.push("it does not end as a sentence does".into());
    }
    found
}

fn of_one(word: &str) -> Option<String> {
    let bare = bare(word);
    let plural = bare
        .strip_suffix('s')
        .filter(|unit| unit.len() > 1 && UNITS.contains(unit));
    plural.map(|_| format!("{bare:?} is a unit in the plural"))
}

fn of_a_pair(first: &str, second: &str) -> Option<String> {
    let closed = first.ends_with(['.', ',', ';', ':', '?', '!', ')']);
    let (one, other) = (bare(first), bare(second));
    if UNITS.contains(&one) && UNITS.contains(&other) && !closed {
        return Some(format!("{first:?} is followed by another unit, {second:?}"));
    }
    if one.eq_ignore_ascii_case(other) && one.chars().all(char::is_alphabetic) && !closed {
        return Some(format!("{one:?} stands twice"));
    }
    if one == "1" && matches!(other, "times" | "figures") {
        return Some(format!("\"1 {other}\" is one in the plural"));
    }
    article(one, other)
}

/// `a 9` and `an 8`: eight, eleven and eighteen begin with a vowel, and so do numbers
/// whose first group of three is one of them or begins with an eight.
fn article(first: &str, number: &str) -> Option<String> {
    if !number.starts_with(|c: char| c.is_ascii_digit()) {
        return None;
    }
    let whole = number
        .find(|c: char| !c.is_ascii_digit())
        .unwrap_or(number.len());
    let leading = &number[..(whole + 2) % 3 + 1];
    let vowel = leading.starts_with('8') || leading == "11" || leading == "18";
    let wrong = if vowel { "a" } else { "an" };
    first
        .eq_ignore_ascii_case(wrong)
        .then(|| format!("\"{first} {number}\" has the wrong article"))
}

fn bare(word: &str) -> &str {
    word.trim_matches(|c: char| !c.is_alphanumeric() && c != '%')
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn good_english_passes() {
        for text in [
            "Tam sets the dial to 1200 kHz. Where is the quiet spot?",
            "It climbs 3.057 times, from 525 kHz to 1605 kHz.",
            "An 800 kHz station, an 11 kHz note, an 18 MHz band and a 1100 kHz mark.",
            "From 900 kHz, kHz after kHz.",
            "Odile says: “Fetch a pencil.”",
        ] {
            assert_eq!(complaints(text), Vec::<String>::new(), "{text}");
        }
    }

    #[test]
    fn broken_english_is_found() {
        for (text, what) in [
            ("The dial says {dial}.", "not filled"),
            ("The dial says  1200 kHz.", "white space"),
            ("The dial says 1200 kHz .", "before a stop"),
            ("The dial says 1200 kHz..", "idle"),
            ("the dial says so.", "begin"),
            ("The dial says 1200 kHz", "end"),
            ("It moves by 1 kHzs.", "plural"),
            ("It moves by 1 kHz kHz.", "another unit"),
            ("The the dial.", "twice"),
            ("It climbs 1 times.", "plural"),
            ("A 800 kHz station.", "article"),
            ("An 900 kHz station.", "article"),
        ] {
            let found = complaints(text);
            assert!(found.iter().any(|c| c.contains(what)), "{text}: {found:?}");
        }
    }
}
