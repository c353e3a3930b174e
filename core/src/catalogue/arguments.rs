//! The values that a quantity's function works with.

use crate::quantities::conversion::Side;
use crate::units::{
    Capacitance, Conductance, Decibels, Depth, Frequency, Inductance, Power, Ratio, Resistance,
    Voltage, Wavelength,
};
use alloc::vec::Vec;

/// The values of a quantity's parameters: each in its range and in SI units.
///
/// Functions of entries ask for their own parameters only, so a name that is not there
/// is a slip in the entry. It gives a value that no result survives (not a number) and
/// fails the debug build; every entry's example is evaluated by a test.
#[derive(Clone, Debug)]
pub struct Arguments<'a> {
    pub(super) values: &'a [(&'static str, Value)],
}

/// A number in SI units, or the word of a choice.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Value {
    Number(f64),
    Word(&'static str),
}

/// Values in the order of an entry's parameters.
pub(super) type Values = Vec<(&'static str, Value)>;

impl Arguments<'_> {
    fn find(&self, name: &str) -> Option<Value> {
        let found = self.values.iter().find(|(known, _)| *known == name);
        debug_assert!(found.is_some(), "the entry has no parameter {name}");
        found.map(|(_, value)| *value)
    }

    /// A number in its SI unit: any kind but a choice.
    #[must_use]
    pub fn number(&self, name: &str) -> f64 {
        match self.find(name) {
            Some(Value::Number(number)) => number,
            _ => f64::NAN,
        }
    }

    /// A frequency.
    #[must_use]
    pub fn frequency(&self, name: &str) -> Frequency {
        Frequency::hz(self.number(name))
    }

    /// A wavelength.
    #[must_use]
    pub fn wavelength(&self, name: &str) -> Wavelength {
        Wavelength::m(self.number(name))
    }

    /// An inductance.
    #[must_use]
    pub fn inductance(&self, name: &str) -> Inductance {
        Inductance::h(self.number(name))
    }

    /// A capacitance.
    #[must_use]
    pub fn capacitance(&self, name: &str) -> Capacitance {
        Capacitance::f(self.number(name))
    }

    /// A resistance.
    #[must_use]
    pub fn resistance(&self, name: &str) -> Resistance {
        Resistance::ohm(self.number(name))
    }

    /// A conductance.
    #[must_use]
    pub fn conductance(&self, name: &str) -> Conductance {
        Conductance::siemens(self.number(name))
    }

    /// A voltage.
    #[must_use]
    pub fn voltage(&self, name: &str) -> Voltage {
        Voltage::v(self.number(name))
    }

    /// A power.
    #[must_use]
    pub fn power(&self, name: &str) -> Power {
        Power::w(self.number(name))
    }

    /// A figure in decibels.
    #[must_use]
    pub fn decibels(&self, name: &str) -> Decibels {
        Decibels::db(self.number(name))
    }

    /// A plain number.
    #[must_use]
    pub fn ratio(&self, name: &str) -> Ratio {
        Ratio::new(self.number(name))
    }

    /// A depth of modulation.
    #[must_use]
    pub fn depth(&self, name: &str) -> Depth {
        Depth::new(self.number(name))
    }

    /// A whole number.
    #[must_use]
    pub fn integer(&self, name: &str) -> u32 {
        self.number(name) as u32
    }

    /// The word of a choice, as the entry spells it.
    #[must_use]
    pub fn choice(&self, name: &str) -> &'static str {
        match self.find(name) {
            Some(Value::Word(word)) => word,
            _ => "",
        }
    }

    /// The parameter `side`.
    #[must_use]
    pub fn side(&self) -> Side {
        match self.choice("side") {
            "below" => Side::Below,
            _ => Side::Above,
        }
    }
}
