//! A receiver with its pointer at one reading: where its circuits are.

use super::Band;
use crate::quantities::selectivity::selectivity;
use crate::units::{Decibels, Frequency};

/// Where the circuits of a receiver are with the pointer at one reading.
///
/// **Tracking error is not dial error.** The oscillator decides which station comes in:
/// [`received`](Self::received), `oscillator − sF`. Against the pointer's reading that is
/// the [dial error](Self::dial_error); against the aerial circuit's resonance it is the
/// [tracking error](Self::tracking_error), which costs strength and moves no mark.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Setting<'r> {
    /// The band that is switched in.
    pub band: &'r Band,
    /// What the pointer says.
    pub reading: Frequency,
    /// Where the oscillator runs.
    pub oscillator: Frequency,
    /// Where the aerial circuit is tuned.
    pub aerial: Frequency,
    /// The station that comes in: oscillator − sF.
    pub received: Frequency,
}

impl Setting<'_> {
    /// How much higher the received station is than the pointer's reading.
    ///
    /// ```
    /// use superhet::receiver::{Receiver, SetProfile};
    /// use superhet::units::Frequency;
    /// // A set whose oscillator follows exactly says what it receives.
    /// let receiver = Receiver::new(&SetProfile::plain()).unwrap();
    /// let setting = receiver.setting(Frequency::khz(1000.0)).unwrap();
    /// assert_eq!(setting.received, Frequency::khz(1000.0));
    /// assert_eq!(setting.dial_error(), Frequency::hz(0.0));
    /// ```
    #[must_use]
    pub fn dial_error(&self) -> Frequency {
        Frequency::hz(self.received.to_hz() - self.reading.to_hz())
    }

    /// How much higher the oscillator is than one IF from the aerial circuit's resonance.
    #[must_use]
    pub fn tracking_error(&self) -> Frequency {
        Frequency::hz(self.received.to_hz() - self.aerial.to_hz())
    }

    /// What the aerial circuits lose of the received station for not being tuned to it.
    #[must_use]
    pub fn tracking_loss(&self) -> Decibels {
        let band = self.band;
        selectivity(
            self.received,
            self.aerial,
            band.aerial_q,
            band.aerial_circuits,
        )
    }
}
