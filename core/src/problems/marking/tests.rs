use alloc::{format, string::String, vec, vec::Vec};
use std::sync::LazyLock;

use proptest::prelude::{ProptestConfig, any, prop, prop_assert_eq, proptest};

use super::super::{
    Level,
    fixture::{changed, oscillator, swing, two_parts},
    generate_with,
};
use super::{Marking, Problem, Verdict, mark};

fn marked(problem: &Problem, typed: &str) -> Marking {
    mark(problem, 0, typed, None)
}

fn mistake(marking: &Marking) -> Option<&str> {
    marking.mistake.as_ref().map(|mistake| mistake.id.as_str())
}

#[test]
fn any_equivalent_is_right() {
    let problem = oscillator();
    for (typed, read) in [
        ("1670 kHz", "1670 kHz"),
        ("1.67 MHz", "1.67 MHz"),
        ("1,670 kHz", "1670 kHz"),
        ("1 670 kc/s", "1670 kHz"),
        ("1670000 Hz", "1670000 Hz"),
        ("1,67 MHz", "1.67 MHz"),
        ("1.67e6hz", "1670000 Hz"),
    ] {
        let marking = marked(&problem, typed);
        assert_eq!(marking.verdict, Verdict::Right, "{typed}");
        assert_eq!(marking.read_as.as_deref(), Some(read), "{typed}");
        assert_eq!(marking.says, "Right: 1670 kHz.");
    }
    assert_eq!(
        mark(&problem, 0, "1.67", Some("MHz")).verdict,
        Verdict::Right
    );
    assert_eq!(
        mark(&problem, 0, "1670 kHz", Some("MHz")).verdict,
        Verdict::Right,
        "typed wins"
    );
    for typed in [
        "8.46",
        "8.4628",
        "8.46 times",
        "8.46x",
        "8,46",
        "8.46 to 1",
        "8.46 : 1",
    ] {
        assert_eq!(marked(&swing(), typed).verdict, Verdict::Right, "{typed}");
    }
}

#[test]
fn what_cannot_be_read_is_no_attempt() {
    for (typed, says) in [
        ("", "Type an answer first."),
        ("   ", "Type an answer first."),
        (
            "abc",
            "A frequency starts with a number, such as 1200 kHz (got \"abc\").",
        ),
        (
            "1670",
            "A number alone does not say enough: is it kHz or MHz?",
        ),
        (
            "16 pF",
            "You typed a capacitance, and a frequency is asked.",
        ),
    ] {
        let marking = marked(&oscillator(), typed);
        assert_eq!(
            (marking.verdict, marking.says.as_str()),
            (Verdict::Unclear, says),
            "{typed}"
        );
        assert_eq!(marking.read_as, None);
        assert!(!marking.verdict.is_attempt());
    }
    assert_eq!(
        marked(&oscillator(), &"9".repeat(10_000)).verdict,
        Verdict::Unclear
    );
    assert_eq!(
        mark(&oscillator(), 7, "1670 kHz", None).verdict,
        Verdict::Unclear
    );
}

#[test]
fn the_mistake_that_fits_is_named() {
    for (typed, id, says) in [
        ("730 kHz", "subtracted", "You took the IF away."),
        ("2.14 MHz", "twice", "You added the IF twice."),
        ("1,200 kHz", "nothing-added", "That is the station."),
    ] {
        let marking = marked(&oscillator(), typed);
        assert_eq!(marking.verdict, Verdict::Wrong, "{typed}");
        assert_eq!(
            (mistake(&marking), marking.says.as_str()),
            (Some(id), says),
            "{typed}"
        );
    }
    let misconception = marked(&oscillator(), "2140 kHz")
        .mistake
        .unwrap()
        .misconception;
    assert_eq!(misconception.as_deref(), Some("one-is-two"));
    assert_eq!(
        mistake(&marked(&swing(), "2.9")),
        Some("not-squared"),
        "rounded too far"
    );
}

