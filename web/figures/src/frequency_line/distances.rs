//! The equal distances of one IF, drawn as bars between the points.

use super::points::Points;
use super::scale::Scale;
use crate::Node;
use crate::plot::WIDTH;
use crate::text_width::{Weight, text_width};
use crate::tuning::{Side, Tuning};

/// The row of the two distances from the oscillator.
const ROW: f64 = 78.0;
/// The row of the way back from zero, where the image is found by the sum.
const BACK_ROW: f64 = ROW + 8.0;
/// The row of the IF's own distance from zero.
const OWN_ROW: f64 = 100.0;

/// The bars: oscillator to signal, oscillator to image (by way of zero where the image
/// is found by the sum), and zero to the IF.
pub(super) fn nodes(points: &Points, scale: &Scale, tuning: &Tuning) -> Vec<Node> {
    let zero = scale.percent_at(0.0);
    let (signal, oscillator) = (points.signal.at, points.oscillator.at);
    let mut nodes = Vec::new();
    nodes.extend(bar("near", signal, oscillator, ROW, true));
    if let Some(image) = &points.image {
        let folded = is_folded(tuning);
        let far = if folded { zero } else { image.at };
        nodes.extend(bar("far", oscillator, far, ROW, true));
        nodes.extend(bar("back", zero, image.at, BACK_ROW, folded));
    }
    let own = points.intermediate.at;
    nodes.extend(bar("own", zero, own, OWN_ROW, true));
    nodes.push(label(points, tuning));
    nodes
}

/// With the oscillator below and the dial under twice the IF, the image answers by the
/// sum: oscillator plus image make the IF.
pub(super) fn is_folded(tuning: &Tuning) -> bool {
    tuning.side == Side::Below && tuning.signal.value < 2.0 * tuning.intermediate.value
}

fn bar(name: &str, from: f64, to: f64, y: f64, shown: bool) -> [Node; 3] {
    let end = |part: &str, at: f64| {
        Node::classed("circle", "fig-distance-end")
            .keyed(&[name, part].concat())
            .centred(at, y, 2.5)
            .shown(shown)
    };
    let line = Node::classed("line", "fig-distance")
        .keyed(&[name, "-bar"].concat())
        .between((from, y), (to, y))
        .shown(shown);
    [line, end("-from", from), end("-to", to)]
}

/// What one bar measures: to the right of the row where there is room, so that it keeps off
/// the IF, or else to the left.
fn label(points: &Points, tuning: &Tuning) -> Node {
    let mut row = vec![points.signal.at, points.oscillator.at];
    row.extend(points.image.as_ref().map(|image| image.at));
    let left = row.iter().copied().fold(100.0, f64::min);
    let right = row.iter().copied().fold(0.0, f64::max);
    let text = measure(points, tuning);
    let room = (100.0 - right) / 100.0 * WIDTH - 10.0;
    let (anchor, at, nudge) = if text_width(&text, 12.0, Weight::Bold) <= room {
        ("start", right, "translate(10 0)")
    } else {
        ("end", left, "translate(-10 0)")
    };
    Node::classed("text", "fig-aside")
        .keyed("distance-label")
        .at(at, ROW + 4.0)
        .anchored(anchor)
        .always("transform", nudge)
        .saying(&text)
}

fn measure(points: &Points, tuning: &Tuning) -> String {
    let intermediate = tuning.intermediate.text.as_str();
    match points.image {
        None => ["IF ", intermediate].concat(),
        Some(_) if is_folded(tuning) => ["each ", intermediate, ", turning at 0"].concat(),
        Some(_) => intermediate.to_owned(),
    }
}
