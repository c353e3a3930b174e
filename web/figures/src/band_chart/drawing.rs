//! The bands along a line on which each octave is as long as the next.

use super::Model;
use crate::Node;
use crate::coordinate::{along_axis, percent, pixels};
use crate::handle::label;
use crate::plot::held;
use crate::text_width::{Weight, text_width};
use superhet::quantities::bands::{BandKind, bands};
use superhet::quantities::decimal_log::log10;

pub(super) const HEIGHT: f64 = 186.0;
const LINE: f64 = 100.0;
/// The ends of the line, in hertz.
const LOWEST: f64 = 100e3;
const HIGHEST: f64 = 30e6;
/// Height of the strips.
const STRIP: f64 = 14.0;

/// The place of a frequency in percent, held on the line.
fn x(hertz: f64) -> f64 {
    let share = log10(hertz.max(LOWEST) / LOWEST) / log10(HIGHEST / LOWEST);
    along_axis(share.clamp(0.0, 1.0))
}

/// From the back to the front.
pub(super) fn nodes(model: &Model) -> Vec<Node> {
    let mut nodes = vec![Node::classed("line", "fig-line").between((5.0, LINE), (95.0, LINE))];
    for (hertz, text) in [
        (100e3, "100 kHz"),
        (1e6, "1 MHz"),
        (10e6, "10 MHz"),
        (30e6, "30"),
    ] {
        let at = x(hertz);
        nodes.push(Node::classed("line", "fig-tick").between((at, LINE), (at, LINE + 6.0)));
        let number = Node::classed("text", "fig-soft").at(at.max(12.0), LINE + 21.0);
        nodes.push(number.anchored("middle").saying(text));
    }
    for band in bands(model.region).filter(|band| band.kind != BandKind::Tropical) {
        nodes.push(strip(
            "fig-band",
            band.low.to_hz(),
            band.high.to_hz(),
            LINE - STRIP,
        ));
    }
    let said = |at: f64, text: &str| {
        let name = Node::classed("text", "fig-soft").at(at, LINE - STRIP - 6.0);
        name.anchored("middle").saying(text)
    };
    if bands(model.region).any(|band| band.kind == BandKind::LongWave) {
        nodes.push(said(x(206e3), "long"));
    }
    nodes.push(said(x(920e3), "medium"));
    nodes.push(said(x(12e6), "short wave"));
    nodes.extend(image(model));
    nodes.extend(intermediate(model));
    nodes
}

fn strip(class: &str, low: f64, high: f64, top: f64) -> Node {
    Node::classed("rect", class)
        .at(x(low), top)
        .with("width", percent(x(high) - x(low)))
        .with("height", pixels(STRIP))
}

/// The image of medium wave as a strip of its own, under the line.
fn image(model: &Model) -> Vec<Node> {
    let [low, high] = ends(model);
    let text = ["image: ", &low.1, " to ", &high.1].concat();
    let wide = text_width(&text, 12.0, Weight::Bold);
    let middle = f64::midpoint(x(low.0), x(high.0));
    vec![
        strip("fig-mark fig-image", low.0, high.0, LINE + 32.0).keyed("image"),
        label(
            "image-label",
            "fig-aside",
            held(middle, wide),
            LINE + 66.0,
            &text,
        ),
    ]
}

/// The ends of the image in rising order, and their texts. With the oscillator below, the
/// image of a dial setting of twice the IF is at zero: where that is on medium wave, the
/// image turns there and begins at zero.
pub(super) fn ends(model: &Model) -> [(f64, String); 2] {
    let [one, other] = model
        .images
        .each_ref()
        .map(|end| (end.value, end.text.clone()));
    let turn = 2.0 * model.intermediate.value;
    let turns = model.medium.low.to_hz() < turn && turn < model.medium.high.to_hz();
    if model.side == "below" && turns {
        let far = if one.0 <= other.0 { other } else { one };
        return [(0.0, "0 kHz".to_owned()), far];
    }
    if one.0 <= other.0 {
        [one, other]
    } else {
        [other, one]
    }
}

fn intermediate(model: &Model) -> Vec<Node> {
    let at = x(model.intermediate.value);
    let text = ["IF ", &model.intermediate.text].concat();
    let wide = text_width(&text, 13.0, Weight::Bold);
    vec![
        Node::classed("line", "fig-stem fig-signal")
            .keyed("intermediate-stem")
            .between((at, 38.0), (at, LINE)),
        Node::classed("circle", "fig-dot")
            .keyed("intermediate-dot")
            .centred(at, LINE, 5.0),
        label(
            "intermediate-label",
            "fig-value",
            held(at, wide),
            16.0,
            &text,
        ),
        label(
            "place",
            "fig-aside",
            50.0,
            33.0,
            super::words::place(model.place),
        ),
    ]
}
