//! The words, the table, the handles and the labels of a figure say what the core says.

#![allow(clippy::unwrap_used)] // in the helpers of tests, as in the tests

mod grid;

use figures::{ControlKind, Input, Node, View, view};
use superhet::catalogue::evaluate;

fn drawn(name: &str, dial: &str, intermediate: &str, side: &str) -> View {
    let input = Input::new()
        .with("dial", dial)
        .with("if", intermediate)
        .with("side", side);
    view(name, &input).unwrap()
}

fn core(name: &str, dial: &str, intermediate: &str, side: &str) -> (f64, String) {
    let expression = format!("{name}?dial={dial}&if={intermediate}&side={side}");
    let answer = evaluate(&expression).unwrap();
    (answer.value, answer.text)
}

/// Tunings, the last with the image found by the sum.
const TUNINGS: [(&str, &str, &str); 6] = [
    ("1200 kHz", "470 kHz", "above"),
    ("909kHz", "465kHz", "above"),
    ("1.4 MHz", "455 kHz", "below"),
    ("250 m", "470 kHz", "above"),
    ("666.5 kHz", "470 kHz", "above"),
    ("700 kHz", "470 kHz", "below"),
];

fn cells(view: &View) -> Vec<(&'static str, f64, String)> {
    let cells = view.table.rows.iter().flatten();
    cells
        .filter_map(|cell| {
            cell.result
                .map(|(name, value)| (name, value, cell.text.clone()))
        })
        .collect()
}

fn texts(nodes: &[Node], out: &mut Vec<String>) {
    for node in nodes {
        out.extend(node.text.clone());
        texts(&node.children, out);
    }
}

#[test]
fn the_frequency_line_says_what_the_core_says() {
    for (dial, intermediate, side) in TUNINGS {
        let view = drawn("frequency-line", dial, intermediate, side);
        for name in ["oscillator", "image"] {
            let (value, text) = core(name, dial, intermediate, side);
            let quantity = view.quantity(name).unwrap();
            assert_eq!((quantity.value, &quantity.text), (value, &text));
            assert!(cells(&view).contains(&(quantity.name, value, text.clone())));
            assert!(view.words.contains(&text), "{}", view.words);
            assert!(view.title.contains(&text), "{}", view.title);
            let mut labels = Vec::new();
            texts(&view.root, &mut labels);
            assert!(labels.contains(&text), "{labels:?}");
            assert!(
                view.controls[0].text.contains(&text),
                "{:?}",
                view.controls[0]
            );
        }
    }
}

#[test]
fn points_stand_where_their_frequencies_say() {
    // 5 % is 0 Hz and 95 % the line's end, 3000 kHz.
    for (dial, intermediate, side) in TUNINGS {
        let view = drawn("frequency-line", dial, intermediate, side);
        for (key, name) in [("oscillator-mark", "oscillator"), ("image-mark", "image")] {
            let mark = find(&view.root, key).unwrap();
            let at: f64 = mark
                .attribute("x")
                .unwrap()
                .trim_end_matches('%')
                .parse()
                .unwrap();
            let (value, _) = core(name, dial, intermediate, side);
            let expected = 5.0 + 90.0 * value / 3e6;
            // Half of the hundredth that is written, and the last bits of an f64.
            assert!(
                (at - expected).abs() <= 0.005 + 1e-12,
                "{name} at {at}, expected {expected}"
            );
        }
    }
}

fn find<'a>(nodes: &'a [Node], key: &str) -> Option<&'a Node> {
    nodes.iter().find_map(|node| {
        if node.key.as_deref() == Some(key) {
            Some(node)
        } else {
            find(&node.children, key)
        }
    })
}

#[test]
fn the_block_diagram_says_what_the_core_says() {
    for (dial, intermediate, side) in TUNINGS {
        let view = drawn("block-diagram", dial, intermediate, side);
        let (value, text) = core("oscillator", dial, intermediate, side);
        assert_eq!(view.quantity("oscillator").unwrap().value, value);
        assert!(view.words.contains(&text), "{}", view.words);
        let difference = view.quantity("difference").unwrap();
        let signal = view.quantity("dial").unwrap();
        let expression = format!("difference?signal={}Hz&oscillator={value}Hz", signal.value);
        // The IF as typed against the difference as worked out: a rounding apart at most.
        let apart = (evaluate(&expression).unwrap().value - difference.value).abs();
        assert!(apart < 1e-6, "{apart} Hz apart");
        let told = cells(&view);
        assert_eq!(told.iter().filter(|cell| cell.0 == "difference").count(), 2);
    }
}

