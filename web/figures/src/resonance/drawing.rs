//! The curve, its width, and the asked frequency on it.

use super::Model;
use crate::handle::{bar, dot, handle, label};
use crate::plot::{Frame, held};
use crate::text_width::{Weight, text_width};
use crate::{Node, span};

/// The line of frequency, in pixels from the top.
const LINE: f64 = 196.0;
const TOP: f64 = 48.0;
/// What a voltage of 1/√2, half the power, is in decibels.
const HALF_POWER: f64 = 3.010_299_956_639_812;

pub(super) fn frame(ends: (f64, f64)) -> Frame {
    Frame::new(TOP, LINE - TOP, ends, (1.0, 0.0))
}

pub(super) fn height(model: &Model) -> f64 {
    LINE + if model.resistance.is_some() {
        52.0
    } else {
        30.0
    }
}

/// From the back to the front.
pub(super) fn nodes(model: &Model) -> Vec<Node> {
    let frame = &model.frame;
    let mut nodes = vec![frame.paper()];
    nodes.extend(span::scale(frame));
    let rules = model.scale.rules();
    let rules: Vec<(f64, &str)> = rules
        .iter()
        .map(|(at, text)| (*at, text.as_str()))
        .collect();
    let (lines, names) = frame.levels(&rules);
    nodes.extend(lines);
    let middle = frame.x(model.tuned.value);
    nodes.push(
        Node::classed("line", "fig-stem fig-intermediate").between((middle, TOP), (middle, LINE)),
    );
    nodes.extend(width(model));
    nodes.push(curve(model));
    nodes.extend(names);
    nodes.extend(asked(model));
    if let Some(resistance) = &model.resistance {
        let text = ["dynamic resistance ", &resistance.text].concat();
        nodes.push(label("resistance", "fig-value", 50.0, LINE + 44.0, &text));
    }
    nodes
}

fn curve(model: &Model) -> Node {
    let places = model.frame.places_about_middle();
    let heights = places.map(|hertz| model.scale.height(model.loss_at(hertz)));
    model
        .frame
        .curve_at("curve", "fig-curve", &places, &heights)
}

/// The half-power width as a bar, its size beside it.
fn width(model: &Model) -> Vec<Node> {
    let frame = &model.frame;
    let (low, high) = model.edges();
    let (from, to) = (frame.x_within(low), frame.x_within(high));
    let y = frame.y(model.scale.height(HALF_POWER));
    let mut nodes = bar("width", from, to, y).to_vec();
    let text = [&model.all.text, " wide"].concat();
    let wide = text_width(&text, 12.0, Weight::Bold);
    let at = held(to + wide / 2.0 / 3.28 + 2.5, wide);
    nodes.push(label("width-label", "fig-aside", at, y + 4.0, &text));
    nodes
}

/// The asked frequency: its words, a line down through the curve, and its handle.
fn asked(model: &Model) -> Vec<Node> {
    let frame = &model.frame;
    let x = frame.x(model.asked.value);
    let height = model.scale.height(model.loss).max(0.0);
    let text = [&model.asked.text, ": ", &model.scale.words(model.loss)].concat();
    let wide = text_width(&text, 13.0, Weight::Bold);
    let mut nodes = vec![
        Node::classed("line", "fig-stem fig-signal")
            .keyed("asked-stem")
            .between((x, 22.0), (x, LINE)),
        label("asked-label", "fig-value", held(x, wide), 16.0, &text),
        dot("asked-dot", x, frame.y(height)),
    ];
    nodes.extend(handle("asked", x, LINE));
    nodes
}
