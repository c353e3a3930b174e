//! The outline and what is made of it, over two swings of the note.

use super::{Model, SWINGS};
use crate::Node;
use crate::arithmetic::roughly;
use crate::handle::label;
use superhet::units::Kind;

pub(super) const HEIGHT: f64 = 232.0;

/// From the back to the front.
pub(super) fn nodes(model: &Model) -> Vec<Node> {
    let frame = &model.frame;
    let mut nodes = vec![frame.paper()];
    nodes.extend(frame.level(1.0, "carrier alone"));
    nodes.extend(frame.tick(0.0, "0"));
    for swings in [1.0, SWINGS] {
        let time = roughly(Kind::Duration, "time", swings / model.audio.value).text;
        let x = frame.x(swings);
        nodes.push(
            Node::classed("line", "fig-tick")
                .between((x, frame.bottom()), (x, frame.bottom() + 6.0)),
        );
        let (at, anchor) = if swings < SWINGS {
            (x, "middle")
        } else {
            (99.0, "end")
        };
        nodes.push(
            Node::classed("text", "fig-soft")
                .keyed(if swings < SWINGS {
                    "one-swing"
                } else {
                    "two-swings"
                })
                .at(at, frame.bottom() + 19.0)
                .anchored(anchor)
                .saying(&time),
        );
    }
    nodes.push(frame.curve("outline", "fig-curve fig-other", &model.outline));
    nodes.push(frame.curve("followed", "fig-curve", &model.followed));
    nodes.push(label("verdict", "fig-value", 50.0, 16.0, &verdict(model)));
    nodes.push(label("limit", "fig-aside", 50.0, 33.0, &limit(model)));
    nodes.extend(key(frame.bottom() + 38.0));
    nodes
}

fn verdict(model: &Model) -> String {
    let does = if model.clips() {
        "not followed"
    } else {
        "followed"
    };
    ["depth ", &model.depth.text, ": ", does].concat()
}

fn limit(model: &Model) -> String {
    let note = &model.audio.text;
    ["the limit at ", note, " is ", &model.limit.text].concat()
}

/// Which line is which, told by dash and word.
fn key(y: f64) -> Vec<Node> {
    let line = |class: &str, from: f64| {
        Node::classed("line", class).between((from, y - 4.0), (from + 8.0, y - 4.0))
    };
    let says = |x: f64, text: &str| Node::classed("text", "fig-soft").at(x, y).saying(text);
    vec![
        line("fig-curve fig-other", 5.0),
        says(15.0, "outline of the signal"),
        line("fig-curve", 60.0),
        says(70.0, "detector"),
    ]
}
