//! The labels over the line and the leaders that lead from them to their points.

use super::points::{Point, Points};
use super::{LINE, WIDTH};
use crate::Node;
use crate::spread::{Label, spread};
use crate::text_width::{Weight, text_width};

/// The size of a value in the labels, in pixels, as the style sets it.
const VALUE_SIZE: f64 = 13.0;
/// Where the leaders leave their labels, and where they begin to run straight down.
const LEADER_TOP: f64 = 38.0;
const LEADER_BEND: f64 = 60.0;

/// Leaders, then labels, in the order of [`Points::all`].
pub(super) fn nodes(points: &Points) -> Vec<Node> {
    let all = points.all();
    let labels: Vec<Label> = all.iter().map(|point| wanted(point)).collect();
    let places = spread(&labels, WIDTH);
    let pairs = || all.iter().zip(&places);
    let leaders = pairs().flat_map(|(point, place)| leader(point, percent_of(*place)));
    let texts = pairs().flat_map(|(point, place)| label(point, percent_of(*place)));
    leaders.chain(texts).collect()
}

/// Where a point's label would best stand, and how wide it is.
fn wanted(point: &Point) -> Label {
    let value = text_width(&point.quantity.text, VALUE_SIZE, Weight::Bold);
    Label {
        wanted: point.at / 100.0 * WIDTH,
        width: value.max(text_width(point.name, VALUE_SIZE, Weight::Regular)),
    }
}

fn percent_of(place: f64) -> f64 {
    place / WIDTH * 100.0
}

fn leader(point: &Point, place: f64) -> [Node; 2] {
    let line = |part: &str, from: f64, top: f64, bottom: f64| {
        Node::classed("line", &["fig-stem fig-", point.id].concat())
            .keyed(&point.key(part))
            .between((from, top), (point.at, bottom))
    };
    [
        line("leader", place, LEADER_TOP, LEADER_BEND),
        line("stem", point.at, LEADER_BEND, LINE),
    ]
}

fn label(point: &Point, place: f64) -> [Node; 2] {
    let text = |part: &str, y: f64| {
        Node::classed("text", &["fig-", part].concat())
            .keyed(&point.key(part))
            .at(place, y)
            .anchored("middle")
    };
    [
        text("name", 15.0).saying(point.name),
        text("value", 32.0).saying(&point.quantity.text),
    ]
}
