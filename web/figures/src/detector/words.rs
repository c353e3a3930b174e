//! The figure told in sentences and in a table.

use super::Model;
use crate::arithmetic::roughly;
use crate::{Cell, Table};
use superhet::units::Kind;

pub(super) fn title(model: &Model) -> String {
    let does = if model.clips() {
        "does not follow"
    } else {
        "follows"
    };
    [
        "A detector of ",
        &model.resistance.text,
        " and ",
        &model.capacitance.text,
        " ",
        does,
        " a note of ",
        &model.audio.text,
        " at a depth of ",
        &model.depth.text,
    ]
    .concat()
}

pub(super) fn sentences(model: &Model) -> String {
    let parts = [
        "The dashed line is the outline of the signal: it swings about the level of the bare carrier, at a \
         depth of ",
        &model.depth.text,
        ", to a note of ",
        &model.audio.text,
        ". The full line is the voltage behind the diode. It climbs with the outline, and it falls no faster \
         than ",
        &model.resistance.text,
        " drains ",
        &model.capacitance.text,
        ", a time of ",
        &model.time.text,
        ". At this note such a detector follows a depth of up to ",
        &model.limit.text,
        ". ",
        if model.clips() {
            "The outline falls away faster than that: the full line leaves it, runs straight across the \
             trough, and the note sounds rough."
        } else {
            "So the full line lies on the dashed one all the way."
        },
    ];
    parts.concat()
}

/// Both lines over one swing, an eighth of it at a time.
pub(super) fn table(model: &Model) -> Table {
    const STEPS: [&str; 9] = [
        "the start, a top",
        "an eighth of a swing",
        "a quarter",
        "three eighths",
        "half a swing, a trough",
        "five eighths",
        "three quarters",
        "seven eighths",
        "one swing, a top",
    ];
    // Two swings are 140 steps: an eighth is 8.75, and the nearest is shown.
    let row = |(eighth, head): (usize, &&str)| {
        let point = (eighth * 35 + 2) / 4;
        let cell = |value: f64| Cell::words(roughly(Kind::Ratio, "voltage", value).text);
        let time = model.frame.places()[point] / model.audio.value;
        let time = roughly(Kind::Duration, "time", time).text;
        let (outline, followed) = (model.outline[point], model.followed[point]);
        vec![
            Cell::words(*head),
            Cell::words(time),
            cell(outline),
            cell(followed),
        ]
    };
    Table {
        caption: "The voltages over one swing; the bare carrier is 1".to_owned(),
        headings: vec!["when", "time", "outline", "detector"],
        rows: STEPS.iter().enumerate().map(row).collect(),
    }
}
