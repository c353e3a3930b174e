//! The figure told in sentences and in a table.

use super::Model;
use crate::{Cell, Table};
use superhet::units::{Kind, display};

/// How many circuits, in words.
pub(super) fn count(circuits: u32) -> &'static str {
    const COUNTS: [&str; 8] = [
        "one circuit",
        "two circuits",
        "three circuits",
        "four circuits",
        "five circuits",
        "six circuits",
        "seven circuits",
        "eight circuits",
    ];
    COUNTS[(circuits as usize).clamp(1, COUNTS.len()) - 1]
}

pub(super) fn title(model: &Model) -> String {
    [
        "Curve of ",
        count(model.circuits),
        " tuned to ",
        &model.tuned.text,
        ", ",
        &model.all.text,
        " wide; ",
        &model.asked.text,
        " comes out ",
        &model.scale.words(model.loss),
    ]
    .concat()
}

pub(super) fn sentences(model: &Model) -> String {
    let (low, high) = model.edges();
    let edge = |hertz: f64| display::text(Kind::Frequency, libm::round(hertz / 10.0) * 10.0);
    let mut parts = vec![
        capital(count(model.circuits)),
        if model.circuits == 1 {
            " is"
        } else {
            ", one after the other, are each"
        }
        .to_owned(),
        [
            " tuned to ",
            &model.tuned.text,
            " with a Q of ",
            &model.q.text,
        ]
        .concat(),
        ". The curve is highest there and falls away on both sides. Half the power is left at "
            .to_owned(),
        [&edge(low), " and at ", &edge(high), ", ", &model.all.text].concat(),
        [" apart: that is the width. A signal at ", &model.asked.text].concat(),
        [
            " comes out ",
            &model.scale.words(model.loss),
            ", beside one at the top of the curve.",
        ]
        .concat(),
    ];
    if let Some(resistance) = &model.resistance {
        let says = [
            " At resonance each circuit is as good as a resistance of ",
            &resistance.text,
            ".",
        ];
        parts.push(says.concat());
    }
    parts.concat()
}

fn capital(words: &str) -> String {
    let (first, rest) = words.split_at(1);
    [&first.to_ascii_uppercase(), rest].concat()
}

/// The asked frequency, then the curve at eighths of the line.
pub(super) fn table(model: &Model) -> Table {
    let row = |head: String, hertz: f64, loss: f64| {
        let frequency = display::text(Kind::Frequency, hertz);
        let weaker = model.scale.quantity("selectivity", loss);
        vec![
            Cell::words(head),
            Cell::words(frequency),
            Cell::result(&weaker),
        ]
    };
    let mut rows = vec![row(
        "signal asked about".to_owned(),
        model.asked.value,
        model.loss,
    )];
    rows.extend((0..=8).map(|eighth| {
        let (low, high) = model.frame.across;
        let hertz = low + (high - low) * f64::from(eighth) / 8.0;
        let head = match eighth {
            0..4 => "below the middle",
            4 => "the middle",
            _ => "above the middle",
        };
        row(head.to_owned(), hertz, model.loss_at(hertz))
    }));
    Table {
        caption: "What is left along the curve".to_owned(),
        headings: vec!["where", "frequency", "comes out"],
        rows,
    }
}
