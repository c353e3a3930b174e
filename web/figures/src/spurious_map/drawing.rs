//! The map: bands as strips, what is on the air as levels, what the set answers to as lines.

use super::Model;
use super::line::{Line, Role};
use super::note::highest;
use super::words;
use crate::Node;
use crate::coordinate::{percent, pixels};
use crate::handle::{dot, handle, kilohertz, label};
use crate::plot::{Frame, held};
use crate::spread::{Label, spread};
use crate::text_width::{Weight, text_width};
use superhet::quantities::bands::{BandKind, bands};

const TOP: f64 = 42.0;
const TALL: f64 = 280.0;
/// The paper's edges, in percent: numbers stand to its left, names to its right.
const LEFT: f64 = 13.5;
const WIDE: f64 = 54.5;
/// Levels with a number are so many hertz apart.
const LEVEL: f64 = 1e6;
/// The least distance of two names from one another, less the gap that is always kept.
const NAME: f64 = 11.0;

pub(super) fn frame(across: (f64, f64), highest: f64) -> Frame {
    Frame {
        left: LEFT,
        width: WIDE,
        ..Frame::new(TOP, TALL, across, (highest, 0.0))
    }
}

pub(super) fn height(model: &Model) -> f64 {
    TOP + TALL + if model.sender.is_some() { 88.0 } else { 70.0 }
}

/// From the back to the front.
pub(super) fn nodes(model: &Model) -> Vec<Node> {
    let frame = &model.frame;
    let mut nodes = vec![frame.paper()];
    nodes.extend(strips(model));
    nodes.extend(scales(frame));
    nodes.extend(levels(model));
    // The station's line last, over all others.
    nodes.extend(model.lines.iter().rev().map(|line| curve(frame, line)));
    nodes.extend(names(model));
    nodes.extend(at_the_dial(model));
    nodes.extend(told(model));
    nodes
}

/// The broadcast bands. Those of the tropics alone are left out.
fn strips(model: &Model) -> Vec<Node> {
    let frame = &model.frame;
    let mut nodes = Vec::new();
    let shown = |hertz: f64| hertz <= frame.down.0;
    for band in bands(model.set.region).filter(|band| band.kind != BandKind::Tropical) {
        let (low, high) = (band.low.to_hz(), band.high.to_hz());
        if !shown(high) {
            continue;
        }
        let strip = Node::classed("rect", "fig-band").at(frame.left, frame.y(high));
        let strip = strip.with("width", percent(frame.width));
        nodes.push(strip.with("height", pixels(frame.y(low) - frame.y(high))));
        if band.kind == BandKind::MediumWave {
            let name = Node::classed("text", "fig-soft");
            let name = name.at(frame.left + frame.width - 1.0, frame.y(low) - 4.0);
            nodes.push(name.anchored("end").saying(band.name));
        }
    }
    nodes
}

fn scales(frame: &Frame) -> Vec<Node> {
    let mut nodes = Vec::new();
    let mut level = LEVEL;
    while level < frame.down.0 + 1.0 {
        let y = frame.y(level);
        let right = frame.left + frame.width;
        nodes.push(Node::classed("line", "fig-level").between((frame.left, y), (right, y)));
        let text = [&pixels(level / 1e6), " MHz"].concat();
        let number = Node::classed("text", "fig-soft").at(frame.left - 1.0, y + 4.0);
        nodes.push(number.anchored("end").saying(&text));
        level += LEVEL;
    }
    let (low, high) = frame.across;
    let words = [
        (low, "start", kilohertz(low)),
        (f64::midpoint(low, high), "middle", "dial".to_owned()),
        (high, "end", [&kilohertz(high), " kHz"].concat()),
    ];
    for (dial, anchor, text) in words {
        let text = Node::classed("text", "fig-soft")
            .at(frame.x(dial), frame.bottom() + 19.0)
            .anchored(anchor)
            .saying(&text);
        nodes.push(text);
    }
    nodes
}

/// What is on the air at a frequency of its own: harmonics of the IF, and the sender.
fn levels(model: &Model) -> Vec<Node> {
    let frame = &model.frame;
    let right = frame.left + frame.width;
    let level = |key: &str, class: &str, hertz: f64| {
        let y = frame.y(hertz);
        Node::classed("line", class)
            .keyed(key)
            .between((frame.left, y), (right, y))
            .shown(hertz <= frame.down.0)
    };
    let mut nodes: Vec<Node> = model
        .own
        .iter()
        .zip(OWN)
        .map(|(note, key)| level(key, "fig-wave fig-own", note.at))
        .collect();
    nodes.extend(
        model
            .sender
            .iter()
            .map(|sender| level("sender", "fig-wave fig-sender", sender.value)),
    );
    nodes
}

