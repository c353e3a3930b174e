//! The figure told in sentences and in a table.

use super::Model;
use super::drawing::humps;
use crate::window::{loss, tenths};
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
            let [first, second] = [0, 1].map(|side| tuning(model, side));
            ["The primary is ", &first, ", the secondary ", &second, "."].concat()
        }
    });
    parts.push(
        [
            " Counted from what these two pass at critical coupling, in tune, its top is at ",
            &level(-model.under),
            ". At 3 dB under its own top it is ",
            &model.width.text,
            " wide.",
        ]
        .concat(),
    );
    parts.concat()
}

/// A level over or under the top at critical coupling, with its sign.
pub(super) fn level(decibels: f64) -> String {
    let size = tenths(decibels.abs());
    let sign = match decibels {
        _ if size == "0 dB" => "",
        over if over > 0.0 => "+",
        _ => "−",
    };
    [sign, &size].concat()
}

/// How far a circuit is off, in words.
fn tuning(model: &Model, side: usize) -> String {
    let off = &model.detuned[side];
    if off.value == 0.0 {
        return "in tune".to_owned();
    }
    ["off by ", &off.text].concat()
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
        let loss = level(-loss(&model.chain, hertz) - model.under);
        vec![
            Cell::words(head),
            Cell::words(display::text(Kind::Frequency, hertz)),
            Cell::words(loss),
        ]
    };
    Table {
        caption: "The curve, counted from the top at critical coupling".to_owned(),
        headings: vec!["where", "frequency", "level"],
        rows: (0..=8).map(row).collect(),
    }
}
