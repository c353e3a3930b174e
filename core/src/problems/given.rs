//! Drawing a given: the n-th entry of a list, or a whole number of steps of a range.

use alloc::{format, string::String};

use crate::units::Kind;

use super::{
    draw::Draw,
    family::{Given, Range},
};

/// Every kind that a given can have.
const KINDS: [Kind; 14] = [
    Kind::Frequency,
    Kind::Wavelength,
    Kind::Inductance,
    Kind::Capacitance,
    Kind::Resistance,
    Kind::Voltage,
    Kind::Power,
    Kind::Conductance,
    Kind::Duration,
    Kind::Decibels,
    Kind::Ratio,
    Kind::Depth,
    Kind::Integer,
    Kind::Choice,
];

impl Given {
    /// The kind by its name.
    pub fn kind(&self) -> Option<Kind> {
        KINDS.into_iter().find(|kind| kind.name() == self.kind)
    }

    /// How many different values can be drawn.
    pub fn count(&self) -> u32 {
        match &self.range {
            Some(range) => range.count(),
            None => u32::try_from(self.values.len()).unwrap_or(u32::MAX),
        }
    }

    /// The n-th value, written as a person would; empty where there is none.
    pub fn nth(&self, place: u32) -> String {
        match &self.range {
            Some(range) => range.nth(place),
            None => self.values.get(place as usize).cloned().unwrap_or_default(),
        }
    }

    /// A value drawn.
    pub fn drawn(&self, draw: &mut Draw) -> String {
        self.nth(draw.below(self.count()))
    }
}

impl Range {
    fn count(&self) -> u32 {
        match self.step {
            0 => 1,
            step => self.to.saturating_sub(self.from) / step + 1,
        }
    }

    fn nth(&self, place: u32) -> String {
        let whole = self.from.saturating_add(place.saturating_mul(self.step));
        let number = with_point(whole, self.places);
        if self.unit.is_empty() {
            number
        } else {
            format!("{number} {}", self.unit)
        }
    }
}

/// A whole number of tenths, hundredths ... as digits with a point, made from integers:
/// 955 with two places is `9.55`, 950 is `9.5`, 900 is `9`.
fn with_point(whole: u32, places: u8) -> String {
    let Some(unit) = 10_u32.checked_pow(u32::from(places)) else {
        return format!("{whole}");
    };
    let (before, after) = (whole / unit, whole % unit);
    if after == 0 {
        return format!("{before}");
    }
    let digits = format!("{after:0width$}", width = usize::from(places));
    format!("{before}.{}", digits.trim_end_matches('0'))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn range(from: u32, to: u32, step: u32, places: u8, unit: &str) -> Range {
        Range {
            from,
            to,
            step,
            places,
            unit: unit.into(),
        }
    }

    #[test]
    fn ranges_hold_both_ends() {
        let raster = range(531, 1602, 9, 0, "kHz");
        assert_eq!(raster.count(), 120);
        assert_eq!(raster.nth(0), "531 kHz");
        assert_eq!(raster.nth(119), "1602 kHz");
    }

    #[test]
    fn points_are_made_from_whole_numbers() {
        let marks = range(590, 1000, 5, 2, "MHz");
        assert_eq!(marks.nth(0), "5.9 MHz");
        assert_eq!(marks.nth(1), "5.95 MHz");
        assert_eq!(marks.nth(82), "10 MHz");
        assert_eq!(range(1005, 1005, 1, 3, "").nth(0), "1.005");
    }
}
