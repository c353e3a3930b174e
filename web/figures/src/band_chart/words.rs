//! The figure told in sentences and in a table.

use super::Model;
use super::drawing::ends;
use crate::{Cell, Quantity, Table};
use superhet::quantities::bands::{BandKind, IntermediatePlace, bands};
use superhet::units::{Kind, display};

/// Where the IF lies, in words.
pub(super) fn place(place: IntermediatePlace) -> &'static str {
    match place {
        IntermediatePlace::BelowLongWave => "below long wave",
        IntermediatePlace::InsideLongWave => "inside long wave",
        IntermediatePlace::BetweenLongAndMediumWave => "between long and medium wave",
        IntermediatePlace::InsideMediumWave => "inside medium wave",
        IntermediatePlace::AboveMediumWave => "above medium wave",
    }
}

pub(super) fn title(model: &Model) -> String {
    let mut title = [
        "The broadcast bands from long to short wave, with an IF of ",
        &model.intermediate.text,
        " ",
        place(model.place),
    ]
    .concat();
    for (name, quantity) in tuned(model) {
        title = [&title, ", ", name, " ", &quantity.text].concat();
    }
    title
}

/// What a dial setting fixes, each by its name; nothing without one.
fn tuned(model: &Model) -> Vec<(&'static str, &Quantity)> {
    let Some(tuned) = &model.tuned else {
        return Vec::new();
    };
    let mut all = vec![("signal", &tuned.signal), ("oscillator", &tuned.oscillator)];
    all.extend(tuned.image.as_ref().map(|image| ("image", image)));
    all
}

pub(super) fn sentences(model: &Model) -> String {
    let (from, to) = model.gap;
    let [from, to] = [from, to].map(|edge| display::text(Kind::Frequency, edge.to_hz()));
    let mut parts = vec![
        [
            "The line runs from 100 kHz to 30 MHz, each doubling of the frequency as long as the next, with the broadcast \
             bands as strips under it. Between long and medium wave, from ",
            &from,
            " to ",
            &to,
            ", is a gap without broadcasting. The IF, ",
            &model.intermediate.text,
            ", lies ",
            place(model.place),
            ".",
        ]
        .concat(),
    ];
    if let Some(tuned) = &model.tuned {
        let says = [
            " The set is tuned to a signal at ",
            &tuned.signal.text,
            ", with its oscillator ",
            model.side,
            " that, at ",
            &tuned.oscillator.text,
        ];
        parts.push(says.concat());
        if let Some(image) = &tuned.image {
            parts.push([" and the image at ", &image.text].concat());
        }
        parts.push(".".to_owned());
    }
    if let Some([low, high]) = ends(model) {
        let side = ["With the oscillator ", model.side, " the signal, the"].concat();
        let says = [
            " ",
            &side,
            " images of medium wave reach from ",
            &low.1,
            " to ",
            &high.1,
            ".",
        ];
        parts.push(says.concat());
    }
    parts.concat()
}

pub(super) fn table(model: &Model) -> Table {
    let text = |hertz: f64| Cell::words(display::text(Kind::Frequency, hertz));
    let shown = bands(model.region).filter(|band| band.kind != BandKind::Tropical);
    let mut rows: Vec<Vec<Cell>> = shown
        .map(|band| {
            let (low, high) = (band.low.to_hz(), band.high.to_hz());
            vec![Cell::words(band.name), text(low), text(high)]
        })
        .collect();
    rows.push(vec![
        Cell::words("gap between long and medium wave"),
        text(model.gap.0.to_hz()),
        text(model.gap.1.to_hz()),
    ]);
    if let Some([low, high]) = ends(model) {
        rows.push(vec![
            Cell::words("image of medium wave"),
            Cell::words(low.1),
            Cell::words(high.1),
        ]);
    }
    let mut points = tuned(model);
    points.push(("IF", &model.intermediate));
    rows.extend(points.into_iter().map(|(name, quantity)| {
        let twice = [quantity, quantity].map(Cell::result);
        [vec![Cell::words(name)], twice.to_vec()].concat()
    }));
    Table {
        caption: "The bands and what lies on them".to_owned(),
        headings: vec!["what", "from", "to"],
        rows,
    }
}
