//! Axes and curves: what the figures that draw a curve have in common.
//!
//! A curve is inked over a strip of paper. Along the strip's lower edge runs its scale; level
//! lines are ruled across it.

use crate::Node;
use crate::coordinate::{along_axis, held_within, percent, pixels, push_whole, rounded};

/// The narrowest width that labels are kept apart for: a 360 px phone less margins.
pub(crate) const WIDTH: f64 = 328.0;

/// How many points a curve has.
pub(crate) const POINTS: usize = 141;

/// Units of a curve's own scale from one point to the next, and for one pixel down.
const ACROSS: i64 = 12;
const DOWN: f64 = 4.0;

/// Room over and under a curve, so that its ink is whole at the strip's edges.
const ROOM: f64 = 3.0;

/// A strip of paper with a scale across and a scale down.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Frame {
    /// Its left edge and its width, in percent.
    pub(crate) left: f64,
    pub(crate) width: f64,
    /// Its top and its height, in pixels.
    pub(crate) top: f64,
    pub(crate) height: f64,
    /// The values at its left and right edge.
    pub(crate) across: (f64, f64),
    /// The values at its top and its bottom.
    pub(crate) down: (f64, f64),
}

impl Frame {
    /// A strip as wide as every axis.
    pub(crate) fn new(top: f64, height: f64, across: (f64, f64), down: (f64, f64)) -> Self {
        Self {
            left: along_axis(0.0),
            width: along_axis(1.0) - along_axis(0.0),
            top,
            height,
            across,
            down,
        }
    }

    pub(crate) fn bottom(&self) -> f64 {
        self.top + self.height
    }

    /// The place of a value across, in percent of the drawing's width.
    pub(crate) fn x(&self, value: f64) -> f64 {
        let (from, to) = self.across;
        self.left + self.width * (value - from) / (to - from)
    }

    /// As [`Frame::x`], and never off the strip.
    pub(crate) fn x_within(&self, value: f64) -> f64 {
        held_within(self.x(value), self.left, self.left + self.width)
    }

    /// The place of a value down, in pixels.
    pub(crate) fn y(&self, value: f64) -> f64 {
        let (from, to) = self.down;
        self.top + self.height * (value - from) / (to - from)
    }

    /// The values across at which a curve is worked out.
    pub(crate) fn places(&self) -> [f64; POINTS] {
        let (from, to) = self.across;
        let step = (to - from) / (POINTS - 1) as f64;
        core::array::from_fn(|point| from + step * point as f64)
    }

    /// As [`Frame::places`], closer together round the middle, where a sharp curve bends.
    pub(crate) fn places_about_middle(&self) -> [f64; POINTS] {
        let (from, to) = self.across;
        let (middle, reach) = (f64::midpoint(from, to), (to - from) / 2.0);
        let half = (POINTS - 1) as f64 / 2.0;
        core::array::from_fn(|point| {
            let part = (point as f64 - half) / half;
            middle + reach * part * (0.3 + 0.7 * part * part)
        })
    }

    /// The strip of paper.
    pub(crate) fn paper(&self) -> Node {
        Node::classed("rect", "fig-strip")
            .at(self.left, self.top)
            .with("width", percent(self.width))
            .with("height", pixels(self.height))
    }

    /// A level ruled across the strip, with its label at the left edge.
    pub(crate) fn level(&self, value: f64, text: &str) -> [Node; 2] {
        let y = self.y(value);
        let right = self.left + self.width;
        [
            Node::classed("line", "fig-level").between((self.left, y), (right, y)),
            Node::classed("text", "fig-soft")
                .at(self.left + 0.5, y - 3.0)
                .saying(text),
        ]
    }

    /// Levels with their names: the lines, and the names, which drawn after a curve are not
    /// struck through by it.
    pub(crate) fn levels(&self, levels: &[(f64, &str)]) -> (Vec<Node>, Vec<Node>) {
        let pairs = levels.iter().map(|(value, text)| self.level(*value, text));
        pairs.map(<(Node, Node)>::from).unzip()
    }

    /// A tick on the lower edge, with its number.
    pub(crate) fn tick(&self, value: f64, text: &str) -> [Node; 2] {
        let (x, y) = (self.x(value), self.bottom());
        [
            Node::classed("line", "fig-tick").between((x, y), (x, y + 6.0)),
            Node::classed("text", "fig-soft")
                .at(x, y + 19.0)
                .anchored("middle")
                .saying(text),
        ]
    }

