//! Expressions: of the catalogue as links and the command line hold them, and of problem
//! families.

use crate::fits_a_line;
use nasty::{MILLION, Maker, Trial};
use superhet::catalogue::{LONGEST, catalogue, evaluate, split};
use superhet::problems::expression::{self, Condition, Expression};

/// What stands in a link.
const WORDS: &[&str] = &[
    "?",
    "&",
    "=",
    "%20",
    "%",
    "+",
    " ",
    "dial",
    "if",
    "side",
    "station",
    "frequency",
    "q",
    "k",
    "above",
    "below",
    "1200kHz",
    "470 kHz",
    "0",
    "-1",
    "1e300",
    "250 m",
    "80%",
    "4",
    "oscillator",
    "image",
    "tracking",
    "wavelength",
];

/// An expression has at most 4000 bytes, so at most 4000 keys, each held with its value as
/// two texts (48 bytes), as two slices of them (32) and while their list grows once more as
/// much and a half: 4000 · 80 · 2.5.
const MOST_HELD: u64 = 800_000;

fn near_an_example(maker: &mut Maker) -> String {
    let valid = catalogue()[maker.below(catalogue().len())].example;
    maker.near(valid, WORDS)
}

#[test]
fn a_million_expressions_are_taken_apart() {
    let trial = Trial {
        seed: 4,
        cases: MILLION,
        most_held: MOST_HELD,
    };
    trial.run(near_an_example, |text| {
        if text.len() > LONGEST {
            let refusal = evaluate(text).expect_err("it is too long");
            assert!(
                refusal.to_string().contains("at most 4000 bytes"),
                "{refusal}"
            );
            return;
        }
        let (name, pairs) = split(text);
        let pieces = pairs.iter().map(|(key, value)| key.len() + value.len());
        // An escape that is no UTF-8 becomes a character of three bytes.
        assert!(name.len() + pieces.sum::<usize>() <= 3 * text.len());
    });
}

/// Fewer, since each is worked out, and for a name misspelt the nearest ones are looked for.
#[test]
fn fifty_thousand_expressions_are_worked_out_or_refused() {
    let trial = Trial {
        seed: 8,
        cases: 50_000,
        most_held: MOST_HELD,
    };
    trial.run(near_an_example, |text| match evaluate(text) {
        Ok(answer) => assert!(answer.value.is_finite() && fits_a_line(&answer.text, 40)),
        Err(refusal) => assert!(fits_a_line(&refusal.to_string(), 400), "{refusal}"),
    });
}

/// Expressions of families, as valid as they come.
const OF_FAMILIES: &[&str] = &[
    "oscillator?dial={station}&side=below",
    "2 * dial - oscillator",
    "(f-high - f-low) / 1 kHz",
    "root(capacitance-ratio) * (dial + 2 * if)",
    "image >= 1606.5 kHz",
    "side != 'above'",
];

const PIECES: &[&str] = &[
    "dial",
    "if",
    "root",
    "(",
    ")",
    " ",
    " + ",
    " - ",
    " * ",
    " / ",
    "<",
    "<=",
    "=",
    "!=",
    "'",
    "'above'",
    "1",
    "2.5",
    "455 kHz",
    "80 %",
    "image?",
    "dial={station}",
    "&",
    "{",
    "}",
];

/// At most 1000 words of 40 bytes, in a list that grows, and as many branches of at most 100
/// bytes in the tree that is made of them.
const MOST_HELD_BY_A_TREE: u64 = 250_000;

#[test]
fn a_million_expressions_of_families_are_read_or_refused() {
    let make = |maker: &mut Maker| {
        let valid = maker.one_of(OF_FAMILIES);
        maker.near(valid, PIECES)
    };
    Trial {
        seed: 5,
        cases: MILLION,
        most_held: MOST_HELD_BY_A_TREE,
    }
    .run(make, |text| {
        let tree = Expression::read(text);
        let condition = Condition::read(text);
        assert!(tree.is_err() || condition.is_err(), "it cannot be both");
        if text.len() > expression::LONGEST {
            assert!(tree.is_err() && condition.is_err());
        }
    });
}
