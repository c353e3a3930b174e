//! `frequency-line`: one line of frequency with the signal, the oscillator, the IF and
//! the image on it, and the equal distances between them.
//!
//! Input: `dial`, `if`, `side`; also `image` (`shown` or `hidden`: a lesson that has not
//! come to it yet leaves it out), `region` (1, 2 or 3, default 1: the broadcast bands
//! shown and the stretch over which the signal moves) and `axis` (the frequency at the
//! end of the line, default 3000 kHz).

mod distances;
mod points;
mod scale;
mod strips;
mod words;

use crate::plot::WIDTH;
use crate::point::{labels, marks};
use crate::tuning::{Tuning, signal_range};
use crate::{Control, ControlKind, FigureError, Input, Node, Place, Quantity, Slider, View};
use points::Points;
use scale::Scale;

const HEIGHT: f64 = 184.0;
/// The line of frequency itself, in pixels from the top.
const LINE: f64 = 118.0;

/// Draws the figure.
pub(crate) fn draw(input: &Input) -> Result<View, FigureError> {
    let tuning = Tuning::read(input)?;
    let scale = Scale::read(input)?;
    let points = Points::place(input, &tuning, &scale)?;
    Ok(View {
        width: WIDTH,
        height: HEIGHT,
        title: words::title(&points),
        words: words::sentences(&tuning, &points),
        table: words::table(&tuning, &points),
        quantities: quantities(&points),
        root: root(&points, &scale, &tuning),
        controls: controls(&tuning, &points, &scale),
    })
}

fn quantities(points: &Points) -> Vec<Quantity> {
    let all = points.all();
    all.into_iter()
        .map(|point| point.quantity.clone())
        .collect()
}

/// The drawing, from the back to the front.
fn root(points: &Points, scale: &Scale, tuning: &Tuning) -> Vec<Node> {
    let mut root = scale.nodes();
    root.extend(strips::nodes(scale));
    root.extend(distances::nodes(points, scale, tuning));
    let points = points.all();
    root.extend(labels(&points, LINE));
    root.extend(marks(&points, LINE));
    root
}

fn controls(tuning: &Tuning, points: &Points, scale: &Scale) -> Vec<Control> {
    let (min, max) = signal_range(scale.region);
    let place = Place {
        from: scale.percent_at(f64::from(min) * 1e3),
        to: scale.percent_at(f64::from(max) * 1e3),
        y: LINE,
    };
    let signal = Control {
        parameter: "dial",
        label: "Signal",
        kind: ControlKind::Slider(Slider {
            min,
            max,
            step: 5,
            value: tuning.signal.value / 1e3,
            parts: 1,
            unit: "kHz",
            place: Some(place),
        }),
        text: words::spoken(&tuning.signal, points),
    };
    vec![
        signal,
        tuning.intermediate_control(words::spoken(&tuning.intermediate, points)),
        tuning.side_control(),
    ]
}
