//! `block-diagram`: a set stage by stage, with the frequency at each point and a strip
//! of the wave there.
//!
//! Input: `dial`, `if`, `side`. The drawing runs downwards, so that it is read on a
//! phone as on a page.

mod layout;
mod wave;
mod words;

use crate::tuning::Tuning;
use crate::{Control, ControlKind, FigureError, Input, Slider, View};

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
        controls: controls(&tuning),
    })
}

fn controls(tuning: &Tuning) -> Vec<Control> {
    let after = |text: &str| format!("{text}: oscillator {}", tuning.oscillator.text);
    let dial = Control {
        parameter: "dial",
        label: "Dial",
        kind: ControlKind::Slider(Slider {
            min: 150,
            max: 1605,
            step: 5,
            value: tuning.signal.value / 1e3,
            parts: 1,
            unit: "kHz",
            place: None,
        }),
        text: after(&tuning.signal.text),
    };
    let intermediate = tuning.intermediate_control(after(&tuning.intermediate.text));
    vec![dial, intermediate, tuning.side_control()]
}
