//! The figure told in sentences and in a table.

use super::distances::is_folded;
use super::points::Points;
use crate::tuning::Tuning;
use crate::{Cell, Quantity, Table};

/// The accessible name: every point with its frequency.
pub(super) fn title(points: &Points) -> String {
    let told: Vec<String> = points
        .all()
        .iter()
        .map(|point| format!("{} {}", point.name, point.quantity.text))
        .collect();
    format!("Line of frequency: {}", told.join(", "))
}

/// A handle's value and what follows from it, for a screen reader.
pub(super) fn spoken(value: &Quantity, points: &Points) -> String {
    let mut text = format!(
        "{}: oscillator {}",
        value.text, points.oscillator.quantity.text
    );
    if let Some(image) = &points.image {
        text = format!("{text}, image {}", image.quantity.text);
    }
    text
}

pub(super) fn sentences(tuning: &Tuning, points: &Points) -> String {
    let (signal, oscillator) = (&tuning.signal.text, &tuning.oscillator.text);
    let intermediate = &tuning.intermediate.text;
    let side = tuning.side.name();
    let mut text = format!(
        "The set is tuned to a signal at {signal}. Its oscillator runs {intermediate} {side} that, at \
         {oscillator}. The difference between the two is {intermediate}, the IF."
    );
    if let Some(image) = &points.image {
        text.push(' ');
        text.push_str(&about_image(&image.quantity.text, tuning));
    }
    text
}

fn about_image(image: &str, tuning: &Tuning) -> String {
    let intermediate = &tuning.intermediate.text;
    if is_folded(tuning) {
        format!(
            "A station at {image} reaches the same IF too, since it and the oscillator add up to \
             {intermediate}. That is the image."
        )
    } else {
        format!(
            "A station at {image} lies as far from the oscillator on its other side and gives the same \
             difference. That is the image."
        )
    }
}

pub(super) fn table(tuning: &Tuning, points: &Points) -> Table {
    let rows = points.all().into_iter().map(|point| {
        let from = match point.id {
            "signal" => "where the dial is set".to_owned(),
            "oscillator" => format!("one IF {} the signal", tuning.side.name()),
            "image" if is_folded(tuning) => "what the oscillator lacks to make the IF".to_owned(),
            "image" => format!("one IF {} the oscillator", tuning.side.name()),
            _ => "the difference of signal and oscillator".to_owned(),
        };
        vec![
            Cell::words(point.name),
            Cell::result(&point.quantity),
            Cell::words(from),
        ]
    });
    Table {
        caption: "The points on the line".to_owned(),
        headings: vec!["point", "frequency", "where it comes from"],
        rows: rows.collect(),
    }
}
