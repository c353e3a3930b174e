//! The figures of curves: what they show is the core's, and their texts round alike.

#![allow(clippy::unwrap_used)] // in the helpers of tests, as in the tests

use figures::{ControlKind, Input, Node, View, markup, view};
use superhet::quantities::transformer_network::{TransformerNetwork, TunedWinding};
use superhet::units::{Decibels, Frequency, Inductance, Ratio};

fn asked(name: &str, query: &str) -> View {
    view(name, &Input::parse(query).unwrap()).unwrap()
}

fn find<'a>(nodes: &'a [Node], key: &str) -> &'a Node {
    fn within<'a>(nodes: &'a [Node], key: &str) -> Option<&'a Node> {
        nodes.iter().find_map(|node| match &node.key {
            Some(known) if known == key => Some(node),
            _ => within(&node.children, key),
        })
    }
    within(nodes, key).unwrap()
}

/// The level that a row of the pair's table tells, in decibels.
fn level(view: &View, frequency: &str) -> f64 {
    let row = view.table.rows.iter().find(|row| row[1].text == frequency);
    let text = row.unwrap()[2].text.replace('−', "-");
    text.trim_end_matches(" dB").parse().unwrap()
}

fn pair(q: [f64; 2], coupling: f64, off: f64) -> TransformerNetwork {
    let tuned = |hertz, q| TunedWinding::tuned(Frequency::hz(hertz), Inductance::mh(1.0), q);
    TransformerNetwork {
        primary: tuned(470e3 + off, q[0]),
        secondary: tuned(470e3, q[1]),
        coupling,
    }
}

/// Decibels under what the two pass on 470 kHz at critical coupling.
fn strength(network: &TransformerNetwork, critical: f64, q: [f64; 2], khz: f64) -> f64 {
    let most = pair(q, critical, 0.0).transfer_impedance(Frequency::khz(470.0));
    let here = network.transfer_impedance(Frequency::khz(khz));
    Decibels::from_voltage_ratio(Ratio::new(here.to_ohm() / most.to_ohm())).to_db()
}

#[test]
fn a_pair_is_counted_from_its_top_at_critical_coupling() {
    for (query, q, k, off) in [
        ("k=0.005", [100.0, 100.0], 0.005, 0.0),
        ("k=0.01", [100.0, 100.0], 0.01, 0.0),
        ("k=0.02", [100.0, 100.0], 0.02, 0.0),
        ("detune1=4kHz", [100.0, 100.0], 0.01, 4e3),
        ("q1=200&detune1=4kHz", [200.0, 100.0], 0.01, 4e3),
    ] {
        let view = asked("coupled-pair", query);
        let critical = view.quantity("critical-coupling").unwrap().value;
        for (text, khz) in [("460 kHz", 460.0), ("470 kHz", 470.0), ("475 kHz", 475.0)] {
            let told = level(&view, text);
            let core = strength(&pair(q, k, off), critical, q, khz);
            assert!(
                (told - core).abs() <= 0.06,
                "{query}: {told}, {core} at {text}"
            );
        }
    }
    let weak = asked("coupled-pair", "k=0.005");
    assert!(
        weak.title.contains("one hump, top at −1.9 dB"),
        "{}",
        weak.title
    );
    assert!(
        weak.words.contains("its top is at −1.9 dB"),
        "{}",
        weak.words
    );
    let even = asked("coupled-pair", "k=0.01");
    assert!(even.title.contains("top at 0 dB"), "{}", even.title);
}

/// The width is still counted from the curve's own top: its bar stands 3 dB below that.
#[test]
fn the_bar_of_the_width_goes_with_the_top() {
    // 52 px is 0 dB, and 5 px a decibel.
    for (query, under) in [("k=0.01", 0.0), ("k=0.005", 1.94)] {
        let view = asked("coupled-pair", query);
        let bar = find(&view.root, "width").attribute("y1").unwrap();
        let at: f64 = bar.parse().unwrap();
        assert!(
            (at - 52.0 - 5.0 * (under + 3.0)).abs() < 0.3,
            "{query}: {at}"
        );
    }
}

/// What lesson 8 says of one circuit out of tune: with equal Qs the humps stay even, with a
/// primary of twice the Q they do not.
#[test]
fn only_unequal_circuits_lean() {
    let lean = |query| {
        let view = asked("coupled-pair", query);
        level(&view, "475 kHz") - level(&view, "470 kHz")
    };
    let (even, leaning) = (lean("detune1=4kHz"), lean("q1=200&detune1=4kHz"));
    assert!(even.abs() < 1.0, "{even}");
    assert!(leaning > 2.5, "{leaning}");
    let width = |query| {
        asked("coupled-pair", query)
            .quantity("coupled-bandwidth")
            .unwrap()
            .value
    };
    assert!(width("detune1=4kHz") > width("k=0.01") + 1e3);
}

