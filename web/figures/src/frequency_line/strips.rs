//! The broadcast bands as ruled strips under the line.

use super::LINE;
use super::scale::Scale;
use crate::Node;
use crate::coordinate::{percent, pixels};
use crate::plot::WIDTH;
use crate::text_width::{Weight, text_width};
use superhet::quantities::bands::{Band, BandKind, bands};

/// Top and height of the strips, and the baseline of their names, in pixels.
const TOP: f64 = LINE + 30.0;
const HEIGHT: f64 = 9.0;
const NAMES: f64 = TOP + HEIGHT + 14.0;
/// The size of the names, in pixels, as the style sets it.
const NAME_SIZE: f64 = 12.0;
/// The least distance between two names, in pixels.
const GAP: f64 = 4.0;

/// The bands of the Region that lie on the line, lowest first, each with its name where
/// there is room for it.
///
/// The bands below 5.1 MHz that are used in the tropics alone are left out.
pub(super) fn nodes(scale: &Scale) -> Vec<Node> {
    let mut nodes = Vec::new();
    let mut edge = 0.0;
    let shown = |band: &&Band| band.kind != BandKind::Tropical && scale.holds(band.high.to_hz());
    for band in bands(scale.region).filter(shown) {
        let low = scale.percent_at(band.low.to_hz());
        let high = scale.percent_at(band.high.to_hz());
        nodes.push(strip(low, high));
        let half = text_width(band.name, NAME_SIZE, Weight::Regular) / 2.0;
        let middle = (f64::midpoint(low, high) / 100.0 * WIDTH).max(half);
        if middle - half >= edge {
            nodes.push(name(band.name, middle / WIDTH * 100.0));
            edge = middle + half + GAP;
        }
    }
    nodes
}

fn strip(low: f64, high: f64) -> Node {
    Node::classed("rect", "fig-band")
        .at(low, TOP)
        .with("width", percent(high - low))
        .with("height", pixels(HEIGHT))
}

fn name(text: &str, x: f64) -> Node {
    Node::classed("text", "fig-soft")
        .at(x, NAMES)
        .anchored("middle")
        .saying(text)
}
