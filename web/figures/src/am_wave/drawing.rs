//! The wave over one millisecond, and its three frequencies under it.

use super::Model;
use crate::Node;
use crate::coordinate::pixels;
use crate::handle::{bar, kilohertz, label};
use crate::plot::{Frame, WIDTH};
use crate::spread::{Label, spread};
use crate::text_width::{Weight, text_width};
use superhet::quantities::modulation::envelope;
use superhet::units::Depth;

pub(super) const HEIGHT: f64 = 330.0;
/// The highest note of the figure, in hertz.
pub(super) const HIGHEST_NOTE: f64 = 10e3;
/// The stretch of time that is drawn, in milliseconds.
const TIME: f64 = 1.0;
/// How far the line of frequency reaches to each side, in hertz.
const REACH: f64 = 12e3;
const LINE: f64 = 290.0;

/// From the back to the front.
pub(super) fn nodes(model: &Model) -> Vec<Node> {
    let mut nodes = wave(model);
    nodes.extend(spectrum(model));
    nodes
}

/// The swings between their outlines. There are far more of them than can be drawn: from
/// each point of the paper to the next the ink goes from one outline to the other.
fn wave(model: &Model) -> Vec<Node> {
    let frame = Frame::new(26.0, 110.0, (0.0, TIME), (2.0, -2.0));
    let depth = Depth::new(model.depth.value);
    // The drawing begins half a swing after a top, at the lowest place.
    let turns = |time: f64| 0.5 + model.audio.value / 1e3 * time;
    let outline = frame.places().map(|time| envelope(depth, turns(time)));
    let mut swings = outline;
    for (place, swing) in swings.iter_mut().enumerate() {
        if place % 2 == 1 {
            *swing = -*swing;
        }
    }
    let title = ["depth ", &model.depth.text, ", note ", &model.audio.text].concat();
    let mut nodes = vec![frame.paper()];
    nodes.extend([
        frame.curve("swings", "fig-wave", &swings),
        frame.curve("outline", "fig-curve", &outline),
        frame.curve("mirrored", "fig-curve", &outline.map(|height| -height)),
        label("wave-label", "fig-value", 50.0, 16.0, &title),
    ]);
    nodes.extend(frame.tick(0.0, "0"));
    nodes.extend(frame.tick(TIME / 2.0, "0.5"));
    nodes.extend(frame.last_tick(TIME, &[&pixels(TIME), " ms"].concat()));
    nodes
}

fn spectrum(model: &Model) -> Vec<Node> {
    let middle = model.carrier.value;
    let frame = Frame::new(
        206.0,
        LINE - 206.0,
        (middle - REACH, middle + REACH),
        (1.15, 0.0),
    );
    let lines = [
        ("lower", &model.lower, model.side, "fig-line fig-part"),
        ("carrier", &model.carrier, 1.0, "fig-line fig-part"),
        ("upper", &model.upper, model.side, "fig-line fig-part"),
    ];
    let labels = lines.map(|(_, at, ..)| Label {
        wanted: frame.x(at.value) / 100.0 * WIDTH,
        width: text_width(&at.text, 13.0, Weight::Bold),
    });
    let middles = spread(&labels, WIDTH);
    let mut nodes = vec![frame.paper()];
    for ((key, at, height, class), place) in lines.into_iter().zip(middles) {
        let x = frame.x(at.value);
        let place = place / WIDTH * 100.0;
        let leader = |part: &str, from: (f64, f64), to: (f64, f64)| {
            Node::classed("line", "fig-stem")
                .keyed(&[key, part].concat())
                .between(from, to)
        };
        nodes.extend([
            leader("-leader", (place, 190.0), (x, frame.top)),
            leader("-stem", (x, frame.top), (x, frame.y(height))),
        ]);
        nodes.push(
            Node::classed("line", class)
                .keyed(&[key, "-line"].concat())
                .between((x, frame.y(height)), (x, LINE)),
        );
        let text = [key, "-label"].concat();
        nodes.push(label(&text, "fig-value", place, 184.0, &at.text));
    }
    let (from, to) = (frame.x(model.lower.value), frame.x(model.upper.value));
    nodes.extend(bar("room", from, to, LINE + 6.0));
    let low = Node::classed("text", "fig-soft").at(1.0, LINE + 21.0);
    nodes.push(low.saying(&kilohertz(middle - REACH)));
    let high = Node::classed("text", "fig-soft").at(99.0, LINE + 21.0);
    let high_text = [&kilohertz(middle + REACH), " kHz"].concat();
    nodes.push(high.anchored("end").saying(&high_text));
    let room = [&model.room.text, " of room"].concat();
    nodes.push(label("room-label", "fig-aside", 50.0, LINE + 25.0, &room));
    nodes
}
