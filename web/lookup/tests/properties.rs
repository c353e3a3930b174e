//! What holds for every input.

use lookup::{Find, Form, Given, look_up, open, view};
use proptest::prelude::{
    Just, ProptestConfig, Strategy, any, prop_assert, prop_assert_eq, prop_oneof, proptest,
};
use superhet::quantities::bands::Region;
use superhet::quantities::conversion::Side;

const CASES: u32 = 500;

/// Verbs that the page's script knows.
const VERBS: [&str; 13] = [
    "text", "hide", "set", "drop", "value", "field", "empty", "item", "table", "row", "link",
    "speak", "keep",
];

fn sides() -> impl Strategy<Value = Side> {
    prop_oneof![Just(Side::Above), Just(Side::Below)]
}

fn regions() -> impl Strategy<Value = Region> {
    prop_oneof![Just(Region::One), Just(Region::Two), Just(Region::Three)]
}

/// Texts near what people type, and anything at all.
fn typed() -> impl Strategy<Value = String> {
    prop_oneof![
        "[0-9]{1,6}([.,][0-9]{0,4})? ?(kHz|MHz|m|kc/s|Hz|mm|)",
        "[-+0-9.,eE ]{0,12}",
        any::<String>(),
    ]
}

/// What a link says, read back as the page reads it.
fn reopened(query: &str) -> Form {
    let value = |name: &str| {
        query
            .split('&')
            .find_map(|pair| pair.strip_prefix(name)?.strip_prefix('='))
            .map(|text| text.replace("%2F", "/"))
    };
    let (dial, oscillator, intermediate) = (value("dial"), value("oscillator"), value("if"));
    let (side, region) = (value("side"), value("region"));
    let given = Given {
        dial: dial.as_deref(),
        oscillator: oscillator.as_deref(),
        intermediate: intermediate.as_deref(),
        side: side.as_deref(),
        region: region.as_deref(),
    };
    let (form, complaint) = open(given, Given::default());
    assert_eq!(complaint, None);
    form
}

proptest! {
    #![proptest_config(ProptestConfig { cases: CASES, failure_persistence: None, ..ProptestConfig::default() })]

    /// Whole hertz stay whole in every sum, so nothing is rounded.
    #[test]
    fn two_of_three_give_the_third_both_ways(
        dial_hz in 100_000..30_000_000_u32,
        intermediate_hz in 50_000..2_000_000_u32,
        side in sides(),
    ) {
        let form = Form {
            dial: format!("{dial_hz} Hz"),
            intermediate: format!("{intermediate_hz} Hz"),
            side,
            ..Form::default()
        };
        let shown = view(&form);
        if let Some(oscillator) = shown.answer.value {
            let typed = format!("{} Hz", oscillator.to_hz());
            let back = |find| view(&Form { find, oscillator: typed.clone(), ..form.clone() }).answer.value;
            prop_assert_eq!(back(Find::Dial).map(|value| value.to_hz()), Some(f64::from(dial_hz)));
            prop_assert_eq!(back(Find::Intermediate).map(|value| value.to_hz()), Some(f64::from(intermediate_hz)));
            let away = (oscillator.to_hz() - f64::from(dial_hz)).abs();
            prop_assert_eq!(away, f64::from(intermediate_hz));
        } else {
            prop_assert!(side == Side::Below && (dial_hz <= intermediate_hz || dial_hz == 2 * intermediate_hz));
        }
    }

    #[test]
    fn a_link_opens_the_same_answer(khz in 150..30_000_u32, side in sides(), region in regions(), other in any::<bool>()) {
        let find = if other { Find::Dial } else { Find::Oscillator };
        let form = Form {
            find,
            dial: khz.to_string(),
            oscillator: (khz + 500).to_string(),
            intermediate: "465 kc/s".into(),
            side,
            region,
            ..Form::default()
        };
        let shown = view(&form);
        if let Some(link) = &shown.link {
            let again = view(&reopened(link));
            prop_assert_eq!(again.answer, shown.answer);
            prop_assert_eq!(again.image_place, shown.image_place);
            prop_assert_eq!(again.notes, shown.notes);
        }
    }

    /// Whatever arrives, the script gets lines it knows, of bounded size, and no stop.
    #[test]
    fn any_request_is_answered_in_known_lines(
        task in prop_oneof![Just("show".to_owned()), Just("open".into()), Just("up".into()), Just("low".into()), typed()],
        dial in typed(), oscillator in typed(), intermediate in typed(), side in typed(), region in typed(),
        find in prop_oneof![Just("oscillator"), Just("dial"), Just("if"), Just("other")],
    ) {
        let request = format!(
            "do={task}\nfind={find}\ndial={dial}\noscillator={oscillator}\nif={intermediate}\nside={side}\nregion={region}"
        );
        let reply = look_up(&request);
        prop_assert!(reply.len() < 40_000, "{} bytes", reply.len());
        for line in reply.lines().filter(|line| *line != "card") {
            let verb = line.split('\t').next().unwrap_or_default();
            prop_assert!(VERBS.contains(&verb), "{line:?}");
        }
        prop_assert_eq!(reply.lines().filter(|line| *line == "card").count(), 1);
    }

    #[test]
    fn an_answer_or_a_sentence_never_both_never_neither(
        dial in typed(), intermediate in typed(), side in sides(), region in regions(),
    ) {
        let shown = view(&Form { dial, intermediate, side, region, ..Form::default() });
        prop_assert_eq!(shown.answer.value.is_some(), shown.problem.is_none());
        prop_assert_eq!(shown.answer.value.is_some(), shown.link.is_some());
        prop_assert!(shown.problem.is_none_or(|problem| problem.says.chars().count() <= 400));
    }
}