#[test]
fn handles_stand_where_the_input_says_and_stop_at_round_numbers() {
    for name in grid::TUNED {
        let view = drawn(name, "1200 kHz", "470 kHz", "below");
        for control in &view.controls {
            match &control.kind {
                ControlKind::Slider(slider) => {
                    let expected = if control.parameter == "dial" {
                        1200.0
                    } else {
                        470.0
                    };
                    assert_eq!(slider.value, expected);
                    assert_eq!(slider.min % slider.step, 0, "{control:?}");
                    assert_eq!(slider.max % slider.step, 0, "{control:?}");
                }
                ControlKind::Choice { chosen, .. } => assert_eq!(*chosen, "below"),
            }
        }
    }
}

#[test]
fn handles_of_the_other_figures_begin_within_their_reach() {
    for name in grid::others() {
        let view = view(name, &Input::new()).unwrap();
        for control in &view.controls {
            if let ControlKind::Slider(slider) = &control.kind {
                let parts = f64::from(slider.parts);
                let reach = f64::from(slider.min) / parts..=f64::from(slider.max) / parts;
                assert!(reach.contains(&slider.value), "{name}: {control:?}");
                assert_eq!(slider.min % slider.step, 0, "{name}: {control:?}");
                assert_eq!(slider.max % slider.step, 0, "{name}: {control:?}");
            }
        }
    }
}

/// With AGC a signal above the delay changes the output by 1/(1 + K) of its own change; a
/// detector follows up to the core's limit.
#[test]
fn stages_say_what_the_core_says() {
    let asked = |name: &str, query: &str| view(name, &Input::parse(query).unwrap()).unwrap();
    let agc = asked("agc", "signal=62dB&loop-gain=14");
    let answer = evaluate("agc-output-change?input-change=62dB&loop-gain=14").unwrap();
    assert_eq!(
        agc.quantity("agc-output-change").unwrap().value,
        answer.value
    );
    assert!(agc.words.contains("4.13 dB"), "{}", agc.words);
    let detector = asked("detector", "r=220k&c=470pF&audio=4.5kHz&depth=30%");
    let answer = evaluate("detector-depth-limit?r=220k&c=470pF&audio=4.5kHz").unwrap();
    assert_eq!(
        detector.quantity("detector-depth-limit").unwrap().value,
        answer.value
    );
    assert!(
        detector.title.contains("follows a note"),
        "{}",
        detector.title
    );
    let deeper = asked("detector", "r=220k&c=470pF&audio=4.5kHz&depth=35%");
    assert!(deeper.title.contains("does not follow"), "{}", deeper.title);
}

#[test]
fn without_the_image_nothing_speaks_of_it() {
    let input = Input::parse("dial=1089kHz&if=470kHz&side=above&image=hidden").unwrap();
    for name in ["frequency-line", "band-chart"] {
        let view = view(name, &input).unwrap();
        let markup = figures::markup(name, &input, "", None).unwrap();
        let shown = markup.replace("image=hidden", "");
        assert!(!shown.contains("image"), "{shown}");
        assert!(view.quantity("image").is_none());
    }
}

#[test]
fn the_band_chart_says_what_the_core_says() {
    for (dial, intermediate, side) in TUNINGS {
        let oscillator = core("oscillator", dial, intermediate, side);
        let input = Input::new().with("dial", dial).with("if", intermediate);
        let input = input.with("side", side);
        let view = view("band-chart", &input).unwrap();
        for (name, (value, text)) in [
            ("oscillator", oscillator),
            ("image", core("image", dial, intermediate, side)),
        ] {
            assert_eq!(view.quantity(name).unwrap().value, value);
            for says in [&view.words, &view.title, &view.controls[0].text] {
                assert!(says.contains(&text), "{says}");
            }
            let told = cells(&view);
            let twice = told.iter().filter(|cell| (cell.0, cell.1) == (name, value));
            assert_eq!(twice.count(), 2);
        }
    }
}

/// A dial setting whose oscillator is off the line is refused, not drawn at its end.
#[test]
fn the_band_chart_refuses_what_is_off_its_line() {
    let input = Input::parse("dial=525kHz&if=470kHz&side=below").unwrap();
    let said = view("band-chart", &input).unwrap_err().to_string();
    assert!(said.contains("55 kHz"), "{said}");
}
