//! The bands along a line on which each doubling of the frequency is as long as the next.

use super::Model;
use crate::coordinate::{along_axis, percent, pixels};
use crate::handle::{bar, label};
use crate::plot::held;
use crate::point::{Point, labels, marks};
use crate::text_width::{Weight, text_width};
use crate::{FigureError, Node, Quantity};
use superhet::quantities::bands::{BandKind, bands};
use superhet::quantities::decimal_log::log10;
use superhet::units::{Kind, display};

/// The line, in pixels from the top.
const LINE: f64 = 100.0;
/// The ends of the line, in hertz.
const LOWEST: f64 = 100e3;
const HIGHEST: f64 = 30e6;
/// The bands under it: their top, the height of a strip, and the baseline of their names.
const BANDS: f64 = LINE + 31.0;
const STRIP: f64 = 12.0;
const NAMES: f64 = BANDS + STRIP + 15.0;
/// The image of medium wave, under the bands.
const IMAGE: f64 = NAMES + 12.0;
const IMAGE_NAME: f64 = IMAGE + STRIP + 16.0;

/// The baseline of the last words: where the IF lies.
fn last_words(model: &Model) -> f64 {
    let above = model.images.as_ref().map_or(NAMES, |_| IMAGE_NAME);
    above + 22.0
}

pub(super) fn height(model: &Model) -> f64 {
    last_words(model) + 10.0
}

/// The place of a frequency in percent, held on the line.
fn x(hertz: f64) -> f64 {
    let share = log10(hertz.max(LOWEST) / LOWEST) / log10(HIGHEST / LOWEST);
    along_axis(share.clamp(0.0, 1.0))
}

/// From the back to the front.
pub(super) fn nodes(model: &Model) -> Result<Vec<Node>, FigureError> {
    let mut nodes = vec![Node::classed("line", "fig-line").between((5.0, LINE), (95.0, LINE))];
    for (hertz, text) in [
        (100e3, "100 kHz"),
        (1e6, "1 MHz"),
        (10e6, "10"),
        (30e6, "30 MHz"),
    ] {
        let at = x(hertz);
        nodes.push(Node::classed("line", "fig-tick").between((at, LINE), (at, LINE + 6.0)));
        let number = Node::classed("text", "fig-soft");
        nodes.push(if hertz < HIGHEST {
            let number = number.at(at.max(12.0), LINE + 21.0);
            number.anchored("middle").saying(text)
        } else {
            number.at(99.0, LINE + 21.0).anchored("end").saying(text)
        });
    }
    nodes.extend(strips(model));
    nodes.extend(image(model));
    let where_it_lies = ["IF ", super::words::place(model.place)].concat();
    let y = last_words(model);
    nodes.push(label("place", "fig-aside", 50.0, y, &where_it_lies));
    let points = points(model)?;
    let points: Vec<&Point> = points.iter().collect();
    nodes.extend(labels(&points, LINE));
    nodes.extend(marks(&points, LINE));
    Ok(nodes)
}

/// The bands, and the gap between long and medium wave.
fn strips(model: &Model) -> Vec<Node> {
    let mut nodes = Vec::new();
    for band in bands(model.region).filter(|band| band.kind != BandKind::Tropical) {
        nodes.push(strip(
            "fig-band",
            (band.low.to_hz(), band.high.to_hz()),
            BANDS,
        ));
    }
    let (from, to) = (x(model.gap.0.to_hz()), x(model.gap.1.to_hz()));
    nodes.extend(bar("gap", from, to, BANDS + STRIP / 2.0));
    let said = |class: &str, at: f64, text: &str| {
        let name = Node::classed("text", class).at(at, NAMES);
        name.anchored("middle").saying(text)
    };
    if bands(model.region).any(|band| band.kind == BandKind::LongWave) {
        nodes.push(said("fig-soft", x(206e3), "long"));
    }
    nodes.push(said("fig-aside", f64::midpoint(from, to), "gap"));
    nodes.push(said("fig-soft", x(920e3), "medium"));
    nodes.push(said("fig-soft", x(12e6), "short wave"));
    nodes
}

fn strip(class: &str, (low, high): (f64, f64), top: f64) -> Node {
    Node::classed("rect", class)
        .at(x(low), top)
        .with("width", percent(x(high) - x(low)))
        .with("height", pixels(STRIP))
}

/// The image of medium wave as a strip of its own.
fn image(model: &Model) -> Vec<Node> {
    let Some([low, high]) = ends(model) else {
        return Vec::new();
    };
    let text = ["image: ", &low.1, " to ", &high.1].concat();
    let wide = text_width(&text, 12.0, Weight::Bold);
    let middle = held(f64::midpoint(x(low.0), x(high.0)), wide);
    vec![
        strip("fig-mark fig-image", (low.0, high.0), IMAGE).keyed("image"),
        label("image-label", "fig-soft", middle, IMAGE_NAME, &text),
    ]
}

/// The ends of the image in rising order, and their texts. With the oscillator below, the
/// image of a dial setting of twice the IF is at zero: where that is on medium wave, the
/// image turns there and begins at zero.
pub(super) fn ends(model: &Model) -> Option<[(f64, String); 2]> {
    let images = model.images.as_ref()?;
    let [one, other] = images.each_ref().map(|end| (end.value, end.text.clone()));
    let turn = 2.0 * model.intermediate.value;
    let turns = model.medium.low.to_hz() < turn && turn < model.medium.high.to_hz();
    if model.side == "below" && turns {
        let far = if one.0 <= other.0 { other } else { one };
        return Some([(0.0, "0 kHz".to_owned()), far]);
    }
    Some(if one.0 <= other.0 {
        [one, other]
    } else {
        [other, one]
    })
}

/// What stands on the line: what the dial fixes, where it is given, and the IF.
fn points(model: &Model) -> Result<Vec<Point>, FigureError> {
    let mut points = Vec::new();
    if let Some(tuned) = &model.tuned {
        points.push(point("signal", "signal", &tuned.signal)?);
        points.push(point("oscillator", "oscillator", &tuned.oscillator)?);
        if let Some(image) = &tuned.image {
            points.push(point("image", "image", image)?);
        }
    }
    points.push(point("IF", "intermediate", &model.intermediate)?);
    Ok(points)
}

fn point(name: &'static str, id: &'static str, quantity: &Quantity) -> Result<Point, FigureError> {
    if (LOWEST..=HIGHEST).contains(&quantity.value) {
        return Ok(Point {
            name,
            id,
            quantity: quantity.clone(),
            at: x(quantity.value),
        });
    }
    let [low, high] = [LOWEST, HIGHEST].map(|end| display::text(Kind::Frequency, end));
    let sentence = [
        "the ",
        name,
        " must lie on the line, from ",
        &low,
        " to ",
        &high,
        " (got ",
        &quantity.text,
        ")",
    ];
    Err(FigureError::about("dial", sentence.concat()))
}
