//! Whistles that harmonics of the IF make when the set is tuned near them.

use crate::words;
use alloc::string::String;
use alloc::vec::Vec;
use superhet::quantities::bands::Band;
use superhet::quantities::conversion::whistle;
use superhet::units::Frequency;

/// How far from the dial setting a harmonic counts as near. A higher pitch hardly gets
/// through the audio stages of a broadcast set (common practice, no source).
pub const NEAR: Frequency = Frequency::khz(10.0);

/// Harmonics that are looked at: the second to the tenth.
const HARMONICS: core::ops::RangeInclusive<u32> = 2..=10;

/// A harmonic of the IF near the dial setting.
#[derive(Debug, Clone, PartialEq)]
pub struct Whistle {
    /// Which harmonic.
    pub harmonic: u32,
    /// The pitch with the set exactly in tune.
    pub pitch: Frequency,
    /// The same as a sentence.
    pub says: String,
}

/// The harmonics within [`NEAR`] of the dial setting, lowest first.
pub(crate) fn whistles(dial: Frequency, intermediate: Frequency) -> Vec<Whistle> {
    HARMONICS
        .map(|harmonic| (harmonic, whistle(dial, intermediate, harmonic)))
        .filter(|(_, pitch)| *pitch <= NEAR)
        .map(|(harmonic, pitch)| Whistle {
            harmonic,
            pitch,
            says: sentence(harmonic, pitch, intermediate),
        })
        .collect()
}

fn sentence(harmonic: u32, pitch: Frequency, intermediate: Frequency) -> String {
    let place = words::frequency(multiple(intermediate, harmonic));
    let heard = if pitch.to_hz() == 0.0 {
        String::from(
            "exactly on the dial setting: the pitch falls to nothing there and rises on both sides.",
        )
    } else {
        [
            "a whistle of ",
            &words::offset(pitch),
            " with the set in tune.",
        ]
        .concat()
    };
    [
        &words::ordinal(harmonic),
        " harmonic of the IF, ",
        &place,
        ": ",
        &heard,
    ]
    .concat()
}

/// Where the harmonics fall in a band: "940 kHz (2nd) and 1410 kHz (3rd)"; none where
/// the band has none.
pub(crate) fn in_band(band: &Band, intermediate: Frequency) -> Option<String> {
    let inside = |harmonic: &u32| band.contains(multiple(intermediate, *harmonic));
    let mut places = String::new();
    for harmonic in HARMONICS.filter(inside) {
        if !places.is_empty() {
            // Those of one band follow on one another.
            let last = harmonic == *HARMONICS.end() || !inside(&(harmonic + 1));
            places.push_str(if last { " and " } else { ", " });
        }
        places.push_str(&words::frequency(multiple(intermediate, harmonic)));
        places.push_str(" (");
        places.push_str(&words::ordinal(harmonic));
        places.push(')');
    }
    (!places.is_empty()).then_some(places)
}

fn multiple(intermediate: Frequency, harmonic: u32) -> Frequency {
    Frequency::hz(intermediate.to_hz() * f64::from(harmonic))
}

#[cfg(test)]
mod tests {
    use super::{in_band, whistles};
    use superhet::quantities::bands::{Region, band_at};
    use superhet::units::Frequency;

    fn khz(value: f64) -> Frequency {
        Frequency::khz(value)
    }

    #[test]
    fn a_station_beside_the_second_harmonic_whistles() {
        let found = whistles(khz(945.0), khz(470.0));
        assert_eq!(found.len(), 1);
        assert_eq!((found[0].harmonic, found[0].pitch), (2, khz(5.0)));
        assert_eq!(
            found[0].says,
            "2nd harmonic of the IF, 940 kHz: a whistle of 5 kHz with the set in tune."
        );
    }

    #[test]
    fn ten_kilohertz_is_near_and_a_hertz_more_is_not() {
        assert_eq!(whistles(khz(950.0), khz(470.0)).len(), 1);
        assert!(whistles(khz(950.001), khz(470.0)).is_empty());
    }

    #[test]
    fn on_the_harmonic_itself_the_sentence_does_not_speak_of_zero_hertz() {
        assert!(
            whistles(khz(910.0), khz(455.0))[0]
                .says
                .contains("exactly on the dial setting")
        );
    }

    #[test]
    fn harmonics_of_a_band_are_listed() {
        let medium_wave = band_at(khz(1000.0), Region::One).unwrap();
        assert_eq!(
            in_band(medium_wave, khz(470.0)).unwrap(),
            "940 kHz (2nd) and 1410 kHz (3rd)"
        );
        let low = in_band(medium_wave, khz(110.0)).unwrap();
        assert!(
            low.starts_with("550 kHz (5th), 660 kHz (6th)")
                && low.ends_with(" and 1100 kHz (10th)"),
            "{low}"
        );
        assert_eq!(in_band(medium_wave, khz(900.0)), None);
    }
}
