//! Bad input gets one clear sentence, and what was typed stays.

use lookup::{Field, Find, Form, Unit, View, look_up, view};
use superhet::quantities::conversion::Side;

/// The longest sentence that still reads at a glance.
const LONGEST_SENTENCE: usize = 400;

fn refused(form: &Form) -> (Field, String) {
    let View {
        problem,
        answer,
        image,
        keep,
        link,
        ..
    } = view(form);
    let problem = problem.expect("a problem");
    assert!(!problem.waiting, "{}", problem.says);
    assert!(
        problem.says.chars().count() <= LONGEST_SENTENCE && problem.says.ends_with('.'),
        "{}",
        problem.says
    );
    assert_eq!(
        (answer.text.as_str(), answer.value, image.value),
        ("–", None, None)
    );
    assert!(keep.is_none() && link.is_none());
    (problem.field, problem.says)
}

fn dial(text: &str) -> Form {
    Form {
        dial: text.into(),
        ..Form::default()
    }
}

#[test]
fn each_slip_is_named_with_rule_and_value() {
    let rows = [
        (
            "abc",
            "Dial: a frequency starts with a number, such as 1200 kHz (got \"abc\").",
        ),
        (
            "-5 kHz",
            "Dial must lie between 1 kHz and 1000 MHz (got -5 kHz).",
        ),
        ("0", "Dial must lie between 1 kHz and 1000 MHz (got 0 Hz)."),
        (
            "1e999 MHz",
            "Dial: too large for a frequency (got \"1e999 MHz\").",
        ),
        (
            "1200 pF",
            "Dial: a frequency is typed in Hz, kHz, MHz, kc/s, Mc/s, or in metres as a wavelength (got \"1200 pF\").",
        ),
    ];
    for (typed, says) in rows {
        assert_eq!(refused(&dial(typed)), (Field::Dial, says.into()));
    }
}

/// A number without a unit that is doubted: (box, button, typed, sentence, offer).
type Doubted = (
    Field,
    Unit,
    &'static str,
    &'static str,
    Option<&'static str>,
);

#[test]
fn a_bare_number_that_makes_no_sense_in_its_unit_offers_the_one_that_does() {
    let doubted = " is no figure of such a set. If it is meant, type the unit too.";
    let range = " must lie between 1 kHz and 1000 MHz (got ";
    let (khz, mhz, metres) = (Unit::Kilohertz, Unit::Megahertz, Unit::Metres);
    let rows: [Doubted; 9] = [
        (Field::Dial, khz, "1.2", doubted, Some("1.2 MHz")),
        (Field::Dial, khz, "1,2", doubted, Some("1,2 MHz")),
        (Field::Dial, khz, "1.200", doubted, Some("1.200 MHz")),
        (Field::Dial, khz, "9.545", doubted, Some("9.545 MHz")),
        (Field::Dial, khz, "99.9", doubted, None),
        (Field::Dial, mhz, "198", doubted, Some("198 kHz")),
        (Field::Dial, mhz, "9545", range, Some("9545 kHz")),
        (Field::Dial, metres, "9545", doubted, Some("9545 kHz")),
        (Field::Dial, metres, "1.2", doubted, Some("1.2 MHz")),
    ];
    for (field, dial_unit, typed, says, offer) in rows {
        let form = Form {
            dial_unit,
            intermediate: "470".into(),
            ..dial(typed)
        };
        let (named, sentence) = refused(&form);
        assert_eq!(named, field, "{typed}");
        assert!(sentence.contains(says), "{typed}: {sentence}");
        assert_eq!(
            view(&form).offer.map(|offer| offer.text).as_deref(),
            offer,
            "{typed}"
        );
    }
}

#[test]
fn a_bare_if_that_makes_no_sense_offers_megahertz() {
    let form = |intermediate: &str| Form {
        intermediate: intermediate.into(),
        ..dial("95 MHz")
    };
    let (field, says) = refused(&form("10.7"));
    assert_eq!(
        (field, says.as_str()),
        (
            Field::Intermediate,
            "IF: 10.7 kHz is no figure of such a set. If it is meant, type the unit too."
        )
    );
    let offer = view(&form("10.7")).offer.expect("the other unit");
    assert_eq!(
        (offer.says.as_str(), offer.text.as_str()),
        ("10.7 MHz?", "10.7 MHz")
    );
    assert!(view(&form("50")).problem.is_none());
}

