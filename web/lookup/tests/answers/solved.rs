//! Any two of dial setting, IF and oscillator, and whose IF it is.

use crate::{answer, dial, hertz};
use lookup::{Find, Form, look_up, view};
use superhet::quantities::conversion::Side;

#[test]
fn the_example_set_answers_and_asks_for_the_ifs() {
    let view = view(&Form::default());
    assert_eq!(
        (view.finds.title(), view.answer.text.as_str()),
        ("Oscillator", "1670 kHz")
    );
    assert_eq!(hertz(&view), 1_670_000.0);
    assert!(view.example);
    assert_eq!(view.beside, "above the dial setting");
    assert_eq!(view.keep, None);
}

#[test]
fn if_and_side_stand_beside_every_answer_once_an_if_is_chosen() {
    for (find, side) in [(Find::Oscillator, Side::Above), (Find::Dial, Side::Below)] {
        let form = Form {
            find,
            side,
            oscillator: "1670".into(),
            ..dial("1200")
        };
        let expected = ["IF 470 kHz, oscillator ", side.word()].concat();
        assert_eq!(view(&form).beside, expected);
        assert!(!view(&form).example);
    }
}

#[test]
fn any_two_give_the_third() {
    let whole = Form {
        oscillator: "1670".into(),
        ..dial("1200")
    };
    let find = |find| Form {
        find,
        ..whole.clone()
    };
    assert_eq!(
        answer(&find(Find::Oscillator)),
        ("1670 kHz".into(), "2140 kHz".into())
    );
    assert_eq!(
        answer(&find(Find::Dial)),
        ("1200 kHz".into(), "2140 kHz".into())
    );
    assert_eq!(
        answer(&find(Find::Intermediate)),
        ("470 kHz".into(), "2140 kHz".into())
    );
}

#[test]
fn an_if_that_is_worked_out_finds_its_own_side() {
    let form = Form {
        find: Find::Intermediate,
        oscillator: "730".into(),
        ..dial("1200")
    };
    let view = view(&form);
    assert_eq!(
        (view.answer.text.as_str(), view.beside.as_str()),
        ("470 kHz", "oscillator below")
    );
}

#[test]
fn an_if_that_is_worked_out_is_the_readers_set_only_after_a_press() {
    let request = "find=if\ndial=1200\noscillator=735\nif=470\nside=above\ndo=";
    let shown = look_up(&[request, "show"].concat());
    let lines =
        |reply: &str, start: &str| reply.lines().filter(|line| line.starts_with(start)).count();
    assert_eq!(lines(&shown, "keep\t"), 0, "{shown}");
    assert_eq!(
        lines(&shown, "field\tif") + lines(&shown, "field\tside"),
        0,
        "{shown}"
    );
    assert!(
        shown.contains("text\toffer\tUse as my set: IF 465 kHz, oscillator below\n"),
        "{shown}"
    );
    assert!(shown.contains("set\toffer\tdata-do\tif 465\n"), "{shown}");
    let pressed = look_up(&[request, "if 465"].concat());
    for line in [
        "field\tfind\toscillator",
        "field\tif\t465",
        "field\tside\tbelow",
        "keep\t1200 kHz\t465 kHz\tbelow\t1",
    ] {
        assert!(
            pressed.lines().any(|found| found == line),
            "{line}: {pressed}"
        );
    }
}

#[test]
fn an_if_that_is_worked_out_as_the_readers_own_is_not_offered() {
    let form = Form {
        find: Find::Intermediate,
        oscillator: "1670".into(),
        ..dial("1200")
    };
    assert_eq!(view(&form).offer, None);
}
