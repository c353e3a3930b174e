//! `band-chart`: long, medium and short wave on one line, with the gap where most IFs lie.
//!
//! Input, all with defaults: `if`, `side`, `region`, `image` (`shown` or `hidden`: a lesson
//! that has not come to it yet leaves it out) and `dial`. With a dial setting, the signal,
//! the oscillator and its image stand on the line too; the image of the whole of medium wave
//! is a strip of its own.

mod drawing;
mod words;

use crate::arithmetic::{chosen, frequency, given_within, quantity};
use crate::control::Slider;
use crate::plot::WIDTH;
use crate::tuning::{region, signal_range};
use crate::{Control, ControlKind, FigureError, Input, Quantity, View};
use superhet::quantities::bands::{
    Band, BandKind, IntermediatePlace, Region, bands, place_of_intermediate,
};
use superhet::units::{Frequency, Kind, display};

const SIDES: [&str; 2] = ["above", "below"];

/// The bands of a Region and what an IF makes of them.
struct Model {
    region: Region,
    side: &'static str,
    intermediate: Quantity,
    place: IntermediatePlace,
    medium: &'static Band,
    /// The end of long wave and the beginning of medium wave.
    gap: (Frequency, Frequency),
    /// The images of the two ends of medium wave, unless a lesson leaves them out.
    images: Option<[Quantity; 2]>,
    tuned: Option<Tuned>,
}

/// Where a dial setting puts the set.
struct Tuned {
    signal: Quantity,
    oscillator: Quantity,
    image: Option<Quantity>,
}

/// Draws the figure.
pub(crate) fn draw(input: &Input) -> Result<View, FigureError> {
    let model = Model::read(input)?;
    let mut quantities = vec![model.intermediate.clone()];
    if let Some(tuned) = &model.tuned {
        quantities.extend([tuned.signal.clone(), tuned.oscillator.clone()]);
        quantities.extend(tuned.image.clone());
    }
    Ok(View {
        width: WIDTH,
        height: drawing::height(&model),
        title: words::title(&model),
        words: words::sentences(&model),
        table: words::table(&model),
        quantities,
        root: drawing::nodes(&model)?,
        controls: controls(&model),
    })
}

impl Model {
    fn read(input: &Input) -> Result<Self, FigureError> {
        let intermediate = given_within(Kind::Frequency, input, "if", "470 kHz", (100e3, 2e6))?;
        let side = SIDES[chosen(input, "side", &SIDES)?];
        let region = region(input)?;
        let long = band(BandKind::LongWave, Region::One)?;
        let medium = band(BandKind::MediumWave, region)?;
        let shows_image = chosen(input, "image", &["shown", "hidden"])? == 0;
        let set = [("if", intermediate.text.as_str()), ("side", side)];
        let at = |name, dial: &str| quantity(name, &[("dial", dial), set[0], set[1]]);
        let end = |end: Frequency| at("image", &display::text(Kind::Frequency, end.to_hz()));
        let images = match shows_image {
            true => Some([end(medium.low)?, end(medium.high)?]),
            false => None,
        };
        let tuned = match input.get("dial") {
            Some(dial) => Some(Tuned {
                oscillator: at("oscillator", dial)?,
                signal: frequency("dial", "dial", dial)?,
                image: shows_image.then(|| at("image", dial)).transpose()?,
            }),
            None => None,
        };
        let place = place_of_intermediate(Frequency::hz(intermediate.value), region);
        Ok(Self {
            region,
            side,
            intermediate,
            place,
            medium,
            gap: (long.high, medium.low),
            images,
            tuned,
        })
    }
}

fn band(kind: BandKind, region: Region) -> Result<&'static Band, FigureError> {
    let found = bands(region).find(|band| band.kind == kind);
    found.ok_or_else(|| FigureError::new("this Region has no such band".to_owned()))
}

fn controls(model: &Model) -> Vec<Control> {
    let mut controls = Vec::new();
    if let Some(tuned) = &model.tuned {
        let (low, high) = signal_range(model.region);
        let slider = Slider::under((low, high, 5), tuned.signal.value / 1e3, "kHz");
        let mut says = [&tuned.signal.text, ": oscillator ", &tuned.oscillator.text].concat();
        if let Some(image) = &tuned.image {
            says = [&says, ", image ", &image.text].concat();
        }
        controls.push(Control::slider("dial", "Signal", slider, says));
    }
    let slider = Slider::under((100, 2000, 5), model.intermediate.value / 1e3, "kHz");
    let says = [&model.intermediate.text, ": ", words::place(model.place)].concat();
    controls.push(Control::slider("if", "IF", slider, says));
    controls.push(Control {
        parameter: "side",
        label: "Oscillator",
        kind: ControlKind::Choice {
            options: vec![("above", "above the signal"), ("below", "below it")],
            chosen: model.side,
        },
        text: model.side.to_owned(),
    });
    controls
}