#[test]
fn a_typed_unit_is_believed() {
    for typed in ["60 kHz", "1.2 kHz", "9.545 kc/s", "100 MHz"] {
        assert!(view(&dial(typed)).problem.is_none(), "{typed}");
    }
}

#[test]
fn a_press_of_the_offer_lights_the_unit() {
    let reply = look_up("do=dial 1.2 MHz\ndial=1.2\ndial-unit=kHz\nif=470");
    for line in [
        "field\tdial\t1.2",
        "field\tdial-unit\tMHz",
        "text\tanswer-number\t1670",
    ] {
        assert!(reply.lines().any(|found| found == line), "{line}: {reply}");
    }
}

#[test]
fn an_if_above_the_dial_with_the_oscillator_below_is_refused() {
    let form = Form {
        side: Side::Below,
        intermediate: "470".into(),
        ..dial("200")
    };
    let says =
        "With the oscillator below, dial must be above the IF (got dial 200 kHz, IF 470 kHz).";
    assert_eq!(refused(&form), (Field::Dial, says.into()));
}

#[test]
fn an_image_at_nothing_is_refused() {
    let form = Form {
        side: Side::Below,
        intermediate: "470".into(),
        ..dial("940")
    };
    let (_, says) = refused(&form);
    assert!(says.contains("must not be twice the IF"), "{says}");
}

#[test]
fn an_oscillator_too_low_for_the_if_is_refused() {
    let form = Form {
        find: Find::Dial,
        oscillator: "400".into(),
        intermediate: "470".into(),
        ..Form::default()
    };
    let (field, says) = refused(&form);
    assert_eq!(field, Field::Oscillator);
    assert!(
        says.contains("must be above the IF (got oscillator 400 kHz, IF 470 kHz)"),
        "{says}"
    );
}

#[test]
fn a_dial_that_would_be_out_of_range_is_refused() {
    let form = Form {
        find: Find::Dial,
        oscillator: "470.5".into(),
        intermediate: "470".into(),
        ..Form::default()
    };
    assert_eq!(
        refused(&form),
        (
            Field::Oscillator,
            "Dial would be 500 Hz, outside 1 kHz to 1000 MHz.".into()
        )
    );
}

#[test]
fn dial_and_oscillator_alike_leave_no_if() {
    let form = Form {
        find: Find::Intermediate,
        oscillator: "1.2 MHz".into(),
        ..dial("1200")
    };
    let says =
        "Dial and oscillator are the same frequency, so there is no IF (got 1200 kHz twice).";
    assert_eq!(refused(&form), (Field::Oscillator, says.into()));
}

#[test]
fn a_slip_in_the_if_is_about_the_if() {
    let (field, says) = refused(&Form {
        intermediate: "4 7 0".into(),
        ..dial("1200")
    });
    assert_eq!(field, Field::Intermediate);
    assert!(says.starts_with("IF: "), "{says}");
}

#[test]
fn an_empty_box_is_no_slip() {
    let problem = view(&dial(" ")).problem.expect("nothing to work with");
    assert!(problem.waiting);
    assert_eq!(problem.says, "Type what the dial says.");
}

#[test]
fn what_was_typed_is_never_written_over() {
    for typed in ["abc", "-5 kHz", "0", "1e999 MHz", "", "1,2,3"] {
        let reply = look_up(&["do=show\nfind=oscillator\ndial-unit=kHz\ndial=", typed].concat());
        assert!(
            !reply.lines().any(|line| line.starts_with("field\tdial\t")),
            "{typed:?}: {reply}"
        );
        assert!(
            reply.contains("text\tanswer-number\t–"),
            "{typed:?}: {reply}"
        );
    }
}

#[test]
fn a_slip_marks_its_own_box_alone() {
    let reply = look_up("do=show\ndial=1200\nif=abc");
    assert!(reply.contains("set\tif\taria-invalid\ttrue"));
    assert!(reply.contains("set\tdial\taria-invalid\tfalse"));
    let waiting = look_up("do=show\ndial=");
    assert!(waiting.contains("set\tdial\taria-invalid\tfalse"));
}
