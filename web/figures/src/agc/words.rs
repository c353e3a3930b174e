//! The figure told in sentences and in a table.

use super::Model;
use crate::arithmetic::roughly;
use crate::{Cell, Table};
use superhet::units::Kind;

pub(super) fn title(model: &Model) -> String {
    [
        "Output against signal, with AGC of loop gain ",
        &model.loop_gain.text,
        " and without: at a signal of ",
        &model.signal.text,
        " the output is ",
        &model.output.text,
        " with AGC",
    ]
    .concat()
}

pub(super) fn sentences(model: &Model) -> String {
    let signal = &model.signal.text;
    let begins = "Signal and output are counted from where AGC begins. Without AGC the output rises by \
                  as many decibels as the signal, a straight line. ";
    let now = if model.signal.value <= 0.0 {
        [
            "At ",
            signal,
            " the signal is too weak for AGC, and both curves are one.",
        ]
        .concat()
    } else {
        let output = &model.output.text;
        let without = [
            "At ",
            signal,
            " the output would be ",
            signal,
            " without it",
        ]
        .concat();
        [&without, " and is ", output, " with it."].concat()
    };
    let flat = [
        "With it the curve bends there and rises ",
        &model.flatness.text,
        " times less steeply: that is the loop gain, ",
        &model.loop_gain.text,
        ", and one. ",
    ];
    [begins, &flat.concat(), &now].concat()
}

/// The asked signal, then the curves at every 20 dB.
pub(super) fn table(model: &Model) -> Table {
    let row = |head: &str, signal: f64| {
        let shown = roughly(Kind::Decibels, "signal", signal);
        let with = Cell::result(&model.output_at(signal));
        let (signal, without) = (Cell::words(shown.text.clone()), Cell::words(shown.text));
        vec![Cell::words(head), signal, without, with]
    };
    let mut rows = vec![row("now", model.signal.value)];
    let steps = [(-20.0, "too weak for AGC"), (0.0, "AGC begins")];
    rows.extend(steps.map(|(signal, head)| row(head, signal)));
    rows.extend([20.0, 40.0, 60.0, 80.0].map(|signal| row("AGC at work", signal)));
    Table {
        caption: "Output at each signal".to_owned(),
        headings: vec!["where", "signal", "output without AGC", "output with AGC"],
        rows,
    }
}
