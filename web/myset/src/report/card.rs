//! The card of a whole band: dial, oscillator, image, and what is heard there.

use super::{Dial, in_khz, in_tenths, khz, work};
use crate::OwnSet;
use crate::paper::{Block, Piece, Table};
use crate::words;
use superhet::units::Frequency;

/// Round figures are spaced so that a band has at most this many of them.
const MOST_ROWS: f64 = 16.0;

/// Spacings that count as round, in kHz.
const ROUND_STEPS: [f64; 6] = [5.0, 10.0, 20.0, 25.0, 50.0, 100.0];

/// The heading and the table.
pub(super) fn card(set: &OwnSet, dial: &Dial) -> Vec<Block> {
    let q = set.text("aerial-q");
    let mut heads = vec!["Dial", "Oscillator", "Image"];
    if q.is_some() {
        heads.push("Weaker by, dB");
    }
    heads.push("At the image");
    let rows = settings(dial).into_iter().map(|at| row(set, at, q));
    let caption = format!(
        "{}, {} to {}, in kHz",
        dial.name,
        khz(dial.low),
        khz(dial.high)
    );
    vec![
        Block::Heading(format!("{} card", dial.name)),
        Block::Table(Table {
            caption,
            heads: heads.into_iter().map(str::to_owned).collect(),
            rows: rows.collect(),
        }),
    ]
}

fn row(set: &OwnSet, at: Frequency, q: Option<&str>) -> Vec<Piece> {
    let dial = words::typed(at);
    let image = work(set, "image", &[("dial", &dial)]);
    let place = image.as_ref().ok().and_then(|image| image.found.as_ref());
    let place = place.map_or_else(String::new, |found| {
        words::found_at(Frequency::hz(found.value), set.region)
    });
    let mut row = vec![
        Piece::words(khz(at)),
        in_khz(work(set, "oscillator", &[("dial", &dial)])),
        in_khz(image),
    ];
    if let Some(q) = q {
        row.push(in_tenths(weaker(set, &dial, q)));
    }
    row.push(Piece::words(place));
    row
}

/// How much weaker than the station the aerial circuits make its image.
pub(super) fn weaker(set: &OwnSet, dial: &str, q: &str) -> Result<Piece, String> {
    let circuits = set.text("aerial-circuits").unwrap_or("1");
    let pairs = [("dial", dial), ("q", q), ("circuits", circuits)];
    work(set, "image-rejection", &pairs)
}

/// The lowest mark, the round figures between, the highest mark.
fn settings(dial: &Dial) -> Vec<Frequency> {
    let (low, high) = (dial.low.to_khz(), dial.high.to_khz());
    let step = ROUND_STEPS
        .into_iter()
        .find(|step| (high - low) / step <= MOST_ROWS)
        .unwrap_or(high - low);
    let mut settings = vec![dial.low];
    let mut at = (low / step).floor() * step + step;
    while at < high {
        settings.push(Frequency::khz(at));
        at += step;
    }
    settings.push(dial.high);
    settings
}

#[cfg(test)]
mod tests {
    use super::super::tests::{WHOLE, set};
    use super::{card, settings};
    use crate::paper::Block;
    use crate::report::dials;

    #[test]
    fn a_card_runs_from_mark_to_mark() {
        let own = set("above", &WHOLE);
        let dials = dials(&own);
        let khz: Vec<f64> = settings(&dials[0]).iter().map(|f| f.to_khz()).collect();
        assert_eq!(khz[..3], [520.0, 600.0, 700.0]);
        assert_eq!(khz[khz.len() - 1], 1620.0);
        let blocks = card(&own, &dials[0]);
        let Block::Table(table) = &blocks[1] else {
            panic!("no table")
        };
        let texts: Vec<&str> = table.rows[0]
            .iter()
            .map(|piece| piece.text.as_str())
            .collect();
        assert_eq!(texts[..3], ["520", "975", "1430"]);
        assert_eq!(texts[4], "medium wave, 1 kHz from channel 1431 kHz");
        assert_eq!(dials[1].name, "Long wave");
    }

    #[test]
    fn a_dial_of_one_round_step_or_less_has_its_ends() {
        let own = set(
            "above",
            &[
                ("if", "455 kHz"),
                ("mw-low", "600 kHz"),
                ("mw-high", "603 kHz"),
            ],
        );
        assert_eq!(settings(&dials(&own)[0]).len(), 2);
    }
}
