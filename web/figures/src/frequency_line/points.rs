//! The points on the line.

use super::scale::Scale;
use crate::arithmetic::chosen;
use crate::point::Point;
use crate::tuning::Tuning;
use crate::{FigureError, Input, Quantity};

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
        let image = if chosen(input, "image", &["shown", "hidden"])? == 0 {
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
