//! The radio services that Article 5 allocates bands to.

/// A service of the Radio Regulations, as far as this table tells them apart.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[repr(u8)]
pub enum Service {
    /// Between fixed points.
    Fixed,
    /// Any moving station.
    Mobile,
    /// Any moving station but aircraft (or but aircraft on civil routes).
    MobileExceptAeronautical,
    /// Vehicles.
    LandMobile,
    /// Ships and their coast stations.
    MaritimeMobile,
    /// Distress and calling, centred on 2182 kHz.
    DistressAndCalling,
    /// Aircraft and their ground stations, on civil routes (R) or off them (OR).
    AeronauticalMobile,
    /// Broadcasting to the public.
    Broadcasting,
    /// Amateurs, as a primary service.
    Amateur,
    /// Amateurs, who must not disturb the primary services.
    AmateurSecondary,
    /// Finding one's position.
    Radionavigation,
    /// Beacons for aircraft.
    AeronauticalRadionavigation,
    /// Beacons for ships.
    MaritimeRadionavigation,
    /// Finding the position of something else.
    Radiolocation,
    /// Standard frequencies and time signals.
    StandardFrequency,
    /// Listening to the sky.
    RadioAstronomy,
    /// Weather balloons and the like.
    MeteorologicalAids,
}

impl Service {
    /// The service in words, as it stands in a sentence.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Fixed => "fixed",
            Self::Mobile => "mobile",
            Self::MobileExceptAeronautical => "mobile (except aeronautical)",
            Self::LandMobile => "land mobile",
            Self::MaritimeMobile => "maritime mobile",
            Self::DistressAndCalling => "mobile (distress and calling)",
            Self::AeronauticalMobile => "aeronautical mobile",
            Self::Broadcasting => "broadcasting",
            Self::Amateur => "amateur",
            Self::AmateurSecondary => "amateur (secondary)",
            Self::Radionavigation => "radionavigation",
            Self::AeronauticalRadionavigation => "radionavigation (aeronautical)",
            Self::MaritimeRadionavigation => "radionavigation (maritime)",
            Self::Radiolocation => "radiolocation",
            Self::StandardFrequency => "standard frequency and time signal",
            Self::RadioAstronomy => "radio astronomy",
            Self::MeteorologicalAids => "meteorological aids",
        }
    }
}
