//! `spurious-map`: the dial across, the signals that reach the IF upward. Each of them is a
//! line, and how steep it is tells how it moves when the dial is turned.
//!
//! Input, all with defaults: `dial`, `if`, `side`, `region`, `f-low` and `f-high` (the ends of
//! the dial), `axis` (the highest signal on the paper), `order` (the highest sum of both
//! harmonics), `n` (the highest harmonic of the signal) and `sender` (one on the air, whose
//! level the lines cross).

mod drawing;
mod line;
mod note;
mod words;

use crate::arithmetic::{frequency, given, given_within};
use crate::control::Slider;
use crate::plot::{Frame, WIDTH};
use crate::tuning::{Tuning, region};
use crate::{Control, FigureError, Input, Place, Quantity, View};
use line::Line;
use note::Note;
use superhet::quantities::bands::Region;
use superhet::quantities::conversion::Side;
use superhet::units::{Frequency, Kind};

const DEFAULTS: [(&str, &str); 3] = [("dial", "945 kHz"), ("if", "470 kHz"), ("side", "above")];

/// What the responses of a set follow from.
struct Set {
    /// The dial setting, in hertz.
    dial: f64,
    intermediate: Frequency,
    side: Side,
    region: Region,
    order: u32,
    harmonics: u32,
}

/// The map, worked out.
struct Model {
    tuning: Tuning,
    set: Set,
    frame: Frame,
    lines: Vec<Line>,
    /// The harmonics of the IF that the set makes by itself, level lines.
    own: [Note; 2],
    /// The channel beside the station.
    neighbour: Option<Note>,
    sender: Option<Quantity>,
}

/// Draws the figure.
pub(crate) fn draw(input: &Input) -> Result<View, FigureError> {
    let model = Model::read(input)?;
    let tuning = &model.tuning;
    let [signal, intermediate, oscillator] =
        [&tuning.signal, &tuning.intermediate, &tuning.oscillator].map(Quantity::clone);
    Ok(View {
        width: WIDTH,
        height: drawing::height(&model),
        title: words::title(&model),
        words: words::sentences(&model),
        table: words::table(&model),
        quantities: vec![signal, intermediate, oscillator],
        root: drawing::nodes(&model),
        controls: controls(&model),
    })
}

impl Model {
    fn read(input: &Input) -> Result<Self, FigureError> {
        let mut full = input.clone();
        for (key, text) in DEFAULTS {
            if full.get(key).is_none() {
                full = full.with(key, text);
            }
        }
        let tuning = Tuning::read(&full)?;
        let whole = |key, default, ends| given_within(Kind::Integer, input, key, default, ends);
        let order = whole("order", "3", (2.0, 4.0))?.value as u32;
        let harmonics = whole("n", "1", (1.0, 4.0))?.value as u32;
        let set = Set {
            dial: tuning.signal.value,
            intermediate: Frequency::hz(tuning.intermediate.value),
            side: Side::from_word(tuning.side.name()).unwrap_or(Side::Above),
            region: region(input)?,
            order,
            harmonics,
        };
        let frame = frame(input, &tuning.signal)?;
        let sender = match input.get("sender") {
            Some(text) => Some(frequency("signal", "sender", text)?),
            None => None,
        };
        Ok(Self {
            lines: line::lines(&set, &frame),
            own: [2, 3].map(|harmonic| Note::of_own(&set, harmonic)),
            neighbour: Note::of_neighbour(&set),
            tuning,
            set,
            frame,
            sender,
        })
    }
}

/// The paper: the ends of the dial across, signals from zero upward.
fn frame(input: &Input, dial: &Quantity) -> Result<Frame, FigureError> {
    let read = |key, default| given(Kind::Frequency, input, key, default);
    let (low, high) = (read("f-low", "525 kHz")?, read("f-high", "1605 kHz")?);
    if !(low.value < high.value && (low.value..=high.value).contains(&dial.value)) {
        let sentence = [
            "dial must lie between f-low and f-high (got ",
            &dial.text,
            ")",
        ];
        return Err(FigureError::about("dial", sentence.concat()));
    }
    let axis = given_within(Kind::Frequency, input, "axis", "5 MHz", (1e6, 30e6))?;
    Ok(drawing::frame((low.value, high.value), axis.value))
}

fn controls(model: &Model) -> Vec<Control> {
    let frame = &model.frame;
    let (low, high) = (frame.across.0 / 5e3, frame.across.1 / 5e3);
    let (min, max) = (libm::ceil(low) * 5.0, libm::floor(high) * 5.0);
    let place = Place {
        from: frame.x(min * 1e3),
        to: frame.x(max * 1e3),
        y: frame.bottom(),
    };
    let slider = Slider {
        place: Some(place),
        ..Slider::under((min as i32, max as i32, 5), model.set.dial / 1e3, "kHz")
    };
    let spoken = words::spoken(model);
    let says = |quantity: &Quantity| [&quantity.text, ": ", &spoken].concat();
    vec![
        Control::slider("dial", "Dial", slider, says(&model.tuning.signal)),
        model
            .tuning
            .intermediate_control(says(&model.tuning.intermediate)),
        model.tuning.side_control(),
    ]
}
