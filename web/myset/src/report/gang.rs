//! Whether the gang can swing as far as the dial asks.

use super::{Dial, brief, found_or_dash, work};
use crate::OwnSet;
use crate::paper::{Block, Piece};
use crate::words;
use superhet::units::Kind;

/// The heading and what the dial asks of the gang.
pub(super) fn gang(set: &OwnSet, dial: &Dial) -> Vec<Block> {
    let heading = Block::Heading("The gang".to_owned());
    let (Some(least), Some(most)) = (set.value("gang-min"), set.value("gang-max")) else {
        let needs = "Whether the gang can swing as far as the dial needs its capacitance with the plates out and in.";
        return vec![heading, Block::Needs(needs.to_owned())];
    };
    let (low, high) = (words::typed(dial.low), words::typed(dial.high));
    let asked = work(
        set,
        "capacitance-ratio",
        &[("f-low", &low), ("f-high", &high)],
    );
    let needed = asked.as_ref().ok().and_then(|piece| piece.found.as_ref());
    let enough = needed.is_some_and(|needed| most / least >= needed.value);
    let verdict = if enough {
        "It can; strays and the trimmer bring it down to what the dial asks."
    } else {
        "It cannot, whatever the trimmer: a value here, or a mark of the dial, is not this set’s."
    };
    let own = brief(Kind::Ratio, most / least);
    vec![
        heading,
        Block::Says(vec![
            Piece::words(format!("From {low} to {high} the capacitance must change ")),
            found_or_dash(asked),
            Piece::words(format!(
                " times. The bare gang changes {own} times. {verdict}"
            )),
        ]),
    ]
}
