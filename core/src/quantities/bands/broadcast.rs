//! The broadcast bands, long wave to 11 m, and their channels.
//!
//! Sources: edges from Article 5 of the ITU Radio Regulations; carriers of long and
//! medium wave in Regions 1 and 3 from the Geneva plan of 1975 (multiples of 9 kHz), of
//! medium wave in Region 2 from 47 CFR 73.14 (540 + 10·n kHz up to 1700 kHz; other
//! countries of Region 2 use 530 kHz too, from memory); short wave by the 5 kHz steps of
//! Appendix 11 to the Regulations, from memory.

use super::raster::Raster;
use super::region::Region;
use crate::units::Frequency;

/// The four families of broadcast bands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum BandKind {
    /// Long wave, Region 1 only.
    LongWave,
    /// Medium wave.
    MediumWave,
    /// Below 5.1 MHz, used for broadcasting in the Tropical Zone.
    Tropical,
    /// The short-wave bands, known by their wavelength.
    ShortWave,
}

/// A broadcast band of one or more Regions.
#[derive(Debug, PartialEq)]
pub struct Band {
    /// As listeners call it: "medium wave", "49 m".
    pub name: &'static str,
    /// Its family.
    pub kind: BandKind,
    /// Lower edge.
    pub low: Frequency,
    /// Upper edge.
    pub high: Frequency,
    /// Its channels.
    pub raster: Raster,
    /// Who says so, and whether it was checked.
    pub source: &'static str,
    regions: &'static [Region],
}

impl Band {
    /// Whether a frequency lies in the band, edges included.
    #[must_use]
    pub fn contains(&self, frequency: Frequency) -> bool {
        self.low <= frequency && frequency <= self.high
    }
}

/// The bands of a Region, lowest first.
pub fn bands(region: Region) -> impl Iterator<Item = &'static Band> {
    BANDS
        .iter()
        .filter(move |band| band.regions.contains(&region))
}

/// The broadcast band a frequency lies in, edges included.
#[must_use]
pub fn band_at(frequency: Frequency, region: Region) -> Option<&'static Band> {
    bands(region).find(|band| band.contains(frequency))
}

const ONE: &[Region] = &[Region::One];
const TWO: &[Region] = &[Region::Two];
const THREE: &[Region] = &[Region::Three];
const ONE_AND_THREE: &[Region] = &[Region::One, Region::Three];
const TWO_AND_THREE: &[Region] = &[Region::Two, Region::Three];
const ALL: &[Region] = &Region::ALL;

const GENEVA: &str = "Final Acts of the LF/MF Broadcasting Conference, Geneva 1975; ITU Radio Regulations, Article 5";
const AMERICAS: &str =
    "ITU Radio Regulations, Article 5 (No. 5.89 above 1605 kHz); carriers 47 CFR 73.14";
const SHORT_WAVE: &str = "ITU Radio Regulations, Article 5; carriers Appendix 11, from memory";
const SHORT_WAVE_FROM_MEMORY: &str =
    "ITU Radio Regulations, Article 5 and Appendix 11, from memory";
const TROPICAL: &str = "ITU Radio Regulations, Article 5 with No. 5.113, from memory";

const fn band(
    name: &'static str,
    kind: BandKind,
    edges_khz: (f64, f64),
    raster: Raster,
    regions: &'static [Region],
    source: &'static str,
) -> Band {
    let (low, high) = (Frequency::khz(edges_khz.0), Frequency::khz(edges_khz.1));
    Band {
        name,
        kind,
        low,
        high,
        raster,
        source,
        regions,
    }
}

/// A band whose carriers are every 5 kHz inside the edges.
const fn five(
    name: &'static str,
    kind: BandKind,
    edges_khz: (u32, u32),
    regions: &'static [Region],
    source: &'static str,
) -> Band {
    let (low, high) = edges_khz;
    band(
        name,
        kind,
        (low as f64, high as f64),
        Raster::khz(low + 5, high - 5, 5),
        regions,
        source,
    )
}

use BandKind::{LongWave, MediumWave, ShortWave, Tropical};

