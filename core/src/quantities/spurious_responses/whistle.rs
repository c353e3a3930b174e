//! The whistles that a set can make on a station, and how their pitch moves.

use alloc::vec::Vec;

use super::response::{ResponseKind, responses};
use crate::quantities::bands::{Region, band_at};
use crate::quantities::conversion::{ConversionError, Side, whistle};
use crate::units::Frequency;

/// The highest harmonic of the IF that is listed.
pub const HIGHEST_IF_HARMONIC: u32 = 10;

/// What whistles with a station.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum WhistleCause {
    /// The carrier of the channel beside it.
    Neighbour,
    /// A harmonic of the set's own IF, which the detector makes and the aerial circuit hears.
    IfHarmonic(u32),
    /// A broadcast carrier that a response falls on: what kind of response, the harmonics
    /// `m` of the oscillator and `n` of the carrier.
    Response(ResponseKind, u32, u32),
}

/// A whistle on a station that is exactly in tune.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Whistle {
    /// What makes it.
    pub cause: WhistleCause,
    /// Where that is: the carrier, or the harmonic of the IF.
    pub at: Frequency,
    /// Its pitch.
    pub beat: Frequency,
    /// How many times as fast as the dial its pitch moves.
    pub pitch_slope: u32,
}

/// The whistles up to a pitch that a set tuned to `dial` can make, were there a station on
/// every channel of its Region; the lowest pitch first.
///
/// Responses are followed up to `order`. There are at most two neighbours, 9 harmonics and
/// one whistle a response; one allocation beside that of the responses.
///
/// A signal at the IF itself whistles too, at a pitch that depends on nothing but the
/// signal: it is not listed, since broadcasters keep off the usual IFs.
///
/// # Errors
/// As [`responses`].
///
/// ```
/// use superhet::quantities::bands::Region;
/// use superhet::quantities::conversion::Side;
/// use superhet::quantities::spurious_responses::{WhistleCause, whistles};
/// use superhet::units::Frequency;
/// let khz = Frequency::khz;
/// // 909 kHz with an IF of 455 kHz: twice the IF is 910 kHz and whistles at 1 kHz.
/// let found =
///     whistles(khz(909.0), khz(455.0), Side::Above, Region::One, khz(3.0), 2).unwrap();
/// assert_eq!(found[0].cause, WhistleCause::IfHarmonic(2));
/// assert_eq!((found[0].beat, found[0].pitch_slope), (khz(1.0), 2));
/// ```
pub fn whistles(
    dial: Frequency,
    intermediate: Frequency,
    side: Side,
    region: Region,
    highest: Frequency,
    order: u32,
) -> Result<Vec<Whistle>, ConversionError> {
    let responses = responses(dial, intermediate, side, order)?;
    let mut found = Vec::with_capacity(responses.len() + HIGHEST_IF_HARMONIC as usize + 1);
    found.extend(neighbours(dial, region));
    let harmonics = 2..=HIGHEST_IF_HARMONIC;
    found.extend(harmonics.map(|harmonic| if_harmonic(dial, intermediate, harmonic)));
    for response in &responses {
        let unwanted = response.kind != ResponseKind::Wanted;
        if let Some(hit) = response.channel(region).filter(|_| unwanted) {
            let (m, n) = (response.oscillator_harmonic, response.signal_harmonic);
            found.push(Whistle {
                cause: WhistleCause::Response(response.kind, m, n),
                at: hit.carrier,
                beat: hit.beat,
                pitch_slope: response.pitch_slope,
            });
        }
    }
    found.retain(|whistle| whistle.beat <= highest);
    // Stable, so that of two alike in pitch the simpler cause stands first.
    found.sort_by(|one, other| one.beat.to_hz().total_cmp(&other.beat.to_hz()));
    Ok(found)
}

/// The carriers on each side of the dial, the lower one first: their pitch stays.
pub fn neighbours(dial: Frequency, region: Region) -> impl Iterator<Item = Whistle> {
    let raster = band_at(dial, region).map(|band| band.raster);
    let beside = raster.map_or([None, None], |raster| [raster.down(dial), raster.up(dial)]);
    beside.into_iter().flatten().map(move |carrier| Whistle {
        cause: WhistleCause::Neighbour,
        at: carrier,
        beat: Frequency::hz((carrier.to_hz() - dial.to_hz()).abs()),
        pitch_slope: 0,
    })
}

/// A harmonic of the set's own IF, `h` from 2: its pitch moves `h` times as fast as the dial.
#[must_use]
pub fn if_harmonic(dial: Frequency, intermediate: Frequency, harmonic: u32) -> Whistle {
    Whistle {
        cause: WhistleCause::IfHarmonic(harmonic),
        at: Frequency::hz(f64::from(harmonic) * intermediate.to_hz()),
        beat: whistle(dial, intermediate, harmonic),
        pitch_slope: harmonic,
    }
}
