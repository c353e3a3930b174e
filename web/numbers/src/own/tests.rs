use super::apply;
use crate::Need;
use crate::recipes::{Figure, Number, Recipes, Rule, Unit};
use myset::{OwnSet, Typed};
use std::collections::BTreeMap;

fn texts(pairs: &[(&str, &str)]) -> BTreeMap<String, String> {
    let pairs = pairs.iter();
    pairs
        .map(|(key, value)| ((*key).to_owned(), (*value).to_owned()))
        .collect()
}

fn number(what: &str, typed: &str, unit: usize, over: Option<usize>) -> Number {
    Number {
        what: what.to_owned(),
        typed: typed.to_owned(),
        unit: Some(unit),
        over,
    }
}

fn unit(id: &str, rule: Rule) -> Unit {
    Unit {
        id: id.to_owned(),
        rule,
    }
}

fn recipes() -> Recipes {
    let above = Need {
        holds: "side is above".to_owned(),
        says: "This is about an oscillator above.".to_owned(),
    };
    Recipes {
        givens: texts(&[
            ("dial", "1089 kHz"),
            ("if", "470 kHz"),
            ("side", "above"),
            ("runs-at", "calc:oscillator"),
        ]),
        own: texts(&[("if", "if"), ("side", "side")]),
        over: vec![texts(&[("dial", "693 kHz")]), texts(&[("if", "465 kHz")])],
        units: vec![
            unit("always", Rule::Follows(Vec::new())),
            unit("above", Rule::Follows(vec![above])),
            unit("story", Rule::Stays("It is a story.".to_owned())),
        ],
        numbers: vec![
            number("given:dial", "1089 kHz", 0, None),
            number(
                "calc:sum?signal=dial&oscillator=runs-at",
                "2648 kHz",
                0,
                None,
            ),
            number("calc:oscillator", "1559 kHz", 0, Some(0)),
            number("calc:oscillator", "1559 kHz", 0, Some(1)),
            number("given:if", "470 kHz", 1, None),
            number("calc:image", "2029 kHz", 2, None),
        ],
        figures: vec![Figure {
            unit: 0,
            pairs: vec![
                ("dial".to_owned(), "dial".to_owned()),
                ("if".to_owned(), "if".to_owned()),
                ("move".to_owned(), "if".to_owned()),
            ],
        }],
    }
}

fn set(pairs: &[(&'static str, &str)], side: &str) -> OwnSet {
    Typed {
        boxes: pairs
            .iter()
            .map(|(key, value)| (*key, (*value).to_owned()))
            .collect(),
        side: side.to_owned(),
        region: "1".to_owned(),
        ..Typed::default()
    }
    .set()
    .unwrap()
}

#[test]
fn numbers_follow_the_set_through_every_input() {
    let outcome = apply(&recipes(), &set(&[("if", "455 kHz")], "above"));
    let told: Vec<(usize, &str)> = outcome
        .numbers
        .iter()
        .map(|(place, text, _)| (*place, text.as_str()))
        .collect();
    // By hand: 1089 + 455 = 1544, and 1089 + 1544 = 2633; 693 + 455 = 1148. The example
    // with an IF of its own stays.
    assert_eq!(told, [(1, "2633 kHz"), (2, "1148 kHz"), (4, "455 kHz")]);
    assert_eq!(
        outcome.figures,
        [(0, "dial=1089 kHz&if=455 kHz&move=if".to_owned())]
    );
    assert_eq!(
        outcome.stays,
        [("story".to_owned(), "It is a story.".to_owned())]
    );
    assert_eq!(outcome.left, 1);
}

#[test]
fn what_no_longer_holds_stays_whole_and_says_why() {
    let outcome = apply(&recipes(), &set(&[("if", "125 kHz")], "below"));
    let why = (
        "above".to_owned(),
        "This is about an oscillator above.".to_owned(),
    );
    assert!(outcome.stays.contains(&why), "{outcome:?}");
    assert!(outcome.numbers.iter().all(|(place, ..)| *place < 4));
    let short = set(
        &[
            ("if", "455 kHz"),
            ("mw-low", "520 kHz"),
            ("mw-high", "1000 kHz"),
        ],
        "above",
    );
    let outcome = apply(&recipes(), &short);
    let why = (
        "always".to_owned(),
        "Your set’s medium wave dial does not reach 1089 kHz.".to_owned(),
    );
    assert_eq!(outcome.stays[0], why);
    assert!(outcome.figures.is_empty());
}

#[test]
fn the_practice_set_s_own_figures_change_nothing() {
    let outcome = apply(&recipes(), &set(&[("if", "470 kHz")], "above"));
    assert!(
        outcome.numbers.is_empty() && outcome.stays.is_empty(),
        "{outcome:?}"
    );
}