    /// The last tick: its number carries the unit and ends at the drawing's edge.
    pub(crate) fn last_tick(&self, value: f64, text: &str) -> [Node; 2] {
        let [line, number] = self.tick(value, text);
        let number = Node::classed("text", "fig-soft")
            .at(99.0, self.bottom() + 19.0)
            .anchored("end")
            .saying(number.text.as_deref().unwrap_or_default());
        [line, number]
    }

    /// A curve through values down, one for each of [`Frame::places`].
    pub(crate) fn curve(&self, key: &str, class: &str, values: &[f64; POINTS]) -> Node {
        self.curve_at(key, class, &self.places(), values)
    }

    /// A curve through values down, each at a place of its own.
    ///
    /// The line stretches with the drawing; its thickness does not. Far off the strip it is
    /// cut.
    pub(crate) fn curve_at(&self, key: &str, class: &str, places: &[f64], values: &[f64]) -> Node {
        let path = Node::classed("path", class)
            .keyed(key)
            .always("vector-effect", "non-scaling-stroke")
            .with("d", self.path(places, values));
        let tall = self.height + 2.0 * ROOM;
        let wide = ACROSS * (POINTS - 1) as i64;
        let mut view_box = String::from("0 0 ");
        push_whole(&mut view_box, wide);
        view_box.push(' ');
        push_whole(&mut view_box, rounded(tall * DOWN));
        Node::new("svg")
            .at(self.left, self.top - ROOM)
            .with("width", percent(self.width))
            .with("height", pixels(tall))
            .with("viewBox", view_box)
            .always("preserveAspectRatio", "none")
            .around(vec![path])
    }

    /// Whole units, each point relative to the one before: short to send.
    fn path(&self, places: &[f64], values: &[f64]) -> String {
        let mut path = String::with_capacity(7 * values.len());
        let (from, to) = self.across;
        let wide = (ACROSS * (POINTS - 1) as i64) as f64;
        let mut before = None;
        for (place, value) in places.iter().zip(values) {
            let across = rounded((place - from) / (to - from) * wide);
            let y = held_within(self.y(*value), self.top - 40.0, self.bottom() + 40.0);
            let height = rounded((y - self.top + ROOM) * DOWN);
            match before {
                None => {
                    path.push('M');
                    push_whole(&mut path, across);
                    path.push(' ');
                    push_whole(&mut path, height);
                    path.push('l');
                }
                Some((left, above)) => {
                    push_whole(&mut path, across - left);
                    path.push(' ');
                    push_whole(&mut path, height - above);
                    path.push(' ');
                }
            }
            before = Some((across, height));
        }
        path.truncate(path.trim_end().len());
        path
    }
}

/// A label over a place, in percent, held on the paper: its middle, in percent.
pub(crate) fn held(place: f64, text_width: f64) -> f64 {
    let half = text_width / 2.0 / WIDTH * 100.0;
    place.min(99.5 - half).max(half + 0.5)
}

#[cfg(test)]
mod tests {
    use super::{Frame, POINTS};

    fn frame() -> Frame {
        Frame::new(40.0, 100.0, (430.0, 510.0), (0.0, 50.0))
    }

    #[test]
    fn values_stand_where_the_scales_say() {
        let frame = frame();
        assert_eq!(
            (frame.x(430.0), frame.x(510.0), frame.x(470.0)),
            (5.0, 95.0, 50.0)
        );
        assert_eq!(
            (frame.y(0.0), frame.y(50.0), frame.y(10.0)),
            (40.0, 140.0, 60.0)
        );
        assert_eq!(frame.x_within(0.0), 5.0);
        let places = frame.places();
        assert_eq!((places[0], places[POINTS - 1]), (430.0, 510.0));
    }

    #[test]
    fn a_curve_is_written_in_whole_steps() {
        // 3 px of room and 4 units a pixel: 0 is at 12, 10 at 92.
        let places = frame().places();
        let path = frame().path(&places[..3], &[0.0, 10.0, 0.0]);
        assert_eq!(path, "M0 12l12 80 12 -80");
    }
}
