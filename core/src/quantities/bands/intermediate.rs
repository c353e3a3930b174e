//! Where an intermediate frequency lies against long and medium wave.
//!
//! An IF inside a broadcast band would hear that band's stations straight through the
//! set, so makers put it below, between or above them.

use super::broadcast::{Band, BandKind, bands};
use super::region::Region;
use crate::units::Frequency;

/// Five answers to "where does the IF lie?".
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum IntermediatePlace {
    /// Below long wave.
    BelowLongWave,
    /// Inside long wave: a station there breaks straight through.
    InsideLongWave,
    /// Between long and medium wave, where 455 to 475 kHz lie.
    BetweenLongAndMediumWave,
    /// Inside medium wave.
    InsideMediumWave,
    /// Above medium wave.
    AboveMediumWave,
}

/// Where an intermediate frequency lies in a Region, band edges counting as inside.
///
/// Regions 2 and 3 have no long-wave broadcasting. There the edges of Region 1 tell
/// "below" from "between", because sets and books name the place after them everywhere.
#[must_use]
pub fn place_of_intermediate(intermediate: Frequency, region: Region) -> IntermediatePlace {
    let long_wave = band_of(BandKind::LongWave, Region::One);
    let medium_wave = band_of(BandKind::MediumWave, region);
    if long_wave.is_some_and(|band| intermediate < band.low) {
        IntermediatePlace::BelowLongWave
    } else if long_wave.is_some_and(|band| band.contains(intermediate)) {
        IntermediatePlace::InsideLongWave
    } else if medium_wave.is_some_and(|band| intermediate < band.low) {
        IntermediatePlace::BetweenLongAndMediumWave
    } else if medium_wave.is_some_and(|band| band.contains(intermediate)) {
        IntermediatePlace::InsideMediumWave
    } else {
        IntermediatePlace::AboveMediumWave
    }
}

fn band_of(kind: BandKind, region: Region) -> Option<&'static Band> {
    bands(region).find(|band| band.kind == kind)
}

#[cfg(test)]
mod tests {
    use super::{IntermediatePlace, place_of_intermediate};
    use crate::quantities::bands::Region;
    use crate::units::Frequency;

    #[test]
    fn the_five_places_in_rising_order() {
        let expected = [
            (110.0, IntermediatePlace::BelowLongWave),
            (175.0, IntermediatePlace::InsideLongWave),
            (470.0, IntermediatePlace::BetweenLongAndMediumWave),
            (1000.0, IntermediatePlace::InsideMediumWave),
            (1750.0, IntermediatePlace::AboveMediumWave),
        ];
        for region in Region::ALL {
            for (khz, place) in expected {
                assert_eq!(
                    place_of_intermediate(Frequency::khz(khz), region),
                    place,
                    "{region:?} {khz} kHz"
                );
            }
        }
    }

    /// Long wave from 148.5 to 283.5 kHz and medium wave from 526.5 to 1606.5 kHz
    /// [ITU Radio Regulations, Article 5, Region 1].
    #[test]
    fn the_edges_of_a_band_are_inside() {
        let at = |khz| place_of_intermediate(Frequency::khz(khz), Region::One);
        for edge in [148.5, 283.5] {
            assert_eq!(at(edge), IntermediatePlace::InsideLongWave, "{edge} kHz");
        }
        for edge in [526.5, 1606.5] {
            assert_eq!(at(edge), IntermediatePlace::InsideMediumWave, "{edge} kHz");
        }
    }

    #[test]
    fn region_2_ends_medium_wave_higher() {
        let at = |region| place_of_intermediate(Frequency::khz(1650.0), region);
        assert_eq!(at(Region::One), IntermediatePlace::AboveMediumWave);
        assert_eq!(at(Region::Two), IntermediatePlace::InsideMediumWave);
    }
}
