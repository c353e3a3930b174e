//! Where the blocks, wires and strips of wave lie.

use super::wave::{Strip, Wave};
use crate::Node;
use crate::coordinate::{percent, pixels};
use crate::tuning::Tuning;

pub(super) const WIDTH: f64 = 328.0;
pub(super) const HEIGHT: f64 = 536.0;

/// Left edge of the signal's own column and of the oscillator's, in percent.
const LEFT: f64 = 2.0;
const RIGHT: f64 = 54.0;
const BLOCK_WIDTH: f64 = 44.0;
const BLOCK_HEIGHT: f64 = 46.0;
/// The wire down the signal's column, and the oscillator's wire.
const SPINE: f64 = 12.0;
const BRANCH: f64 = 64.0;
/// Tops of the six blocks in the signal's column.
const TOPS: [f64; 6] = [38.0, 154.0, 240.0, 326.0, 404.0, 482.0];

/// A block: its name and what it does.
const BLOCKS: [(&str, &str); 6] = [
    ("Aerial circuit", "follows the dial"),
    ("Mixer", "gives the difference"),
    ("IF amplifier", "never retuned"),
    ("Detector", "finds the programme"),
    ("Audio amplifier", "makes it strong"),
    ("Loudspeaker", "makes it heard"),
];

/// The drawing, from the back to the front.
pub(super) fn nodes(tuning: &Tuning) -> Vec<Node> {
    let mut nodes = aerial();
    nodes.extend(wires());
    for (top, (name, does)) in TOPS.into_iter().zip(BLOCKS) {
        nodes.extend(block(LEFT, top, name, does));
    }
    nodes.extend(block(RIGHT, TOPS[0], "Oscillator", "follows the dial"));
    nodes.extend(strips(tuning));
    nodes
}

/// The aerial over the first block.
fn aerial() -> Vec<Node> {
    let rods = Node::classed("path", "fig-wire").always("d", "M0 32V4M-11 4 0 17 11 4");
    let shape = Node::new("svg")
        .at(SPINE, 6.0)
        .always("overflow", "visible")
        .around(vec![rods]);
    let text = Node::classed("text", "fig-soft")
        .at(SPINE + 6.0, 24.0)
        .saying("every station at once");
    vec![shape, text]
}

/// The wires between the blocks, and the spindle that turns two of them.
fn wires() -> Vec<Node> {
    let mut nodes = Vec::new();
    for pair in TOPS.windows(2) {
        nodes.extend(arrow_down(SPINE, pair[0] + BLOCK_HEIGHT, pair[1]));
    }
    let entry = TOPS[1] + BLOCK_HEIGHT / 2.0;
    let first = TOPS[0] + BLOCK_HEIGHT;
    nodes.push(line("fig-wire", (BRANCH, first), (BRANCH, entry)));
    nodes.push(line(
        "fig-wire",
        (BRANCH, entry),
        (LEFT + BLOCK_WIDTH, entry),
    ));
    nodes.push(head(LEFT + BLOCK_WIDTH, entry, "M8 -5 0 0 8 5"));
    let spindle = TOPS[0] + BLOCK_HEIGHT / 2.0;
    nodes.push(line(
        "fig-spindle",
        (LEFT + BLOCK_WIDTH, spindle),
        (RIGHT, spindle),
    ));
    nodes
}

fn arrow_down(x: f64, top: f64, bottom: f64) -> [Node; 2] {
    [
        line("fig-wire", (x, top), (x, bottom)),
        head(x, bottom, "M-5 -8 0 0 5 -8"),
    ]
}

fn head(x: f64, y: f64, path: &'static str) -> Node {
    let path = Node::classed("path", "fig-wire").always("d", path);
    Node::new("svg")
        .at(x, y)
        .always("overflow", "visible")
        .around(vec![path])
}

fn line(class: &str, from: (f64, f64), to: (f64, f64)) -> Node {
    Node::classed("line", class).between(from, to)
}

fn block(left: f64, top: f64, name: &str, does: &str) -> [Node; 3] {
    let text = |class: &str, y: f64| {
        Node::classed("text", class)
            .at(left + BLOCK_WIDTH / 2.0, top + y)
            .anchored("middle")
    };
    [
        Node::classed("rect", "fig-block")
            .at(left, top)
            .with("width", percent(BLOCK_WIDTH))
            .with("height", pixels(BLOCK_HEIGHT)),
        text("fig-name fig-inside", 19.0).saying(name),
        text("fig-soft fig-inside", 36.0).saying(does),
    ]
}

/// The frequency and the strip of wave at each wire.
fn strips(tuning: &Tuning) -> Vec<Node> {
    let carrier = |key, hertz, strength| Wave {
        key,
        hertz: Some(hertz),
        programme: true,
        strength,
    };
    let programme = |key, strength| Wave {
        key,
        hertz: None,
        programme: true,
        strength,
    };
    let (signal, intermediate) = (&tuning.signal, &tuning.intermediate);
    let oscillator = Wave {
        programme: false,
        ..carrier("oscillator-wave", tuning.oscillator.value, 0.8)
    };
    let beside = |left: f64| Strip {
        left,
        width: 30.0,
        middle: 130.0,
    };
    let after = |row: usize| Strip {
        left: 50.0,
        width: 47.0,
        middle: f64::midpoint(TOPS[row] + BLOCK_HEIGHT, TOPS[row + 1]),
    };
    let faint = carrier("mixed-wave", intermediate.value, 0.5);
    let strong = carrier("amplified-wave", intermediate.value, 1.0);
    vec![
        label(Some("signal"), SPINE, 106.0, &signal.text),
        carrier("signal-wave", signal.value, 0.5).node(&beside(SPINE + 3.0)),
        label(Some("oscillator"), BRANCH, 106.0, &tuning.oscillator.text),
        oscillator.node(&beside(BRANCH + 3.0)),
        label(Some("mixed"), SPINE, wire_text(1), &intermediate.text),
        faint.node(&after(1)),
        label(Some("amplified"), SPINE, wire_text(2), &intermediate.text),
        strong.node(&after(2)),
        label(None, SPINE, wire_text(3), "programme"),
        programme("found-wave", 0.5).node(&after(3)),
        label(None, SPINE, wire_text(4), "programme"),
        programme("driven-wave", 1.0).node(&after(4)),
    ]
}

/// The baseline of the text beside the wire under a block of the column.
fn wire_text(row: usize) -> f64 {
    f64::midpoint(TOPS[row] + BLOCK_HEIGHT, TOPS[row + 1]) + 4.0
}

/// The text beside a wire; keyed where it can change.
fn label(key: Option<&str>, wire: f64, y: f64, text: &str) -> Node {
    let class = if key.is_some() {
        "fig-value"
    } else {
        "fig-soft"
    };
    let node = Node::classed("text", class).at(wire + 3.0, y).saying(text);
    match key {
        Some(key) => node.keyed(key),
        None => node,
    }
}
