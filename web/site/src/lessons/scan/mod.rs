//! Finds numbers with a unit in running text.
//!
//! A number is digits (grouped, decimal, with an exponent), a fraction sign, or spelled.
//! A unit is anything that the catalogue reads, in symbols or words, or %, V, A, mA, W,
//! °C, mm. Numbers before a unit may form a list or a range ("525 to 1605 kHz"), which
//! is found as one. A marked number, [`MARKED`], ends such a list like a unit does:
//! in "525 to [1605 kHz](given:f-high)" the first number has no mark.

mod digits;
mod spelled;
mod unit;

use super::prose::MARKED;
use std::ops::Range;

pub(crate) use unit::ends_in_unit;

/// The stretches of a text that are a number, or several, with a unit.
pub(crate) fn numbers_with_unit(text: &str) -> Vec<Range<usize>> {
    let mut found = Vec::new();
    let mut at = 0;
    while at < text.len() {
        let Some(number) = number_at(text, at) else {
            at += text[at..].chars().next().map_or(1, char::len_utf8);
            continue;
        };
        match end_with_unit(text, number) {
            Some(end) => {
                found.push(at..end);
                at = end;
            }
            None => at = number.end,
        }
    }
    found
}

/// The stretches of a text where a unit stands right behind a marked number, outside the
/// mark that should hold it.
pub(crate) fn units_outside_marks(text: &str) -> Vec<Range<usize>> {
    let marks = text.match_indices(MARKED).map(|(at, mark)| at + mark.len());
    marks
        .filter_map(|from| {
            let end = unit::end(text, from, true)?;
            let gap = text[from..end].find(|sign: char| !sign.is_whitespace() && sign != '-')?;
            Some(from + gap..end)
        })
        .collect()
}

/// A number: where it ends, and whether it is spelled.
#[derive(Clone, Copy)]
struct Number {
    end: usize,
    spelled: bool,
}

fn number_at(text: &str, at: usize) -> Option<Number> {
    let before = text[..at].chars().next_back();
    if before.is_some_and(|letter| letter.is_alphanumeric() || letter == '_') {
        return None;
    }
    if let Some(end) = digits::end(text, at) {
        return Some(Number {
            end: spelled::after_digits(text, end),
            spelled: false,
        });
    }
    spelled::end(text, at).map(|end| Number { end, spelled: true })
}

/// Where the unit behind a number, or behind the list that it begins, ends.
fn end_with_unit(text: &str, number: Number) -> Option<usize> {
    end_of_list(text, number).map(|(end, _)| end)
}

/// The same, with whether the list is joined by more than commas: in "In 1978, 9 kHz"
/// the year is no part of a list, in "465, 470 and 475 kHz" the first number is.
fn end_of_list(text: &str, number: Number) -> Option<(usize, bool)> {
    if let Some(end) = unit::end(text, number.end, number.spelled) {
        return Some((end, false));
    }
    let (next, joined) = next_of_list(text, number.end)?;
    if text[next..].starts_with(MARKED) {
        return joined.then_some((number.end, true));
    }
    let (end, later_joined) = end_of_list(text, number_at(text, next)?)?;
    (joined || later_joined).then_some((end, true))
}

/// Where the next number of a list or range would begin, and whether it is joined by
/// more than a comma.
fn next_of_list(text: &str, at: usize) -> Option<(usize, bool)> {
    let rest = text[at..].trim_start();
    let after_sign = rest.strip_prefix(['–', '-', '/', '…', '×']);
    let after_comma = rest.strip_prefix(',').unwrap_or(rest).trim_start();
    let after_word = JOINING
        .iter()
        .find_map(|word| strip_word(after_comma, word));
    let (next, joined) = match (after_sign, after_word) {
        (Some(next), _) | (None, Some(next)) => (next, true),
        (None, None) if rest.starts_with(',') => (after_comma, false),
        (None, None) => return None,
    };
    Some((text.len() - next.trim_start().len(), joined))
}

/// Words between the numbers of a list or range.
const JOINING: [&str; 6] = ["to", "and", "or", "by", "up to", "down to"];

fn strip_word<'a>(text: &'a str, word: &str) -> Option<&'a str> {
    let rest = text.strip_prefix(word)?;
    (!rest.starts_with(char::is_alphanumeric)).then_some(rest)
}

#[cfg(test)]
mod tests {
    use super::{numbers_with_unit, units_outside_marks};

    fn found(text: &str) -> Vec<&str> {
        numbers_with_unit(text)
            .into_iter()
            .map(|range| &text[range])
            .collect()
    }

