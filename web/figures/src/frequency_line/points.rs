//! The four points on the line.

use super::LINE;
use super::scale::Scale;
use crate::coordinate::{percent, pixels};
use crate::tuning::Tuning;
use crate::{FigureError, Node, Quantity};

/// One marked frequency.
pub(super) struct Point {
    /// Its name on the drawing, also the stem of its keys and its class.
    pub(super) name: &'static str,
    pub(super) quantity: Quantity,
    /// Its place in percent of the width.
    pub(super) at: f64,
}

/// The four marked frequencies.
pub(super) struct Points {
    pub(super) signal: Point,
    pub(super) oscillator: Point,
    pub(super) image: Point,
    pub(super) intermediate: Point,
}

impl Points {
    pub(super) fn place(
        tuning: &Tuning,
        image: &Quantity,
        scale: &Scale,
    ) -> Result<Self, FigureError> {
        let point = |name: &'static str, quantity: &Quantity| {
            let at = scale.hold(name, quantity.value, &quantity.text)?;
            let quantity = quantity.clone();
            Ok(Point { name, quantity, at })
        };
        Ok(Self {
            signal: point("signal", &tuning.signal)?,
            oscillator: point("oscillator", &tuning.oscillator)?,
            image: point("image", image)?,
            intermediate: point("IF", &tuning.intermediate)?,
        })
    }

    pub(super) fn all(&self) -> [&Point; 4] {
        [
            &self.signal,
            &self.oscillator,
            &self.image,
            &self.intermediate,
        ]
    }

    /// The marks on the line, each of its own shape: the signal's last, as it is the one
    /// that moves.
    pub(super) fn marks(&self) -> Vec<Node> {
        vec![
            shape(&self.intermediate, "M-7 6 0 -6 7 6Z"),
            shape(&self.image, "M0 -8 8 0 0 8 -8 0Z"),
            shape(&self.oscillator, "M-6 -6H6V6H-6Z"),
            disc(&self.signal, "glow", 15.0),
            disc(&self.signal, "mark", 8.0),
        ]
    }
}

impl Point {
    /// The class and key of one of its nodes.
    pub(super) fn key(&self, part: &str) -> String {
        format!("{}-{part}", self.name)
    }
}

fn shape(point: &Point, path: &'static str) -> Node {
    let path = Node::classed("path", &format!("mark {}", point.name)).with("d", path);
    Node::new("svg")
        .keyed(&point.key("mark"))
        .with("x", percent(point.at))
        .with("y", pixels(LINE))
        .with("overflow", "visible")
        .around(vec![path])
}

fn disc(point: &Point, class: &str, radius: f64) -> Node {
    Node::classed("circle", &format!("{class} {}", point.name))
        .keyed(&point.key(class))
        .with("cx", percent(point.at))
        .with("cy", pixels(LINE))
        .with("r", pixels(radius))
}
