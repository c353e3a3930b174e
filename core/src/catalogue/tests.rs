//! What holds for every entry, and the words of refusals.

use super::{Entry, Kind, Parameter, catalogue, evaluate, evaluate_with, split};
use alloc::collections::BTreeSet;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use proptest::prelude::{ProptestConfig, any, prop_assert, proptest};

/// An entry's example with one parameter typed otherwise.
fn example_with(
    entry: &Entry,
    parameter: &Parameter,
    typed: &str,
) -> Result<String, super::Refusal> {
    let (name, mut pairs) = split(entry.example);
    for (key, value) in &mut pairs {
        if key == parameter.name {
            *value = String::from(typed);
        }
    }
    let pairs: Vec<(&str, &str)> = pairs
        .iter()
        .map(|(key, value)| (key.as_str(), value.as_str()))
        .collect();
    evaluate_with(&name, &pairs).map(|answer| answer.text)
}

fn numbers(entry: &Entry) -> impl Iterator<Item = &'static Parameter> + use<> {
    entry
        .parameters
        .iter()
        .filter(|parameter| parameter.kind != Kind::Choice)
}

/// An SI value typed to the last digit.
fn typed(value: f64, kind: Kind) -> String {
    format!("{value:e} {}", kind.unit())
}

/// A little step beyond a bound.
fn beyond(bound: f64, kind: Kind) -> f64 {
    if kind == Kind::Integer || bound.abs() < 1e-9 {
        1.0
    } else {
        bound.abs() * 1e-6
    }
}

#[test]
fn names_are_lower_case_unlike_and_tell_their_kind() {
    let mut names = BTreeSet::new();
    let fits = |name: &str| {
        let plain = |byte: u8| byte.is_ascii_lowercase() || byte.is_ascii_digit() || byte == b'-';
        !name.is_empty() && name.len() <= 40 && name.bytes().all(plain)
    };
    for entry in catalogue() {
        assert!(
            fits(entry.name) && names.insert(entry.name),
            "{}",
            entry.name
        );
        let mut keys = BTreeSet::new();
        for parameter in entry.parameters {
            let key = parameter.name;
            assert!(fits(key) && keys.insert(key), "{}: {key}", entry.name);
            assert!(!parameter.meaning.is_empty(), "{}: {key}", entry.name);
            let choice = parameter.kind == Kind::Choice;
            assert_eq!(
                choice,
                !parameter.choices.is_empty(),
                "{}: {key}",
                entry.name
            );
            assert!(
                choice || parameter.min < parameter.max,
                "{}: {key}",
                entry.name
            );
        }
    }
}

#[test]
fn every_entry_says_all_that_a_page_shows() {
    for entry in catalogue() {
        for text in [
            entry.title,
            entry.symbol,
            entry.formula,
            entry.model_error,
            entry.source,
        ] {
            assert!(!text.trim().is_empty(), "{}", entry.name);
        }
    }
}

#[test]
fn every_example_is_its_own_entrys_and_has_an_answer() {
    for entry in catalogue() {
        let answer = evaluate(entry.example).unwrap_or_else(|why| panic!("{}: {why}", entry.name));
        assert_eq!(answer.name, entry.name);
        assert_eq!(
            (answer.kind, answer.unit),
            (entry.result, entry.result.unit())
        );
        assert!(answer.value.is_finite() && !answer.text.is_empty());
    }
}

#[test]
fn each_missing_key_is_named() {
    for entry in catalogue() {
        let (name, pairs) = split(entry.example);
        for left_out in 0..pairs.len() {
            let mut given: Vec<(&str, &str)> = pairs
                .iter()
                .map(|(key, value)| (key.as_str(), value.as_str()))
                .collect();
            let (missing, _) = given.remove(left_out);
            let refusal = evaluate_with(&name, &given).unwrap_err();
            assert_eq!(refusal.parameter(), Some(missing));
            let sentence = refusal.to_string();
            assert!(
                sentence.ends_with(&format!("{missing} is missing")),
                "{sentence}"
            );
            for parameter in entry.parameters {
                assert!(sentence.contains(parameter.name), "{sentence}");
            }
        }
    }
}

#[test]
fn each_range_is_closed_at_both_ends() {
    for entry in catalogue() {
        for parameter in numbers(entry) {
            for bound in [parameter.min, parameter.max] {
                // The quantity itself may refuse it, but not for its range.
                let outcome = example_with(entry, parameter, &typed(bound, parameter.kind));
                let sentence =
                    outcome.map_or_else(|refusal| refusal.to_string(), |_| String::new());
                let range = format!("{} must be from", parameter.name);
                assert!(!sentence.starts_with(&range), "{}: {sentence}", entry.name);
            }
        }
    }
}