const OWN: [&str; 2] = ["twice", "thrice"];

fn curve(frame: &Frame, line: &Line) -> Node {
    let class = match line.role {
        Role::Station => "fig-curve",
        Role::Image => "fig-stem fig-image",
        Role::Breakthrough | Role::Product(0, ..) => "fig-stem fig-intermediate",
        Role::Product(_, 1, _) => "fig-stem fig-oscillator",
        Role::Product(..) => "fig-curve fig-other",
    };
    frame.curve_at(&line.role.key(), class, &line.places, &line.signals)
}

/// The names beside the right ends of lines and levels, kept apart.
fn names(model: &Model) -> Vec<Node> {
    let frame = &model.frame;
    let mut ends: Vec<(String, String, Option<f64>)> = Vec::new();
    for line in &model.lines {
        let end = line.signals.last().copied();
        ends.push((line.role.key(), line.role.name(), end));
    }
    for ((note, key), name) in model.own.iter().zip(OWN).zip(["2 × IF", "3 × IF"]) {
        ends.push((key.to_owned(), name.to_owned(), Some(note.at)));
    }
    if let Some(sender) = &model.sender {
        ends.push(("sender".to_owned(), "sender".to_owned(), Some(sender.value)));
    }
    // Not by `clamp`: its message for ends the wrong way round would bring all that writes
    // a float into the page's program.
    let y = |end: &Option<f64>| {
        let y = frame.y(end.unwrap_or(0.0));
        y.max(frame.top).min(frame.bottom())
    };
    let first = frame.top - 10.0;
    let wanted: Vec<Label> = ends
        .iter()
        .map(|(.., end)| Label {
            wanted: y(end) - first,
            width: NAME,
        })
        .collect();
    let places = spread(&wanted, TALL + 20.0);
    let right = frame.left + frame.width;
    let mut nodes = Vec::new();
    for ((key, name, end), place) in ends.iter().zip(places) {
        let (from, to) = (y(end), first + place);
        let leader = Node::classed("line", "fig-level").keyed(&[key, "-leader"].concat());
        nodes.push(
            leader
                .between((right, from), (right + 3.0, to))
                .shown(end.is_some()),
        );
        let beyond = end.is_some_and(|end| end > frame.down.0);
        let text = [name.as_str(), if beyond { " ↑" } else { "" }].concat();
        let text = Node::classed("text", "fig-soft")
            .keyed(&[key, "-name"].concat())
            .at(right + 3.5, to + 4.0)
            .saying(&text);
        nodes.push(text.shown(end.is_some()));
    }
    nodes
}

/// The dial's own line, the signals that it makes the set answer to, and what is heard.
fn at_the_dial(model: &Model) -> Vec<Node> {
    let frame = &model.frame;
    let (x, bottom) = (frame.x(model.set.dial), frame.bottom());
    let tuning = &model.tuning;
    let text = [
        &tuning.signal.text,
        ", oscillator ",
        &tuning.oscillator.text,
    ]
    .concat();
    let wide = text_width(&text, 13.0, Weight::Bold);
    let mut nodes = vec![
        Node::classed("line", "fig-stem fig-signal")
            .keyed("dial-stem")
            .between((x, 22.0), (x, bottom)),
        label("dial-label", "fig-value", held(x, wide), 16.0, &text),
    ];
    for line in &model.lines {
        let at = line.now.map_or(-1.0, |response| response.frequency.to_hz());
        let on_paper = (0.0..=frame.down.0).contains(&at);
        let key = [&line.role.key(), "-dot"].concat();
        nodes.push(dot(&key, x, frame.y(at.max(0.0))).shown(on_paper));
    }
    let ring = |key: &str, hertz: f64, shown: bool| {
        Node::classed("circle", "fig-distance")
            .keyed(&[key, "-ring"].concat())
            .centred(x, frame.y(hertz), 8.0)
            .shown(shown)
    };
    for (note, key) in model.own.iter().zip(OWN) {
        nodes.push(ring(key, note.at, note.pitch <= highest(&model.set)));
    }
    if let Some(sender) = &model.sender {
        nodes.push(ring("sender", sender.value, words::heard(model).is_some()));
    }
    nodes.extend(handle("dial", x, bottom));
    nodes
}

/// What is heard, under the map.
fn told(model: &Model) -> Vec<Node> {
    let mut y = model.frame.bottom() + 40.0;
    let mut nodes = Vec::new();
    if let Some(text) = words::sender(model) {
        nodes.push(label("sender-told", "fig-aside", 50.0, y, &text));
        y += 18.0;
    }
    let (note, pace) = words::note(model);
    nodes.push(label("note", "fig-value", 50.0, y, &note));
    nodes.push(label("pace", "fig-soft", 50.0, y + 18.0, &pace));
    nodes
}
