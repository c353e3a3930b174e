//! The number at the start of a typed value: marks, groups and a power of ten.
//!
//! - A point is always a decimal point.
//! - A comma before exactly three digits groups thousands, unless only `0` (or nothing)
//!   stands before it; any other single comma is a decimal comma.
//! - Several commas, or spaces, group thousands: one to three digits, then threes.
//! - A point and a comma in one number are refused.

use super::error::Rule;
use alloc::vec::Vec;

/// Exponents are clamped here: far beyond any `f64`, far from overflowing.
const LARGEST_EXPONENT: i64 = 1_000_000;

/// A decimal number: the digits without marks, times ten to the power.
pub(super) struct Number {
    pub(super) negative: bool,
    pub(super) digits: Vec<u8>,
    pub(super) power: i64,
    /// The power under the other reading of the comma, where there is one.
    pub(super) other_power: Option<i64>,
}

/// The number that `text` starts with, and the rest without blanks around it.
pub(super) fn read(text: &str) -> Result<(Number, &str), Rule> {
    let (negative, unsigned) = sign(text);
    let end = unsigned
        .find(|letter: char| !is_body(letter))
        .unwrap_or(unsigned.len());
    let (body, rest) = unsigned.split_at(end);
    let body = body.trim_end_matches(is_space);
    if !body.bytes().any(|byte| byte.is_ascii_digit()) {
        return Err(Rule::NoNumber);
    }
    let (digits, decimals, ambiguous) = marks(body)?;
    let (exponent, rest) = exponent(rest, end == body.len());
    let power = exponent - decimals;
    Ok((
        Number {
            negative,
            digits,
            power,
            other_power: ambiguous.then_some(exponent - 3),
        },
        rest.trim(),
    ))
}

fn sign(text: &str) -> (bool, &str) {
    if let Some(rest) = text.strip_prefix(['-', '\u{2212}']) {
        return (true, rest.trim_start());
    }
    (false, text.strip_prefix('+').unwrap_or(text).trim_start())
}

/// Blanks that people and phones put between groups of digits.
fn is_space(letter: char) -> bool {
    matches!(letter, ' ' | '\u{a0}' | '\u{2009}' | '\u{202f}')
}

fn is_body(letter: char) -> bool {
    letter.is_ascii_digit() || letter == '.' || letter == ',' || is_space(letter)
}

/// The digits, how many of them are decimals, and whether a comma that was taken to
/// group thousands could also have been a decimal comma.
fn marks(body: &str) -> Result<(Vec<u8>, i64, bool), Rule> {
    let points = body.matches('.').count();
    let commas = body.matches(',').count();
    match (points, commas) {
        (0, 0) => Ok((groups(body, is_space)?, 0, false)),
        (1, 0) => decimal(body, '.'),
        (0, 1) => comma(body),
        (0, _) => Ok((groups(body, |letter| letter == ',')?, 0, false)),
        (_, 0) => Err(Rule::MisplacedMark),
        _ => Err(Rule::MixedMarks),
    }
}

/// A number with one comma.
fn comma(body: &str) -> Result<(Vec<u8>, i64, bool), Rule> {
    let (before, after) = body.split_once(',').unwrap_or((body, ""));
    if after.is_empty() {
        return Err(Rule::MisplacedMark);
    }
    let only_zero = before.bytes().all(|byte| byte == b'0');
    if after.len() != 3 || only_zero {
        return decimal(body, ',');
    }
    if !all_digits(before) || !all_digits(after) {
        return Err(Rule::MisplacedMark);
    }
    Ok((before.bytes().chain(after.bytes()).collect(), 0, true))
}

/// A number with one decimal mark, which may have nothing before it.
fn decimal(body: &str, mark: char) -> Result<(Vec<u8>, i64, bool), Rule> {
    let (before, after) = body.split_once(mark).unwrap_or((body, ""));
    if !all_digits(after) {
        return Err(Rule::MisplacedMark);
    }
    let mut digits = Vec::new();
    if !before.is_empty() {
        digits = groups(before, is_space)?;
    }
    digits.extend(after.bytes());
    Ok((digits, after.len() as i64, false))
}

/// Whole digits, which may stand in groups: one to three, then threes.
fn groups(text: &str, is_mark: fn(char) -> bool) -> Result<Vec<u8>, Rule> {
    let mut pieces = text.split(is_mark);
    let first = pieces.next().unwrap_or("");
    let mut digits: Vec<u8> = first.bytes().collect();
    let mut grouped = false;
    for piece in pieces {
        if piece.len() != 3 {
            return Err(Rule::MisplacedMark);
        }
        grouped = true;
        digits.extend(piece.bytes());
    }
    let group_like = first.len() <= 3 && !first.starts_with('0');
    let first_fits = !first.is_empty() && (!grouped || group_like);
    if first_fits && digits.iter().all(u8::is_ascii_digit) {
        Ok(digits)
    } else {
        Err(Rule::MisplacedMark)
    }
}

fn all_digits(text: &str) -> bool {
    text.bytes().all(|byte| byte.is_ascii_digit())
}

/// The power of ten of `e6`, `E+6` or `e-6` right after the digits, and the rest.
fn exponent(rest: &str, adjoining: bool) -> (i64, &str) {
    let Some(after) = rest.strip_prefix(['e', 'E']).filter(|_| adjoining) else {
        return (0, rest);
    };
    let (negative, unsigned) = match after.strip_prefix(['-', '\u{2212}']) {
        Some(unsigned) => (true, unsigned),
        None => (false, after.strip_prefix('+').unwrap_or(after)),
    };
    let end = unsigned
        .find(|letter: char| !letter.is_ascii_digit())
        .unwrap_or(unsigned.len());
    if end == 0 {
        return (0, rest);
    }
    let power = unsigned[..end].bytes().fold(0, |power: i64, digit| {
        (power * 10 + i64::from(digit - b'0')).min(LARGEST_EXPONENT)
    });
    (if negative { -power } else { power }, &unsigned[end..])
}
