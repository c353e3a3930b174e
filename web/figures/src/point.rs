//! Named points on a line of frequency, each with a shape of its own and a label over it.

use crate::handle::handle;
use crate::plot::WIDTH;
use crate::spread::{Label, spread};
use crate::text_width::{Weight, text_width};
use crate::{Node, Quantity};

/// The size of a value in the labels, in pixels, as the style sets it.
const VALUE_SIZE: f64 = 13.0;
/// Where the leaders leave their labels, and where they begin to run straight down.
const LEADER_TOP: f64 = 38.0;
const LEADER_BEND: f64 = 60.0;

/// One marked frequency.
pub(crate) struct Point {
    /// Its name on the drawing.
    pub(crate) name: &'static str,
    /// The stem of its keys and of its class: `signal`, `oscillator`, `image` or
    /// `intermediate`.
    pub(crate) id: &'static str,
    pub(crate) quantity: Quantity,
    /// Its place in percent of the width.
    pub(crate) at: f64,
}

impl Point {
    /// The key of one of its nodes.
    fn key(&self, part: &str) -> String {
        [self.id, "-", part].concat()
    }

    /// Where its label would best stand, and how wide it is.
    fn label(&self) -> Label {
        let value = text_width(&self.quantity.text, VALUE_SIZE, Weight::Bold);
        Label {
            wanted: self.at / 100.0 * WIDTH,
            width: value.max(text_width(self.name, VALUE_SIZE, Weight::Regular)),
        }
    }
}

/// The labels at the top of the drawing and the leaders down to a line so many pixels from
/// there: leaders, then labels, in the points' own order.
pub(crate) fn labels(points: &[&Point], line: f64) -> Vec<Node> {
    let wanted: Vec<Label> = points.iter().map(|point| point.label()).collect();
    let places = spread(&wanted, WIDTH);
    let pairs = || {
        let places = places.iter().map(|place| place / WIDTH * 100.0);
        points.iter().copied().zip(places)
    };
    let leaders = pairs().flat_map(|(point, place)| leader(point, place, line));
    let texts = pairs().flat_map(|(point, place)| label(point, place));
    leaders.chain(texts).collect()
}

fn leader(point: &Point, place: f64, line: f64) -> [Node; 2] {
    let stem = |part: &str, from: f64, top: f64, bottom: f64| {
        Node::classed("line", &["fig-stem fig-", point.id].concat())
            .keyed(&point.key(part))
            .between((from, top), (point.at, bottom))
    };
    [
        stem("leader", place, LEADER_TOP, LEADER_BEND),
        stem("stem", point.at, LEADER_BEND, line),
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

/// The marks on the line, those told first in front: the signal's on top of all, as it is
/// the one that moves. The IF's triangle points down at the line from over it, where no
/// other mark comes to lie.
pub(crate) fn marks(points: &[&Point], line: f64) -> Vec<Node> {
    let mut marks = Vec::new();
    for point in points.iter().rev() {
        match point.id {
            "signal" => marks.extend(handle(point.id, point.at, line)),
            "oscillator" => marks.push(shape(point, line, "M-5 -5H5V5H-5Z")),
            "image" => marks.push(shape(point, line, "M0 -7 7 0 0 7 -7 0Z")),
            _ => marks.push(shape(point, line, "M-7 -22H7L0 -10Z")),
        }
    }
    marks
}

fn shape(point: &Point, line: f64, path: &str) -> Node {
    let path = Node::classed("path", &["fig-mark fig-", point.id].concat()).always("d", path);
    Node::new("svg")
        .keyed(&point.key("mark"))
        .at(point.at, line)
        .always("overflow", "visible")
        .around(vec![path])
}
