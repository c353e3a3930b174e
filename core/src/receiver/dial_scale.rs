//! How a pointer's reading and the plates of the gang belong together.
//!
//! The marks of a band are taken to be printed for a coil and strays that stay the same
//! along it, with the plates fully in at the lowest mark and fully out at the highest:
//! then `1/f²` runs evenly with the capacitance, and the two ends settle everything
//! between.
//!
//! Symbols: `r` the reading, `l` and `h` the lowest and the highest mark, `t` how far in
//! the plates are, as a share of the section's whole swing.

use libm::sqrt;

use crate::units::Capacitance;

/// The marks of one band.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct DialScale {
    pub(super) low: f64,
    pub(super) high: f64,
}

impl DialScale {
    /// How far in the plates are at a reading: 0 fully out, 1 fully in.
    ///
    /// `t = (1/r² − 1/h²)/(1/l² − 1/h²)`.
    pub(super) fn plates_in(&self, reading: f64) -> f64 {
        let from_high = |r: f64| (self.high - r) * (self.high + r) / (r * r);
        from_high(reading) / from_high(self.low)
    }

    /// The reading where the plates are so far in.
    pub(super) fn reading(&self, plates_in: f64) -> f64 {
        let ratio = self.high / self.low;
        self.high / sqrt(1.0 + plates_in * (ratio - 1.0) * (ratio + 1.0))
    }

    /// The same scale moved by an IF: where the oscillator ought to run.
    pub(super) fn moved(&self, by: f64) -> Self {
        Self {
            low: self.low + by,
            high: self.high + by,
        }
    }

    /// How many times the capacitance across a coil shrinks along the scale.
    pub(super) fn swing(&self) -> f64 {
        (self.high / self.low) * (self.high / self.low)
    }
}

/// A section of the gang between two capacitances.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Section {
    pub(super) minimum: f64,
    pub(super) maximum: f64,
}

impl Section {
    pub(super) fn at(&self, plates_in: f64) -> Capacitance {
        Capacitance::f(self.minimum + plates_in * (self.maximum - self.minimum))
    }

    /// `K` of the coil that a scale is printed for: the whole capacitance at `f` is `K/f²`.
    pub(super) fn constant(&self, scale: &DialScale) -> f64 {
        let (low, high) = (scale.low, scale.high);
        let between = (high - low) * (high + low) / (low * low * high * high);
        (self.maximum - self.minimum) / between
    }

    /// The strays that a scale is printed for.
    pub(super) fn strays(&self, scale: &DialScale) -> f64 {
        self.constant(scale) / (scale.high * scale.high) - self.minimum
    }
}

/// The gang: alike sections, or an oscillator section with plates of its own shape.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Gang {
    pub(super) signal: Section,
    pub(super) shaped: Option<ShapedSection>,
}

impl Gang {
    /// The oscillator's section with the plates so far in.
    pub(super) fn oscillator_section(&self, plates_in: f64) -> Capacitance {
        match &self.shaped {
            None => self.signal.at(plates_in),
            Some(shaped) => shaped.at(plates_in),
        }
    }
}

/// An oscillator section cut so that a constant coil and constant strays follow one band
/// at the distance of one IF.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct ShapedSection {
    /// The band it was cut for.
    pub(super) scale: DialScale,
    /// What the oscillator is to run above the dial; below zero for an oscillator below.
    pub(super) distance: f64,
    pub(super) section: Section,
}

impl ShapedSection {
    fn at(&self, plates_in: f64) -> Capacitance {
        let oscillator = self.scale.reading(plates_in) + self.distance;
        let own = self.scale.moved(self.distance);
        self.section.at(own.plates_in(oscillator))
    }
}