#[test]
fn what_is_out_of_range_is_refused_with_parameter_rule_and_value() {
    for entry in catalogue() {
        for parameter in numbers(entry) {
            let below = parameter.min - beyond(parameter.min, parameter.kind);
            let above = parameter.max + beyond(parameter.max, parameter.kind);
            for value in [below, above].into_iter().filter(|value| value.is_finite()) {
                let typed = typed(value, parameter.kind);
                let refusal = example_with(entry, parameter, &typed).unwrap_err();
                let (name, sentence) = (entry.name, refusal.to_string());
                assert_eq!(
                    refusal.parameter(),
                    Some(parameter.name),
                    "{name}: {sentence}"
                );
                assert!(sentence.contains(parameter.name), "{name}: {sentence}");
                assert!(sentence.contains(typed.trim()), "{name}: {sentence}");
            }
        }
    }
}

#[test]
fn choices_are_read_in_any_case_and_others_are_refused() {
    for entry in catalogue() {
        for parameter in entry.parameters {
            for word in parameter.choices {
                let plain = example_with(entry, parameter, word);
                assert_eq!(example_with(entry, parameter, &word.to_uppercase()), plain);
            }
            if parameter.kind == Kind::Choice {
                let refusal = example_with(entry, parameter, "sideways").unwrap_err();
                assert_eq!(refusal.parameter(), Some(parameter.name));
                let sentence = refusal.to_string();
                assert!(parameter.choices.iter().all(|word| sentence.contains(word)));
            }
        }
    }
}

/// Expression, sentence.
const REFUSED: &[(&str, &str)] = &[
    (
        "",
        "an expression starts with a quantity's name, such as \
         oscillator?dial=1200kHz&if=470kHz&side=above (got nothing)",
    ),
    (
        "oscilator?dial=1MHz",
        "no quantity is called \"oscilator\"; did you mean oscillator?",
    ),
    ("zzzzzzz", "no quantity is called \"zzzzzzz\""),
    (
        "oscillator",
        "oscillator takes dial, if and side; dial is missing",
    ),
    (
        "oscillator?",
        "oscillator takes dial, if and side; dial is missing",
    ),
    ("beat?f1=1MHz", "beat takes f1 and f2; f2 is missing"),
    (
        "beat?f1=1MHz&f2=2MHz&f3=3MHz",
        "beat takes f1 and f2; it has no \"f3\"",
    ),
    (
        "beat?f1=1MHz&f2=2MHz&f1=3MHz",
        "beat takes f1 and f2, each once; f1 is repeated",
    ),
    (
        "beat?f1=1MHz&f2=2MHz&",
        "beat takes f1 and f2; it has no \"\"",
    ),
    (
        "beat?F1=1MHz&f2=2MHz",
        "beat takes f1 and f2; it has no \"F1\"",
    ),
    (
        "beat?f1=1200&f2=1MHz",
        "f1: a frequency needs a unit, such as 1200 kHz (got \"1200\")",
    ),
    (
        "beat?f1&f2=1MHz",
        "f1: nothing was typed; type 1200 kHz (got \"\")",
    ),
    (
        "beat?f1=-5 kHz&f2=1MHz",
        "f1 must be from 1 kHz to 1000 MHz (got \"-5 kHz\")",
    ),
    (
        "beat?f1=0,1 m&f2=1MHz",
        "f1 must be from 1 kHz to 1000 MHz (got \"0,1 m\", read as 2997.925 MHz)",
    ),
    (
        "oscillator?dial=400kHz&if=470kHz&side=below",
        "with the oscillator below, dial must be above the IF (got dial 400 kHz, IF 470 kHz)",
    ),
    (
        "oscillator?dial=1MHz&if=470kHz&side=left",
        "side must be above or below (got \"left\")",
    ),
    (
        "whistle?signal=1MHz&if=455kHz&harmonic=2.5",
        "harmonic: this must be a whole number, such as 2 (got \"2.5\")",
    ),
    (
        "whistle?signal=1MHz&if=455kHz&harmonic=1",
        "harmonic must be from 2 to 10 (got \"1\")",
    ),
    (
        "resonance?l=0uH&c=1pF",
        "l must be above zero (got \"0uH\", read as 0 µH)",
    ),
    (
        "necessary-bandwidth?audio=3000m",
        "audio is typed in Hz or kHz, not in metres (got \"3000m\")",
    ),
];

#[test]
fn refusals_say_what_the_rule_and_the_value() {
    for (expression, sentence) in REFUSED {
        let refusal = evaluate(expression).expect_err(expression);
        assert_eq!(refusal.to_string(), *sentence, "{expression}");
    }
}