/// What lesson 9 says of a whole window: one circuit off makes the neighbours unlike.
#[test]
fn a_chain_with_one_circuit_off_is_lopsided() {
    let off = asked("if-chain", "detune=4kHz");
    let row = |place: usize| off.table.rows[place][2].text.clone();
    assert_eq!([row(1), row(3)], ["35.6 dB", "27.6 dB"]);
}

#[test]
fn labels_words_and_table_round_alike() {
    let view = asked("if-chain", "q=60&k=0.018");
    for (key, row, text) in [
        ("next-below-loss", 1, "16.6 dB"),
        ("next-above-loss", 3, "16.5 dB"),
    ] {
        assert_eq!(find(&view.root, key).text.as_deref(), Some(text));
        assert_eq!(view.table.rows[row][2].text, text);
        assert!(view.words.contains(text), "{}", view.words);
    }
    assert_eq!(asked("if-chain", "").table.rows[2][2].text, "0 dB");
}

#[test]
fn a_circuit_in_tune_is_not_off_by_nothing() {
    let view = asked("coupled-pair", "detune1=4kHz");
    let tuned = "The primary is off by 4 kHz, the secondary in tune.";
    assert!(view.words.contains(tuned), "{}", view.words);
    for name in ["coupled-pair", "if-chain"] {
        for control in asked(name, "").controls {
            assert!(!control.text.contains("0 Hz"), "{}", control.text);
        }
    }
}

/// The scale of the chain stands at the stations, and its names are drawn over the curve.
#[test]
fn the_chain_s_scale_is_told_at_the_stations() {
    let view = asked("if-chain", "");
    let texts: Vec<&str> = view
        .root
        .iter()
        .filter_map(|node| node.text.as_deref())
        .collect();
    for text in ["452", "461", "470", "479", "488 kHz"] {
        assert!(texts.contains(&text), "{texts:?}");
    }
    let at = |found: &dyn Fn(&Node) -> bool| view.root.iter().position(found).unwrap();
    let curve = |node: &Node| node.key.as_deref() == Some("curve");
    let curve = at(&|node| curve(node) || node.children.iter().any(curve));
    assert!(curve < at(&|node| node.text.as_deref() == Some("−60 dB")));
}

/// Each label of the spectrum is led to its line, and the triangle of the IF hangs over the
/// discs and squares that may come under it.
#[test]
fn marks_and_labels_are_told_apart() {
    let wave = asked("am-wave", "audio=1kHz");
    for part in ["lower", "carrier", "upper"] {
        let of = |what: &str, end: &str| {
            let node = find(&wave.root, &[part, what].concat());
            node.attribute(end).unwrap().to_owned()
        };
        assert_eq!(of("-leader", "x1"), of("-label", "x"));
        assert_eq!(of("-leader", "x2"), of("-line", "x1"));
        assert_eq!(of("-stem", "y2"), of("-line", "y1"));
    }
    let line = asked("frequency-line", "dial=540kHz&if=470kHz&side=above");
    let triangle = &find(&line.root, "intermediate-mark").children[0];
    assert_eq!(triangle.attribute("d"), Some("M-7 -22H7L0 -10Z"));
    assert_eq!(find(&line.root, "signal-mark").attribute("r"), Some("8"));
}

#[test]
fn a_dial_has_the_ends_that_it_is_given() {
    let dial = |rest: &str| {
        let view = asked(
            "block-diagram",
            &["dial=693kHz&if=470kHz&side=above", rest].concat(),
        );
        match &view.controls[0].kind {
            ControlKind::Slider(slider) => (slider.min, slider.max, slider.step),
            ControlKind::Choice { .. } => (0, 0, 0),
        }
    };
    assert_eq!(dial(""), (150, 1605, 15));
    assert_eq!(dial("&f-low=525kHz&f-high=1605kHz"), (525, 1605, 15));
    assert_eq!(dial("&f-low=531kHz&f-high=1700kHz"), (540, 1695, 15));
    let upside_down = "dial=693kHz&if=470kHz&side=above&f-low=1605kHz&f-high=525kHz";
    let said = view("block-diagram", &Input::parse(upside_down).unwrap());
    assert!(said.unwrap_err().to_string().contains("f-high"));
}

#[test]
fn the_task_stands_over_the_drawing() {
    let task = figures::Task {
        html: "Lower the Q.",
        done: "bandwidth >= 9.4 kHz",
    };
    let page = markup("resonance", &Input::new(), "A circuit.", Some(task)).unwrap();
    let at = |part: &str| page.find(part).unwrap();
    assert!(at("Lower the Q.") < at("class=\"drawing\""));
    assert!(at("class=\"drawing\"") < at("class=\"controls\""));
    assert!(at("class=\"controls\"") < at("A circuit."));
}
