//! Why an expression has no answer.

use crate::quantities::conversion::ConversionError;
use crate::quantities::coupled_pair::NarrowBandError;
use crate::quantities::detection::DetectionError;
use crate::quantities::modulation::ModulationError;
use crate::quantities::tracking::TrackingError;
use alloc::string::{String, ToString};
use core::fmt;

/// Characters of a refusal's sentence, at most.
const LONGEST_SENTENCE: usize = 400;

/// A refused expression: one sentence that says what, the rule and the value.
///
/// ```
/// let refusal = superhet::catalogue::evaluate("beat?f1=909kHz&f2=loud").unwrap_err();
/// assert_eq!(refusal.parameter(), Some("f2"));
/// assert_eq!(
///     refusal.to_string(),
///     "f2: a frequency starts with a number, such as 1200 kHz (got \"loud\")"
/// );
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refusal {
    name: String,
    parameter: Option<&'static str>,
    sentence: String,
}

impl Refusal {
    /// A refusal for a reason of the quantity's own.
    #[must_use]
    pub fn new(sentence: String) -> Self {
        Self {
            name: String::new(),
            parameter: None,
            sentence: bounded(sentence),
        }
    }

    /// The same refusal, to be shown beside this parameter.
    #[must_use]
    pub fn beside(mut self, parameter: &'static str) -> Self {
        self.parameter = Some(parameter);
        self
    }

    pub(super) fn of_quantity(mut self, name: &str) -> Self {
        self.name = String::from(name);
        self
    }

    /// The quantity's name as it was typed; empty where none could be read.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
    }

    /// The parameter that the refusal is about, where it is about one.
    #[must_use]
    pub const fn parameter(&self) -> Option<&'static str> {
        self.parameter
    }

    /// The sentence: at most 400 characters, in one line.
    #[must_use]
    pub fn sentence(&self) -> &str {
        &self.sentence
    }
}

/// The sentence, cut where it would be too long; no rule here needs the cut.
fn bounded(mut sentence: String) -> String {
    if let Some((end, _)) = sentence.char_indices().nth(LONGEST_SENTENCE) {
        sentence.truncate(end);
    }
    sentence
}

impl fmt::Display for Refusal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.sentence)
    }
}

impl core::error::Error for Refusal {}

impl From<ConversionError> for Refusal {
    fn from(error: ConversionError) -> Self {
        Self::new(error.sentence()).beside(error.parameter())
    }
}

impl From<NarrowBandError> for Refusal {
    fn from(error: NarrowBandError) -> Self {
        let refusal = Self::new(error.to_string());
        match error {
            NarrowBandError::TooFar { .. } => refusal.beside("f"),
            NarrowBandError::TooWide(_) => refusal,
        }
    }
}

impl From<TrackingError> for Refusal {
    fn from(error: TrackingError) -> Self {
        let refusal = Self::new(error.to_string());
        match error {
            TrackingError::OscillatorBelow => refusal.beside("side"),
            TrackingError::EndsOutOfOrder { .. } => refusal.beside("f-high"),
            TrackingError::NoPositiveParts | TrackingError::NoBestPoints => refusal,
        }
    }
}

impl From<ModulationError> for Refusal {
    fn from(error: ModulationError) -> Self {
        let beside = match error {
            ModulationError::Overmodulated(_) => "m1",
            ModulationError::AudioReachesCarrier { .. } => "audio",
            ModulationError::EnvelopeOutOfOrder { .. } | ModulationError::NoEnvelope => "e-min",
        };
        Self::new(error.to_string()).beside(beside)
    }
}

impl From<DetectionError> for Refusal {
    fn from(error: DetectionError) -> Self {
        Self::new(error.to_string()).beside("r-ac")
    }
}
