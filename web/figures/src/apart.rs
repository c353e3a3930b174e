//! Tests that no label of a drawing touches another or leaves the paper.

use crate::text_width::{Weight, text_width};
use crate::{Input, Node, View, view};

#[path = "../tests/grid/mod.rs"]
mod grid;

/// A label as a box, in pixels, at the narrowest width.
struct Label {
    text: String,
    left: f64,
    right: f64,
    baseline: f64,
}

fn number(node: &Node, name: &str) -> f64 {
    let text = node.attribute(name).unwrap();
    text.trim_end_matches('%').parse().unwrap()
}

fn label(node: &Node, width: f64) -> Option<Label> {
    let text = node.text.clone()?;
    let class = node.attribute("class").unwrap();
    // As study.css sets them.
    let small = class.contains("fig-soft") || class.contains("fig-aside");
    let bold = ["fig-value", "fig-aside", "fig-name fig-inside"];
    let bold = bold.iter().any(|name| class.contains(name));
    let (size, weight) = (
        if small { 12.0 } else { 13.0 },
        if bold { Weight::Bold } else { Weight::Regular },
    );
    let wide = text_width(&text, size, weight);
    let nudge = match node.attribute("transform") {
        Some("translate(10 0)") => 10.0,
        Some("translate(-10 0)") => -10.0,
        Some(other) => panic!("an unknown shift: {other}"),
        None => 0.0,
    };
    let at = number(node, "x") / 100.0 * width + nudge;
    let left = match node.attribute("text-anchor") {
        Some("middle") => at - wide / 2.0,
        Some("end") => at - wide,
        _ => at,
    };
    Some(Label {
        text,
        left,
        right: left + wide,
        baseline: number(node, "y"),
    })
}

fn labels(view: &View) -> Vec<Label> {
    fn collect(nodes: &[Node], width: f64, out: &mut Vec<Label>) {
        for node in nodes.iter().filter(|node| node.tag == "text") {
            out.extend(label(node, width));
        }
        for node in nodes {
            collect(&node.children, width, out);
        }
    }
    let mut out = Vec::new();
    collect(&view.root, view.width, &mut out);
    out
}

/// Whether two boxes overlap; a line is 12 px from its top to its baseline, 4 px below.
fn touch(one: &Label, other: &Label) -> bool {
    one.left < other.right && other.left < one.right && (one.baseline - other.baseline).abs() < 15.0
}

fn check(view: &View) {
    let labels = labels(view);
    for (place, one) in labels.iter().enumerate() {
        let slack = 0.5; // of the rounding to a hundredth of a percent, and more
        assert!(
            one.left >= -slack && one.right <= view.width + slack,
            "{:?} runs from {} to {} in {}",
            one.text,
            one.left,
            one.right,
            view.title
        );
        assert!(one.baseline - 12.0 >= 0.0 && one.baseline + 4.0 <= view.height);
        for other in &labels[place + 1..] {
            assert!(
                !touch(one, other),
                "{:?} and {:?} touch in {}",
                one.text,
                other.text,
                view.title
            );
        }
    }
}

#[test]
fn labels_keep_apart_for_every_tuning() {
    let mut seen = 0;
    for name in grid::TUNED {
        for dial in (150..=1605).step_by(45) {
            for intermediate in (100..=600).step_by(25) {
                for side in ["above", "below"] {
                    let query = format!("dial={dial}.5kHz&if={intermediate}kHz&side={side}");
                    if let Ok(view) = view(name, &Input::parse(&query).unwrap()) {
                        check(&view);
                        seen += 1;
                    }
                }
            }
        }
    }
    assert!(seen > 2000, "{seen} tunings");
}

#[test]
fn labels_keep_apart_wherever_handles_stand() {
    for name in grid::others() {
        for query in grid::inputs(name) {
            check(&view(name, &Input::parse(&query).unwrap()).unwrap());
        }
    }
}

#[test]
fn every_figure_is_tested() {
    let tested: Vec<&str> = grid::TUNED.into_iter().chain(grid::others()).collect();
    for name in crate::names() {
        assert!(tested.contains(&name), "{name} has no grid");
    }
}

#[test]
fn labels_keep_apart_on_other_lines() {
    for query in [
        "dial=15.3MHz&if=465kHz&side=below&axis=30MHz&region=1",
        "dial=5.95MHz&if=1.6MHz&side=above&axis=10MHz&region=2",
        "dial=1705kHz&if=600kHz&side=above&region=2",
        "dial=1605kHz&if=600kHz&side=above&region=3&image=hidden",
    ] {
        check(&view("frequency-line", &Input::parse(query).unwrap()).unwrap());
    }
}

#[test]
fn labels_keep_apart_without_a_dial() {
    for intermediate in ["100 kHz", "262.5 kHz", "470 kHz", "1605 kHz", "2 MHz"] {
        for region in ["1", "2", "3"] {
            let input = Input::new().with("if", intermediate);
            check(&view("band-chart", &input.with("region", region)).unwrap());
        }
    }
}

#[test]
fn labels_keep_apart_on_a_full_map() {
    for dial in (525..=1605).step_by(60) {
        for side in ["above", "below"] {
            for rest in ["order=4&n=4", "order=4&axis=3MHz&region=2", "n=3&if=455kHz"] {
                let query = format!("dial={dial}kHz&side={side}&sender=1584kHz&{rest}");
                check(&view("spurious-map", &Input::parse(&query).unwrap()).unwrap());
            }
        }
    }
}

#[test]
fn words_fit_their_blocks() {
    let input = Input::parse("dial=1605.5kHz&if=600kHz&side=above").unwrap();
    let view = view("block-diagram", &input).unwrap();
    let inside: Vec<&Node> = view
        .root
        .iter()
        .filter(|node| {
            node.attribute("class")
                .is_some_and(|class| class.contains("fig-inside"))
        })
        .collect();
    assert_eq!(inside.len(), 14);
    for node in inside {
        let label = label(node, view.width).unwrap();
        let room = 0.44 * view.width - 4.0;
        assert!(label.right - label.left <= room, "{:?}", label.text);
    }
}

/// The stem of the IF runs past the row of distances: their label keeps off it.
#[test]
fn the_distance_is_not_written_over_the_if() {
    for dial in (525..=1605).step_by(10) {
        for intermediate in (440..=480).step_by(5) {
            for image in ["shown", "hidden"] {
                let query = format!("dial={dial}kHz&if={intermediate}kHz&side=above&image={image}");
                let view = view("frequency-line", &Input::parse(&query).unwrap()).unwrap();
                let keyed = |key: &str| {
                    let found = view
                        .root
                        .iter()
                        .find(|node| node.key.as_deref() == Some(key));
                    found.unwrap()
                };
                let stem = number(keyed("intermediate-stem"), "x1") / 100.0 * view.width;
                let label = label(keyed("distance-label"), view.width).unwrap();
                assert!(
                    stem < label.left || stem > label.right,
                    "{:?} over the IF: {query}",
                    label.text
                );
            }
        }
    }
}
