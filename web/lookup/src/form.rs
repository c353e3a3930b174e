//! What stands in the page's boxes and buttons, as text.

use alloc::borrow::ToOwned;
use alloc::string::String;
use superhet::quantities::bands::Region;
use superhet::quantities::conversion::Side;

/// Which of the three frequencies is worked out from the other two.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Find {
    /// Oscillator from dial and IF: the usual case.
    Oscillator,
    /// Dial from oscillator and IF.
    Dial,
    /// IF from dial and oscillator.
    Intermediate,
}

/// The unit button pressed beside a box.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unit {
    /// kHz
    Kilohertz,
    /// MHz
    Megahertz,
    /// Metres of wavelength.
    Metres,
}

impl Unit {
    /// The unit as its button shows it and as it is typed.
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Kilohertz => "kHz",
            Self::Megahertz => "MHz",
            Self::Metres => "m",
        }
    }

    /// The unit with this symbol.
    #[must_use]
    pub fn from_symbol(symbol: &str) -> Option<Self> {
        match symbol {
            "kHz" => Some(Self::Kilohertz),
            "MHz" => Some(Self::Megahertz),
            "m" => Some(Self::Metres),
            _ => None,
        }
    }
}

/// Which dial settings the card lists.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Rows {
    /// The band's ends and the round figures between them.
    Round,
    /// Every channel of the band.
    EveryChannel,
}

/// Everything the page holds.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Form {
    /// What is worked out.
    pub find: Find,
    /// The dial box.
    pub dial: String,
    /// The button pressed beside it.
    pub dial_unit: Unit,
    /// The oscillator box.
    pub oscillator: String,
    /// The button pressed beside it.
    pub oscillator_unit: Unit,
    /// The IF box, in kHz unless a unit is typed. Empty while no IF has been chosen.
    pub intermediate: String,
    /// Which side of the signal the oscillator runs on.
    pub side: Side,
    /// The ITU Region.
    pub region: Region,
    /// What the card lists.
    pub rows: Rows,
}

impl Default for Form {
    /// The example set, before anybody has said anything: 1200 kHz, oscillator above.
    fn default() -> Self {
        Self {
            find: Find::Oscillator,
            dial: "1200".to_owned(),
            dial_unit: Unit::Kilohertz,
            oscillator: String::new(),
            oscillator_unit: Unit::Kilohertz,
            intermediate: String::new(),
            side: Side::Above,
            region: Region::One,
            rows: Rows::Round,
        }
    }
}
