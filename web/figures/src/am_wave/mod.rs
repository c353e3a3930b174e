//! `am-wave`: a carrier with one note on it, as a wave and as the three frequencies that
//! it is made of.
//!
//! Input, all with defaults: `carrier`, `audio`, `depth`.

mod drawing;
mod words;

use crate::arithmetic::{given, given_within, quantity};
use crate::control::Slider;
use crate::coordinate::pixels;
use crate::plot::WIDTH;
use crate::{Control, FigureError, Input, Quantity, View};
use superhet::quantities::modulation::sideband_amplitude;
use superhet::units::{Depth, Kind, Voltage};

/// A modulated carrier, its amplitude 1.
struct Model {
    carrier: Quantity,
    audio: Quantity,
    depth: Quantity,
    lower: Quantity,
    upper: Quantity,
    room: Quantity,
    /// The amplitude of each side frequency.
    side: f64,
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
            model.carrier.clone(),
            model.audio.clone(),
            model.depth.clone(),
            model.lower.clone(),
            model.upper.clone(),
            model.room.clone(),
        ],
        root: drawing::nodes(&model),
        controls: controls(&model),
    })
}

impl Model {
    fn read(input: &Input) -> Result<Self, FigureError> {
        let carrier = given(Kind::Frequency, input, "carrier", "1089 kHz")?;
        let notes = (50.0, drawing::HIGHEST_NOTE);
        let audio = given_within(Kind::Frequency, input, "audio", "4.5 kHz", notes)?;
        let mut depth = given_within(Kind::Depth, input, "depth", "30 %", (0.0, 1.0))?;
        depth.text = [&pixels(depth.value * 100.0), " %"].concat();
        let pairs = [
            ("carrier", carrier.text.as_str()),
            ("audio", audio.text.as_str()),
        ];
        let lower = quantity("sideband-lower", &pairs)?;
        let upper = quantity("sideband-upper", &pairs)?;
        let room = quantity("necessary-bandwidth", &pairs[1..])?;
        let side = sideband_amplitude(Voltage::v(1.0), Depth::new(depth.value)).to_v();
        Ok(Self {
            carrier,
            audio,
            depth,
            lower,
            upper,
            room,
            side,
        })
    }
}

fn controls(model: &Model) -> Vec<Control> {
    let audio = Slider {
        parts: 10,
        ..Slider::under((5, 100, 5), model.audio.value / 1e3, "kHz")
    };
    let depth = Slider::under((0, 100, 5), model.depth.value * 100.0, "%");
    let ends = [&model.lower.text, " and ", &model.upper.text].concat();
    let audio_says = [&model.audio.text, ": side frequencies ", &ends].concat();
    let side = words::part(model.side);
    let depth_says = [
        &model.depth.text,
        ": each side frequency ",
        &side,
        " of the carrier",
    ];
    vec![
        Control::slider("audio", "Note", audio, audio_says),
        Control::slider("depth", "Depth", depth, depth_says.concat()),
    ]
}
