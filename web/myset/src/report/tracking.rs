//! The three settings at which the oscillator is exact, and what follows between them.

use super::{Dial, found_or_dash, in_khz, in_tenths, khz, work};
use crate::OwnSet;
use crate::paper::{Block, Piece, Table};
use crate::words;
use superhet::units::Frequency;

/// The heading, the error along the dial, and the parts that give it.
pub(super) fn tracking(set: &OwnSet, dial: &Dial) -> Vec<Block> {
    let mut blocks = vec![Block::Heading("Tracking".to_owned())];
    let exact = ["f1", "f2", "f3"].map(|key| set.text(key).map(|text| (key, text)));
    let [Some(first), Some(second), Some(third)] = exact else {
        let needs = "How far the oscillator is off along the dial needs the three settings at which it is exact.";
        blocks.push(Block::Needs(needs.to_owned()));
        return blocks;
    };
    let points = [first, second, third];
    match largest(set, dial, &points) {
        Ok(found) => {
            let says = "With the oscillator exact at the three settings, it is off by at most ";
            blocks.push(Block::Says(vec![
                Piece::words(says),
                found,
                Piece::words(" on this dial."),
            ]));
            blocks.push(Block::Table(table(set, dial, &points)));
            blocks.push(parts(set, &points));
        }
        Err(why) => blocks.push(Block::says(format!(
            "These three settings give no curve for this set. {why}."
        ))),
    }
    blocks
}

type Points<'a> = [(&'static str, &'a str); 3];

fn largest(set: &OwnSet, dial: &Dial, points: &Points<'_>) -> Result<Piece, String> {
    let (low, high) = (words::typed(dial.low), words::typed(dial.high));
    let mut pairs = points.to_vec();
    pairs.extend([("f-low", low.as_str()), ("f-high", high.as_str())]);
    work(set, "largest-tracking-error", &pairs)
}

/// The ends of the dial, the three settings, and the middles between them.
fn settings(set: &OwnSet, dial: &Dial) -> Vec<Frequency> {
    let exact = ["f1", "f2", "f3"].map(|key| set.frequency(key).unwrap_or(dial.low));
    let middle = |one: Frequency, other: Frequency| {
        Frequency::khz(((one.to_khz() + other.to_khz()) / 2.0).round())
    };
    let mut settings = vec![
        dial.low,
        exact[0],
        middle(exact[0], exact[1]),
        exact[1],
        middle(exact[1], exact[2]),
        exact[2],
        dial.high,
    ];
    settings.sort_by(|one, other| one.to_hz().total_cmp(&other.to_hz()));
    settings.dedup();
    settings
}

fn table(set: &OwnSet, dial: &Dial, points: &Points<'_>) -> Table {
    let q = set.text("aerial-q");
    let mut heads = vec!["Dial, kHz", "Oscillator off, kHz"];
    if q.is_some() {
        heads.push("Lost by it, dB");
    }
    let rows = settings(set, dial).into_iter().map(|at| {
        let typed = words::typed(at);
        let mut pairs = points.to_vec();
        pairs.push(("dial", typed.as_str()));
        let mut row = vec![
            Piece::words(khz(at)),
            rounded(work(set, "tracking-error", &pairs)),
        ];
        if let Some(q) = q {
            pairs.push(("q", q));
            row.push(in_tenths(work(set, "tracking-loss", &pairs)));
        }
        row
    });
    Table {
        caption: "How far the oscillator is off, from where the dial wants it".to_owned(),
        heads: heads.into_iter().map(str::to_owned).collect(),
        rows: rows.collect(),
    }
}

/// Kilohertz to a hundredth: what is exact reads 0, not the rounding of a float.
fn rounded(found: Result<Piece, String>) -> Piece {
    let mut piece = in_khz(found);
    if let Some(found) = &piece.found {
        let text = format!("{:.2}", found.value / 1000.0);
        piece.text = if text == "-0.00" {
            "0.00".to_owned()
        } else {
            text.replace('-', "−")
        };
    }
    piece
}

fn parts(set: &OwnSet, points: &Points<'_>) -> Block {
    let Some(coil) = set.text("coil") else {
        let needs = "Padder, trimmer and oscillator coil for these settings need the inductance of the aerial coil.";
        return Block::Needs(needs.to_owned());
    };
    let mut pairs = points.to_vec();
    pairs.extend([("l-signal", coil), ("arrangement", "across-coil")]);
    let part = |name: &str| found_or_dash(work(set, name, &pairs));
    Block::Says(vec![
        Piece::words("They follow from a padder of "),
        part("padder"),
        Piece::words(", a trimmer of "),
        part("trimmer"),
        Piece::words(" across the coil, strays with it, and an oscillator coil of "),
        part("oscillator-inductance"),
        Piece::words("."),
    ])
}

#[cfg(test)]
mod tests {
    use super::super::tests::{WHOLE, set};
    use super::tracking;
    use crate::paper::Block;
    use crate::report::dials;

    #[test]
    fn the_oscillator_is_exact_at_the_three_settings() {
        let own = set("above", &WHOLE);
        let blocks = tracking(&own, &dials(&own)[0]);
        let table = blocks.iter().find_map(|block| match block {
            Block::Table(table) => Some(table),
            _ => None,
        });
        let off: Vec<(&str, &str)> = table
            .expect("a table")
            .rows
            .iter()
            .map(|row| (row[0].text.as_str(), row[1].text.as_str()))
            .collect();
        assert_eq!(off.len(), 7);
        for exact in ["600", "950", "1500"] {
            assert!(off.contains(&(exact, "0.00")), "{off:?}");
        }
    }

    #[test]
    fn an_oscillator_below_is_told_why_it_has_no_curve() {
        let mut whole = WHOLE;
        whole[0].1 = "125 kHz";
        let own = set("below", &whole);
        let blocks = tracking(&own, &dials(&own)[0]);
        let Block::Says(pieces) = &blocks[1] else {
            panic!("{blocks:?}")
        };
        assert!(pieces[0].text.contains("track below the signal"));
    }
}
