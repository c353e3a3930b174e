//! `resonance`: what one tuned circuit, or several alike, leave of a signal off resonance.
//!
//! Input, all with defaults: `f0`, `q`, `circuits`, `f` (the asked frequency), `l` (gives
//! the dynamic resistance), `scale` (`times` or `decibels`), `span` (how far the line
//! reaches to each side).

mod drawing;
mod words;

use crate::arithmetic::{frequency, given, quantity, roughly};
use crate::control::Slider;
use crate::plot::{Frame, WIDTH};
use crate::weakness::Scale;
use crate::{Control, FigureError, Input, Quantity, View, span};
use superhet::quantities::cascade::{StageKind, cascade_bandwidth};
use superhet::quantities::selectivity::selectivity;
use superhet::units::{Frequency, Kind, display};

/// The circuits, worked out.
struct Model {
    scale: Scale,
    frame: Frame,
    tuned: Quantity,
    asked: Quantity,
    q: Quantity,
    circuits: u32,
    /// Decibels that the asked frequency loses.
    loss: f64,
    /// The half-power width of one circuit, and of all in a row.
    one: Quantity,
    all: Quantity,
    /// Of one circuit at resonance, where its inductance is given.
    resistance: Option<Quantity>,
}

/// Draws the figure.
pub(crate) fn draw(input: &Input) -> Result<View, FigureError> {
    let model = Model::read(input)?;
    let mut quantities = vec![model.one.clone(), model.all.clone(), model.asked.clone()];
    quantities.push(model.scale.quantity("selectivity", model.loss));
    quantities.extend(model.resistance.clone());
    Ok(View {
        width: WIDTH,
        height: drawing::height(&model),
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
        let tuned = frequency("frequency", "f0", input.get("f0").unwrap_or("470 kHz"))?;
        let q = given(Kind::Ratio, input, "q", "100")?;
        let circuits = given(Kind::Integer, input, "circuits", "1")?;
        let reach = span::reach(input, tuned.value, 0.08)?;
        let beside = display::text(Kind::Frequency, tuned.value + span::round_up(reach / 5.0));
        let asked = frequency("f", "f", input.get("f").unwrap_or(&beside))?;
        let pairs = [
            ("f", asked.text.as_str()),
            ("f0", tuned.text.as_str()),
            ("q", q.text.as_str()),
            ("circuits", circuits.text.as_str()),
        ];
        // The core looks at every value, and says in its own words what is wrong.
        let loss = quantity("selectivity", &pairs)?.value;
        let one = quantity("bandwidth", &pairs[1..3])?.roughly();
        let resistance = resistance(input, &pairs)?;
        let circuits = circuits.value as u32;
        let all = cascade_bandwidth(Frequency::hz(one.value), circuits, StageKind::Single);
        let ends = (tuned.value - reach, tuned.value + reach);
        if asked.value < ends.0 || asked.value > ends.1 {
            return Err(off_the_line(&asked, ends));
        }
        let scale = Scale::read(input, 40.0)?;
        Ok(Self {
            scale,
            frame: drawing::frame(ends),
            all: roughly(Kind::Frequency, "cascade-bandwidth", all.to_hz()),
            tuned,
            asked,
            q,
            circuits,
            loss,
            one,
            resistance,
        })
    }

    /// Decibels lost at a frequency.
    fn loss_at(&self, hertz: f64) -> f64 {
        let (f, f0) = (Frequency::hz(hertz), Frequency::hz(self.tuned.value));
        selectivity(f, f0, self.q.value, self.circuits).to_db()
    }

    /// The two half-power frequencies: at equal ratios from the resonance, as far apart as
    /// the width.
    fn edges(&self) -> (f64, f64) {
        let half = self.all.value / 2.0;
        let middle = libm::hypot(self.tuned.value, half);
        (middle - half, middle + half)
    }
}

/// The dynamic resistance, where the inductance is given.
fn resistance(input: &Input, pairs: &[(&str, &str); 4]) -> Result<Option<Quantity>, FigureError> {
    let Some(inductance) = input.get("l") else {
        return Ok(None);
    };
    let with_inductance = [pairs[1], ("l", inductance), pairs[2]];
    quantity("dynamic-resistance", &with_inductance).map(|found| Some(found.roughly()))
}

fn off_the_line(asked: &Quantity, (low, high): (f64, f64)) -> FigureError {
    let sentence = [
        "f must lie on the line, from ",
        &display::text(Kind::Frequency, low),
        " to ",
        &display::text(Kind::Frequency, high),
        " (got ",
        &asked.text,
        ")",
    ];
    FigureError::about("f", sentence.concat())
}

fn controls(model: &Model) -> Vec<Control> {
    let asked = [&model.asked.text, ": ", &model.scale.words(model.loss)].concat();
    let wide = |text: &str| [text, ": ", &model.all.text, " wide"].concat();
    let q = Slider::under((10, 300, 5), model.q.value, "");
    let circuits = Slider::under((1, 4, 1), f64::from(model.circuits), "");
    vec![
        Control::slider(
            "f",
            "Signal",
            span::slider(&model.frame, model.asked.value),
            asked,
        ),
        Control::slider("q", "Q", q, wide(&model.q.text)),
        Control::slider(
            "circuits",
            "Circuits in a row",
            circuits,
            wide(words::count(model.circuits)),
        ),
    ]
}
