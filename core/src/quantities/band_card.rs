//! What a set does at every channel of a band, in columns: the card to keep beside it.
//!
//! In scope: an oscillator above the signal, made exact at three settings, and alike,
//! separate signal circuits. Left out: whistles and other responses
//! (see [`spurious_responses`](super::spurious_responses)).
//!
//! Whole columns are worked out at once; the entries for one channel are those of
//! [`conversion`](super::conversion), [`selectivity`](super::selectivity) and
//! [`ThreePoints`].
//!
//! DIFFERENCE: from those by rounding alone: 1e-14 of a frequency's error, 1e-13 dB of an
//! attenuation's (tested).

use alloc::vec::Vec;

use super::decimal_log::log10;
use super::selectivity::offset_hz;
use super::tracking::ThreePoints;
use crate::units::{Decibels, Frequency};

/// The circuits between the aerial and the mixer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SignalCircuits {
    /// The loaded Q of each, held constant over the band.
    pub loaded_q: f64,
    /// How many there are, alike and separate.
    pub circuits: u32,
}

/// The columns of a card, an entry a channel.
#[derive(Clone, Debug, PartialEq)]
pub struct BandCard {
    /// Where the oscillator should be: `dial + IF`.
    pub oscillator: Vec<Frequency>,
    /// Where the image is: `dial + 2·IF`.
    pub image: Vec<Frequency>,
    /// How much weaker than the station the signal circuits make its image.
    pub image_rejection: Vec<Decibels>,
    /// How much weaker they make a signal at the IF itself.
    pub if_rejection: Vec<Decibels>,
    /// How much too high the oscillator is.
    pub tracking_error: Vec<Frequency>,
    /// What one signal circuit loses by the tracking error.
    pub loss: Vec<Decibels>,
}

impl BandCard {
    /// The card of a set for the channels at `dials`.
    ///
    /// ```
    /// use superhet::quantities::band_card::{BandCard, SignalCircuits};
    /// use superhet::quantities::conversion::Side;
    /// use superhet::quantities::tracking::ThreePoints;
    /// use superhet::units::Frequency;
    /// let settings = [600.0, 950.0, 1500.0].map(Frequency::khz);
    /// let curve = ThreePoints::new(settings, Frequency::khz(455.0), Side::Above).unwrap();
    /// let signal = SignalCircuits { loaded_q: 40.0, circuits: 1 };
    /// let card = BandCard::new(&[Frequency::khz(590.0)], &curve, signal);
    /// assert_eq!(card.oscillator[0], Frequency::khz(1045.0));
    /// assert_eq!(card.image[0], Frequency::khz(1500.0));
    /// // A textbook's example: 38.687 dB.
    /// assert!((card.image_rejection[0].to_db() - 38.687).abs() < 0.0005);
    /// ```
    #[must_use]
    pub fn new(dials: &[Frequency], curve: &ThreePoints, signal: SignalCircuits) -> Self {
        let (curve, middle) = (*curve, curve.intermediate().to_hz());
        let SignalCircuits { loaded_q, circuits } = signal;
        let image: Vec<Frequency> = column(dials, move |dial| dial + 2.0 * middle);
        let tracking_error = column(dials, move |dial| curve.error_in_column(dial));
        let received = dials.iter().zip(&tracking_error);
        let received = received.map(|(dial, error)| dial.to_hz() + error.to_hz());
        Self {
            oscillator: column(dials, move |dial| dial + middle),
            image_rejection: attenuations(
                dials,
                image.iter().map(|f| f.to_hz()),
                loaded_q,
                circuits,
            ),
            if_rejection: attenuations(dials, dials.iter().map(|_| middle), loaded_q, circuits),
            loss: attenuations(dials, received, loaded_q, 1),
            image,
            tracking_error,
        }
    }
}

fn column(dials: &[Frequency], entry: impl Fn(f64) -> f64) -> Vec<Frequency> {
    let entry = move |dial: &Frequency| Frequency::hz(entry(dial.to_hz()));
    dials.iter().map(entry).collect()
}

/// What `circuits` tuned to each dial setting take away from a frequency that goes with it.
fn attenuations(
    dials: &[Frequency],
    frequencies: impl Iterator<Item = f64>,
    loaded_q: f64,
    circuits: u32,
) -> Vec<Decibels> {
    let weakenings: Vec<f64> = dials
        .iter()
        .zip(frequencies)
        .map(move |(dial, f)| {
            let qy = loaded_q * offset_hz(f, dial.to_hz());
            1.0 + qy * qy
        })
        .collect();
    let each = 10.0 * f64::from(circuits);
    let decibels = move |weakening: &f64| Decibels::db(each * log10(*weakening));
    weakenings.iter().map(decibels).collect()
}

#[cfg(test)]
mod tests {
    use super::{BandCard, SignalCircuits};
    use crate::quantities::conversion::{Side, image, oscillator};
    use crate::quantities::selectivity::{if_rejection, image_rejection};
    use crate::quantities::tracking::ThreePoints;
    use crate::units::Frequency;
    use std::vec::Vec;

    /// The quick square root is 2 ulp off, some ten roundings come to it.
    const FREQUENCY: f64 = 1e-14;

    /// The attenuation of one circuit from `1 + q²y²`, which keeps 2⁻⁵³ of itself: 5e-16 dB,
    /// and of each decibel the rounding of a dozen operations; of 200 dB at most.
    const DECIBELS: f64 = 1e-13;

    #[test]
    fn each_channel_is_what_the_entries_say() {
        let settings = [600.0, 950.0, 1500.0].map(Frequency::khz);
        let middle = Frequency::khz(470.0);
        let curve = ThreePoints::new(settings, middle, Side::Above).unwrap();
        let signal = SignalCircuits {
            loaded_q: 80.0,
            circuits: 2,
        };
        let channels = (0..120).map(|place| Frequency::khz(531.0 + 9.0 * f64::from(place)));
        let dials: Vec<Frequency> = channels.collect();
        let card = BandCard::new(&dials, &curve, signal);
        for (place, dial) in dials.into_iter().enumerate() {
            assert_eq!(
                Ok(card.oscillator[place]),
                oscillator(dial, middle, Side::Above)
            );
            assert_eq!(Ok(card.image[place]), image(dial, middle, Side::Above));
            let error = curve.error(dial).to_hz();
            let got = card.tracking_error[place].to_hz();
            assert!(
                (got - error).abs() <= FREQUENCY * error.abs(),
                "{dial}: {got} {error}"
            );
            for (what, got, expected) in [
                (
                    "image",
                    card.image_rejection[place],
                    image_rejection(dial, middle, Side::Above, 80.0, 2).unwrap(),
                ),
                (
                    "IF",
                    card.if_rejection[place],
                    if_rejection(dial, middle, 80.0, 2),
                ),
                ("loss", card.loss[place], curve.loss(dial, 80.0)),
            ] {
                let difference = (got.to_db() - expected.to_db()).abs();
                assert!(difference <= DECIBELS, "{what} at {dial}: {difference:e}");
            }
        }
    }

    #[test]
    fn a_card_of_no_channels_is_empty() {
        let settings = [600.0, 950.0, 1500.0].map(Frequency::khz);
        let curve = ThreePoints::new(settings, Frequency::khz(470.0), Side::Above).unwrap();
        let signal = SignalCircuits {
            loaded_q: 80.0,
            circuits: 1,
        };
        assert!(BandCard::new(&[], &curve, signal).loss.is_empty());
    }
}
