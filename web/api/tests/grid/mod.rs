//! The grid over which the core is compared bit for bit: natively and in a browser it
//! has to give the same lines as the committed `grid.txt`.
//!
//! The grid follows the catalogue. Every entry's example is varied: each parameter by
//! powers of ten, then all at once by factors from a fixed sequence of integers. A line
//! is the expression and the bits and text of its answer, or that it is refused.
//! Further lines show and read numbers of every kind; the last hold whole columns.
//!
//! After a change that is meant to change values, or a new entry, write it anew with
//! `UPDATE_GRID=1 cargo test -p api --test native_grid` and read the difference.

mod columns;
mod sequence;

use sequence::Sequence;
use superhet::catalogue::{Entry, Parameter, catalogue, evaluate_with, split};
use superhet::units::{Kind, display, parse};

/// The committed lines.
pub(crate) const COMMITTED: &str = include_str!("grid.txt");

/// Variations of all parameters at once, for each entry.
const VARIATIONS: u32 = 16;

/// Numbers that are shown and read, for each kind.
const NUMBERS: u32 = 40;

const SHOWN_KINDS: [Kind; 12] = [
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
    Kind::Ratio,
    Kind::Depth,
];

/// All lines, the first of them a digest of the others.
pub(crate) fn lines() -> Vec<String> {
    let mut lines = Vec::new();
    for entry in catalogue() {
        lines.extend(scaled(entry));
        lines.extend(varied(entry));
    }
    for kind in SHOWN_KINDS {
        lines.extend(shown(kind));
    }
    lines.extend(columns::lines());
    lines.insert(0, format!("digest {:016x}", digest(&lines)));
    lines
}

/// One line that differs from the committed ones, or nothing.
pub(crate) fn first_difference() -> Option<String> {
    let lines = lines();
    let mut committed = COMMITTED.lines();
    for line in lines.iter().skip(1) {
        // The digest differs whenever anything does, so it says the least.
        let wanted = committed.by_ref().find(|line| !line.starts_with("digest"));
        if wanted != Some(line.as_str()) {
            let wanted = wanted.unwrap_or("nothing more");
            return Some(format!("got      {line}\nexpected {wanted}"));
        }
    }
    let count = COMMITTED.lines().count();
    if count != lines.len() {
        return Some(format!("got {} lines, expected {count}", lines.len()));
    }
    let wanted = COMMITTED.lines().next();
    (wanted != Some(lines[0].as_str())).then(|| format!("{} differs from {wanted:?}", lines[0]))
}

/// FNV-1a, 64 bits.
///
/// [G. Fowler, L. C. Noll, K.-P. Vo, D. Eastlake, The FNV Non-Cryptographic Hash
/// Algorithm, section 2]
fn digest(lines: &[String]) -> u64 {
    let bytes = lines.iter().flat_map(|line| line.bytes().chain([b'\n']));
    bytes.fold(0xcbf2_9ce4_8422_2325, |hash, byte| {
        (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3)
    })
}

/// The example with each number in turn scaled by powers of ten.
fn scaled(entry: &Entry) -> Vec<String> {
    let mut lines = Vec::new();
    for (place, (_, typed)) in split(entry.example).1.iter().enumerate() {
        let parameter = &entry.parameters[place];
        let Some(value) = number(parameter, typed) else {
            continue;
        };
        for scale in [0.1, 10.0] {
            let mut pairs = split(entry.example).1;
            pairs[place].1 = display::text(parameter.kind, value * scale);
            lines.push(line(entry, &pairs));
        }
    }
    lines
}

/// The example with everything varied.
fn varied(entry: &Entry) -> Vec<String> {
    let mut sequence = Sequence::new(entry.name);
    let vary = |variation| {
        let mut pairs = split(entry.example).1;
        for (key, typed) in &mut pairs {
            if let Some(parameter) = entry.parameter(key) {
                *typed = another(parameter, typed, variation, &mut sequence);
            }
        }
        line(entry, &pairs)
    };
    (0..VARIATIONS).map(vary).collect()
}

/// A number near the typed one, another whole number, or another word. Every second
/// variation has all digits.
fn another(parameter: &Parameter, typed: &str, variation: u32, sequence: &mut Sequence) -> String {
    let span = (parameter.max - parameter.min) as u32;
    match (parameter.kind, number(parameter, typed)) {
        (Kind::Choice, _) => {
            let count = parameter.choices.len() as u32;
            parameter.choices[sequence.below(count) as usize].to_string()
        }
        (Kind::Integer, _) => (parameter.min as u32 + sequence.below(span + 1)).to_string(),
        (kind, Some(value)) => {
            let value = value * f64::from(700 + sequence.below(700)) / 1000.0;
            if variation.is_multiple_of(2) {
                display::text(kind, value)
            } else {
                format!("{value:e}{}", kind.unit())
            }
        }
        (_, None) => typed.to_string(),
    }
}

/// The value of a number that the example types.
fn number(parameter: &Parameter, typed: &str) -> Option<f64> {
    match parameter.kind {
        Kind::Choice | Kind::Integer => None,
        kind => parse::value(kind, typed, None).ok(),
    }
}

fn line(entry: &Entry, pairs: &[(String, String)]) -> String {
    let mut line = entry.name.to_string();
    for (place, (key, typed)) in pairs.iter().enumerate() {
        let mark = if place == 0 { '?' } else { '&' };
        line.push_str(&format!("{mark}{key}={typed}"));
    }
    let pairs: Vec<(&str, &str)> = pairs
        .iter()
        .map(|(key, typed)| (key.as_str(), typed.as_str()))
        .collect();
    match evaluate_with(entry.name, &pairs) {
        Ok(answer) => format!("{line} = {:016x} {}", answer.value.to_bits(), answer.text),
        Err(_) => format!("{line} is refused"),
    }
}

/// Numbers over many powers of ten: typed, read, shown and read again.
fn shown(kind: Kind) -> Vec<String> {
    let mut sequence = Sequence::new(kind.name());
    let show = |_| {
        let digits = sequence.below(1_000_000_000);
        let power = sequence.below(30) as i32 - 20;
        let typed = format!("{digits}e{power}{}", kind.unit());
        match parse::value(kind, &typed, None) {
            Ok(value) => {
                let text = display::text(kind, value);
                let again = parse::value(kind, &text, None).map(f64::to_bits);
                let again = again.unwrap_or_default();
                format!("{typed} = {:016x} {text} = {again:016x}", value.to_bits())
            }
            Err(_) => format!("{typed} is refused"),
        }
    };
    (0..NUMBERS).map(show).collect()
}
