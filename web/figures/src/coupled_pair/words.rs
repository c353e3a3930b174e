//! The figure told in sentences and in a table.

use super::Model;
use super::drawing::humps;
use crate::arithmetic::roughly;
use crate::window;
use crate::{Cell, Table};
use superhet::units::{Kind, display};

pub(super) fn title(model: &Model) -> String {
    [
        "Curve of two coupled circuits at ",
        &model.tuned.text,
        ", coupling ",
        &model.coupling.text,
        ": ",
        &humps(model),
        ", ",
        &model.width.text,
        " wide",
    ]
    .concat()
}

pub(super) fn sentences(model: &Model) -> String {
    let mut parts = vec![
        [
            "Two circuits, made for ",
            &model.tuned.text,
            ", are coupled",
        ]
        .concat(),
        [
            " by k = ",
            &model.coupling.text,
            ". The Q of the primary is ",
        ]
        .concat(),
        [
            &model.q[0].text,
            ", that of the secondary ",
            &model.q[1].text,
        ]
        .concat(),
    ];
    if model.critical_shown {
        parts.push(["; critical coupling is ", &model.critical.text].concat());
    }
    parts.push(". ".to_owned());
    parts.push(match (model.in_tune(), model.peaks.value > 0.0) {
        (true, false) => "Both are in tune, and the curve has one hump.".to_owned(),
        (true, true) => {
            let (peaks, dip) = (&model.peaks.text, &model.dip.text);
            [
                "Both are in tune, and the curve has two humps ",
                peaks,
                " apart with a dip of ",
                dip,
                " between.",
            ]
            .concat()
        }
        (false, _) => {
            let [first, second] = &model.detuned;
            [
                "The primary is off by ",
                &first.text,
                ", the secondary by ",
                &second.text,
                ".",
            ]
            .concat()
        }
    });
    parts.push(
        [
            " At 3 dB under its peak the curve is ",
            &model.width.text,
            " wide.",
        ]
        .concat(),
    );
    parts.concat()
}

/// The curve at eighths of the line, and the figures of the pair.
pub(super) fn table(model: &Model) -> Table {
    let (low, high) = model.frame.across;
    let row = |eighth: u32| {
        let hertz = low + (high - low) * f64::from(eighth) / 8.0;
        let head = match eighth {
            0..4 => "below the middle",
            4 => "the middle",
            _ => "above the middle",
        };
        let loss = roughly(Kind::Decibels, "", window::loss(&model.chain, hertz)).text;
        vec![
            Cell::words(head),
            Cell::words(display::text(Kind::Frequency, hertz)),
            Cell::words(loss),
        ]
    };
    Table {
        caption: "How far under the peak".to_owned(),
        headings: vec!["where", "frequency", "under the peak"],
        rows: (0..=8).map(row).collect(),
    }
}
