//! `block-diagram`: a set stage by stage, with the frequency at each point and a strip
//! of the wave there.
//!
//! Input: `dial`, `if`, `side`; also `f-low` and `f-high`, the ends of the dial (default
//! 150 kHz and 1605 kHz). The drawing runs downwards, so that it is read on a phone as on
//! a page.

mod layout;
mod wave;
mod words;

use crate::arithmetic::given_within;
use crate::tuning::Tuning;
use crate::{Control, FigureError, Input, Slider, View};
use superhet::units::Kind;

/// The step of the dial, in kHz: coarse enough that a hand on the keys comes along it.
const STEP: f64 = 15.0;
/// How far apart the ends of a dial may be asked for, in hertz.
const REACH: (f64, f64) = (150e3, 30e6);

/// Draws the figure.
pub(crate) fn draw(input: &Input) -> Result<View, FigureError> {
    let tuning = Tuning::read(input)?;
    Ok(View {
        width: layout::WIDTH,
        height: layout::HEIGHT,
        title: words::title(&tuning),
        words: words::sentences(&tuning),
        table: words::table(&tuning),
        quantities: vec![
            tuning.signal.clone(),
            tuning.oscillator.clone(),
            tuning.intermediate.clone(),
        ],
        root: layout::nodes(&tuning),
        controls: controls(&tuning, ends(input)?),
    })
}

/// The ends of the dial in kHz, at whole steps within them.
fn ends(input: &Input) -> Result<(i32, i32), FigureError> {
    let end = |parameter, default| {
        let read = given_within(Kind::Frequency, input, parameter, default, REACH)?;
        Ok(read.value / 1e3 / STEP)
    };
    let (low, high) = (end("f-low", "150 kHz")?, end("f-high", "1605 kHz")?);
    if low < high {
        let stop = |steps: f64| (steps * STEP) as i32;
        return Ok((stop(libm::ceil(low)), stop(libm::floor(high))));
    }
    let sentence = "f-high must be above f-low".to_owned();
    Err(FigureError::about("f-high", sentence))
}

fn controls(tuning: &Tuning, (low, high): (i32, i32)) -> Vec<Control> {
    let after = |text: &str| format!("{text}: oscillator {}", tuning.oscillator.text);
    let slider = Slider::under((low, high, STEP as i32), tuning.signal.value / 1e3, "kHz");
    let dial = Control::slider("dial", "Dial", slider, after(&tuning.signal.text));
    let intermediate = tuning.intermediate_control(after(&tuning.intermediate.text));
    vec![dial, intermediate, tuning.side_control()]
}