#[test]
fn slips_of_unit_and_point_are_named() {
    let oscillator = oscillator();
    for (typed, id) in [
        ("1670 MHz", "thousand-times"),
        ("1.67 kHz", "thousand-times"),
        ("1670 Hz", "thousand-times"),
        ("167 kHz", "decimal-point"),
        ("16.7 MHz", "decimal-point"),
        ("1670 m", "other-unit"),
        ("1670 pF", "other-unit"),
    ] {
        let marking = marked(&oscillator, typed);
        assert_eq!(
            (marking.verdict, mistake(&marking)),
            (Verdict::Wrong, Some(id)),
            "{typed}"
        );
    }
    let marking = marked(&oscillator, "1670 MHz");
    assert_eq!(
        marking.says,
        "The digits are right, but in MHz that is far too large. Look at the unit again."
    );
    assert_eq!(marking.read_as.as_deref(), Some("1670 MHz"));
    assert_eq!(
        marked(&oscillator, "1670 pF").says,
        "The number is right, but you typed a capacitance and a frequency is asked."
    );
    assert_eq!(mistake(&marked(&swing(), "8.46 kHz")), Some("other-unit"));
    assert_eq!(mistake(&marked(&swing(), "84.6")), Some("decimal-point"));
    assert_eq!(mistake(&marked(&oscillator, "1234 kHz")), None);
}

#[test]
fn rounding_is_judged_fairly_and_explained() {
    for (typed, verdict, says) in [
        (
            "8.5",
            Verdict::RightButRounded,
            "rounded further than was asked",
        ),
        ("8.47", Verdict::RightButRounded, "rounded on the way"),
        ("8.44", Verdict::Wrong, ""),
        ("8", Verdict::Wrong, "says too little"),
    ] {
        let marking = marked(&swing(), typed);
        assert_eq!(marking.verdict, verdict, "{typed}");
        assert!(marking.says.contains(says), "{typed}: {}", marking.says);
    }
    assert_eq!(
        marked(&swing(), "8.5").says,
        "Right, but rounded further than was asked. Answer to three figures: 8.46."
    );
    let rounded = marked(&oscillator(), "1.7 MHz");
    assert_eq!(rounded.verdict, Verdict::Wrong);
    assert_eq!(
        mistake(&rounded),
        Some("rounded-away"),
        "thirty kilohertz off"
    );
    assert_eq!(
        marked(&oscillator(), "1671 kHz").verdict,
        Verdict::Wrong,
        "a sum is a sum"
    );
}

/// A number problem asked to the nearest of a step: the trial family's first level, its
/// answer and precision put in place.
fn nearest(asks: &str, kind: &str, step: &str, unit: &str) -> Problem {
    let asks = format!("asks = \"{asks}\"");
    let step = format!("{{ nearest = \"{step}\" }}");
    let units = format!("units = [\"{unit}\"]");
    let given = format!("kind = \"{kind}\"\nvalues = [\"0.54 %\"]");
    let family = changed(&[
        ("asks = \"oscillator?dial={station}&side=above\"", &asks),
        ("{ nearest = \"1 kHz\" }", &step),
        ("units = [\"kHz\", \"MHz\"]", &units),
        (
            "mistakes = [\"subtracted\", \"twice\", \"nothing-added\"]",
            "",
        ),
        (
            "kind = \"frequency\"\nvalues = [\"455 kHz\", \"470 kHz\"]",
            &given,
        ),
    ]);
    generate_with(&family, Level::One, 0, &[("station", "1278 kHz")]).unwrap()
}

#[test]
fn a_step_that_is_asked_is_not_rounded_to_the_next_ten() {
    let channel = nearest("station", "depth", "1 kHz", "kHz");
    for (typed, verdict) in [
        ("1278 kHz", Verdict::Right),
        ("1278.4 kHz", Verdict::Right),
        ("1280 kHz", Verdict::Wrong),
        ("1.28 MHz", Verdict::Wrong),
        ("1277 kHz", Verdict::Wrong),
    ] {
        assert_eq!(marked(&channel, typed).verdict, verdict, "{typed}");
    }
    let away = marked(&channel, "1280 kHz");
    assert_eq!(mistake(&away), Some("rounded-away"));
    assert_eq!(
        away.says,
        "That is rounded so far that it says too little. Answer to the nearest 1 kHz."
    );
    let down = nearest("station / 1278 kHz * 54 dB", "depth", "1 dB", "dB");
    assert_eq!(marked(&down, "54 dB").verdict, Verdict::Right);
    assert_eq!(marked(&down, "50 dB").verdict, Verdict::Wrong);
}

#[test]
fn per_cent_is_read_back_as_per_cent() {
    let deep = nearest("if * 100", "depth", "1 %", "%");
    for typed in ["54 %", "54 per cent", "0.54"] {
        let marking = marked(&deep, typed);
        assert_eq!(marking.verdict, Verdict::Right, "{typed}");
        assert_eq!(marking.read_as.as_deref(), Some("54 %"), "{typed}");
        assert_eq!(marking.says, "Right: 54 %.");
    }
    let wrong = mark(&deep, 0, "0.54", Some("%"));
    assert_eq!(wrong.read_as.as_deref(), Some("0.54 %"));
    assert_eq!(mistake(&wrong), Some("decimal-point"));
}

