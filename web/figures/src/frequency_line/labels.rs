//! The four labels over the line and the leaders that lead from them to their points.

use super::points::{Point, Points};
use super::{LINE, WIDTH};
use crate::Node;
use crate::coordinate::{percent, pixels};
use crate::text_width::text_width;

/// The size of a value in the labels, in pixels, as the style sets it.
const VALUE_SIZE: f64 = 13.0;
/// The least distance between two labels, in pixels.
const GAP: f64 = 6.0;
/// Where the leaders leave their labels, and where they begin to run straight down.
const LEADER_TOP: f64 = 38.0;
const LEADER_BEND: f64 = 60.0;

/// Labels and leaders, in the order of [`Points::all`].
pub(super) fn nodes(points: &Points) -> Vec<Node> {
    let places = spread(&points.all());
    let pairs = || points.all().into_iter().zip(places);
    let leaders = pairs().flat_map(|(point, place)| leader(point, place));
    let texts = pairs().flat_map(|(point, place)| label(point, place));
    leaders.chain(texts).collect()
}

fn leader(point: &Point, place: f64) -> [Node; 2] {
    let line = |part: &str, from: f64, top: f64, bottom: f64| {
        Node::classed("line", &format!("stem {}", point.name))
            .keyed(&point.key(part))
            .with("x1", percent(from))
            .with("y1", pixels(top))
            .with("x2", percent(point.at))
            .with("y2", pixels(bottom))
    };
    [
        line("leader", place, LEADER_TOP, LEADER_BEND),
        line("stem", point.at, LEADER_BEND, LINE),
    ]
}

fn label(point: &Point, place: f64) -> [Node; 2] {
    let text = |part: &str, y: f64| {
        Node::classed("text", part)
            .keyed(&point.key(part))
            .with("x", percent(place))
            .with("y", pixels(y))
            .with("text-anchor", "middle")
    };
    [
        text("name", 15.0).saying(point.name),
        text("value", 32.0).saying(point.quantity.text.clone()),
    ]
}

/// The places of the labels, in percent: each as near its point as it can stand without
/// touching its neighbours or the edge, in the points' own order along the line.
///
/// This is least squares with an order to keep (pool adjacent violators): labels that
/// would touch are pooled into a block that stands, on average, over its points.
fn spread(points: &[&Point; 4]) -> [f64; 4] {
    let widths = points.map(|point| text_width(&point.quantity.text, VALUE_SIZE).max(72.0));
    let mut order = [0, 1, 2, 3];
    order.sort_by(|&a, &b| points[a].at.total_cmp(&points[b].at));
    let wanted = order.map(|index| points[index].at / 100.0 * WIDTH);
    let apart = |left: usize, right: usize| f64::midpoint(widths[left], widths[right]) + GAP;
    // Measured from where each would stand if all were packed from the left edge, the
    // order to keep becomes "never decreasing".
    let mut packed = [widths[order[0]] / 2.0; 4];
    for place in 1..4 {
        packed[place] = packed[place - 1] + apart(order[place - 1], order[place]);
    }
    let room = WIDTH - packed[3] - widths[order[3]] / 2.0;
    let slack = never_decreasing([0, 1, 2, 3].map(|place| wanted[place] - packed[place]));
    let mut places = [0.0; 4];
    for place in 0..4 {
        places[order[place]] = (packed[place] + slack[place].clamp(0.0, room)) / WIDTH * 100.0;
    }
    places
}

/// The never-decreasing numbers nearest to `wanted` in least squares.
fn never_decreasing(wanted: [f64; 4]) -> [f64; 4] {
    let mut blocks: Vec<(f64, usize)> = Vec::with_capacity(4);
    for value in wanted {
        let mut block = (value, 1);
        while let Some(&(sum, count)) = blocks.last() {
            if sum / count as f64 <= block.0 / block.1 as f64 {
                break;
            }
            blocks.pop();
            block = (block.0 + sum, block.1 + count);
        }
        blocks.push(block);
    }
    let mut nearest = [0.0; 4];
    let levels = blocks
        .iter()
        .flat_map(|&(sum, count)| std::iter::repeat_n(sum / count as f64, count));
    for (place, level) in nearest.iter_mut().zip(levels) {
        *place = level;
    }
    nearest
}
