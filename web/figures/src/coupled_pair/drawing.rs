//! The curve, its width, and where each circuit is tuned.

use super::Model;
use crate::handle::{bar, label};
use crate::plot::{Frame, held};
use crate::text_width::{Weight, text_width};
use crate::window::points;
use crate::{Node, span};

pub(super) const HEIGHT: f64 = 248.0;
const TOP: f64 = 52.0;
const LINE: f64 = 202.0;
/// The lowest line of the drawing, in decibels under the top at critical coupling.
const DEEPEST: f64 = 30.0;
/// The lowest place of the bar that shows the width.
const LOWEST_BAR: f64 = 27.0;

pub(super) fn frame(ends: (f64, f64)) -> Frame {
    Frame::new(TOP, LINE - TOP, ends, (0.0, DEEPEST))
}

/// From the back to the front.
pub(super) fn nodes(model: &Model) -> Vec<Node> {
    let frame = &model.frame;
    let mut nodes = vec![frame.paper()];
    nodes.extend(span::scale(frame));
    let (lines, names) = frame.levels(&[(0.0, "0 dB"), (10.0, "−10 dB"), (20.0, "−20 dB")]);
    nodes.extend(lines);
    nodes.extend(circuits(model));
    nodes.extend(width(model));
    let (places, mut losses) = points(&model.chain, frame);
    losses.iter_mut().for_each(|loss| *loss += model.under);
    nodes.push(frame.curve_at("curve", "fig-curve", &places, &losses));
    nodes.extend(names);
    nodes.push(label("coupling", "fig-value", 50.0, 16.0, &coupling(model)));
    nodes.push(label("humps", "fig-aside", 50.0, 33.0, &humps(model)));
    nodes
}

fn coupling(model: &Model) -> String {
    let mut text = ["k ", &model.coupling.text].concat();
    if model.critical_shown {
        text.push_str(", critical ");
        text.push_str(&model.critical.text);
    }
    text
}

/// What the top of the curve looks like, and how high it is.
pub(super) fn humps(model: &Model) -> String {
    let top = ["top at ", &super::words::level(-model.under)].concat();
    if !model.in_tune() {
        return ["out of tune, ", &top].concat();
    }
    if model.peaks.value == 0.0 {
        return ["one hump, ", &top].concat();
    }
    let (peaks, dip) = (&model.peaks.text, &model.dip.text);
    ["humps ", peaks, " apart, dip ", dip].concat()
}

/// Where primary and secondary are tuned: two marks of their own shapes under the line.
fn circuits(model: &Model) -> Vec<Node> {
    let y = LINE + 36.0;
    let mark = |key: &str, side: usize, path: &'static str| {
        let x = model
            .frame
            .x_within(model.tuned.value + model.detuned[side].value);
        let stem = Node::classed("line", "fig-stem fig-intermediate")
            .keyed(&[key, "-stem"].concat())
            .between((x, TOP), (x, LINE));
        let path = Node::classed("path", "fig-mark").always("d", path);
        let mark = Node::new("svg")
            .keyed(key)
            .at(x, LINE)
            .always("overflow", "visible")
            .around(vec![path]);
        [stem, mark]
    };
    let shown = |x: f64, path: &'static str| {
        let path = Node::classed("path", "fig-mark").always("d", path);
        Node::new("svg")
            .at(x, y - 4.0)
            .always("overflow", "visible")
            .around(vec![path])
    };
    let says = |x: f64, text: &str| Node::classed("text", "fig-soft").at(x, y).saying(text);
    const UP: &str = "M-6 0 0 -9 6 0Z";
    const DOWN: &str = "M-6 0 0 9 6 0Z";
    let mut nodes = mark("primary", 0, UP).to_vec();
    nodes.extend(mark("secondary", 1, DOWN));
    nodes.extend([
        shown(20.0, "M-6 5 0 -4 6 5Z"),
        says(24.0, "primary"),
        shown(56.0, "M-6 -4 0 5 6 -4Z"),
        says(60.0, "secondary"),
    ]);
    nodes
}

/// The width as a bar, its size beside it.
fn width(model: &Model) -> Vec<Node> {
    let frame = &model.frame;
    let (from, to) = (frame.x_within(model.edges.0), frame.x_within(model.edges.1));
    let y = frame.y((model.under + super::DROP).min(LOWEST_BAR));
    let text = [&model.width.text, " wide"].concat();
    let wide = text_width(&text, 12.0, Weight::Bold);
    let at = held(to + wide / 2.0 / 3.28 + 2.5, wide);
    let mut nodes = bar("width", from, to, y).to_vec();
    nodes.push(label("width-label", "fig-aside", at, y + 6.0, &text));
    nodes
}