    /// Each of these, as a sentence's middle, is one number with its unit.
    #[test]
    fn numbers_with_units_are_found_whole() {
        let cases = [
            "1.2 MHz",
            "1200kHz",
            "1,200 kHz",
            "1 200 kHz",
            "1200 kc/s",
            "1200 kc",
            "1.2 Mc/s",
            "1.2e6 Hz",
            "250 m",
            "175 µH",
            "175 μH",
            "175 uH",
            "0.2 mH",
            "500 pF",
            "500 pf",
            "500 mmf",
            "500 mmfd",
            "500 µµF",
            "0.0005 mfd",
            "0.0005 µF",
            ".01 uF",
            "2 nF",
            "47k",
            "0.5 meg",
            "2.2 megohm",
            "330 ohm",
            "10 Ω",
            "60 mV",
            "50 kW",
            "6 dB",
            "80 %",
            "80%",
            "240 V",
            "240-V",
            "3 A",
            "two meters",
            "5 v",
            "50 cps",
            "40 mA",
            "5 W",
            "0.1 s",
            "100 ms",
            "2 mA/V",
            "70 °C",
            "70°C",
            "6 mm",
            "0,455 MHz",
            "1\u{a0}200\u{a0}kHz",
            "1\u{202f}200 kHz",
            "470-kHz",
            "-6 dB",
            "−6 dB",
            "½ V",
            "1½ V",
            "10⁶ Hz",
            "1.2 × 10⁶ Hz",
            "100 ohms",
            "30 metres",
            "200 volts",
            "2 amps",
            "250 milliamps",
            "5 watts",
            "20 degrees C",
            "20 degrees Celsius",
            "15 per cent",
            "15 percent",
            "9 kilocycles",
            "60 decibels",
            "50 cycles a",
            "3 micro-henries",
            "3 kilohms",
            "500 picofarads",
            "30 microhenries",
            "0.1 microfarad",
            "2 megohms",
            "2 million ohms",
            "3 hundred and twenty volts",
            "470 (kHz)",
            "230 VAC",
            "5 mVrms",
            "ten kilohertz",
            "nine-kilohertz",
            "a hundred volts",
            "two hundred and forty volts",
            "twenty-five ohms",
            "half a volt",
            "one and a half volts",
            "half a megahertz",
            "a quarter of a volt",
            "two point five megahertz",
            "hundreds of volts",
            "a thousand metres",
            "Ten kilohertz",
            "one volt",
            "a dozen microfarads",
            "two thirds of a volt",
            "525 to 1605 kHz",
            "525–1605 kHz",
            "525 - 1605 kHz",
            "465, 470 and 475 kHz",
            "455 or 465 kHz",
            "five to ten kilohertz",
            "525 up to 1605 kHz",
            "150/285 kHz",
            "1 to 2 V",
            "525\nto 1605 kHz",
            "1200\nkHz",
        ];
        for case in cases {
            let text = format!("It is {case}, he said.");
            assert_eq!(found(&text), [case], "in {text:?}");
            let text = format!("({case})");
            assert_eq!(found(&text), [case], "in {text:?}");
        }
    }

    #[test]
    fn what_is_no_number_with_a_unit_is_left_alone() {
        let cases = [
            "Lesson 5 and the next.",
            "On page 227 it says",
            "3 valves and 5 knobs",
            "in 1978 the plan",
            "in the 1930s it was",
            "It took 2 minutes.",
            "two sets, one knob",
            "kHz stands for kilohertz",
            "a volt from an ohm",
            "2 more",
            "one of them",
            "the 4 that matter",
            "IF1 V",
            "turn it 90 degrees",
            "two a week",
            "someone volts",
            "10 times",
            "50 hours",
            "100 cycles",
            "12-16 turns",
            "half a turn",
            "one amplifier",
            "one and a bit",
            "the one voltage",
            "5 am",
            "1 kind",
            "2 kittens",
            "a hundred stations",
            "chapter 4. A set",
            "Table 2: Voltages",
            "5-valve sets",
            "3 megaphones",
            "lesson 3 (A set)",
            "2 million stations",
            "two mixers",
            "one microphone",
        ];
        for case in cases {
            assert_eq!(found(case), Vec::<&str>::new(), "in {case:?}");
        }
    }

    #[test]
    fn a_marked_number_ends_a_range() {
        assert_eq!(found("from 525 to \u{FFFC}."), ["525"]);
        assert_eq!(found("from \u{FFFC} to 1605 kHz."), ["1605 kHz"]);
        assert_eq!(found("from \u{FFFC} to \u{FFFC}."), Vec::<&str>::new());
        assert_eq!(
            found("In 1978, \u{FFFC} became the rule."),
            Vec::<&str>::new()
        );
        assert_eq!(found("between five and \u{FFFC}."), ["five"]);
    }

    #[test]
    fn a_unit_belongs_inside_the_mark() {
        let outside = |text: &'static str| -> Vec<&str> {
            units_outside_marks(text)
                .into_iter()
                .map(|range| &text[range])
                .collect()
        };
        assert_eq!(
            outside("at \u{FFFC} kHz and \u{FFFC}-volt or \u{FFFC} %"),
            ["kHz", "volt", "%"]
        );
        assert_eq!(
            outside("at \u{FFFC} times, \u{FFFC}. A set, a \u{FFFC} dial"),
            Vec::<&str>::new()
        );
    }

    #[test]
    fn each_of_several_is_found() {
        assert_eq!(
            found("At 525 kHz and 1605 kHz, not ten volts"),
            ["525 kHz", "1605 kHz", "ten volts"]
        );
        assert_eq!(found("In 1978, 9 kHz became the rule."), ["9 kHz"]);
    }
}
