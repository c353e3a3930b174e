//! What a set will do: the card of each band, image, whistles, IF circuits, gang, tracking.
//!
//! Every number is a quantity of the catalogue, so each can be had from `cargo site calc`
//! again. What the set does not say is asked for where it is missed, never filled in.

mod card;
mod gang;
mod image;
mod tracking;
mod transformers;
mod whistles;

use crate::OwnSet;
use crate::paper::{Block, Found, Piece};
use crate::words;
use superhet::catalogue::evaluate_with;
use superhet::quantities::bands::{IntermediatePlace, place_of_intermediate};
use superhet::units::{Frequency, Kind, display};

/// One band of a set's dial.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Dial {
    /// "Medium wave".
    pub(crate) name: &'static str,
    pub(crate) low: Frequency,
    pub(crate) high: Frequency,
    /// Whether the set said so, and not the broadcast band.
    pub(crate) own: bool,
}

/// Everything that the page says about a set.
#[must_use]
pub fn report(set: &OwnSet) -> Vec<Block> {
    let dials = dials(set);
    let mut blocks = head(set, &dials);
    blocks.extend(dials.iter().flat_map(|dial| card::card(set, dial)));
    if let Some(dial) = dials.first() {
        blocks.extend(image::image(set, dial));
        blocks.extend(whistles::whistles(set, &dials));
        blocks.extend(tracking::tracking(set, dial));
        blocks.extend(transformers::transformers(set));
        blocks.extend(gang::gang(set, dial));
    }
    blocks
}

/// The bands of the dial: medium wave always, long wave where the set says that it has it.
pub(crate) fn dials(set: &OwnSet) -> Vec<Dial> {
    let mut dials = Vec::new();
    let ends = |low: &str, high: &str| (set.frequency(low), set.frequency(high));
    if let Some(band) = words::medium_wave(set.region) {
        let (low, high) = ends("mw-low", "mw-high");
        dials.push(Dial {
            name: "Medium wave",
            low: low.unwrap_or(band.low),
            high: high.unwrap_or(band.high),
            own: low.is_some() && high.is_some(),
        });
    }
    if let (Some(low), Some(high)) = ends("lw-low", "lw-high") {
        let name = "Long wave";
        dials.push(Dial {
            name,
            low,
            high,
            own: true,
        });
    }
    dials
}

/// The setting that the first sentence works out: one that every medium wave dial has.
const SAMPLE: Frequency = Frequency::khz(1000.0);

fn head(set: &OwnSet, dials: &[Dial]) -> Vec<Block> {
    let mut pieces = vec![Piece::words(
        "With the dial at 1000 kHz, the oscillator runs at ",
    )];
    let sample = words::typed(SAMPLE);
    pieces.push(found_or_dash(work(set, "oscillator", &[("dial", &sample)])));
    pieces.push(Piece::words(" and the image is at "));
    pieces.push(found_or_dash(work(set, "image", &[("dial", &sample)])));
    pieces.push(Piece::words("."));
    let own = dials.first().is_some_and(|dial| dial.own);
    let mut blocks = vec![Block::Says(pieces), Block::says(own_place(set))];
    if !own {
        blocks.push(Block::Needs(
            "The card runs over the broadcast band, since this set’s own dial ends are not known."
                .to_owned(),
        ));
    }
    blocks
}

/// Where the IF itself lies.
fn own_place(set: &OwnSet) -> String {
    let place = match place_of_intermediate(set.intermediate, set.region) {
        IntermediatePlace::BelowLongWave => "lies below long wave",
        IntermediatePlace::InsideLongWave => {
            "lies inside long wave as Region 1 has it: a station there can come straight through"
        }
        IntermediatePlace::BetweenLongAndMediumWave => "lies between long and medium wave",
        IntermediatePlace::InsideMediumWave => {
            "lies inside medium wave: a station there comes straight through"
        }
        IntermediatePlace::AboveMediumWave => "lies above medium wave",
    };
    format!("The IF itself {place}.")
}

/// Works out a quantity of the set: its IF, side and what is given with them, each where the
/// quantity takes it.
pub(crate) fn work(set: &OwnSet, name: &str, pairs: &[(&str, &str)]) -> Result<Piece, String> {
    let entry = superhet::catalogue::find(name).ok_or_else(|| format!("no quantity {name}"))?;
    let own = [
        ("if", set.text("if").unwrap_or_default()),
        ("side", set.side.word()),
    ];
    let takes = |key: &str| entry.parameter(key).is_some();
    let typed: Vec<(&str, &str)> = pairs
        .iter()
        .copied()
        .chain(own)
        .filter(|(key, _)| takes(key))
        .collect();
    let answer = evaluate_with(name, &typed).map_err(|refusal| refusal.sentence().to_owned())?;
    let typed: Vec<String> = typed
        .iter()
        .map(|(key, value)| format!("{key}={}", value.replace(' ', "")))
        .collect();
    Ok(Piece {
        text: brief(answer.kind, answer.value),
        found: Some(Found {
            quantity: answer.name,
            value: answer.value,
            expression: format!("{}?{}", answer.name, typed.join("&")),
        }),
    })
}

