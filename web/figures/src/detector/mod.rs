//! `detector`: the outline of a modulated signal, and the voltage that a diode with its
//! resistor and capacitor makes of it.
//!
//! Input, all with defaults: `r`, `c`, `audio`, `depth`.

mod drawing;
mod words;

use crate::arithmetic::{given, given_within, rough};
use crate::control::Slider;
use crate::coordinate::pixels;
use crate::plot::{Frame, POINTS, WIDTH};
use crate::{Control, FigureError, Input, Quantity, View};
use superhet::quantities::detection::{follow, time_constant};
use superhet::quantities::modulation::envelope;
use superhet::units::{Capacitance, Depth, Duration, Kind, Resistance};

/// Swings of the note that are drawn.
const SWINGS: f64 = 2.0;

/// A detector and what it is fed, as voltages over that of the bare carrier.
struct Model {
    frame: Frame,
    resistance: Quantity,
    capacitance: Quantity,
    audio: Quantity,
    depth: Quantity,
    /// The greatest depth that is followed at this note.
    limit: Quantity,
    time: Quantity,
    /// The outline, and the voltage across the capacitor.
    outline: [f64; POINTS],
    followed: [f64; POINTS],
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
            model.audio.clone(),
            model.depth.clone(),
            model.limit.clone(),
            model.time.clone(),
        ],
        root: drawing::nodes(&model),
        controls: controls(&model),
    })
}

impl Model {
    fn read(input: &Input) -> Result<Self, FigureError> {
        let resistance = given(Kind::Resistance, input, "r", "220 kΩ")?;
        let capacitance = given(Kind::Capacitance, input, "c", "100 pF")?;
        let audio = given(Kind::Frequency, input, "audio", "4.5 kHz")?;
        let depth = in_percent(given_within(
            Kind::Depth,
            input,
            "depth",
            "80 %",
            (0.0, 1.0),
        )?);
        let pairs = [
            ("r", resistance.text.as_str()),
            ("c", capacitance.text.as_str()),
            ("audio", audio.text.as_str()),
        ];
        let limit = in_percent(rough("detector-depth-limit", &pairs)?);
        let time = rough("time-constant", &pairs[..2])?;
        let frame = Frame::new(44.0, 140.0, (0.0, SWINGS), (2.0, 0.0));
        let deep = Depth::new(depth.value);
        let outline = frame.places().map(|swings| envelope(deep, swings));
        let load = Resistance::ohm(resistance.value);
        let followed = followed(&outline, &audio, load, Capacitance::f(capacitance.value));
        Ok(Self {
            frame,
            resistance,
            capacitance,
            audio,
            depth,
            limit,
            time,
            outline,
            followed,
        })
    }

    /// Whether the voltage comes off the outline.
    fn clips(&self) -> bool {
        self.depth.value > self.limit.value
    }
}

/// A depth as the trade says it.
fn in_percent(mut depth: Quantity) -> Quantity {
    depth.text = [&pixels(depth.value * 100.0), " %"].concat();
    depth
}

/// The voltage across the capacitor, drawn once it repeats itself, which it does from the
/// first top on: there the diode has just filled it.
fn followed(
    outline: &[f64; POINTS],
    audio: &Quantity,
    load: Resistance,
    across: Capacitance,
) -> [f64; POINTS] {
    let step = Duration::s(SWINGS / (POINTS - 1) as f64 / audio.value);
    let mut held = [0.0; POINTS];
    follow(outline, step, time_constant(load, across), &mut held);
    held
}

fn controls(model: &Model) -> Vec<Control> {
    let follows = ["followed up to ", &model.limit.text].concat();
    let at = |quantity: &Quantity| [&quantity.text, ": ", &follows].concat();
    let r = Slider::under((50, 500, 10), model.resistance.value / 1e3, "kΩ");
    let c = Slider::under((20, 1000, 10), model.capacitance.value * 1e12, "pF");
    let depth = Slider::under((0, 100, 5), model.depth.value * 100.0, "%");
    let audio = Slider {
        parts: 10,
        ..Slider::under((5, 100, 5), model.audio.value / 1e3, "kHz")
    };
    vec![
        Control::slider("depth", "Depth", depth, at(&model.depth)),
        Control::slider("audio", "Note", audio, at(&model.audio)),
        Control::slider("c", "Capacitor", c, at(&model.capacitance)),
        Control::slider("r", "Resistor", r, at(&model.resistance)),
    ]
}
