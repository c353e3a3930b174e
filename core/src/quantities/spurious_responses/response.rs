//! The places of a set's responses.

use alloc::vec::Vec;

use crate::quantities::bands::{Band, Place, Region, band_at, place_of};
use crate::quantities::conversion::{ConversionError, Side, Sign, oscillator};
use crate::units::Frequency;

/// The highest order that is listed: 144 responses.
pub const HIGHEST_ORDER: u32 = 12;

/// What a response is called.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ResponseKind {
    /// The station on the dial.
    Wanted,
    /// The station as far beyond the oscillator as the wanted one is on this side.
    Image,
    /// A signal at the IF itself.
    Breakthrough,
    /// A harmonic of the signal, of the oscillator or of both.
    Product,
}

/// A frequency at which a signal makes the IF.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Response {
    /// Where the signal has to be.
    pub frequency: Frequency,
    /// The harmonic of the oscillator, `m`.
    pub oscillator_harmonic: u32,
    /// The harmonic of the signal, `n`.
    pub signal_harmonic: u32,
    /// The sign `σ` in `(m·fo + σF)/n`.
    pub sign: Sign,
    /// Whether the IF is made as a sum, `n·f + m·fo`, because `m·fo` is below the IF.
    pub by_sum: bool,
    /// What it is called.
    pub kind: ResponseKind,
    /// How many times as fast as the dial the pitch of its beat with the station moves.
    pub pitch_slope: u32,
}

/// A response on or near a broadcast channel.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ChannelHit {
    /// The broadcast band.
    pub band: &'static Band,
    /// The carrier nearest to the response.
    pub carrier: Frequency,
    /// The pitch of its beat with a station that is exactly in tune; see
    /// [`Response::beat_with`].
    pub beat: Frequency,
}

impl Response {
    /// `m + n`.
    #[must_use]
    pub const fn order(&self) -> u32 {
        self.oscillator_harmonic + self.signal_harmonic
    }

    /// Whether the response lies between two frequencies, these included.
    #[must_use]
    pub fn is_within(&self, low: Frequency, high: Frequency) -> bool {
        low <= self.frequency && self.frequency <= high
    }

    /// What lies there in a Region: a broadcast band, another service or nothing listed.
    #[must_use]
    pub fn place(&self, region: Region) -> Place {
        place_of(self.frequency, region)
    }

    /// The broadcast channel it falls on in a Region; none outside the broadcast bands.
    #[must_use]
    pub fn channel(&self, region: Region) -> Option<ChannelHit> {
        let band = band_at(self.frequency, region)?;
        let carrier = band.raster.nearest(self.frequency);
        Some(ChannelHit {
            band,
            carrier,
            beat: self.beat_with(carrier),
        })
    }

    /// How far from the IF a carrier comes out, `n·|carrier − response|`: the pitch of its beat
    /// with a station that is exactly in tune.
    #[must_use]
    pub fn beat_with(&self, carrier: Frequency) -> Frequency {
        let away = (carrier.to_hz() - self.frequency.to_hz()).abs();
        Frequency::hz(f64::from(self.signal_harmonic) * away)
    }

    /// How many times as far as the dial its place moves, `m/n`; negative where it moves the
    /// other way, as one made by a sum does.
    ///
    /// ```
    /// use superhet::quantities::conversion::Side;
    /// use superhet::quantities::spurious_responses::responses;
    /// use superhet::units::Frequency;
    /// let (dial, f) = (Frequency::khz(950.0), Frequency::khz(455.0));
    /// let found = responses(dial, f, Side::Above, 2).unwrap();
    /// // F/2 and F stay, the station and its image go with the dial.
    /// let slopes: Vec<f64> = found.iter().map(|found| found.place_slope()).collect();
    /// assert_eq!(slopes, [0.0, 0.0, 1.0, 1.0]);
    /// ```
    #[must_use]
    pub fn place_slope(&self) -> f64 {
        let slope = f64::from(self.oscillator_harmonic) / f64::from(self.signal_harmonic);
        if self.by_sum { -slope } else { slope }
    }
}

