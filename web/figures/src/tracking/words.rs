//! The figure told in sentences and in a table.

use super::Model;
use crate::arithmetic::roughly;
use crate::{Cell, Table};
use superhet::units::{Kind, display};

pub(super) fn title(model: &Model) -> String {
    [
        "Tracking error over the band, exact at ",
        &settings(model),
        ", off by at most ",
        &model.largest.text,
        "; at ",
        &model.dial.text,
        " off by ",
        &model.error.text,
    ]
    .concat()
}

fn settings(model: &Model) -> String {
    let [first, second, third] = &model.settings;
    [&first.text, ", ", &second.text, " and ", &third.text].concat()
}

pub(super) fn sentences(model: &Model) -> String {
    [
        "The oscillator should run ",
        &model.intermediate.text,
        " ",
        model.side,
        " the dial. It does at three settings, ",
        &settings(model),
        ", where the curve crosses zero. Between and beyond them it is off, by at most ",
        &model.largest.text,
        " over the band. At ",
        &model.dial.text,
        " it is off by ",
        &model.error.text,
        "; the signal circuit then stands that far beside the station and takes ",
        &model.loss.text,
        " from it.",
    ]
    .concat()
}

/// The asked setting, the exact ones, then the band in eighths; parts last.
pub(super) fn table(model: &Model) -> Table {
    let row = |head: &str, hertz: f64| {
        let error = roughly(Kind::Frequency, "tracking-error", model.error_at(hertz));
        let at = display::text(Kind::Frequency, hertz);
        vec![Cell::words(head), Cell::words(at), Cell::result(&error)]
    };
    let mut rows = vec![row("the dial", model.dial.value)];
    let (low, high) = model.frame.across;
    rows.extend((0..=8).map(|eighth| {
        let hertz = low + (high - low) * f64::from(eighth) / 8.0;
        row("along the band", hertz)
    }));
    for part in &model.parts {
        let head = match part.name {
            "padder" => "padder",
            "trimmer" => "oscillator trimmer, across the coil",
            _ => "oscillator coil",
        };
        rows.push(vec![Cell::words(head), Cell::words(""), Cell::result(part)]);
    }
    Table {
        caption: "Error of the oscillator".to_owned(),
        headings: vec!["where", "dial", "value"],
        rows,
    }
}
