//! The figure told in sentences and in a table.

use crate::tuning::Tuning;
use crate::{Cell, Quantity, Table};

pub(super) fn title(tuning: &Tuning) -> String {
    format!(
        "A superhet in blocks: {} from the aerial circuit, {} from the oscillator, {} after the mixer",
        tuning.signal.text, tuning.oscillator.text, tuning.intermediate.text
    )
}

pub(super) fn sentences(tuning: &Tuning) -> String {
    let (signal, oscillator) = (&tuning.signal.text, &tuning.oscillator.text);
    let intermediate = &tuning.intermediate.text;
    format!(
        "The aerial picks up every station at once. The aerial circuit, tuned by the dial, favours the \
         one at {signal}. The oscillator, turned by the same knob, makes a steady {oscillator}. Both go to \
         the mixer, which gives their difference, {intermediate}. The IF amplifier strengthens \
         a narrow width round {intermediate}, wherever the dial stands. The detector keeps only the \
         programme. The audio amplifier makes that strong enough for the loudspeaker."
    )
}

pub(super) fn table(tuning: &Tuning) -> Table {
    let row = |from: &str, to: &str, quantity: Option<&Quantity>| {
        let shown = quantity.map_or_else(|| Cell::words("the programme"), Cell::result);
        vec![Cell::words(from), Cell::words(to), shown]
    };
    Table {
        caption: "The frequency at each point".to_owned(),
        headings: vec!["from", "to", "frequency"],
        rows: vec![
            row("aerial circuit", "mixer", Some(&tuning.signal)),
            row("oscillator", "mixer", Some(&tuning.oscillator)),
            row("mixer", "IF amplifier", Some(&tuning.intermediate)),
            row("IF amplifier", "detector", Some(&tuning.intermediate)),
            row("detector", "audio amplifier", None),
            row("audio amplifier", "loudspeaker", None),
        ],
    }
}
