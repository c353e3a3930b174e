//! `agc`: output against signal, with automatic gain control and without.
//!
//! Input, all with defaults: `signal` (decibels over the signal at which AGC begins) and
//! `loop-gain`.

mod drawing;
mod words;

use crate::arithmetic::{given_within, rough, typed};
use crate::control::Slider;
use crate::plot::{Frame, WIDTH};
use crate::{Control, FigureError, Input, Place, Quantity, View};
use superhet::quantities::agc::delayed_output;
use superhet::units::{Decibels, Kind};

/// The ends of both scales, in decibels over the level at which AGC begins.
const LOWEST: f64 = -20.0;
const HIGHEST: f64 = 80.0;
/// The greatest loop gain that the handle reaches.
const LOOP_GAIN: i32 = 30;

/// A set with AGC at one signal.
struct Model {
    frame: Frame,
    loop_gain: Quantity,
    flatness: Quantity,
    /// Decibels of signal over the level at which AGC begins.
    signal: Quantity,
    /// Decibels of output over the output there, with AGC.
    output: Quantity,
}

/// Draws the figure.
pub(crate) fn draw(input: &Input) -> Result<View, FigureError> {
    let model = Model::read(input)?;
    Ok(View {
        width: WIDTH,
        height: drawing::HEIGHT,
        title: words::title(&model),
        words: words::sentences(&model),
        table: words::table(&model),
        quantities: vec![
            model.signal.clone(),
            model.output.clone(),
            model.loop_gain.clone(),
            model.flatness.clone(),
        ],
        root: drawing::nodes(&model),
        controls: controls(&model),
    })
}

impl Model {
    fn read(input: &Input) -> Result<Self, FigureError> {
        let ends = (LOWEST, HIGHEST);
        let signal = given_within(Kind::Decibels, input, "signal", "40 dB", ends)?;
        let gain = input.get("loop-gain").unwrap_or("9");
        let flatness = rough("agc-flatness", &[("loop-gain", gain)])?;
        let loop_gain = typed(Kind::Ratio, "loop-gain", "loop-gain", gain)?;
        let output = output(signal.value, loop_gain.value);
        Ok(Self {
            frame: Frame::new(44.0, 150.0, ends, (HIGHEST, LOWEST)),
            loop_gain,
            flatness,
            signal,
            output,
        })
    }

    /// The output with AGC at a signal, both in decibels over the level at which it begins.
    fn output_at(&self, signal: f64) -> Quantity {
        output(signal, self.loop_gain.value)
    }
}

/// Under the delay there is no AGC, and the output changes as the signal does.
fn output(signal: f64, loop_gain: f64) -> Quantity {
    let decibels = delayed_output(Decibels::db(signal), loop_gain).to_db();
    crate::arithmetic::roughly(Kind::Decibels, "agc-output-change", decibels)
}

fn controls(model: &Model) -> Vec<Control> {
    let signal = Slider {
        place: Some(Place {
            from: model.frame.x(LOWEST),
            to: model.frame.x(HIGHEST),
            y: model.frame.bottom(),
        }),
        ..Slider::under((LOWEST as i32, HIGHEST as i32, 2), model.signal.value, "dB")
    };
    let loop_gain = Slider::under((0, LOOP_GAIN, 1), model.loop_gain.value, "");
    let output = ["output ", &model.output.text].concat();
    let at = |text: &str| [text, ": ", &output].concat();
    vec![
        Control::slider("signal", "Signal", signal, at(&model.signal.text)),
        Control::slider(
            "loop-gain",
            "Loop gain",
            loop_gain,
            at(&model.loop_gain.text),
        ),
    ]
}
