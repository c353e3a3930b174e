//! A number in words.

const COUNTING: [&str; 35] = [
    "zero",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
    "thirteen",
    "fourteen",
    "fifteen",
    "sixteen",
    "seventeen",
    "eighteen",
    "nineteen",
    "twenty",
    "thirty",
    "forty",
    "fifty",
    "sixty",
    "seventy",
    "eighty",
    "ninety",
    "hundred",
    "thousand",
    "million",
    "billion",
    "dozen",
    "nought",
    "point",
];

/// Parts of one, and round numbers left open: a unit may follow them behind "a" or "of a".
const PARTS: [&str; 22] = [
    "half",
    "halves",
    "third",
    "thirds",
    "quarter",
    "quarters",
    "fifth",
    "fifths",
    "tenth",
    "tenths",
    "hundredth",
    "hundredths",
    "thousandth",
    "thousandths",
    "millionth",
    "millionths",
    "tens",
    "dozens",
    "hundreds",
    "thousands",
    "millions",
    "billions",
];

/// Words for many, which "a" or a number in digits may precede.
const LARGE: [&str; 5] = ["hundred", "thousand", "million", "billion", "dozen"];

/// Where the spelled number that begins at `at` ends; behind a part of one this takes in
/// the "a", "of" or "of a" before the unit.
pub(super) fn end(text: &str, at: usize) -> Option<usize> {
    let first = word(text, at)?;
    let mut end = at + first.len();
    let article = matches(&["a", "an"], first);
    if article {
        let (next, from) = next_word(text, end)?;
        if !(matches(&LARGE, next) || matches(&PARTS, next)) {
            return None;
        }
        end = from + next.len();
    } else if !matches(&COUNTING, first) && !matches(&PARTS, first)
        || first.eq_ignore_ascii_case("point")
    {
        return None;
    }
    while let Some(further) = further_word(text, end) {
        end = further;
    }
    let last = &text[at..end];
    Some(
        if PARTS
            .iter()
            .any(|part| last.to_ascii_lowercase().ends_with(part))
        {
            before_unit(text, end)
        } else {
            end
        },
    )
}

/// Past the words that make a number in digits a larger one: "2 million", "3 hundred".
pub(super) fn after_digits(text: &str, end: usize) -> usize {
    let Some((next, from)) = next_word(text, end).filter(|(next, _)| matches(&LARGE, next)) else {
        return end;
    };
    let mut end = from + next.len();
    while let Some(further) = further_word(text, end) {
        end = further;
    }
    end
}

/// The end of one more number word, behind a space, a hyphen, "and" or "and a".
fn further_word(text: &str, end: usize) -> Option<usize> {
    let (mut next, mut from) = next_word(text, end)?;
    for filler in ["and", "a"] {
        if next.eq_ignore_ascii_case(filler) {
            (next, from) = next_word(text, from + next.len())?;
        }
    }
    (matches(&COUNTING, next) || matches(&PARTS, next)).then_some(from + next.len())
}

/// Past "a", "of", "of a" or "of an".
fn before_unit(text: &str, end: usize) -> usize {
    let mut at = end;
    for filler in ["of", "a", "an"] {
        if let Some((next, from)) = next_word(text, at)
            && next.eq_ignore_ascii_case(filler)
        {
            at = from + next.len();
        }
    }
    at
}

fn next_word(text: &str, end: usize) -> Option<(&str, usize)> {
    let rest = &text[end..];
    let trimmed = rest.trim_start_matches([' ', '\n', '\u{a0}', '-', '\u{2011}']);
    let from = text.len() - trimmed.len();
    if from == end {
        return None;
    }
    word(text, from).map(|word| (word, from))
}

fn word(text: &str, at: usize) -> Option<&str> {
    let rest = &text[at..];
    let end = rest
        .find(|letter: char| !letter.is_alphabetic())
        .unwrap_or(rest.len());
    (end > 0).then(|| &rest[..end])
}

fn matches(list: &[&str], word: &str) -> bool {
    list.iter().any(|entry| entry.eq_ignore_ascii_case(word))
}