#[test]
fn a_thousand_of_nothing_is_asked_back() {
    for typed in ["1670k", "1670 K"] {
        let marking = marked(&oscillator(), typed);
        assert_eq!(marking.verdict, Verdict::Unclear, "{typed}");
        assert_eq!(
            marking.says,
            format!(
                "Is k for kilohertz? Type kHz, since k alone only says a thousand (got \"{typed}\")."
            )
        );
    }
}

#[test]
fn a_number_is_read_back_in_the_unit_beside_it() {
    let marking = mark(&oscillator(), 0, "3345", Some("kHz"));
    assert_eq!(marking.read_as.as_deref(), Some("3345 kHz"));
    let marking = mark(&oscillator(), 0, "3.345", Some("MHz"));
    assert_eq!(marking.read_as.as_deref(), Some("3.345 MHz"));
}

#[test]
fn a_sign_is_not_asked() {
    for (typed, says) in [
        (
            "-20",
            "That was read as -20 kHz. Only the size is asked: leave the sign off.",
        ),
        (
            "0",
            "That was read as 0 kHz, and a frequency is above zero.",
        ),
    ] {
        let marking = mark(&oscillator(), 0, typed, Some("kHz"));
        assert_eq!(marking.verdict, Verdict::Unclear, "{typed}");
        assert_eq!(marking.says, says);
    }
}

#[test]
fn what_the_working_rounds_is_told() {
    assert_eq!(
        marked(&swing(), "8.46").says,
        "Right: 8.46, to three figures."
    );
}

#[test]
fn a_comma_that_would_be_right_as_a_point_is_asked_back() {
    let marking = marked(&swing(), "8,463");
    assert_eq!(marking.verdict, Verdict::Unclear);
    assert_eq!(marking.read_as.as_deref(), Some("8463"));
    assert_eq!(
        marking.says,
        "That was read as 8463. If the comma was meant as a decimal point, type 8.463."
    );
}

#[test]
fn choices_are_marked() {
    let problem = two_parts();
    let chosen = |id| mark(&problem, 1, id, None);
    assert_eq!(chosen("high").verdict, Verdict::Right);
    let low = chosen("low");
    assert_eq!(
        (low.verdict, low.says.as_str()),
        (Verdict::Wrong, "It is not low.")
    );
    assert_eq!(
        low.mistake.unwrap().misconception.as_deref(),
        Some("all-is-low")
    );
    assert_eq!(chosen("sideways").verdict, Verdict::Unclear);
    assert_eq!(chosen("").verdict, Verdict::Unclear);
}

/// Text that looks like an answer: a number of some shape, a unit of some sort.
fn near_answers() -> impl prop::strategy::Strategy<Value = String> {
    let units = vec![
        "", "kHz", "MHz", "m", "pF", "%", "times", "to 1", "x", "kHzs", "µH", "e9",
    ];
    let parts = (
        "[-+]?[0-9., ]{0,12}",
        "[eE+-]{0,2}[0-9]{0,4} ?",
        prop::sample::select(units),
    );
    prop::strategy::Strategy::prop_map(parts, |(number, power, unit)| {
        format!("{number}{power}{unit}")
    })
}

static PROBLEMS: LazyLock<[Problem; 3]> = LazyLock::new(|| [oscillator(), swing(), two_parts()]);

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_000))]

    #[test]
    fn marking_never_panics(typed in "\\PC{0,60}", beside in any::<Option<String>>()) {
        for problem in PROBLEMS.iter() {
            for part in 0..3 {
                let _ = mark(problem, part, &typed, beside.as_deref());
            }
        }
    }

    #[test]
    fn near_answers_never_panic(typed in near_answers()) {
        for problem in PROBLEMS.iter() {
            let marking = mark(problem, 0, &typed, Some("kHz"));
            let unread = marking.read_as.is_none();
            prop_assert_eq!(unread && marking.verdict.is_right(), false);
        }
    }
}

#[test]
fn long_input_is_refused_at_once() {
    for typed in [
        "1".repeat(1_000_000),
        "é".repeat(100_000),
        ",".repeat(100_000),
    ] {
        assert_eq!(marked(&oscillator(), &typed).verdict, Verdict::Unclear);
    }
    let says: Vec<usize> = vec![marked(&oscillator(), &"x".repeat(9_999)).says.len()];
    assert!(says.iter().all(|&length| length < 400), "{says:?}");
}