/// Significant digits with which a value is shown in full.
const FULL: usize = 5;

/// Significant digits left of a longer one: more than any part or any dial is made to.
const ROUNDED: usize = 4;

/// A value as a reader needs it; the page carries the whole one beside it.
fn brief(kind: Kind, value: f64) -> String {
    let shown = display::text(kind, value);
    let digits = shown.chars().filter(char::is_ascii_digit);
    if digits.skip_while(|digit| *digit == '0').count() <= FULL {
        return shown;
    }
    let rounded: String = format!("{value:.*e}", ROUNDED - 1);
    display::text(kind, rounded.parse().unwrap_or(value))
}

/// A dash where there is none.
pub(crate) fn found_or_dash(found: Result<Piece, String>) -> Piece {
    found.unwrap_or_else(|_| Piece::words("–"))
}

/// A frequency in kHz without its unit, for a column headed so.
pub(crate) fn in_khz(found: Result<Piece, String>) -> Piece {
    let mut piece = found_or_dash(found);
    if let Some(found) = &piece.found {
        piece.text = khz(Frequency::hz(found.value));
    }
    piece
}

/// "1606.5".
pub(crate) fn khz(value: Frequency) -> String {
    display::text(Kind::Ratio, value.to_khz())
}

/// Decibels to a tenth, as a table shows them; the value behind them stays whole.
pub(crate) fn in_tenths(found: Result<Piece, String>) -> Piece {
    let mut piece = found_or_dash(found);
    if let Some(found) = &piece.found {
        piece.text = format!("{:.1}", found.value);
    }
    piece
}

#[cfg(test)]
mod tests {
    use super::{Kind, brief, report};
    use crate::paper::{Block, Piece};
    use crate::{OwnSet, Typed};
    use superhet::catalogue::evaluate;

    pub(super) fn set(side: &str, pairs: &[(&'static str, &str)]) -> OwnSet {
        Typed {
            boxes: pairs
                .iter()
                .map(|(key, text)| (*key, (*text).to_owned()))
                .collect(),
            side: side.to_owned(),
            region: "1".to_owned(),
            ..Typed::default()
        }
        .set()
        .expect("a set")
    }

    /// Everything that can be known.
    pub(super) const WHOLE: [(&str, &str); 15] = [
        ("if", "455 kHz"),
        ("mw-low", "520 kHz"),
        ("mw-high", "1620 kHz"),
        ("lw-low", "150 kHz"),
        ("lw-high", "300 kHz"),
        ("aerial-q", "75"),
        ("aerial-circuits", "1"),
        ("if-q", "100"),
        ("coupling", "0.012"),
        ("transformers", "2"),
        ("gang-min", "12 pF"),
        ("gang-max", "490 pF"),
        ("f1", "600 kHz"),
        ("f2", "950 kHz"),
        ("f3", "1500 kHz"),
    ];

    fn pieces(blocks: &[Block]) -> Vec<&Piece> {
        blocks
            .iter()
            .flat_map(|block| match block {
                Block::Says(pieces) => pieces.iter().collect(),
                Block::Table(table) => table.rows.iter().flatten().collect(),
                Block::Heading(_) | Block::Needs(_) => Vec::<&Piece>::new(),
            })
            .collect()
    }

    #[test]
    fn every_number_is_what_its_expression_comes_to() {
        let mut whole = WHOLE.to_vec();
        whole.push(("coil", "175 µH"));
        let mut counted = 0;
        for (side, intermediate) in [("above", "455 kHz"), ("below", "125 kHz")] {
            whole[0].1 = intermediate;
            for blocks in [report(&set(side, &whole)), report(&set(side, &whole[..1]))] {
                for piece in pieces(&blocks) {
                    let Some(found) = &piece.found else { continue };
                    let answer = evaluate(&found.expression).expect(&found.expression);
                    assert_eq!((answer.name, answer.value), (found.quantity, found.value));
                    counted += 1;
                }
            }
        }
        assert!(counted > 200, "only {counted} numbers");
    }

    #[test]
    fn a_value_is_shown_as_closely_as_it_is_needed() {
        assert_eq!(brief(Kind::Frequency, 1_673_500.0), "1673.5 kHz");
        assert_eq!(brief(Kind::Decibels, 45.056_09), "45.06 dB");
        assert_eq!(brief(Kind::Capacitance, 525.3401e-12), "525.3 pF");
    }

    #[test]
    fn a_set_that_says_no_more_than_its_if_is_asked_for_the_rest() {
        let blocks = report(&set("above", &WHOLE[..1]));
        let needs: Vec<&str> = blocks
            .iter()
            .filter_map(|block| match block {
                Block::Needs(text) => Some(text.as_str()),
                _ => None,
            })
            .collect();
        assert_eq!(needs.len(), 5, "{needs:#?}");
        let mut whole = WHOLE.to_vec();
        whole.push(("coil", "175 µH"));
        let blocks = report(&set("above", &whole));
        assert!(!blocks.iter().any(|block| matches!(block, Block::Needs(_))));
    }
}
