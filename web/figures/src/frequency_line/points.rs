//! The points on the line.

use super::LINE;
use super::scale::Scale;
use crate::tuning::Tuning;
use crate::{FigureError, Input, Node, Quantity};

/// One marked frequency.
pub(super) struct Point {
    /// Its name on the drawing.
    pub(super) name: &'static str,
    /// The stem of its keys and of its class.
    pub(super) id: &'static str,
    pub(super) quantity: Quantity,
    /// Its place in percent of the width.
    pub(super) at: f64,
}

/// The marked frequencies.
pub(super) struct Points {
    pub(super) signal: Point,
    pub(super) oscillator: Point,
    /// None where a lesson has not come to the image yet (`image=hidden`).
    pub(super) image: Option<Point>,
    pub(super) intermediate: Point,
}

impl Points {
    pub(super) fn place(
        input: &Input,
        tuning: &Tuning,
        scale: &Scale,
    ) -> Result<Self, FigureError> {
        let image = if image_is_shown(input)? {
            Some(place("image", "image", &tuning.image()?, scale)?)
        } else {
            None
        };
        Ok(Self {
            signal: place("signal", "signal", &tuning.signal, scale)?,
            oscillator: place("oscillator", "oscillator", &tuning.oscillator, scale)?,
            image,
            intermediate: place("IF", "intermediate", &tuning.intermediate, scale)?,
        })
    }

    /// The points in the order in which they are told.
    pub(super) fn all(&self) -> Vec<&Point> {
        let mut all = vec![&self.signal, &self.oscillator];
        all.extend(&self.image);
        all.push(&self.intermediate);
        all
    }

    /// The marks on the line, each of its own shape: the signal's last, as it is the one
    /// that moves.
    pub(super) fn marks(&self) -> Vec<Node> {
        let mut marks = vec![shape(&self.intermediate, "M-7 6 0 -6 7 6Z")];
        if let Some(image) = &self.image {
            marks.push(shape(image, "M0 -8 8 0 0 8 -8 0Z"));
        }
        marks.push(shape(&self.oscillator, "M-6 -6H6V6H-6Z"));
        marks.push(disc(&self.signal, "glow", 15.0));
        marks.push(disc(&self.signal, "mark", 8.0));
        marks.push(grip(&self.signal));
        marks
    }
}

fn image_is_shown(input: &Input) -> Result<bool, FigureError> {
    match input.get("image") {
        None | Some("shown") => Ok(true),
        Some("hidden") => Ok(false),
        Some(other) => Err(FigureError::about(
            "image",
            format!("image must be shown or hidden (got '{other}')"),
        )),
    }
}

fn place(
    name: &'static str,
    id: &'static str,
    quantity: &Quantity,
    scale: &Scale,
) -> Result<Point, FigureError> {
    let at = scale.hold(name, quantity)?;
    let quantity = quantity.clone();
    Ok(Point {
        name,
        id,
        quantity,
        at,
    })
}

impl Point {
    /// The key of one of its nodes.
    pub(super) fn key(&self, part: &str) -> String {
        [self.id, "-", part].concat()
    }
}

fn shape(point: &Point, path: &'static str) -> Node {
    let path = Node::classed("path", &["fig-mark fig-", point.id].concat()).always("d", path);
    on_line(point, "mark", path)
}

/// Arrows beside the point that moves; the style shows them where it can be moved.
fn grip(point: &Point) -> Node {
    let path = Node::classed("path", "fig-grip").always("d", "M-15 -5-20 0-15 5M15 -5 20 0 15 5");
    on_line(point, "grip", path)
}

fn on_line(point: &Point, part: &str, path: Node) -> Node {
    Node::new("svg")
        .keyed(&point.key(part))
        .at(point.at, LINE)
        .always("overflow", "visible")
        .around(vec![path])
}

fn disc(point: &Point, class: &str, radius: f64) -> Node {
    Node::classed("circle", &["fig-", class, " fig-", point.id].concat())
        .keyed(&point.key(class))
        .centred(point.at, LINE, radius)
}
