//! `if-chain`: the whole IF response over a strip of the band with the wanted station, its
//! sidebands and the channels beside it.
//!
//! Input, all with defaults: `if`, `q` (of every circuit), `k`, `transformers`, `spacing`
//! (of the channels), `audio` (the highest note) and `detune` (how far the last circuit is
//! off, with its sign).

mod drawing;
mod words;

use crate::arithmetic::{frequency, given, given_within, rough, roughly};
use crate::control::Slider;
use crate::plot::{Frame, WIDTH};
use crate::window::{detuning, edges, winding};
use crate::{Control, FigureError, Input, Quantity, View};
use superhet::quantities::transformer_network::TransformerNetwork;
use superhet::receiver::IfChain;
use superhet::units::{Frequency, Kind};

/// Where the width is taken, in decibels.
const DROP: f64 = 3.0;
/// Channels to each side of the station.
const CHANNELS: i32 = 2;

/// The chain, worked out.
struct Model {
    frame: Frame,
    chain: IfChain,
    tuned: Quantity,
    q: Quantity,
    coupling: Quantity,
    transformers: u32,
    spacing: Quantity,
    audio: Quantity,
    detuned: Quantity,
    edges: (f64, f64),
    width: Quantity,
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
        quantities: vec![model.width.clone(), model.audio.clone()],
        root: drawing::nodes(&model),
        controls: controls(&model),
    })
}

impl Model {
    fn read(input: &Input) -> Result<Self, FigureError> {
        let tuned = frequency("frequency", "if", input.get("if").unwrap_or("470 kHz"))?;
        let q = given(Kind::Ratio, input, "q", "100")?;
        let coupling = given(Kind::Ratio, input, "k", "0.01")?;
        // Asked so that the core judges Q and coupling.
        rough(
            "coupled-dip",
            &[("q1", &q.text), ("q2", &q.text), ("k", &coupling.text)],
        )?;
        let stages = given_within(Kind::Integer, input, "transformers", "2", (1.0, 8.0))?;
        let spacing = given_within(Kind::Frequency, input, "spacing", "9 kHz", (1e3, 50e3))?;
        let audio = given_within(Kind::Frequency, input, "audio", "4.5 kHz", (50.0, 20e3))?;
        let detuned = detuning(input, "detune")?;
        let reach = (f64::from(CHANNELS) + 0.6) * spacing.value;
        if reach > 0.9 * tuned.value {
            let sentence = [
                "spacing is too wide for an IF of ",
                &tuned.text,
                " (got ",
                &spacing.text,
                ")",
            ];
            return Err(FigureError::about("spacing", sentence.concat()));
        }
        let frame = drawing::frame((tuned.value - reach, tuned.value + reach));
        let pair = |off: f64| TransformerNetwork {
            primary: winding(tuned.value, q.value),
            secondary: winding(tuned.value + off, q.value),
            coupling: coupling.value,
        };
        let transformers = stages.value as u32;
        let mut chain = vec![pair(0.0); transformers as usize - 1];
        chain.push(pair(detuned.value));
        let chain = IfChain::new(chain, Frequency::hz(tuned.value));
        let edges = edges(&chain, DROP, &frame);
        Ok(Self {
            frame,
            chain,
            tuned,
            q,
            coupling,
            transformers,
            spacing,
            audio,
            detuned,
            edges,
            width: roughly(Kind::Frequency, "bandwidth", edges.1 - edges.0),
        })
    }

    /// The carrier of a channel, counted from the station.
    fn carrier(&self, channel: i32) -> f64 {
        self.tuned.value + f64::from(channel) * self.spacing.value
    }
}

fn controls(model: &Model) -> Vec<Control> {
    let says = |text: &str| [text, ": ", &model.width.text, " wide"].concat();
    let coupling = Slider {
        parts: 1000,
        ..Slider::under((1, 40, 1), model.coupling.value, "")
    };
    let audio = Slider {
        parts: 10,
        ..Slider::under((5, 100, 5), model.audio.value / 1e3, "kHz")
    };
    let q = Slider::under((20, 250, 5), model.q.value, "");
    let transformers = Slider::under((1, 4, 1), f64::from(model.transformers), "");
    let detuned = Slider::under((-10, 10, 1), model.detuned.value / 1e3, "kHz");
    vec![
        Control::slider("k", "Coupling k", coupling, says(&model.coupling.text)),
        Control::slider("q", "Q", q, says(&model.q.text)),
        Control::slider(
            "transformers",
            "Transformers",
            transformers,
            says(words::count(model.transformers)),
        ),
        Control::slider("audio", "Highest note", audio, model.audio.text.clone()),
        Control::slider(
            "detune",
            "One circuit off by",
            detuned,
            says(&model.detuned.text),
        ),
    ]
}