/// How many times as fast as the dial the pitch of a product's beat moves.
///
/// `|s + σm|`, and `|s − m|` where the IF is a sum; see the module's own words.
///
/// ```
/// use superhet::quantities::conversion::{Side, Sign};
/// use superhet::quantities::spurious_responses::pitch_slope;
/// // Oscillator above: the image, a neighbour's carrier, a breakthrough.
/// assert_eq!(pitch_slope(1, Sign::Plus, Side::Above, false), 2);
/// assert_eq!(pitch_slope(1, Sign::Minus, Side::Above, false), 0);
/// assert_eq!(pitch_slope(0, Sign::Plus, Side::Above, false), 1);
/// ```
#[must_use]
pub const fn pitch_slope(oscillator_harmonic: u32, sign: Sign, side: Side, by_sum: bool) -> u32 {
    let outward = matches!(
        (side, sign),
        (Side::Above, Sign::Plus) | (Side::Below, Sign::Minus)
    );
    // A sum with the oscillator below counts like a product on its far side, and one with
    // the oscillator above like a product on its near side.
    let adds = if by_sum {
        matches!(side, Side::Below)
    } else {
        outward
    };
    if adds {
        oscillator_harmonic + 1
    } else {
        oscillator_harmonic.abs_diff(1)
    }
}

/// All responses of a set up to an order (at most [`HIGHEST_ORDER`]), lowest frequency
/// first, the lower order first where two coincide.
///
/// At most `order²` of them, in one allocation.
///
/// # Errors
/// As [`oscillator`].
///
/// ```
/// use superhet::quantities::conversion::Side;
/// use superhet::quantities::spurious_responses::{ResponseKind, responses};
/// use superhet::units::Frequency;
/// let (dial, f) = (Frequency::khz(950.0), Frequency::khz(455.0));
/// let found = responses(dial, f, Side::Above, 2).unwrap();
/// let khz: Vec<f64> = found.iter().map(|found| found.frequency.to_khz()).collect();
/// // F/2, F itself, the station and the image.
/// assert_eq!(khz, [227.5, 455.0, 950.0, 1860.0]);
/// assert_eq!(found[3].kind, ResponseKind::Image);
/// ```
pub fn responses(
    dial: Frequency,
    intermediate: Frequency,
    side: Side,
    order: u32,
) -> Result<Vec<Response>, ConversionError> {
    let oscillator = oscillator(dial, intermediate, side)?.to_hz();
    let order = order.min(HIGHEST_ORDER);
    let mut found = Vec::with_capacity((order * order) as usize);
    for m in 0..order {
        for n in 1..=order - m {
            for sign in [Sign::Plus, Sign::Minus] {
                // Without the oscillator both signs are the same place.
                if m > 0 || sign == Sign::Plus {
                    found.extend(product(
                        oscillator,
                        intermediate.to_hz(),
                        side,
                        (m, n, sign),
                    ));
                }
            }
        }
    }
    found.sort_unstable_by(|one, other| {
        let (lower, higher) = (one.frequency.to_hz(), other.frequency.to_hz());
        lower.total_cmp(&higher).then(rank(one).cmp(&rank(other)))
    });
    Ok(found)
}

/// What decides between responses at one place: no two have all of it alike.
fn rank(response: &Response) -> (u32, u32, bool) {
    (
        response.order(),
        response.oscillator_harmonic,
        response.sign == Sign::Minus,
    )
}

/// One response by the harmonics of oscillator and signal and by its sign; none where it would
/// be at 0 Hz.
///
/// # Errors
/// As [`oscillator`].
pub fn response(
    dial: Frequency,
    intermediate: Frequency,
    side: Side,
    harmonics: (u32, u32, Sign),
) -> Result<Option<Response>, ConversionError> {
    let oscillator = oscillator(dial, intermediate, side)?.to_hz();
    Ok(product(oscillator, intermediate.to_hz(), side, harmonics))
}

fn product(
    oscillator: f64,
    intermediate: f64,
    side: Side,
    (m, n, sign): (u32, u32, Sign),
) -> Option<Response> {
    let carried = f64::from(m) * oscillator;
    let reached = match sign {
        Sign::Plus => carried + intermediate,
        Sign::Minus => carried - intermediate,
    };
    let frequency = Frequency::hz(reached.abs() / f64::from(n));
    let by_sum = reached < 0.0;
    let slope = pitch_slope(m, sign, side, by_sum);
    let kind = match (m, n, slope) {
        (0, 1, _) => ResponseKind::Breakthrough,
        (1, 1, 0) => ResponseKind::Wanted,
        (1, 1, _) => ResponseKind::Image,
        _ => ResponseKind::Product,
    };
    (reached != 0.0).then_some(Response {
        frequency,
        oscillator_harmonic: m,
        signal_harmonic: n,
        sign,
        by_sum,
        kind,
        pitch_slope: slope,
    })
}
