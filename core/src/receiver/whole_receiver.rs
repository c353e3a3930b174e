//! A whole receiver, worked out from its profile.

use alloc::string::String;
use alloc::vec::Vec;
use alloc::{borrow::ToOwned, format};

use super::dial_scale::Gang;
use super::read_set::read;
use super::{
    Agc, Band, Detector, Fault, IfChain, Mixer, ReceiverError, Response, SetProfile, Setting,
    Tuning,
};
use crate::quantities::bands::Region;
use crate::quantities::conversion::{Side, dial, oscillator};
use crate::units::Frequency;

/// One position of the selectivity switch with the chain that it makes.
#[derive(Clone, Debug, PartialEq)]
pub struct Position {
    /// Its short name in links and files; empty where no switch is fitted.
    pub id: String,
    /// What the switch calls it.
    pub name: String,
    /// The IF transformers as they are coupled in this position.
    pub chain: IfChain,
}

/// A whole receiver: made from a [`SetProfile`], asked for responses.
///
/// What each path counts and leaves out is said in the [module's](super) own words.
#[derive(Clone, Debug, PartialEq)]
pub struct Receiver {
    pub(super) name: String,
    pub(super) intermediate: Frequency,
    pub(super) side: Side,
    pub(super) region: Region,
    pub(super) gang: Option<Gang>,
    pub(super) bands: Vec<Band>,
    pub(super) mixer: Mixer,
    pub(super) positions: Vec<Position>,
    pub(super) position: usize,
    pub(super) detector: Option<Detector>,
    pub(super) agc: Option<Agc>,
}

impl Receiver {
    /// The receiver that a profile describes.
    ///
    /// # Errors
    /// Every fault of the profile.
    ///
    /// ```
    /// use superhet::receiver::{Receiver, SetProfile};
    /// let receiver = Receiver::new(&SetProfile::plain()).unwrap();
    /// assert_eq!(receiver.intermediate().to_khz(), 470.0);
    /// // An empty profile lacks IF, side, bands and transformers: all is said.
    /// assert_eq!(Receiver::new(&SetProfile::default()).unwrap_err().len(), 4);
    /// ```
    pub fn new(profile: &SetProfile) -> Result<Self, Vec<Fault>> {
        read(profile)
    }

