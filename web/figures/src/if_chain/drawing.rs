//! The stations on their strip, and the response inked over them.

use super::{CHANNELS, Model};
use crate::Node;
use crate::coordinate::{percent, pixels};
use crate::handle::{bar, kilohertz, label};
use crate::plot::{Frame, held};
use crate::text_width::{Weight, text_width};
use crate::window::points;

pub(super) const HEIGHT: f64 = 258.0;
const TOP: f64 = 40.0;
const LINE: f64 = 200.0;
/// The lowest line of the drawing, in decibels under the peak.
const DEEPEST: f64 = 80.0;
/// The heights of a station's sidebands and of its carrier, in pixels.
const SIDEBANDS: f64 = 18.0;
const CARRIER: f64 = 34.0;

pub(super) fn frame(ends: (f64, f64)) -> Frame {
    Frame::new(TOP, LINE - TOP, ends, (0.0, DEEPEST))
}

/// From the back to the front.
pub(super) fn nodes(model: &Model) -> Vec<Node> {
    let frame = &model.frame;
    let mut nodes = vec![frame.paper()];
    let levels = [
        (0.0, "0 dB"),
        (20.0, "−20 dB"),
        (40.0, "−40 dB"),
        (60.0, "−60 dB"),
    ];
    let (lines, names) = frame.levels(&levels);
    nodes.extend(lines);
    for channel in -CHANNELS..=CHANNELS {
        nodes.extend(station(model, channel));
    }
    nodes.extend(width(model));
    let (places, losses) = points(&model.chain, frame);
    nodes.push(frame.curve_at("curve", "fig-curve", &places, &losses));
    nodes.extend(names);
    let under = Node::classed("text", "fig-soft").at(50.0, LINE + 54.0);
    nodes.push(
        under
            .anchored("middle")
            .saying("how far each station is under the peak"),
    );
    nodes
}

/// A carrier with its sidebands on the strip, and under it its frequency and what the IF
/// takes off it.
fn station(model: &Model, channel: i32) -> Vec<Node> {
    let frame = &model.frame;
    let carrier = model.carrier(channel);
    let key = [
        "next-but-one-below",
        "next-below",
        "station",
        "next-above",
        "next-but-one-above",
    ][(channel + CHANNELS) as usize];
    let (low, high) = (carrier - model.audio.value, carrier + model.audio.value);
    let (from, to) = (frame.x_within(low), frame.x_within(high));
    let x = frame.x(carrier);
    let wanted = if channel == 0 {
        "fig-stem fig-signal"
    } else {
        "fig-stem"
    };
    let unit = if channel == CHANNELS { " kHz" } else { "" };
    let [tick, number] = frame.tick(carrier, &[&kilohertz(carrier), unit].concat());
    vec![
        tick,
        number,
        Node::classed("rect", "fig-band")
            .keyed(&[key, "-sidebands"].concat())
            .at(from, LINE - SIDEBANDS)
            .with("width", percent(to - from))
            .with("height", pixels(SIDEBANDS)),
        Node::classed("line", wanted).between((x, LINE - CARRIER), (x, LINE)),
        label(
            &[key, "-loss"].concat(),
            "fig-soft",
            x,
            LINE + 38.0,
            &super::words::loss(model, carrier),
        ),
    ]
}

/// The width as a bar at its height, its size over the strip.
fn width(model: &Model) -> Vec<Node> {
    let frame = &model.frame;
    let (from, to) = (frame.x_within(model.edges.0), frame.x_within(model.edges.1));
    let text = [&model.width.text, " wide at 3 dB under the peak"].concat();
    let wide = text_width(&text, 12.0, Weight::Bold);
    let mut nodes = bar("width", from, to, frame.y(super::DROP)).to_vec();
    nodes.push(label(
        "width-label",
        "fig-aside",
        held(50.0, wide),
        16.0,
        &text,
    ));
    nodes
}
