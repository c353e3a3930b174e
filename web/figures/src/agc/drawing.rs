//! The two curves and the signal on them.

use super::{HIGHEST, Model};
use crate::Node;
use crate::handle::{dot, handle, label};
use crate::plot::held;
use crate::text_width::{Weight, text_width};

pub(super) const HEIGHT: f64 = 236.0;
/// The baseline of what is said under the scale.
const UNDER: f64 = 228.0;
/// Decibels of the levels and of the ticks.
const MARKS: [f64; 6] = [-20.0, 0.0, 20.0, 40.0, 60.0, 80.0];

/// From the back to the front.
pub(super) fn nodes(model: &Model) -> Vec<Node> {
    let frame = &model.frame;
    let mut nodes = vec![frame.paper()];
    for level in MARKS {
        // The lowest level is the strip's own edge, the highest its top.
        if level > MARKS[0] && level < HIGHEST {
            nodes.extend(frame.level(level, &decibels(level)));
        }
        nodes.extend(if level < HIGHEST {
            frame.tick(level, &signed(level))
        } else {
            frame.last_tick(level, &decibels(level))
        });
    }
    nodes.push(
        Node::classed("line", "fig-stem fig-intermediate")
            .between((frame.x(0.0), frame.top), (frame.x(0.0), frame.bottom())),
    );
    let said = |x: f64, anchor: &str, y: f64, text: &str| {
        Node::classed("text", "fig-soft")
            .at(x, y)
            .anchored(anchor)
            .saying(text)
    };
    nodes.push(said(frame.x(0.0), "middle", UNDER, "AGC begins"));
    nodes.push(said(99.0, "end", UNDER, "signal at the aerial"));
    nodes.push(said(5.0, "start", frame.top - 6.0, "output"));
    nodes.extend(curves(model));
    nodes.extend(signal(model));
    nodes
}

/// A number as it stands on a scale: with a sign, since it is over or under a level.
fn signed(value: f64) -> String {
    let sign = if value > 0.0 { "+" } else { "" };
    [sign, &crate::coordinate::pixels(value)].concat()
}

fn decibels(value: f64) -> String {
    [&signed(value), " dB"].concat()
}

fn curves(model: &Model) -> Vec<Node> {
    let frame = &model.frame;
    let places = frame.places();
    let levelled = places.map(|signal| model.output_at(signal).value);
    let beside = Node::classed("text", "fig-soft")
        .at(frame.x(34.0), frame.y(38.0))
        .anchored("end")
        .saying("without AGC");
    let over = label(
        "levelled-label",
        "fig-aside",
        84.0,
        frame.y(levelled[levelled.len() - 1]) - 8.0,
        "with AGC",
    );
    vec![
        frame.curve("straight", "fig-curve fig-other", &places),
        frame.curve("levelled", "fig-curve", &levelled),
        beside,
        over,
    ]
}

/// The signal: its words, the line up to both curves, its handle.
fn signal(model: &Model) -> Vec<Node> {
    let frame = &model.frame;
    let (signal, output) = (model.signal.value, model.output.value);
    let x = frame.x(signal);
    let text = [
        "signal ",
        &model.signal.text,
        ", output ",
        &model.output.text,
    ]
    .concat();
    let wide = text_width(&text, 13.0, Weight::Bold);
    let mut nodes = vec![
        Node::classed("line", "fig-stem fig-signal")
            .keyed("signal-stem")
            .between((x, 22.0), (x, frame.bottom())),
        label("signal-label", "fig-value", held(x, wide), 16.0, &text),
        dot("straight-dot", x, frame.y(signal)),
        dot("levelled-dot", x, frame.y(output)),
    ];
    nodes.extend(handle("signal", x, frame.bottom()));
    nodes
}
