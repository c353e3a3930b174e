//! A plain set to start from.

use alloc::string::ToString;
use alloc::vec;

use super::{BandProfile, IfTransformerProfile, SetProfile, WindingProfile};

impl SetProfile {
    /// A set whose circuits all follow the dial exactly: IF 470 kHz, oscillator above, medium
    /// wave on a rod of Q 80, two IF transformers of Q 100 at critical coupling.
    ///
    /// Somebody who knows nothing but the IF of a set starts from it and types that.
    ///
    /// ```
    /// use superhet::receiver::{Receiver, SetProfile};
    /// use superhet::units::Frequency;
    /// let mut profile = SetProfile::plain();
    /// profile.intermediate = "125 kHz".into();
    /// let receiver = Receiver::new(&profile).unwrap();
    /// let setting = receiver.setting(Frequency::khz(1000.0)).unwrap();
    /// assert_eq!(setting.oscillator, Frequency::khz(1125.0));
    /// ```
    #[must_use]
    pub fn plain() -> Self {
        let winding = WindingProfile {
            capacitance: "200 pF".into(),
            q: 100.0.into(),
            ..WindingProfile::default()
        };
        let transformer = IfTransformerProfile {
            coupling: 0.01.into(),
            primary: winding.clone(),
            secondary: winding,
        };
        let band = BandProfile {
            id: "medium-wave".to_string(),
            name: "Medium wave".to_string(),
            low: "525 kHz".into(),
            high: "1605 kHz".into(),
            aerial_q: 80.0.into(),
            ..BandProfile::default()
        };
        Self {
            name: "Plain set".to_string(),
            intermediate: "470 kHz".into(),
            side: "above".into(),
            bands: vec![band],
            if_transformers: vec![transformer.clone(), transformer],
            ..Self::default()
        }
    }
}
