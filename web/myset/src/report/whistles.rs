//! Where harmonics of the IF whistle on the dial.

use super::{Dial, in_khz, khz, work};
use crate::OwnSet;
use crate::paper::{Block, Piece, Table};
use crate::words;
use superhet::quantities::bands::band_at;
use superhet::units::Frequency;

/// Harmonics that are looked at: the second to the tenth.
const HARMONICS: std::ops::RangeInclusive<u32> = 2..=10;

/// The heading and the table, or that there are none.
pub(super) fn whistles(set: &OwnSet, dials: &[Dial]) -> Vec<Block> {
    let rows: Vec<Vec<Piece>> = HARMONICS
        .filter_map(|number| row(set, dials, number))
        .collect();
    let heading = Block::Heading("Whistles of the IF’s harmonics".to_owned());
    if rows.is_empty() {
        let says =
            "No harmonic of the IF up to the 10th falls on this dial. Other whistles are possible.";
        return vec![heading, Block::says(says)];
    }
    let says = "The detector makes harmonics of the IF. A station near one whistles, by the \
                difference of the two. Near the 2nd the note moves twice as fast as the dial, \
                near the 3rd three times.";
    let heads = [
        "Harmonic",
        "At, kHz",
        "Nearest channel, kHz",
        "Whistle there, kHz",
    ];
    vec![
        heading,
        Block::says(says),
        Block::Table(Table {
            caption: "Harmonics of the IF on this dial".to_owned(),
            heads: heads.map(str::to_owned).to_vec(),
            rows,
        }),
    ]
}

fn row(set: &OwnSet, dials: &[Dial], number: u32) -> Option<Vec<Piece>> {
    let at = Frequency::hz(set.intermediate.to_hz() * f64::from(number));
    let inside = |dial: &Dial| dial.low <= at && at <= dial.high;
    if !dials.iter().any(inside) {
        return None;
    }
    let head = Piece::words(words::ordinal(number));
    let place = Piece::words(khz(at));
    let Some(band) = band_at(at, set.region) else {
        let none = Piece::words("outside the broadcast band");
        return Some(vec![head, place, none, Piece::words("–")]);
    };
    let channel = band.raster.nearest(at);
    let (signal, harmonic) = (words::typed(channel), number.to_string());
    let pairs = [("signal", signal.as_str()), ("harmonic", harmonic.as_str())];
    let whistle = in_khz(work(set, "whistle", &pairs));
    Some(vec![head, place, Piece::words(khz(channel)), whistle])
}

#[cfg(test)]
mod tests {
    use super::super::tests::set;
    use super::whistles;
    use crate::paper::Block;
    use crate::report::dials;

    fn rows(intermediate: &str) -> Vec<Vec<String>> {
        let own = set("above", &[("if", intermediate)]);
        let blocks = whistles(&own, &dials(&own));
        let table = blocks.into_iter().find_map(|block| match block {
            Block::Table(table) => Some(table),
            _ => None,
        });
        let rows = table.map_or_else(Vec::new, |table| table.rows);
        let texts = rows.into_iter();
        texts
            .map(|row| row.into_iter().map(|piece| piece.text).collect())
            .collect()
    }

    /// By hand: twice 470 is 940, four under 936 as the nearest multiple of nine.
    #[test]
    fn harmonics_on_the_dial_are_listed_with_their_note() {
        assert_eq!(
            rows("470 kHz"),
            [["2nd", "940", "936", "4"], ["3rd", "1410", "1413", "3"]]
        );
        assert!(rows("900 kHz").is_empty());
    }
}
