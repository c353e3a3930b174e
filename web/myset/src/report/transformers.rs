//! What the IF transformers let through.

use super::{found_or_dash, work};
use crate::OwnSet;
use crate::paper::{Block, Piece, Table};

/// The heading and what one transformer and all of them do.
pub(super) fn transformers(set: &OwnSet) -> Vec<Block> {
    let heading = Block::Heading("The IF circuits".to_owned());
    let (Some(q), Some(k)) = (set.text("if-q"), set.text("coupling")) else {
        let needs =
            "How wide a station may be needs the Q and the coupling of the IF transformers.";
        return vec![heading, Block::Needs(needs.to_owned())];
    };
    let intermediate = set.text("if").unwrap_or_default();
    let pair = [("f0", intermediate), ("q1", q), ("q2", q), ("k", k)];
    let with = |key, value| {
        let mut pairs = pair.to_vec();
        pairs.push((key, value));
        pairs
    };
    let mut rows = vec![
        (
            "Coupling over critical coupling",
            work(set, "coupling-index", &pair),
        ),
        (
            "Width at 3 dB, one transformer",
            work(set, "coupled-bandwidth", &with("drop", "3 dB")),
        ),
        (
            "Width at 6 dB, one transformer",
            work(set, "coupled-bandwidth", &with("drop", "6 dB")),
        ),
    ];
    if let Some(number) = set.text("transformers") {
        let shape = work(set, "shape-factor", &with("transformers", number));
        rows.push(("Width at 60 dB over width at 6 dB, all of them", shape));
    }
    let rows = rows
        .into_iter()
        .map(|(words, found)| vec![Piece::words(words), found_or_dash(found)]);
    vec![
        heading,
        Block::Table(Table {
            caption: "By the narrow-band forms, both windings alike and on the IF".to_owned(),
            heads: vec!["What".to_owned(), "Value".to_owned()],
            rows: rows.collect(),
        }),
    ]
}
