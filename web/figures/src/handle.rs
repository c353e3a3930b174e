//! A point of a drawing that can be moved along a strip.

use crate::Node;
use crate::coordinate::pixels;

/// A disc at a place (percent across, pixels down) with the arrows that the style shows
/// where it can be moved.
pub(crate) fn handle(key: &str, x: f64, y: f64) -> [Node; 3] {
    let disc = |part: &str, radius: f64| {
        Node::classed("circle", &["fig-", part, " fig-signal"].concat())
            .keyed(&[key, "-", part].concat())
            .centred(x, y, radius)
    };
    let arrows = Node::classed("path", "fig-grip").always("d", "M-15 -5-20 0-15 5M15 -5 20 0 15 5");
    let grip = Node::new("svg")
        .keyed(&[key, "-grip"].concat())
        .at(x, y)
        .always("overflow", "visible")
        .around(vec![arrows]);
    [disc("glow", 15.0), disc("mark", 8.0), grip]
}

/// A dot on a curve.
pub(crate) fn dot(key: &str, x: f64, y: f64) -> Node {
    Node::classed("circle", "fig-dot")
        .keyed(key)
        .centred(x, y, 4.5)
}

/// A bar between two places at one height, with a stop at each end.
pub(crate) fn bar(key: &str, from: f64, to: f64, y: f64) -> [Node; 3] {
    let stop = |part: &str, x: f64| {
        Node::classed("line", "fig-distance")
            .keyed(&[key, part].concat())
            .between((x, y - 4.0), (x, y + 4.0))
    };
    [
        Node::classed("line", "fig-distance")
            .keyed(key)
            .between((from, y), (to, y)),
        stop("-from", from),
        stop("-to", to),
    ]
}

/// A text that can change, its middle at a place.
pub(crate) fn label(key: &str, class: &str, x: f64, y: f64, text: &str) -> Node {
    Node::classed("text", class)
        .keyed(key)
        .at(x, y)
        .anchored("middle")
        .saying(text)
}

/// Kilohertz as they stand on a scale.
pub(crate) fn kilohertz(hertz: f64) -> String {
    pixels(hertz / 1e3)
}
