//! `block-diagram`: a set stage by stage, with the frequency at each point.
//!
//! Input: `dial`, `if`, `side`.

use crate::coordinate::{percent, pixels};
use crate::tuning::Tuning;
use crate::{Cell, Control, ControlKind, FigureError, Input, Node, Slider, Table, View};

const WIDTH: f64 = 328.0;
const HEIGHT: f64 = 520.0;

/// Draws the figure.
pub(crate) fn draw(input: &Input) -> Result<View, FigureError> {
    let tuning = Tuning::read(input)?;
    Ok(View {
        width: WIDTH,
        height: HEIGHT,
        title: title(&tuning),
        words: sentences(&tuning),
        table: table(&tuning),
        quantities: vec![
            tuning.signal.clone(),
            tuning.oscillator.clone(),
            tuning.intermediate.clone(),
        ],
        root: root(&tuning),
        controls: controls(&tuning),
    })
}

fn title(tuning: &Tuning) -> String {
    format!(
        "A superhet set in blocks: {} from the aerial, {} from the oscillator, {} after the mixer",
        tuning.signal.text, tuning.oscillator.text, tuning.intermediate.text
    )
}

fn sentences(tuning: &Tuning) -> String {
    format!(
        "The aerial circuit picks out {}. The oscillator makes {}. The mixer puts both together and \
         gives their difference, {}. The IF amplifier strengthens that one frequency, whatever the \
         dial says. The detector takes the programme from it, and the audio amplifier drives the \
         loudspeaker.",
        tuning.signal.text, tuning.oscillator.text, tuning.intermediate.text
    )
}

fn table(tuning: &Tuning) -> Table {
    let row = |point: &str, quantity| vec![Cell::words(point), Cell::result(quantity)];
    Table {
        caption: "The frequency at each point".to_owned(),
        headings: vec!["point", "frequency"],
        rows: vec![
            row("aerial circuit to mixer", &tuning.signal),
            row("oscillator to mixer", &tuning.oscillator),
            row("mixer to IF amplifier", &tuning.intermediate),
            row("IF amplifier to detector", &tuning.intermediate),
        ],
    }
}

fn root(tuning: &Tuning) -> Vec<Node> {
    let rows = [
        ("Aerial circuit", Some(("signal", &tuning.signal.text))),
        ("Mixer", Some(("mixed", &tuning.intermediate.text))),
        (
            "IF amplifier",
            Some(("amplified", &tuning.intermediate.text)),
        ),
        ("Detector", None),
        ("Audio amplifier", None),
        ("Loudspeaker", None),
    ];
    let mut nodes = Vec::new();
    for (row, (name, after)) in (0..).zip(rows) {
        let top = 8.0 + 84.0 * f64::from(row);
        nodes.extend(block(name, 2.0, top));
        if let Some((key, text)) = after {
            nodes.push(flow(key, text, 27.0, top + 66.0));
        }
    }
    nodes.extend(block("Oscillator", 54.0, 8.0));
    nodes.push(flow("oscillator", &tuning.oscillator.text, 79.0, 74.0));
    nodes
}

fn block(name: &str, left: f64, top: f64) -> [Node; 2] {
    [
        Node::classed("rect", "block")
            .with("x", percent(left))
            .with("y", pixels(top))
            .with("width", "44%")
            .with("height", "44"),
        Node::classed("text", "name")
            .with("x", percent(left + 22.0))
            .with("y", pixels(top + 27.0))
            .with("text-anchor", "middle")
            .saying(name),
    ]
}

fn flow(key: &str, text: &str, left: f64, y: f64) -> Node {
    Node::classed("text", "value")
        .keyed(key)
        .with("x", percent(left))
        .with("y", pixels(y))
        .saying(text)
}

fn controls(tuning: &Tuning) -> Vec<Control> {
    let dial = Control {
        parameter: "dial",
        label: "Dial",
        kind: ControlKind::Slider(Slider {
            min: 150,
            max: 1605,
            step: 5,
            value: tuning.signal.value / 1e3,
            unit: "kHz",
            place: None,
        }),
        text: format!(
            "{}: oscillator {}",
            tuning.signal.text, tuning.oscillator.text
        ),
    };
    let spoken = format!(
        "{}: oscillator {}",
        tuning.intermediate.text, tuning.oscillator.text
    );
    vec![
        dial,
        tuning.intermediate_control(spoken),
        tuning.side_control(),
    ]
}
