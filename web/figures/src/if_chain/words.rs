//! The figure told in sentences and in a table.

use super::{CHANNELS, Model};
use crate::window::{self, tenths};
use crate::{Cell, Table};
use superhet::units::{Kind, display};

/// How many transformers, in words.
pub(super) fn count(transformers: u32) -> &'static str {
    match transformers {
        1 => "one transformer",
        2 => "two transformers",
        3 => "three transformers",
        4 => "four transformers",
        _ => "more than four transformers",
    }
}

pub(super) fn title(model: &Model) -> String {
    [
        "Response of an IF of ",
        count(model.transformers),
        " at ",
        &model.tuned.text,
        ", ",
        &model.width.text,
        " wide, over the station and its neighbours; the next channel is ",
        &loss(model, model.carrier(1)),
        " down",
    ]
    .concat()
}

/// How far under the peak a frequency is, in every text and label of the figure alike.
pub(super) fn loss(model: &Model, hertz: f64) -> String {
    tenths(window::loss(&model.chain, hertz))
}

pub(super) fn sentences(model: &Model) -> String {
    let tuned = model.tuned.value;
    let edge =
        [tuned - model.audio.value, tuned + model.audio.value].map(|hertz| loss(model, hertz));
    let mut parts = vec![
        [
            "The IF has ",
            count(model.transformers),
            " at ",
            &model.tuned.text,
        ]
        .concat(),
        [
            ", each circuit with a Q of ",
            &model.q.text,
            ", coupled by k = ",
            &model.coupling.text,
        ]
        .concat(),
        [
            ". Three decibels under its peak the whole is ",
            &model.width.text,
            " wide. ",
        ]
        .concat(),
        [
            "The wanted station stands in the middle, with sidebands up to ",
            &model.audio.text,
        ]
        .concat(),
        [
            " to each side: the lower end is ",
            &edge[0],
            " under the peak, the upper ",
            &edge[1],
            ". ",
        ]
        .concat(),
        [
            "The neighbours, ",
            &model.spacing.text,
            " away, are ",
            &loss(model, model.carrier(-1)),
        ]
        .concat(),
        [
            " and ",
            &loss(model, model.carrier(1)),
            " under it; those two channels away ",
        ]
        .concat(),
        [
            &loss(model, model.carrier(-2)),
            " and ",
            &loss(model, model.carrier(2)),
            ".",
        ]
        .concat(),
    ];
    if model.detuned.value != 0.0 {
        let says = [
            " The last circuit is off by ",
            &model.detuned.text,
            ", so the curve is lopsided.",
        ];
        parts.push(says.concat());
    }
    parts.concat()
}

/// Every station, and the ends of the wanted one's sidebands.
pub(super) fn table(model: &Model) -> Table {
    let row = |head: &str, hertz: f64| {
        let frequency = display::text(Kind::Frequency, hertz);
        vec![
            Cell::words(head),
            Cell::words(frequency),
            Cell::words(loss(model, hertz)),
        ]
    };
    const HEADS: [&str; 5] = [
        "two channels below",
        "one channel below",
        "the station",
        "one channel above",
        "two channels above",
    ];
    let mut rows: Vec<Vec<Cell>> = (-CHANNELS..=CHANNELS)
        .zip(HEADS)
        .map(|(channel, head)| row(head, model.carrier(channel)))
        .collect();
    let tuned = model.tuned.value;
    rows.push(row("end of the lower sideband", tuned - model.audio.value));
    rows.push(row("end of the upper sideband", tuned + model.audio.value));
    Table {
        caption: "What the IF leaves of each station".to_owned(),
        headings: vec!["what", "frequency in the IF", "under the peak"],
        rows,
    }
}
