//! The card for one band: dial, oscillator and image, to be printed and kept by the set.

use crate::form::Rows;
use crate::whistles::in_band;
use crate::words;
use alloc::string::String;
use alloc::vec::Vec;
use superhet::quantities::bands::{Band, Region, place_of};
use superhet::quantities::conversion::{Side, image, old_dial_wavelength, oscillator};
use superhet::units::{Frequency, Kind, display};

/// Round figures are spaced so that a band has at most this many of them, and a card
/// fits half a page.
const MOST_ROUND_ROWS: f64 = 24.0;

/// Spacings that count as round, in kHz.
const ROUND_STEPS: [f64; 6] = [5.0, 10.0, 20.0, 25.0, 50.0, 100.0];

/// The set a card is for.
#[derive(Debug, Clone, Copy)]
pub struct CardFor {
    /// Its intermediate frequency.
    pub intermediate: Frequency,
    /// The side its oscillator runs on.
    pub side: Side,
    /// Where it stands.
    pub region: Region,
}

/// A band's card.
#[derive(Debug, Clone, PartialEq)]
pub struct Card {
    /// "Medium wave, 526.5 to 1606.5 kHz".
    pub title: String,
    /// "IF 470 kHz, oscillator above, Region 1": never a date, which would age it.
    pub set: String,
    /// Where harmonics of the IF whistle in this band.
    pub whistles: String,
    /// The settings, lowest first.
    pub rows: Vec<CardRow>,
}

/// One dial setting, in figures without units: kHz, and metres as an old dial has them.
#[derive(Debug, Clone, PartialEq)]
pub struct CardRow {
    /// The setting in kHz.
    pub dial: String,
    /// The same in metres, drawn with 300 000 km/s.
    pub metres: String,
    /// The oscillator in kHz; a dash where there is none.
    pub oscillator: String,
    /// The image in kHz; a dash where there is none.
    pub image: String,
    /// What is found at the image.
    pub heard: String,
}

/// The card of a band for a set.
#[must_use]
pub fn card(band: &Band, set: CardFor, rows: Rows) -> Card {
    let settings = match rows {
        Rows::Round => round_settings(band),
        Rows::EveryChannel => band.raster.channels().collect(),
    };
    Card {
        title: title(band),
        set: [&beside(set.intermediate, set.side), ", ", set.region.name()].concat(),
        whistles: match in_band(band, set.intermediate) {
            Some(places) => ["Harmonics of the IF whistle at ", &places, "."].concat(),
            None => String::from(
                "No harmonic of the IF up to the 10th falls in this band. Other whistles are possible.",
            ),
        },
        rows: settings.into_iter().map(|dial| row(dial, set)).collect(),
    }
}

/// "IF 470 kHz, oscillator above": what stands beside every answer.
pub(crate) fn beside(intermediate: Frequency, side: Side) -> String {
    [
        "IF ",
        &words::frequency(intermediate),
        ", oscillator ",
        side.word(),
    ]
    .concat()
}

fn title(band: &Band) -> String {
    let mut name = String::from(band.name);
    if let Some(first) = name.get_mut(..1) {
        first.make_ascii_uppercase();
    }
    [&name, ", ", &words::range(band.low, band.high)].concat()
}

/// The first channel, the round figures between, the last channel.
fn round_settings(band: &Band) -> Vec<Frequency> {
    let (first, last) = (band.raster.first().to_khz(), band.raster.last().to_khz());
    let step = ROUND_STEPS
        .into_iter()
        .find(|step| (last - first) / step <= MOST_ROUND_ROWS)
        .unwrap_or(ROUND_STEPS[ROUND_STEPS.len() - 1]);
    let mut settings = Vec::from([band.raster.first()]);
    // The cast truncates a positive quotient: the last multiple not above the first channel.
    let start = f64::from((first / step) as u32);
    let between = (1..).map(|index| (start + f64::from(index)) * step);
    settings.extend(between.take_while(|khz| *khz < last).map(Frequency::khz));
    settings.push(band.raster.last());
    settings
}

fn row(dial: Frequency, set: CardFor) -> CardRow {
    let image = image(dial, set.intermediate, set.side).ok();
    let oscillator = oscillator(dial, set.intermediate, set.side).ok();
    let figure =
        |found: Option<Frequency>| found.map_or_else(|| String::from("–"), words::kilohertz);
    CardRow {
        dial: words::kilohertz(dial),
        metres: tenths(old_dial_wavelength(dial).to_m()),
        oscillator: figure(oscillator),
        heard: image.map_or_else(String::new, |found| {
            words::place_name(place_of(found, set.region))
        }),
        image: figure(image),
    }
}

/// A length to a tenth of a metre, finer than any dial is drawn: "565.0".
fn tenths(metres: f64) -> String {
    let tenths = (metres * 10.0 + 0.5) as u32;
    let whole = |number: u32| display::text(Kind::Integer, f64::from(number));
    [&whole(tenths / 10), ".", &whole(tenths % 10)].concat()
}
