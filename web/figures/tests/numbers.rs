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

/// Every line of the map against the catalogue's own product of the same harmonics.
#[test]
fn the_map_s_lines_are_the_core_s_products() {
    for side in ["above", "below"] {
        let query = format!("dial=1200kHz&if=470kHz&side={side}&order=4&n=4");
        let map = view("spurious-map", &Input::parse(&query).unwrap()).unwrap();
        let oscillator = core("oscillator", "1200kHz", "470kHz", side).1;
        let mut told: Vec<f64> = cells(&map).iter().map(|cell| cell.1).collect();
        let mut asked = Vec::new();
        for m in 0..4 {
            for n in 1..=4 - m {
                for sign in ["plus", "minus"].iter().take(if m == 0 { 1 } else { 2 }) {
                    let product = format!("spurious?oscillator={oscillator}&if=470kHz&m={m}&n={n}");
                    asked.push(evaluate(&format!("{product}&sign={sign}")).unwrap().value);
                }
            }
        }
        told.sort_unstable_by(f64::total_cmp);
        asked.sort_unstable_by(f64::total_cmp);
        assert_eq!(told, asked, "{side}");
        assert!(cells(&map).contains(&(
            "image",
            core("image", "1200kHz", "470kHz", side).0,
            core("image", "1200kHz", "470kHz", side).1
        )));
    }
}

/// The dial's dots stand on the scale: 42 px is 5 MHz, 322 px is zero.
#[test]
fn the_map_s_dots_stand_where_their_frequencies_say() {
    let map = view("spurious-map", &Input::new()).unwrap();
    for (key, hertz) in [
        ("station-dot", 945e3),
        ("image-dot", 1885e3),
        ("intermediate-dot", 470e3),
        ("2-1-minus-dot", 2360e3),
        ("2-1-plus-dot", 3300e3),
    ] {
        let dot = find(&map.root, key).unwrap();
        let at: f64 = dot.attribute("cy").unwrap().parse().unwrap();
        // Half of the tenth of a pixel that is written, and the last bits of an f64.
        assert!(
            (at - (322.0 - 280.0 * hertz / 5e6)).abs() <= 0.05 + 1e-9,
            "{key} at {at}"
        );
    }
}

#[test]
fn the_map_tells_notes_and_senders_apart() {
    let map = |query: &str| view("spurious-map", &Input::parse(query).unwrap()).unwrap();
    let doubled = map("dial=945kHz");
    let pitch = evaluate("whistle?signal=945kHz&if=470kHz&harmonic=2")
        .unwrap()
        .text;
    assert!(
        doubled
            .words
            .contains(&["note of ", &pitch, ", by 2 × IF; it moves twice"].concat())
    );
    let doubled = map("dial=940kHz").words;
    assert!(
        doubled.contains("0 Hz, so no note, by 2 × IF; it moves twice"),
        "{doubled}"
    );
    let oscillator = core("oscillator", "648kHz", "470kHz", "above").1;
    let ghost = map("dial=648kHz&sender=1584kHz");
    let pitch = evaluate(&format!(
        "image-whistle?oscillator={oscillator}&f1=648kHz&f2=1584kHz"
    ));
    let heard = ["heard by the image, ", &pitch.unwrap().text, " off"].concat();
    assert!(ghost.words.contains(&heard), "{}", ghost.words);
    for (dial, how) in [
        ("555kHz", "heard by 2 × osc − IF, 4 kHz off"),
        ("1585kHz", "heard as itself, 1 kHz off"),
        ("1000kHz", "not heard"),
    ] {
        let map = map(&format!("dial={dial}&sender=1584kHz"));
        assert!(map.words.contains(how), "{}", map.words);
    }
}
