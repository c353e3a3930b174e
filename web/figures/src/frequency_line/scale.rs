//! The line itself: its ends and its ticks.

use super::LINE;
use crate::arithmetic::frequency;
use crate::coordinate::{along_axis, pixels};
use crate::tuning::region;
use crate::{FigureError, Input, Node, Quantity};
use superhet::quantities::bands::Region;

/// Where the frequencies lie along the line.
pub(super) struct Scale {
    /// The frequency at the line's end.
    end: Quantity,
    pub(super) region: Region,
}

/// The line is divided into this many parts; every second tick has its number.
const PARTS: i32 = 6;

impl Scale {
    pub(super) fn read(input: &Input) -> Result<Self, FigureError> {
        let end = input.get("axis").unwrap_or("3000 kHz");
        Ok(Self {
            end: frequency("frequency", "axis", end)?,
            region: region(input)?,
        })
    }

    /// The place of a frequency in percent of the drawing's width.
    pub(super) fn percent_at(&self, hertz: f64) -> f64 {
        along_axis(hertz / self.end.value)
    }

    /// Whether a frequency lies on the line.
    pub(super) fn holds(&self, hertz: f64) -> bool {
        hertz <= self.end.value
    }

    /// The place of a point, in percent; refused beyond the line's end.
    pub(super) fn hold(&self, name: &str, quantity: &Quantity) -> Result<f64, FigureError> {
        if self.holds(quantity.value) {
            return Ok(self.percent_at(quantity.value));
        }
        Err(FigureError::about(
            "axis",
            format!(
                "the {name} must lie on the line, which ends at {} (got {})",
                self.end.text, quantity.text
            ),
        ))
    }

    /// The line with its ticks and their numbers.
    pub(super) fn nodes(&self) -> Vec<Node> {
        let line = Node::classed("line", "fig-line");
        let (start, end) = (self.percent_at(0.0), self.percent_at(self.end.value));
        let mut nodes = vec![line.between((start, LINE), (end, LINE))];
        for part in 0..=PARTS {
            let hertz = self.end.value * f64::from(part) / f64::from(PARTS);
            let long = part % 2 == 0;
            nodes.push(self.tick(hertz, if long { 8.0 } else { 5.0 }));
            if long {
                nodes.push(self.number(hertz, part == PARTS));
            }
        }
        nodes
    }

    fn tick(&self, hertz: f64, length: f64) -> Node {
        let x = self.percent_at(hertz);
        Node::classed("line", "fig-tick").between((x, LINE), (x, LINE + length))
    }

    fn number(&self, hertz: f64, last: bool) -> Node {
        let mut text = pixels(hertz / 1e3);
        let (anchor, x) = if last {
            text.push_str(" kHz");
            ("end", 99.0)
        } else {
            ("middle", self.percent_at(hertz))
        };
        Node::classed("text", "fig-soft")
            .at(x, LINE + 21.0)
            .anchored(anchor)
            .saying(&text)
    }
}