#[test]
fn refusals_carry_the_name_that_could_be_read() {
    let name = |expression: &str| evaluate(expression).unwrap_err().name().to_string();
    assert_eq!(name("beat?f1=loud"), "beat");
    assert_eq!(name(" beat ?f1=loud"), "beat");
    assert_eq!(name("oscilator?x=1"), "oscilator");
    assert_eq!(name("<b>?x=1"), "");
    assert_eq!(name(""), "");
    assert_eq!(name(&format!("beat?f1={}", "9".repeat(100_000))), "beat");
    assert_eq!(name(&"x".repeat(100_000)), "");
}

#[test]
fn nothing_is_never_minus_nothing() {
    let exact = "tracking-error?dial=600kHz&f1=600kHz&f2=950kHz&f3=1500kHz&if=455kHz&side=above";
    let answer = evaluate(exact).unwrap();
    assert_eq!((answer.value.to_bits(), answer.text.as_str()), (0, "0 Hz"));
}

#[test]
fn an_expression_has_a_greatest_length() {
    let padded = |length: usize| format!("{:length$}", "beat?f1=909kHz&f2=900kHz");
    let longest = evaluate(&padded(super::LONGEST)).map(|answer| answer.text);
    assert_eq!(longest, Ok(String::from("9 kHz")));
    let refusal = evaluate(&padded(super::LONGEST + 1)).unwrap_err();
    let sentence = "an expression has at most 4000 bytes; this one is longer";
    assert_eq!((refusal.sentence(), refusal.name()), (sentence, "beat"));
}

#[test]
fn escapes_are_decoded_and_a_lone_percent_sign_is_itself() {
    let text = |expression: &str| evaluate(expression).map(|answer| answer.text);
    let wanted = Ok(String::from("1670 kHz"));
    assert_eq!(
        text("oscillator?dial=1200%20kHz&if=470kHz&side=above"),
        wanted
    );
    assert_eq!(
        text("oscillator?%64ial=1200kHz&if=470kHz&side=a%62ove"),
        wanted
    );
    assert_eq!(
        text("oscillator?side=above&if=470kHz&dial=1%2C200kHz"),
        wanted
    );
    assert_eq!(
        text("%6Fscillator?dial=1200kHz&if=470kHz&side=above"),
        wanted
    );
    let depth = |typed: &str| text(&format!("total-power?carrier-power=400W&depth={typed}"));
    assert_eq!(depth("75%"), depth("0.75"));
    assert_eq!(depth("75%25"), depth("0.75"));
    assert_eq!(depth("75%20%"), depth("0.75"));
    // A plus is a blank in page links only, which are taken apart before they get here.
    assert!(text("beat?f1=1+200kHz&f2=1MHz").is_err());
    assert!(text("beat?f1=%ff%fekHz&f2=1MHz").is_err());
}

#[test]
fn a_wavelength_is_turned_by_the_exact_speed_of_light() {
    let answer = evaluate("beat?f1=300m&f2=600m").unwrap();
    assert_eq!(answer.value, 299_792_458.0 / 600.0);
}

#[test]
fn the_whole_range_of_wavelengths_is_accepted() {
    for (typed, wanted) in [("0.299792458 m", 1e9), ("299792.458 m", 1e3)] {
        let frequency = evaluate(&format!("frequency?wavelength={typed}"))
            .unwrap()
            .value;
        assert_eq!(frequency, wanted);
        let doubled = evaluate(&format!("image?dial={typed}&if=1kHz&side=above"));
        assert_eq!(doubled.unwrap().value, wanted + 2e3);
    }
}

#[test]
fn an_image_by_the_sum_says_so() {
    let note = |dial| {
        evaluate(&format!("image?dial={dial}&if=470kHz&side=below"))
            .unwrap()
            .note
    };
    assert!(note("700kHz").is_some_and(|note| note.contains("sum")));
    assert_eq!(note("1200kHz"), None);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1000))]

    #[test]
    fn any_text_has_an_answer_or_one_line(expression in any::<String>()) {
        if let Err(refusal) = evaluate(&expression) {
            let sentence = refusal.sentence();
            prop_assert!(sentence.chars().count() <= 400);
            prop_assert!(!sentence.contains(char::is_control), "{:?}", sentence);
        }
    }

    #[test]
    fn any_value_has_an_answer_or_one_line(
        place in any::<proptest::sample::Index>(),
        typed in "[-+]?[0-9]{0,4}[.,]?[0-9]{0,20}(e[-+]?[0-9]{1,4})? ?([kMmupnG]?(Hz|H|F|W|V|ohm|dB|%)?)|\\PC{0,60}"
    ) {
        let entry = place.get(catalogue());
        for parameter in entry.parameters {
            match example_with(entry, parameter, &typed) {
                Ok(text) => prop_assert!(!text.is_empty()),
                Err(refusal) => {
                    let sentence = refusal.sentence();
                    prop_assert!(sentence.chars().count() <= 400);
                    prop_assert!(!sentence.contains(char::is_control), "{:?}", sentence);
                }
            }
        }
    }
}
