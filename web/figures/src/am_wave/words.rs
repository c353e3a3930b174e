//! The figure told in sentences and in a table.

use super::Model;
use crate::coordinate::pixels;
use crate::{Cell, Table};

/// A part of the carrier's strength, in per cent.
pub(super) fn part(amplitude: f64) -> String {
    [&pixels(amplitude * 100.0), " %"].concat()
}

pub(super) fn title(model: &Model) -> String {
    [
        "A carrier at ",
        &model.carrier.text,
        " with a note of ",
        &model.audio.text,
        " at a depth of ",
        &model.depth.text,
        ", as a wave, and as a carrier with side frequencies at ",
        &model.lower.text,
        " and ",
        &model.upper.text,
    ]
    .concat()
}

pub(super) fn sentences(model: &Model) -> String {
    let most = part(1.0 + model.depth.value);
    let least = part(1.0 - model.depth.value);
    [
        "Above, one millisecond of the wave: its outline rises and falls ",
        &pixels(model.audio.value / 1e3),
        " times, to the note of ",
        &model.audio.text,
        ", between ",
        &least,
        " and ",
        &most,
        " of the bare carrier, a depth of ",
        &model.depth.text,
        ". The swings between the outlines are drawn far fewer than they are. Below, the same wave by \
         frequency: the carrier at ",
        &model.carrier.text,
        ", which does not change, and to each side of it, as far away as the note is high, a side frequency: ",
        &model.lower.text,
        " and ",
        &model.upper.text,
        ", each ",
        &part(model.side),
        " as strong as the carrier. Together they take ",
        &model.room.text,
        " of room.",
    ]
    .concat()
}

pub(super) fn table(model: &Model) -> Table {
    let row = |head: &str, quantity, amplitude| {
        vec![
            Cell::words(head),
            Cell::result(quantity),
            Cell::words(part(amplitude)),
        ]
    };
    Table {
        caption: "What the wave is made of".to_owned(),
        headings: vec!["part", "frequency", "strength beside the carrier"],
        rows: vec![
            row("lower side frequency", &model.lower, model.side),
            vec![
                Cell::words("carrier"),
                Cell::words(model.carrier.text.clone()),
                Cell::words(part(1.0)),
            ],
            row("upper side frequency", &model.upper, model.side),
        ],
    }
}