// The tropical bands whose upper edge is no multiple of 5 kHz end at the last one inside.
static BANDS: [Band; 21] = [
    band(
        "long wave",
        LongWave,
        (148.5, 283.5),
        Raster::khz(153, 279, 9),
        ONE,
        GENEVA,
    ),
    band(
        "medium wave",
        MediumWave,
        (526.5, 1606.5),
        Raster::khz(531, 1602, 9),
        ONE_AND_THREE,
        GENEVA,
    ),
    band(
        "medium wave",
        MediumWave,
        (525.0, 1705.0),
        Raster::khz(540, 1700, 10),
        TWO,
        AMERICAS,
    ),
    band(
        "120 m",
        Tropical,
        (2300.0, 2498.0),
        Raster::khz(2305, 2495, 5),
        ONE,
        TROPICAL,
    ),
    band(
        "120 m",
        Tropical,
        (2300.0, 2495.0),
        Raster::khz(2305, 2490, 5),
        TWO_AND_THREE,
        TROPICAL,
    ),
    five("90 m", Tropical, (3200, 3400), ALL, TROPICAL),
    five("75 m", ShortWave, (3950, 4000), ONE, SHORT_WAVE_FROM_MEMORY),
    five(
        "75 m",
        ShortWave,
        (3900, 4000),
        THREE,
        SHORT_WAVE_FROM_MEMORY,
    ),
    five("60 m", Tropical, (4750, 4995), ALL, TROPICAL),
    five("60 m", Tropical, (5005, 5060), ALL, TROPICAL),
    five("49 m", ShortWave, (5900, 6200), ALL, SHORT_WAVE),
    five("41 m", ShortWave, (7200, 7450), ONE_AND_THREE, SHORT_WAVE),
    five("41 m", ShortWave, (7300, 7400), TWO, SHORT_WAVE_FROM_MEMORY),
    five("31 m", ShortWave, (9400, 9900), ALL, SHORT_WAVE),
    five("25 m", ShortWave, (11_600, 12_100), ALL, SHORT_WAVE),
    five(
        "22 m",
        ShortWave,
        (13_570, 13_870),
        ALL,
        SHORT_WAVE_FROM_MEMORY,
    ),
    five(
        "19 m",
        ShortWave,
        (15_100, 15_800),
        ALL,
        SHORT_WAVE_FROM_MEMORY,
    ),
    five(
        "16 m",
        ShortWave,
        (17_480, 17_900),
        ALL,
        SHORT_WAVE_FROM_MEMORY,
    ),
    five(
        "15 m",
        ShortWave,
        (18_900, 19_020),
        ALL,
        SHORT_WAVE_FROM_MEMORY,
    ),
    five(
        "13 m",
        ShortWave,
        (21_450, 21_850),
        ALL,
        SHORT_WAVE_FROM_MEMORY,
    ),
    five(
        "11 m",
        ShortWave,
        (25_670, 26_100),
        ALL,
        SHORT_WAVE_FROM_MEMORY,
    ),
];

#[cfg(test)]
mod tests {
    use super::{BANDS, Band, BandKind, Region, band_at, bands};
    use crate::quantities::bands::{Service, allocated_to};
    use crate::units::Frequency;

    #[test]
    fn bands_of_a_region_rise_and_do_not_overlap() {
        for region in Region::ALL {
            let mut end = Frequency::khz(0.0);
            for band in bands(region) {
                assert!(
                    band.low > end && band.high > band.low,
                    "{region:?} {}",
                    band.name
                );
                end = band.high;
            }
        }
    }

    #[test]
    fn every_raster_is_whole_and_lies_inside_its_edges() {
        for band in &BANDS {
            assert!(
                band.low < band.raster.first() && band.raster.last() < band.high,
                "{}",
                band.name
            );
            let last = band.raster.channels().last();
            assert_eq!(last, Some(band.raster.last()), "{}", band.name);
        }
    }

    /// The two tables were written apart: wherever one says broadcasting, so must the other.
    #[test]
    fn bands_and_article_5_agree_at_every_half_kilohertz() {
        for region in Region::ALL {
            for halves in 200..60_000_u32 {
                let frequency = Frequency::khz(f64::from(halves) * 0.5 + 0.25);
                let in_band = band_at(frequency, region).is_some();
                let allocated = allocated_to(frequency, region)
                    .is_some_and(|found| found.services.contains(&Service::Broadcasting));
                assert_eq!(in_band, allocated, "{region:?} {} kHz", frequency.to_khz());
            }
        }
    }
    /// A sentence about a tropical band says so of "the last" service.
    #[test]
    fn article_5_names_broadcasting_last_in_the_tropical_bands() {
        let tropical = |band: &&Band| band.kind == BandKind::Tropical;
        for region in Region::ALL {
            for band in bands(region).filter(tropical) {
                for channel in band.raster.channels() {
                    let services = allocated_to(channel, region).map(|found| found.services);
                    let last = services.and_then(|services| services.last());
                    assert_eq!(
                        last,
                        Some(&Service::Broadcasting),
                        "{region:?} {}",
                        band.name
                    );
                }
            }
        }
    }
}
