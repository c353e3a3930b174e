//! What a reader can move in a figure: native inputs, so that keyboard, touch and screen
//! reader work as they do everywhere else.

use crate::coordinate::thousandths;

/// A handle of a figure.
#[derive(Clone, Debug, PartialEq)]
pub struct Control {
    /// The parameter of the figure's input that it sets.
    pub parameter: &'static str,
    /// Its name beside or on it.
    pub label: &'static str,
    /// What kind of handle it is, and where it stands now.
    pub kind: ControlKind,
    /// Where it stands now, in words, for a screen reader (`aria-valuetext`).
    pub text: String,
}

/// The kinds of handle.
#[derive(Clone, Debug, PartialEq)]
pub enum ControlKind {
    /// A native range input.
    Slider(Slider),
    /// A row of native radio buttons.
    Choice {
        /// The values, each with its label.
        options: Vec<(&'static str, &'static str)>,
        /// The value that is chosen.
        chosen: &'static str,
    },
}

/// A native range input. Its numbers are in `unit`, or in so many `parts` of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Slider {
    /// The lowest value.
    pub min: i32,
    /// The highest value.
    pub max: i32,
    /// The step; values land on multiples of it from `min`, which is a multiple too, so
    /// that the handle stops at round numbers.
    pub step: i32,
    /// Into how many parts the unit is divided for the lowest, the highest and the step: 1, or
    /// a power of ten.
    pub parts: i32,
    /// Where it stands, in the unit. It may lie off the steps where a figure was written so.
    pub value: f64,
    /// The unit that is written after the number to make the parameter's text; empty where
    /// the parameter is a plain number.
    pub unit: &'static str,
    /// The place on the drawing; without one the handle stands under the drawing.
    pub place: Option<Place>,
}

/// The stretch of a drawing over which a slider lies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Place {
    /// The place of the slider's lowest value in percent of the width.
    pub from: f64,
    /// The place of its highest value in percent of the width.
    pub to: f64,
    /// The middle of the slider, in pixels from the top.
    pub y: f64,
}

impl Slider {
    /// A slider in whole units that stands under the drawing.
    pub(crate) fn under((min, max, step): (i32, i32, i32), value: f64, unit: &'static str) -> Self {
        Self {
            min,
            max,
            step,
            parts: 1,
            value,
            unit,
            place: None,
        }
    }
}

impl Slider {
    /// Where it stands: the number and its unit, as the parameter takes them.
    #[must_use]
    pub fn stands(&self) -> String {
        let text = [&thousandths(self.value), " ", self.unit].concat();
        text.trim().to_owned()
    }
}

impl Control {
    /// A handle to be slid.
    pub(crate) fn slider(
        parameter: &'static str,
        label: &'static str,
        slider: Slider,
        text: String,
    ) -> Self {
        Self {
            parameter,
            label,
            kind: ControlKind::Slider(slider),
            text,
        }
    }
}
