//! What whistles with the station on the dial.

use super::Set;
use super::line::Line;
use superhet::quantities::bands::{BandKind, band_at};
use superhet::quantities::spurious_responses::{Whistle, if_harmonic, neighbours};
use superhet::units::Frequency;

/// A note beside the station, and how it moves.
#[derive(Clone, Copy)]
pub(super) struct Note {
    /// Where what makes it is, in hertz.
    pub(super) at: f64,
    /// Its pitch in hertz while the set is exactly in tune.
    pub(super) pitch: f64,
    /// How many times as fast as the dial it moves.
    pub(super) pace: u32,
}

impl From<Whistle> for Note {
    fn from(whistle: Whistle) -> Self {
        Self {
            at: whistle.at.to_hz(),
            pitch: whistle.beat.to_hz(),
            pace: whistle.pitch_slope,
        }
    }
}

impl Note {
    /// That of a harmonic of the set's own IF.
    pub(super) fn of_own(set: &Set, harmonic: u32) -> Self {
        if_harmonic(Frequency::hz(set.dial), set.intermediate, harmonic).into()
    }

    /// That of the channel beside the station.
    pub(super) fn of_neighbour(set: &Set) -> Option<Self> {
        let mut beside = neighbours(Frequency::hz(set.dial), set.region);
        beside.next().map(Self::from)
    }

    /// That of a sender on the broadcast channel which a response falls on; none for the
    /// station itself.
    pub(super) fn of_line(set: &Set, line: &Line) -> Option<Self> {
        let response = line
            .now
            .filter(|_| line.role != super::line::Role::Station)?;
        let hit = response.channel(set.region)?;
        Some(Self {
            at: hit.carrier.to_hz(),
            pitch: hit.beat.to_hz(),
            pace: response.pitch_slope,
        })
    }
}

/// How far a neighbour's carrier is off, in hertz: a higher note is drowned by it.
pub(super) fn highest(set: &Set) -> f64 {
    let band = band_at(Frequency::hz(set.dial), set.region);
    band.map_or(0.0, |band| band.raster.step().to_hz())
}

/// Whether a response may lie in a band that is heard outside the tropics.
pub(super) fn is_heard_everywhere(set: &Set, hertz: f64) -> bool {
    band_at(Frequency::hz(hertz), set.region).is_some_and(|band| band.kind != BandKind::Tropical)
}
