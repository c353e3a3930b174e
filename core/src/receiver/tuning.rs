//! A receiver tuned to one dial setting: its response to any signal.

use super::band::Band;
use super::if_chain::{IfChain, Window};
use super::mixer::Mixer;
use super::passband::{Passband, shape_factor};
use super::response::{Response, together};
use super::setting::Setting;
use crate::quantities::conversion::Side;
use crate::units::{Decibels, Frequency};

/// A receiver with its pointer at one reading, made ready for many signals.
///
/// Made by [`Receiver::tune`](super::Receiver::tune).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tuning<'r> {
    setting: Setting<'r>,
    paths: Paths<'r>,
    peak: f64,
    least: f64,
}

/// What every path needs.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Paths<'r> {
    band: &'r Band,
    chain: &'r IfChain,
    mixer: &'r Mixer,
    side: Side,
    intermediate: f64,
    oscillator: f64,
    aerial: Frequency,
}

impl<'r> Tuning<'r> {
    pub(super) fn new(
        setting: Setting<'r>,
        chain: &'r IfChain,
        mixer: &'r Mixer,
        side: Side,
        intermediate: Frequency,
    ) -> Self {
        let paths = Paths {
            band: setting.band,
            chain,
            mixer,
            side,
            intermediate: intermediate.to_hz(),
            oscillator: setting.oscillator.to_hz(),
            aerial: setting.aerial,
        };
        let (peak, least) = paths.passband().peak();
        Self {
            setting,
            paths,
            peak: paths.signal(peak),
            least,
        }
    }

    /// Where the circuits are.
    #[must_use]
    pub const fn setting(&self) -> &Setting<'r> {
        &self.setting
    }

    /// The wanted signal that comes through best: 0 dB in every response.
    #[must_use]
    pub const fn peak(&self) -> Frequency {
        Frequency::hz(self.peak)
    }

    /// The response to one signal, in decibels under the wanted signal's peak.
    ///
    /// ```
    /// use superhet::receiver::{Receiver, SetProfile};
    /// use superhet::units::Frequency;
    /// let receiver = Receiver::new(&SetProfile::plain()).unwrap();
    /// let tuning = receiver.tune(Frequency::khz(1000.0)).unwrap();
    /// let image = tuning.response(Frequency::khz(1940.0));
    /// // Q 80 and y = 1.94 − 1/1.94 = 1.4245: 20·log10(114) = 41.1 dB, and no wanted path.
    /// assert!((image.image.to_db() - 41.1).abs() < 0.1);
    /// assert_eq!(image.wanted.to_db(), f64::INFINITY);
    /// ```
    #[must_use]
    pub fn response(&self, signal: Frequency) -> Response {
        let hertz = signal.to_hz();
        let aerial = self.paths.band.aerial_attenuation(hertz, self.paths.aerial) - self.least;
        let chain = |at: f64| Decibels::db(aerial + self.paths.chain.under_centre(at));
        let straight = chain(hertz).to_db() - self.paths.mixer.straight_gain.to_db();
        Response {
            wanted: chain(self.paths.wanted_at(hertz)),
            image: chain(self.paths.image_at(hertz)),
            breakthrough: Decibels::db(straight),
            harmonic: Decibels::db(aerial + self.paths.harmonics(hertz)),
        }
    }

    /// The two channels beside the received station: lower and upper, as wanted signals.
    ///
    /// ```
    /// use superhet::receiver::{Receiver, SetProfile};
    /// use superhet::units::Frequency;
    /// let receiver = Receiver::new(&SetProfile::plain()).unwrap();
    /// let tuning = receiver.tune(Frequency::khz(1000.0)).unwrap();
    /// let (lower, upper) = tuning.adjacent_channels(Frequency::khz(9.0));
    /// // Two transformers of 17.4 dB each, and 3.5 to 5 dB by the aerial circuit.
    /// assert!(lower.to_db() > 37.0 && upper.to_db() > 37.0);
    /// assert!(lower.to_db() < 41.0 && upper.to_db() < 41.0);
    /// ```
    #[must_use]
    pub fn adjacent_channels(&self, spacing: Frequency) -> (Decibels, Decibels) {
        let beside = |by: f64| {
            let station = Frequency::hz(self.setting.received.to_hz() + by);
            self.response(station).wanted
        };
        (beside(-spacing.to_hz()), beside(spacing.to_hz()))
    }

    /// The outermost two wanted signals that are a drop under the peak, aerial circuits and
    /// IF chain together. None where the response never falls so far.
    #[must_use]
    pub fn edges(&self, drop: Decibels) -> Option<(Frequency, Frequency)> {
        let peak = self.paths.wanted_at(self.peak);
        let level = self.least + drop.to_db();
        let (one, other) = self.paths.passband().edges(peak, level)?;
        let (one, other) = (self.paths.signal(one), self.paths.signal(other));
        Some((Frequency::hz(one.min(other)), Frequency::hz(one.max(other))))
    }

    /// The distance between the [`Self::edges`].
    #[must_use]
    pub fn bandwidth(&self, drop: Decibels) -> Option<Frequency> {
        let (lower, upper) = self.edges(drop)?;
        Some(Frequency::hz(upper.to_hz() - lower.to_hz()))
    }

    /// The bandwidth at 60 dB over that at 6 dB, aerial circuits and IF chain together.
    #[must_use]
    pub fn shape_factor(&self) -> Option<f64> {
        shape_factor(|drop| self.bandwidth(drop))
    }
}

impl<'r> Paths<'r> {
    /// Where a signal stands in the IF chain as a wanted one; not above 0 Hz where it has no
    /// such path.
    fn wanted_at(&self, hertz: f64) -> f64 {
        match self.side {
            Side::Above => self.oscillator - hertz,
            Side::Below => hertz - self.oscillator,
        }
    }

    /// Where it stands as an image.
    fn image_at(&self, hertz: f64) -> f64 {
        match self.side {
            Side::Above => hertz - self.oscillator,
            Side::Below if self.oscillator < self.intermediate => hertz + self.oscillator,
            Side::Below => self.oscillator - hertz,
        }
    }

    /// The wanted signal that stands at a frequency in the IF chain.
    fn signal(&self, at: f64) -> f64 {
        match self.side {
            Side::Above => self.oscillator - at,
            Side::Below => self.oscillator + at,
        }
    }

    /// The chain and the mixer for all harmonics of the oscillator together.
    fn harmonics(&self, hertz: f64) -> f64 {
        let one = |(gain, harmonic): (&Decibels, u32)| {
            let at = (f64::from(harmonic) * self.oscillator - hertz).abs();
            self.chain.under_centre(at) - gain.to_db()
        };
        together(self.mixer.harmonic_gains.iter().zip(2..).map(one))
    }

    /// Aerial circuits and chain over the frequency in the chain.
    fn passband(self) -> Passband<impl Fn(f64) -> f64> {
        let Window { low, high, step } = self.chain.window();
        // A badly mistuned aerial circuit pulls the peak towards itself.
        let aerial_at = self.wanted_at(self.aerial.to_hz());
        let (low, high) = match aerial_at > 0.0 {
            true => (low.min(aerial_at), high.max(aerial_at)),
            false => (low, high),
        };
        let aerial_step = self.aerial.to_hz() / (8.0 * self.band.aerial_q);
        let attenuation = move |at: f64| {
            let aerial = self.band.aerial_attenuation(self.signal(at), self.aerial);
            aerial + self.chain.under_centre(at)
        };
        Passband::new(attenuation, low, high, step.min(aerial_step))
    }
}
