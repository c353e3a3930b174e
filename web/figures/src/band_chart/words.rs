//! The figure told in sentences and in a table.

use super::Model;
use super::drawing::ends;
use crate::{Cell, Table};
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
    [
        "The broadcast bands from long to short wave, with an IF of ",
        &model.intermediate.text,
        " ",
        place(model.place),
    ]
    .concat()
}

pub(super) fn sentences(model: &Model) -> String {
    let [low, high] = ends(model);
    [
        "The line runs from 100 kHz to 30 MHz, each octave as long as the next, with the broadcast bands as \
         strips on it. The IF, ",
        &model.intermediate.text,
        ", lies ",
        place(model.place),
        ". With the oscillator ",
        model.side,
        " the signal, the images of medium wave reach from ",
        &low.1,
        " to ",
        &high.1,
        ".",
    ]
    .concat()
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
    let [low, high] = ends(model);
    rows.push(vec![
        Cell::words("image of medium wave"),
        Cell::words(low.1),
        Cell::words(high.1),
    ]);
    let intermediate = &model.intermediate.text;
    let twice = [intermediate, intermediate].map(|text| Cell::words(text.clone()));
    rows.push([vec![Cell::words("IF")], twice.to_vec()].concat());
    Table {
        caption: "The bands, the IF and the image".to_owned(),
        headings: vec!["what", "from", "to"],
        rows,
    }
}
