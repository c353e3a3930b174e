//! The line itself: its ends, its ticks, and the broadcast bands along it.

use super::LINE;
use crate::arithmetic::frequency;
use crate::coordinate::{along_axis, percent, pixels};
use crate::{FigureError, Input, Node, Quantity};

/// Where the frequencies lie along the line.
pub(super) struct Scale {
    /// The frequency at the line's end, in hertz.
    end: f64,
    end_text: String,
    region: Region,
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Region {
    One,
    Two,
    Three,
}

/// The line is divided into this many parts.
const PARTS: i32 = 6;

impl Scale {
    pub(super) fn read(input: &Input) -> Result<Self, FigureError> {
        let end = frequency("axis", input.get("axis").unwrap_or("3000 kHz"))?;
        let region = match input.get("region") {
            None | Some("1") => Region::One,
            Some("2") => Region::Two,
            Some("3") => Region::Three,
            Some(other) => {
                let sentence = format!("region must be 1, 2 or 3 (got '{other}')");
                return Err(FigureError::about("region", sentence));
            }
        };
        Ok(Self {
            end: end.value,
            end_text: end.text,
            region,
        })
    }

    /// The place of a frequency in percent of the drawing's width.
    pub(super) fn percent_at(&self, hertz: f64) -> f64 {
        along_axis(hertz / self.end)
    }

    /// The place of a point, in percent; refused beyond the line's end.
    pub(super) fn hold(&self, name: &str, quantity: &Quantity) -> Result<f64, FigureError> {
        if quantity.value <= self.end {
            return Ok(self.percent_at(quantity.value));
        }
        Err(FigureError::about(
            "axis",
            format!(
                "the {name} must lie on the line, which ends at {} (got {})",
                self.end_text, quantity.text
            ),
        ))
    }

    /// The lowest and highest signal that the handle reaches, in kHz: from the bottom of
    /// the lowest broadcast band shown to the top of medium wave.
    pub(super) fn signal_range(&self) -> (i32, i32) {
        match self.region {
            Region::One => (150, 1605),
            Region::Two => (525, 1705),
            Region::Three => (525, 1605),
        }
    }

    /// The line with its ticks and their labels.
    pub(super) fn nodes(&self) -> Vec<Node> {
        let mut nodes = vec![rule("fig-line", 5.0, 95.0, LINE)];
        for part in 0..=PARTS {
            let hertz = self.end * f64::from(part) / f64::from(PARTS);
            let long = part % 2 == 0;
            nodes.push(self.tick(hertz, if long { 8.0 } else { 5.0 }));
            if long {
                nodes.push(self.tick_label(hertz, part == PARTS));
            }
        }
        nodes
    }

    fn tick(&self, hertz: f64, length: f64) -> Node {
        let x = percent(self.percent_at(hertz));
        Node::classed("line", "fig-tick")
            .with("x1", x.clone())
            .with("y1", pixels(LINE))
            .with("x2", x)
            .with("y2", pixels(LINE + length))
    }

    fn tick_label(&self, hertz: f64, last: bool) -> Node {
        let kilohertz = pixels(hertz / 1e3);
        let (anchor, text, place) = if last {
            ("end", format!("{kilohertz} kHz"), 99.0)
        } else {
            ("middle", kilohertz, self.percent_at(hertz))
        };
        Node::classed("text", "fig-soft")
            .with("x", percent(place))
            .with("y", pixels(LINE + 21.0))
            .with("text-anchor", anchor)
            .saying(text)
    }
}

/// A level line between two places in percent.
fn rule(class: &str, from: f64, to: f64, y: f64) -> Node {
    Node::classed("line", class)
        .with("x1", percent(from))
        .with("y1", pixels(y))
        .with("x2", percent(to))
        .with("y2", pixels(y))
}
