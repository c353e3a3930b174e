//! `coupled-pair`: the curve of two coupled circuits, in tune or out of it.
//!
//! Input, all with defaults: `f0`, `q1`, `q2`, `k`, `detune1`, `detune2` (how far each
//! circuit is off, with its sign), `span` and `critical` (`shown` or `hidden`: where it is
//! asked for, it is left out). The curve is the exact network's, drawn under the top that the
//! same two circuits have in tune and at critical coupling, so that its strength shows.
//! Critical coupling, humps and dip are the catalogue's, for circuits in tune.

mod drawing;
mod words;

use crate::arithmetic::{chosen, frequency, given, rough, roughly};
use crate::control::Slider;
use crate::plot::{Frame, WIDTH};
use crate::window::{detuning, edges, winding};
use crate::{Control, FigureError, Input, Quantity, View, span};
use superhet::quantities::transformer_network::TransformerNetwork;
use superhet::receiver::IfChain;
use superhet::units::{Decibels, Frequency, Kind, Ratio};

/// Where the width is taken, in decibels.
const DROP: f64 = 3.0;

/// The pair, worked out.
struct Model {
    frame: Frame,
    chain: IfChain,
    tuned: Quantity,
    q: [Quantity; 2],
    coupling: Quantity,
    detuned: [Quantity; 2],
    critical: Quantity,
    critical_shown: bool,
    peaks: Quantity,
    dip: Quantity,
    /// How many decibels the curve's own top lies under that at critical coupling.
    under: f64,
    /// The outermost frequencies [`DROP`] under the curve's own top, and their distance.
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
        quantities: vec![
            model.critical.clone(),
            model.peaks.clone(),
            model.dip.clone(),
            model.width.clone(),
        ],
        root: drawing::nodes(&model),
        controls: controls(&model),
    })
}

impl Model {
    fn read(input: &Input) -> Result<Self, FigureError> {
        let tuned = frequency("frequency", "f0", input.get("f0").unwrap_or("470 kHz"))?;
        let q = [
            given(Kind::Ratio, input, "q1", "100")?,
            given(Kind::Ratio, input, "q2", "100")?,
        ];
        let coupling = given(Kind::Ratio, input, "k", "0.01")?;
        let detuned = [detuning(input, "detune1")?, detuning(input, "detune2")?];
        let pairs = [
            ("f0", tuned.text.as_str()),
            ("q1", q[0].text.as_str()),
            ("q2", q[1].text.as_str()),
            ("k", coupling.text.as_str()),
        ];
        let (critical, peaks) = (
            rough("critical-coupling", &pairs[1..3])?,
            rough("coupled-peaks", &pairs)?,
        );
        let dip = rough("coupled-dip", &pairs[1..])?;
        let reach = span::reach(input, tuned.value, 0.04)?;
        let frame = drawing::frame((tuned.value - reach, tuned.value + reach));
        let pair = |coupling: f64, off: [f64; 2]| {
            let side = |side: usize| winding(tuned.value + off[side], q[side].value);
            TransformerNetwork {
                primary: side(0),
                secondary: side(1),
                coupling,
            }
        };
        let middle = Frequency::hz(tuned.value);
        let network = pair(coupling.value, [detuned[0].value, detuned[1].value]);
        let most = pair(critical.value, [0.0, 0.0]).transfer_impedance(middle);
        let chain = IfChain::new(vec![network], middle);
        let top = network.transfer_impedance(chain.peak());
        let edges = edges(&chain, DROP, &frame);
        let in_tune = detuned.iter().all(|detuned| detuned.value == 0.0);
        let width = if in_tune {
            let drop = ("drop", "3 dB");
            rough(
                "coupled-bandwidth",
                &[pairs[0], pairs[1], pairs[2], pairs[3], drop],
            )?
        } else {
            roughly(Kind::Frequency, "coupled-bandwidth", edges.1 - edges.0)
        };
        Ok(Self {
            frame,
            chain,
            tuned,
            q,
            coupling,
            detuned,
            critical,
            critical_shown: chosen(input, "critical", &["shown", "hidden"])? == 0,
            peaks,
            dip,
            under: Decibels::from_voltage_ratio(Ratio::new(most.to_ohm() / top.to_ohm())).to_db(),
            edges,
            width,
        })
    }

    fn in_tune(&self) -> bool {
        self.detuned.iter().all(|detuned| detuned.value == 0.0)
    }
}

fn controls(model: &Model) -> Vec<Control> {
    let says = |quantity: &Quantity| [&quantity.text, ": ", &model.width.text, " wide"].concat();
    let coupling = Slider {
        parts: 1000,
        ..Slider::under((1, 40, 1), model.coupling.value, "")
    };
    let detuning =
        |side: usize| Slider::under((-10, 10, 1), model.detuned[side].value / 1e3, "kHz");
    let q = |side: usize| Slider::under((20, 300, 5), model.q[side].value, "");
    vec![
        Control::slider("k", "Coupling k", coupling, says(&model.coupling)),
        Control::slider(
            "detune1",
            "Primary off by",
            detuning(0),
            says(&model.detuned[0]),
        ),
        Control::slider(
            "detune2",
            "Secondary off by",
            detuning(1),
            says(&model.detuned[1]),
        ),
        Control::slider("q1", "Primary Q", q(0), says(&model.q[0])),
        Control::slider("q2", "Secondary Q", q(1), says(&model.q[1])),
    ]
}