    /// What people call the set.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
    }

    /// The intermediate frequency that the set was made for.
    #[must_use]
    pub const fn intermediate(&self) -> Frequency {
        self.intermediate
    }

    /// The side on which the oscillator runs.
    #[must_use]
    pub const fn side(&self) -> Side {
        self.side
    }

    /// The ITU Region whose channels it hears.
    #[must_use]
    pub const fn region(&self) -> Region {
        self.region
    }

    /// The bands, in the order of the wave-change switch.
    #[must_use]
    pub fn bands(&self) -> &[Band] {
        &self.bands
    }

    /// What the mixer does beside its work.
    #[must_use]
    pub const fn mixer(&self) -> &Mixer {
        &self.mixer
    }

    /// The positions of the selectivity switch; one without a name where none is fitted.
    #[must_use]
    pub fn positions(&self) -> &[Position] {
        &self.positions
    }

    /// The detector, where the profile has one.
    #[must_use]
    pub const fn detector(&self) -> Option<&Detector> {
        self.detector.as_ref()
    }

    /// The automatic gain control, where one is fitted.
    #[must_use]
    pub const fn agc(&self) -> Option<&Agc> {
        self.agc.as_ref()
    }

    /// The IF chain as the selectivity switch stands.
    #[must_use]
    pub fn if_chain(&self) -> &IfChain {
        &self.positions[self.position].chain
    }

    /// The same receiver with its selectivity switch in another position.
    ///
    /// # Errors
    /// When the switch has no such position.
    ///
    /// ```
    /// use superhet::receiver::{Receiver, SetProfile};
    /// let receiver = Receiver::new(&SetProfile::plain()).unwrap();
    /// let said = receiver.with_selectivity("wide").unwrap_err().to_string();
    /// assert_eq!(said, "selectivity: this set has no switch for it (got \"wide\")");
    /// ```
    pub fn with_selectivity(mut self, id: &str) -> Result<Self, ReceiverError> {
        let found = self.positions.iter().position(|one| one.id == id);
        let Some(position) = found.filter(|_| !id.is_empty()) else {
            let ids = self.positions.iter().map(|one| one.id.as_str());
            let ids = ids.filter(|id| !id.is_empty()).collect::<Vec<_>>();
            return Err(ReceiverError::NoPosition {
                id: id.to_owned(),
                ids: ids.join(", "),
            });
        };
        self.position = position;
        Ok(self)
    }

    /// The band with an id.
    ///
    /// # Errors
    /// When there is none.
    pub fn band(&self, id: &str) -> Result<&Band, ReceiverError> {
        self.bands.iter().find(|band| band.id == id).ok_or_else(|| {
            let ids: Vec<&str> = self.bands.iter().map(|band| band.id.as_str()).collect();
            ReceiverError::NoBand {
                id: id.to_owned(),
                ids: ids.join(", "),
            }
        })
    }

    /// Where the circuits are with the pointer at a reading, on the first band that has it.
    ///
    /// # Errors
    /// When no band has it, or the oscillator's parts leave no station to receive.
    pub fn setting(&self, reading: Frequency) -> Result<Setting<'_>, ReceiverError> {
        let band = self.bands.iter().find(|band| band.covers(reading));
        let band = band.ok_or_else(|| self.off_the_dial(reading, &self.bands))?;
        self.setting_on(band, reading)
    }

    /// As [`Self::setting`], on one of the receiver's own bands.
    ///
    /// # Errors
    /// As [`Self::setting`].
    pub fn setting_on<'r>(
        &self,
        band: &'r Band,
        reading: Frequency,
    ) -> Result<Setting<'r>, ReceiverError> {
        if !band.covers(reading) {
            return Err(self.off_the_dial(reading, core::slice::from_ref(band)));
        }
        let gang = self.gang.as_ref();
        let oscillator = match band.oscillator_resonance(reading, gang) {
            Some(frequency) => frequency,
            None => oscillator(reading, self.intermediate, self.side)?,
        };
        Ok(Setting {
            band,
            reading,
            oscillator,
            aerial: band.aerial_resonance(reading, gang),
            received: match band.oscillator {
                // Back and forth over the IF would leave a rounding of its own.
                None => reading,
                Some(_) => dial(oscillator, self.intermediate, self.side)?,
            },
        })
    }

    /// The receiver with its pointer at a reading, made ready for many signals.
    ///
    /// # Errors
    /// As [`Self::setting`].
    pub fn tune(&self, reading: Frequency) -> Result<Tuning<'_>, ReceiverError> {
        Ok(self.tuned(self.setting(reading)?))
    }

    /// As [`Self::tune`], from a setting of this receiver.
    #[must_use]
    pub fn tuned<'r>(&'r self, setting: Setting<'r>) -> Tuning<'r> {
        let chain = self.if_chain();
        Tuning::new(setting, chain, &self.mixer, self.side, self.intermediate)
    }

    /// The response to one signal with the pointer at a reading. For many signals,
    /// [`Self::tune`] once.
    ///
    /// # Errors
    /// As [`Self::setting`].
    ///
    /// ```
    /// use superhet::receiver::{Receiver, SetProfile};
    /// use superhet::units::Frequency;
    /// let receiver = Receiver::new(&SetProfile::plain()).unwrap();
    /// let dial = Frequency::khz(1000.0);
    /// // The station on the dial is within half a decibel of the peak; 9 kHz beside it is not.
    /// let at = |khz| receiver.response(dial, Frequency::khz(khz)).unwrap().wanted.to_db();
    /// assert!(at(1000.0).abs() < 0.5 && at(1009.0) > 35.0);
    /// ```
    pub fn response(
        &self,
        reading: Frequency,
        signal: Frequency,
    ) -> Result<Response, ReceiverError> {
        Ok(self.tune(reading)?.response(signal))
    }

    fn off_the_dial(&self, reading: Frequency, bands: &[Band]) -> ReceiverError {
        let name = |band: &Band| format!("{} {} to {}", band.name, band.low(), band.high());
        let bands: Vec<String> = bands.iter().map(name).collect();
        ReceiverError::OffTheDial {
            reading,
            bands: bands.join(", "),
        }
    }
}
