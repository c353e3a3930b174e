//! Band edges, channel rasters and wavelengths against what publications print.
//!
//! Edges of medium and long wave and of the bands of 49, 41, 31 and 25 m were read in
//! online copies of the publications named; rows marked "from memory" were not, and no
//! claim rests on them.
//!
//! # Not used
//! - 47 CFR 73.1570, modulation limits (100 % negative, 125 % positive): no quantity of
//!   the catalogue computes a limit.
//! - Geneva 1975, in force from 23 November 1978, and its three steps at 193.5 and
//!   238.5 kHz: dates and stages of a plan, not frequencies that anything here computes.
//! - The upper edge of the 19 m band, 15.83 MHz in a list from memory: the list itself
//!   says that the allocation ends at 15.8 MHz, which is what the table here has.

use superhet::quantities::bands::{Band, BandKind, Region, Service, allocated_to, band_at, bands};
use superhet::quantities::conversion::{old_dial_frequency, old_dial_wavelength};
use superhet::units::{Frequency, SPEED_OF_LIGHT, Wavelength};

const ARTICLE_5: &str = "ITU Radio Regulations, Article 5, read in an online copy";
const ARTICLE_5_FROM_MEMORY: &str = "ITU Radio Regulations, Article 5, from memory";
const GENEVA: &str =
    "Final Acts of the LF/MF conference, Geneva 1975 (ISBN 92-61-00231-5), online copy";
const GENEVA_FROM_MEMORY: &str =
    "Geneva 1975; end carriers from memory, edges read in an online copy";
const CFR: &str = "47 CFR 73.14, online copy of 2021";
const WRC_97: &str = "ITU Radio Regulations, list of WRC-97, read in an online copy";

fn band_of(kind: BandKind, region: Region) -> &'static Band {
    bands(region)
        .find(|band| band.kind == kind)
        .expect("the Region has such a band")
}

fn edges(band: &Band) -> (f64, f64) {
    (band.low.to_khz(), band.high.to_khz())
}

#[test]
fn edges_of_long_and_medium_wave_are_the_printed_ones() {
    let rows = [
        (
            BandKind::MediumWave,
            Region::One,
            (526.5, 1606.5),
            ARTICLE_5,
        ),
        (
            BandKind::MediumWave,
            Region::Three,
            (526.5, 1606.5),
            ARTICLE_5_FROM_MEMORY,
        ),
        (
            BandKind::MediumWave,
            Region::Two,
            (525.0, 1705.0),
            ARTICLE_5,
        ),
        (BandKind::LongWave, Region::One, (148.5, 283.5), GENEVA),
    ];
    for (kind, region, printed, source) in rows {
        assert_eq!(
            edges(band_of(kind, region)),
            printed,
            "{kind:?} {region:?}: {source}"
        );
    }
    for region in [Region::Two, Region::Three] {
        let long_wave = bands(region).find(|band| band.kind == BandKind::LongWave);
        assert_eq!(
            long_wave, None,
            "long wave is Region 1's alone: {ARTICLE_5_FROM_MEMORY}"
        );
    }
}

