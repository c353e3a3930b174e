//! `tracking`: how far the oscillator is from where the dial wants it, over the band, with
//! its three exact settings.
//!
//! Input, all with defaults: `f1`, `f2`, `f3`, `if`, `side`, `q` (of the signal circuit, for
//! the loss), `f-low`, `f-high`, `dial` (the asked setting) and `l-signal` (adds padder,
//! trimmer and oscillator coil to the table).

mod drawing;
mod words;

use crate::arithmetic::{chosen, given, quantity, rough};
use crate::control::Slider;
use crate::plot::{Frame, WIDTH};
use crate::{Control, ControlKind, FigureError, Input, Quantity, View, span};
use superhet::quantities::conversion::Side;
use superhet::quantities::tracking::ThreePoints;
use superhet::units::{Frequency, Kind};

const SIDES: [&str; 2] = ["above", "below"];

/// A curve of tracking, worked out.
struct Model {
    frame: Frame,
    curve: ThreePoints,
    settings: [Quantity; 3],
    intermediate: Quantity,
    side: &'static str,
    dial: Quantity,
    error: Quantity,
    loss: Quantity,
    largest: Quantity,
    /// Padder, trimmer and oscillator coil, where the signal coil is given.
    parts: Vec<Quantity>,
}

/// Draws the figure.
pub(crate) fn draw(input: &Input) -> Result<View, FigureError> {
    let model = Model::read(input)?;
    let mut quantities = vec![
        model.dial.clone(),
        model.error.clone(),
        model.loss.clone(),
        model.largest.clone(),
    ];
    quantities.extend(model.settings.iter().cloned());
    quantities.extend(model.parts.iter().cloned());
    Ok(View {
        width: WIDTH,
        height: drawing::HEIGHT,
        title: words::title(&model),
        words: words::sentences(&model),
        table: words::table(&model),
        quantities,
        root: drawing::nodes(&model),
        controls: controls(&model),
    })
}

impl Model {
    fn read(input: &Input) -> Result<Self, FigureError> {
        let read = |key, default| given(Kind::Frequency, input, key, default);
        let settings = [
            read("f1", "600 kHz")?,
            read("f2", "950 kHz")?,
            read("f3", "1500 kHz")?,
        ];
        let intermediate = read("if", "470 kHz")?;
        let ends = [read("f-low", "525 kHz")?, read("f-high", "1605 kHz")?];
        let side = SIDES[chosen(input, "side", &SIDES)?];
        let dial = read("dial", "750 kHz")?;
        let q = given(Kind::Ratio, input, "q", "80")?;
        let pairs = [
            ("f1", settings[0].text.as_str()),
            ("f2", settings[1].text.as_str()),
            ("f3", settings[2].text.as_str()),
            ("if", intermediate.text.as_str()),
            ("side", side),
        ];
        let with = |more: &[(&'static str, &str)], name| rough(name, &[&pairs[..], more].concat());
        let asked = ("dial", dial.text.as_str());
        let error = with(&[asked], "tracking-error")?;
        let loss = with(&[asked, ("q", &q.text)], "tracking-loss")?;
        let band = [
            ("f-low", ends[0].text.as_str()),
            ("f-high", ends[1].text.as_str()),
        ];
        let largest = with(&band, "largest-tracking-error")?;
        let parts = parts(input, &pairs)?;
        let frame = drawing::frame((ends[0].value, ends[1].value))?;
        if !(ends[0].value..=ends[1].value).contains(&dial.value) {
            let sentence = [
                "dial must lie between f-low and f-high (got ",
                &dial.text,
                ")",
            ];
            return Err(FigureError::about("dial", sentence.concat()));
        }
        let hertz = settings
            .each_ref()
            .map(|setting| Frequency::hz(setting.value));
        let towards = if side == "above" {
            Side::Above
        } else {
            Side::Below
        };
        let curve = ThreePoints::new(hertz, Frequency::hz(intermediate.value), towards)
            .map_err(|error| FigureError::new(error.to_string()))?;
        Ok(Self {
            frame,
            curve,
            settings,
            intermediate,
            side,
            dial,
            error,
            loss,
            largest,
            parts,
        })
    }

    /// Hertz by which the oscillator is off at a setting.
    fn error_at(&self, hertz: f64) -> f64 {
        self.curve.error(Frequency::hz(hertz)).to_hz()
    }
}

fn parts(input: &Input, pairs: &[(&str, &str); 5]) -> Result<Vec<Quantity>, FigureError> {
    let Some(coil) = input.get("l-signal") else {
        return Ok(Vec::new());
    };
    let more = [("l-signal", coil), ("arrangement", "across-coil")];
    let all = [&pairs[..], &more].concat();
    ["padder", "trimmer", "oscillator-inductance"]
        .into_iter()
        .map(|name| quantity(name, &all).map(Quantity::roughly))
        .collect()
}

fn controls(model: &Model) -> Vec<Control> {
    let error = [&model.dial.text, ": off by ", &model.error.text].concat();
    let largest = |text: &str| [text, ": off by at most ", &model.largest.text].concat();
    let setting = |key, label, place: usize| {
        let slider = Slider {
            place: None,
            ..span::slider(&model.frame, model.settings[place].value)
        };
        Control::slider(key, label, slider, largest(&model.settings[place].text))
    };
    let side = Control {
        parameter: "side",
        label: "Oscillator",
        kind: ControlKind::Choice {
            options: vec![("above", "above the signal"), ("below", "below it")],
            chosen: model.side,
        },
        text: model.side.to_owned(),
    };
    vec![
        Control::slider(
            "dial",
            "Dial",
            span::slider(&model.frame, model.dial.value),
            error,
        ),
        setting("f1", "Low setting", 0),
        setting("f2", "Middle setting", 1),
        setting("f3", "High setting", 2),
        side,
    ]
}
