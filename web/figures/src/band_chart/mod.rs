//! `band-chart`: long, medium and short wave on one line, with the place of the IF and the
//! image of the whole of medium wave.
//!
//! Input, all with defaults: `if`, `side`, `region`.

mod drawing;
mod words;

use crate::arithmetic::{chosen, given_within, quantity};
use crate::control::Slider;
use crate::plot::WIDTH;
use crate::{Control, ControlKind, FigureError, Input, Quantity, View};
use superhet::quantities::bands::{
    Band, BandKind, IntermediatePlace, Region, bands, place_of_intermediate,
};
use superhet::units::{Frequency, Kind};

const SIDES: [&str; 2] = ["above", "below"];

/// The bands of a Region and what an IF makes of them.
struct Model {
    region: Region,
    side: &'static str,
    intermediate: Quantity,
    place: IntermediatePlace,
    medium: &'static Band,
    /// The images of the two ends of medium wave.
    images: [Quantity; 2],
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
        quantities: vec![model.intermediate.clone()],
        root: drawing::nodes(&model),
        controls: controls(&model),
    })
}

impl Model {
    fn read(input: &Input) -> Result<Self, FigureError> {
        let intermediate = given_within(Kind::Frequency, input, "if", "470 kHz", (100e3, 2e6))?;
        let side = SIDES[chosen(input, "side", &SIDES)?];
        let regions = [Region::One, Region::Two, Region::Three];
        let region = regions[chosen(input, "region", &["1", "2", "3"])?];
        let medium = bands(region)
            .find(|band| band.kind == BandKind::MediumWave)
            .ok_or_else(|| FigureError::new("this Region has no medium wave".to_owned()))?;
        let image = |end: Frequency| {
            let dial = superhet::units::display::text(Kind::Frequency, end.to_hz());
            quantity(
                "image",
                &[("dial", &dial), ("if", &intermediate.text), ("side", side)],
            )
        };
        let images = [image(medium.low)?, image(medium.high)?];
        let place = place_of_intermediate(Frequency::hz(intermediate.value), region);
        Ok(Self {
            region,
            side,
            intermediate,
            place,
            medium,
            images,
        })
    }
}

fn controls(model: &Model) -> Vec<Control> {
    let slider = Slider::under((100, 2000, 5), model.intermediate.value / 1e3, "kHz");
    let says = [&model.intermediate.text, ": ", words::place(model.place)].concat();
    let side = Control {
        parameter: "side",
        label: "Oscillator",
        kind: ControlKind::Choice {
            options: vec![("above", "above the signal"), ("below", "below it")],
            chosen: model.side,
        },
        text: model.side.to_owned(),
    };
    vec![Control::slider("if", "IF", slider, says), side]
}