/// (band, Region, first and last carrier in kHz, spacing in kHz, how many, source)
type RasterRow = (BandKind, Region, (f64, f64), f64, u32, &'static str);

#[test]
fn carriers_are_the_printed_ones() {
    let rows: [RasterRow; 4] = [
        (
            BandKind::MediumWave,
            Region::One,
            (531.0, 1602.0),
            9.0,
            120,
            GENEVA,
        ),
        (
            BandKind::MediumWave,
            Region::Three,
            (531.0, 1602.0),
            9.0,
            120,
            GENEVA_FROM_MEMORY,
        ),
        (
            BandKind::MediumWave,
            Region::Two,
            (540.0, 1700.0),
            10.0,
            117,
            CFR,
        ),
        (
            BandKind::LongWave,
            Region::One,
            (153.0, 279.0),
            9.0,
            15,
            GENEVA_FROM_MEMORY,
        ),
    ];
    for (kind, region, (first, last), spacing, count, source) in rows {
        let raster = band_of(kind, region).raster;
        assert_eq!(
            (raster.first().to_khz(), raster.last().to_khz()),
            (first, last),
            "{kind:?} {region:?}: {source}"
        );
        assert_eq!(
            raster.step().to_khz(),
            spacing,
            "{kind:?} {region:?}: {source}"
        );
        assert_eq!(raster.count(), count, "{kind:?} {region:?}: {source}");
    }
}

#[test]
fn the_geneva_carriers_are_multiples_of_nine() {
    for kind in [BandKind::LongWave, BandKind::MediumWave] {
        for carrier in band_of(kind, Region::One).raster.channels() {
            assert_eq!(
                carrier.to_khz() % 9.0,
                0.0,
                "{} kHz: {GENEVA}",
                carrier.to_khz()
            );
        }
    }
}

#[test]
fn the_american_carriers_are_540_and_tens_above() {
    for (n, carrier) in (0..).zip(band_of(BandKind::MediumWave, Region::Two).raster.channels()) {
        assert_eq!(carrier.to_khz(), 540.0 + 10.0 * f64::from(n), "{CFR}");
    }
}

/// Derived from the rows above: a band ends half a spacing beyond its end carriers.
#[test]
fn edges_lie_half_a_spacing_beyond_the_end_carriers() {
    for kind in [BandKind::LongWave, BandKind::MediumWave] {
        let band = band_of(kind, Region::One);
        let half = band.raster.step().to_khz() / 2.0;
        let expected = (
            band.raster.first().to_khz() - half,
            band.raster.last().to_khz() + half,
        );
        assert_eq!(edges(band), expected, "{kind:?}");
    }
}

/// Half a unit of the last digit of edges printed in hundredths of a megahertz.
const HUNDREDTH_OF_A_MEGAHERTZ: f64 = 0.005;
/// Half a unit of the last digit of wavelengths printed in hundredths of a metre.
const HUNDREDTH_OF_A_METRE: f64 = 0.005;

/// (name, edges in MHz, wavelengths of the upper and the lower edge in metres, source).
/// The wavelengths are derived from the edges with the exact speed of light.
type ShortWaveRow = (&'static str, (f64, f64), (f64, f64), &'static str);

const SHORT_WAVE: [ShortWaveRow; 9] = [
    ("49 m", (5.9, 6.2), (48.35, 50.81), WRC_97),
    ("41 m", (7.2, 7.45), (40.24, 41.64), WRC_97),
    ("31 m", (9.4, 9.9), (30.28, 31.89), WRC_97),
    ("25 m", (11.6, 12.1), (24.78, 25.84), WRC_97),
    (
        "22 m",
        (13.57, 13.87),
        (21.61, 22.09),
        ARTICLE_5_FROM_MEMORY,
    ),
    ("19 m", (15.1, 15.8), (18.97, 19.85), ARTICLE_5_FROM_MEMORY),
    ("16 m", (17.48, 17.9), (16.75, 17.15), ARTICLE_5_FROM_MEMORY),
    (
        "13 m",
        (21.45, 21.85),
        (13.72, 13.98),
        ARTICLE_5_FROM_MEMORY,
    ),
    ("11 m", (25.67, 26.1), (11.49, 11.68), ARTICLE_5_FROM_MEMORY),
];

#[test]
fn short_wave_bands_have_the_printed_edges_and_wavelengths() {
    for (name, (low, high), (shortest, longest), source) in SHORT_WAVE {
        let band = bands(Region::One)
            .find(|band| band.name == name)
            .expect(name);
        let printed = [(band.low, low), (band.high, high)];
        for (got, expected) in printed {
            let error = (got.to_mhz() - expected).abs();
            assert!(
                error <= HUNDREDTH_OF_A_MEGAHERTZ,
                "{name}: {} MHz, printed {expected}: {source}",
                got.to_mhz()
            );
        }
        for (edge, metres) in [(band.high, shortest), (band.low, longest)] {
            let got = edge.to_wavelength().to_m();
            assert!(
                (got - metres).abs() <= HUNDREDTH_OF_A_METRE,
                "{name}: {got} m, derived {metres} m"
            );
        }
    }
}

#[test]
fn article_5_names_broadcasting_where_the_copies_do() {
    let rows = [
        (Region::One, 526.5, 1606.5),
        (Region::Two, 535.0, 1605.0),
        (Region::Three, 526.5, 535.0),
        (Region::Two, 1605.0, 1705.0),
    ];
    for (region, low, high) in rows {
        for khz in [low, (low + high) / 2.0, high - 0.1] {
            let found = allocated_to(Frequency::khz(khz), region).expect("inside the table");
            assert!(
                found.services.contains(&Service::Broadcasting),
                "{region:?} {khz} kHz: {ARTICLE_5}"
            );
            assert!(band_at(Frequency::khz(khz), region).is_some());
        }
    }
}

#[test]
fn the_speed_of_light_is_the_defined_one() {
    assert_eq!(
        SPEED_OF_LIGHT, 299_792_458.0,
        "SI Brochure, BIPM; scipy.constants 1.17"
    );
}

#[test]
fn old_dials_and_textbooks_reckon_with_300_000_kilometres_a_second() {
    let army = "US Army TC 9-64, paragraphs 2-29 to 2-32";
    assert_eq!(
        old_dial_frequency(Wavelength::m(240.0)).to_khz(),
        1250.0,
        "{army}"
    );
    let exact = Wavelength::m(240.0).to_frequency().to_khz();
    assert!(
        (exact - 1249.135).abs() <= 0.0005,
        "{exact} kHz, derived with the exact speed 1249.135"
    );

    let blake = "Blake, Electronic Communication Systems, example 1.1, p. 7, read in a companion";
    for (mhz, metres, tolerance) in [(1.0, 300.0, 0.5), (27.0, 11.1, 0.05)] {
        let got = old_dial_wavelength(Frequency::mhz(mhz)).to_m();
        assert!(
            (got - metres).abs() <= tolerance,
            "{mhz} MHz: {got} m, printed {metres}: {blake}"
        );
    }
}

#[test]
fn a_long_wave_station_has_its_exact_wavelength() {
    let got = Frequency::khz(198.0).to_wavelength().to_m();
    assert!((got - 1514.1).abs() <= 0.05, "{got} m, derived 1514.1 m");
}
