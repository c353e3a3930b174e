//! The figure told in sentences and in a table.

use super::distances::is_folded;
use super::points::Points;
use crate::tuning::{Side, Tuning};
use crate::{Cell, Table};

pub(super) fn title(points: &Points) -> String {
    format!(
        "Line of frequency: signal {}, oscillator {}, image {}, IF {}",
        points.signal.quantity.text,
        points.oscillator.quantity.text,
        points.image.quantity.text,
        points.intermediate.quantity.text
    )
}

pub(super) fn sentences(tuning: &Tuning, points: &Points) -> String {
    let intermediate = &tuning.intermediate.text;
    let image = &points.image.quantity.text;
    let side = match tuning.side {
        Side::Above => "above",
        Side::Below => "below",
    };
    let second = if is_folded(tuning) {
        format!(
            "A station at {image} reaches the same IF too: added to the oscillator it makes {intermediate}."
        )
    } else {
        format!(
            "A station at {image} lies as far on the other side of the oscillator and gives the same difference."
        )
    };
    format!(
        "The set is tuned to a signal at {}. Its oscillator runs {intermediate} {side} that, at {}. \
         The difference between the two is {intermediate}, the IF. {second} It is the image.",
        tuning.signal.text, tuning.oscillator.text
    )
}

pub(super) fn table(tuning: &Tuning, points: &Points) -> Table {
    let sum = if is_folded(tuning) {
        "IF less oscillator".to_owned()
    } else {
        format!("one IF {} the oscillator", tuning.side.name())
    };
    let rows = [
        ("signal", "where the dial is set".to_owned(), &points.signal),
        (
            "oscillator",
            format!("one IF {} the signal", tuning.side.name()),
            &points.oscillator,
        ),
        ("image", sum, &points.image),
        (
            "IF",
            "the difference of signal and oscillator".to_owned(),
            &points.intermediate,
        ),
    ];
    Table {
        caption: "The points on the line".to_owned(),
        headings: vec!["point", "frequency", "where it comes from"],
        rows: rows
            .into_iter()
            .map(|(name, from, point)| {
                vec![
                    Cell::words(name),
                    Cell::result(&point.quantity),
                    Cell::words(from),
                ]
            })
            .collect(),
    }
}
