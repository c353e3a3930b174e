//! The sentences under the answer.

use crate::card::beside;
use crate::solve::Solved;
use crate::whistles::{NEAR, Whistle, in_band};
use crate::words;
use alloc::string::String;
use superhet::quantities::bands::{
    Band, BandKind, IntermediatePlace, Place, Raster, Region, Service, band_at, bands, place_of,
    place_of_intermediate,
};
use superhet::quantities::conversion::{
    image_is_a_sum, old_dial_frequency, old_dial_wavelength, whistle,
};
use superhet::units::Frequency;

/// What the page says about the dial setting, the image and the IF.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Notes {
    /// The setting in metres, exact and as an old dial has it.
    pub dial: String,
    /// The channel the setting is on or beside.
    pub channel: String,
    /// Where the image falls.
    pub image: String,
    /// Where the IF itself lies.
    pub intermediate: String,
    /// Harmonics of the IF near the setting: the sentence before the list of them.
    pub whistles: String,
}

pub(crate) fn notes(solved: &Solved, whistles: &[Whistle], region: Region) -> Notes {
    Notes {
        dial: dial(solved),
        channel: channel(solved.dial, region),
        image: image(solved, region),
        intermediate: intermediate(solved.intermediate, region),
        whistles: harmonics(solved, whistles, region),
    }
}

/// One light for two dials: metres by the exact speed, and by the one dials were drawn with.
fn dial(solved: &Solved) -> String {
    let exact = solved.dial.to_wavelength();
    let metres = words::metres(exact.to_m());
    let khz = words::frequency(solved.dial);
    if solved.typed_in_metres {
        let meant = words::frequency(old_dial_frequency(exact));
        return [
            &metres,
            " is ",
            &khz,
            " by the exact speed of light, and the answer uses that. An old dial was drawn \
             with 300 000 km/s and means ",
            &meant,
            " by it.",
        ]
        .concat();
    }
    let printed = words::metres(old_dial_wavelength(solved.dial).to_m());
    [
        &khz,
        " is ",
        &metres,
        "; an old dial, drawn with 300 000 km/s, prints ",
        &printed,
        ".",
    ]
    .concat()
}

fn channel(dial: Frequency, region: Region) -> String {
    match band_at(dial, region) {
        Some(band) if band.kind == BandKind::Tropical => [
            &words::long_place(dial, Place::Broadcast(band), region),
            " ",
            &beside_channel(dial, band, band.raster, region),
        ]
        .concat(),
        Some(band) => beside_channel(dial, band, band.raster, region),
        None => words::long_place(dial, place_of(dial, region), region),
    }
}

fn beside_channel(dial: Frequency, band: &Band, raster: Raster, region: Region) -> String {
    let nearest = raster.nearest(dial);
    let spacing = words::frequency(raster.step());
    let name = [&words::band(band), " in ", region.name()].concat();
    if nearest == dial {
        return [
            "On a channel of ",
            &name,
            ", where they are ",
            &spacing,
            " apart.",
        ]
        .concat();
    }
    let away = Frequency::hz((nearest.to_hz() - dial.to_hz()).abs());
    let way = if nearest > dial { " higher" } else { " lower" };
    [
        against(dial, band, raster),
        &name,
        ", ",
        &spacing,
        " apart: the nearest is ",
        &words::frequency(nearest),
        ", ",
        &words::offset(away),
        way,
        ".",
    ]
    .concat()
}

/// Where a setting that is on no channel lies against them.
fn against(dial: Frequency, band: &Band, raster: Raster) -> &'static str {
    if dial == band.low || dial == band.high {
        "At the edge of the channels of "
    } else if dial < raster.first() {
        "Below the lowest of the channels of "
    } else if dial > raster.last() {
        "Above the highest of the channels of "
    } else {
        "Between the channels of "
    }
}

fn image(solved: &Solved, region: Region) -> String {
    let mut text = words::long_place(solved.image, place_of(solved.image, region), region);
    if image_is_a_sum(solved.dial, solved.intermediate, solved.side) {
        text.push_str(" It makes the IF as the sum of itself and the oscillator.");
    }
    text
}

fn intermediate(intermediate: Frequency, region: Region) -> String {
    let value = words::frequency(intermediate);
    let (lies, what) = match place_of_intermediate(intermediate, region) {
        IntermediatePlace::BelowLongWave
        | IntermediatePlace::InsideLongWave
        | IntermediatePlace::BetweenLongAndMediumWave
            if bands(region).all(|band| band.kind != BandKind::LongWave) =>
        {
            (
                " lies below medium wave; this Region has no long-wave broadcasting.",
                "",
            )
        }
        IntermediatePlace::BelowLongWave => (" lies below long wave.", ""),
        IntermediatePlace::InsideLongWave => (" lies inside long wave", inside()),
        IntermediatePlace::BetweenLongAndMediumWave => (" lies between long and medium wave.", ""),
        IntermediatePlace::InsideMediumWave => (" lies inside medium wave", inside()),
        IntermediatePlace::AboveMediumWave => (" lies above medium wave.", ""),
    };
    let mut text = ["The IF itself, ", &value, ",", lies, what].concat();
    if let Place::Allocated(found) = place_of(intermediate, region) {
        let edges = words::range(found.low, found.high);
        let names = words::services(found.services);
        text.push_str(
            &[
                " In ",
                region.name(),
                " Article 5 gives ",
                &edges,
                " to: ",
                &names,
                if found
                    .services
                    .contains(&Service::AeronauticalRadionavigation)
                {
                    ". Beacons near by may break through."
                } else {
                    "."
                },
            ]
            .concat(),
        );
    }
    text
}

const fn inside() -> &'static str {
    ": a strong station there breaks through whatever the dial says."
}

fn harmonics(solved: &Solved, whistles: &[Whistle], region: Region) -> String {
    let mut text = String::from(straight_through(solved.dial, solved.intermediate));
    if !whistles.is_empty() {
        text.push_str("Within 10 kHz of the dial setting:");
        return text;
    }
    text.push_str("No harmonic of the IF up to the 10th lies within 10 kHz of the dial setting.");
    let places = band_at(solved.dial, region).and_then(|band| in_band(band, solved.intermediate));
    if let Some(places) = places {
        text.push_str(&[" In this band they fall at ", &places, "."].concat());
    }
    text.push_str(" Other whistles are possible.");
    text
}

/// A dial setting near the IF or near half of it.
fn straight_through(dial: Frequency, intermediate: Frequency) -> &'static str {
    if whistle(dial, intermediate, 1) <= NEAR {
        "The dial is within 10 kHz of the IF itself: what arrives there goes straight through, and the \
         set may whistle or howl. "
    } else if (2.0 * dial.to_hz() - intermediate.to_hz()).abs() <= NEAR.to_hz() {
        "The dial is near half the IF: the 2nd harmonic of the signal, made in the mixer, comes out at \
         the IF and whistles. "
    } else {
        ""
    }
}

/// One sentence for those who listen instead of looking.
pub(crate) fn spoken(title: &str, found: &str, solved: &Solved) -> String {
    [
        title,
        " ",
        found,
        ". ",
        &beside(solved.intermediate, solved.side),
        ". Image ",
        &words::frequency(solved.image),
        ".",
    ]
    .concat()
}
