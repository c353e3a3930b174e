//! Values as people type them.
//!
//! A typed value is a number and a unit, with or without a blank between them:
//! `1.2 MHz`, `1200kHz`, `1,200 kHz`, `1 200 kc/s`, `250 m`, `175 µH`, `500 mmfd`,
//! `.01 uF`, `47k`, `0.5 meg`, `80 %`, and units written out, `465 kilocycles`,
//! `297 volts`, `80 per cent`. Capitals are forgiven where nothing becomes
//! ambiguous; where something would, the message asks. A number without a unit is
//! refused where a unit is needed, unless the caller names the unit that stands beside
//! the box.
//!
//! The unit's power of ten is added to that of the number before the digits are
//! converted, so there is one rounding and `0.455 MHz` has the same bits as `455 kHz`.
//!
//! Whether a value makes sense for a quantity is not decided here: [`value`] and
//! [`reading`] read any sign. The functions that return a unit's own type refuse what
//! that unit can never be, such as a frequency of zero.
//!
//! `DIFFERENCE:` a comma before exactly three digits groups thousands even after more
//! than three digits (`2000,500`), which no style of grouping does; [`Reading::other`]
//! offers the decimal reading.

mod error;
mod number;
#[cfg(test)]
mod tests;
mod unit;

pub(crate) use error::quoted;
pub use error::{ParseError, Rule};

use super::rounding::from_decimal;
use super::{
    Capacitance, Conductance, Decibels, Depth, Duration, Frequency, Inductance, Kind, Power, Ratio,
    Resistance, SPEED_OF_LIGHT, Voltage, Wavelength,
};
use number::Number;
use unit::Unit;

/// Bytes of a typed value; what is longer is refused unread.
///
/// Exact conversion is quick for this many digits, and no value needs them.
pub const LONGEST: usize = 200;

/// A typed value as it was understood.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading {
    /// The value in the SI unit of its kind.
    pub value: f64,
    /// The value under the other reading of its comma, where `1,200` could also be 1.2.
    pub other: Option<f64>,
    /// The unit that was typed or stood beside the box, as the trade writes it; empty
    /// where there is none.
    pub unit: &'static str,
    /// Whether a frequency was typed as a wavelength.
    pub from_wavelength: bool,
}

/// Reads a typed value of a kind, with all that is known about how it was read.
///
/// `unit_beside` is the unit that a page shows beside the box: it is used when the text
/// has none. A typed unit wins. Any sign is read.
///
/// # Errors
/// A [`ParseError`] with the rule that was broken and the text.
///
/// ```
/// use superhet::units::{Kind, parse};
/// let reading = parse::reading(Kind::Frequency, "1,200", Some("kHz")).unwrap();
/// assert_eq!(reading.value, 1_200_000.0);
/// assert_eq!(reading.other, Some(1_200.0));
/// assert_eq!(reading.unit, "kHz");
/// ```
pub fn reading(kind: Kind, text: &str, unit_beside: Option<&str>) -> Result<Reading, ParseError> {
    read(kind, text, unit_beside).map_err(|rule| ParseError::new(kind, rule, text))
}

/// Reads a typed value of a kind in its SI unit; see [`reading`].
///
/// # Errors
/// As [`reading`].
///
/// ```
/// use superhet::units::{Kind, parse};
/// assert_eq!(parse::value(Kind::Frequency, "1,200 kHz", None), Ok(1_200_000.0));
/// assert_eq!(parse::value(Kind::Capacitance, ".01 uF", None), Ok(1e-8));
/// assert_eq!(parse::value(Kind::Frequency, "1200", Some("kHz")), Ok(1_200_000.0));
/// assert!(parse::value(Kind::Capacitance, "2 mF", None).is_err());
/// ```
pub fn value(kind: Kind, text: &str, unit_beside: Option<&str>) -> Result<f64, ParseError> {
    reading(kind, text, unit_beside).map(|reading| reading.value)
}

fn read(kind: Kind, text: &str, unit_beside: Option<&str>) -> Result<Reading, Rule> {
    let text = text.trim();
    if text.is_empty() {
        return Err(Rule::Empty);
    }
    if text.len() > LONGEST {
        return Err(Rule::TooLong);
    }
    if kind == Kind::Choice {
        return Err(Rule::NotNumeric);
    }
    let (number, spelled) = number::read(text)?;
    let unit = unit_for(kind, spelled, unit_beside)?;
    let value = convert(&number, number.power, unit)?;
    allowed(kind, value, unit)?;
    Ok(Reading {
        value,
        other: number
            .other_power
            .and_then(|power| convert(&number, power, unit).ok()),
        unit: unit.map_or("", |unit| unit.symbol),
        from_wavelength: unit.is_some_and(|unit| unit.wavelength),
    })
}

/// The unit that was typed, else the one beside the box, else none where none is needed.
fn unit_for(kind: Kind, spelled: &str, beside: Option<&str>) -> Result<Option<Unit>, Rule> {
    if !spelled.is_empty() {
        return unit::find(kind, spelled).map(Some);
    }
    match beside {
        Some(beside) if !beside.is_empty() => unit::find(kind, beside).map(Some),
        _ if kind.unit().is_empty() => Ok(None),
        _ => Err(Rule::MissingUnit),
    }
}

fn convert(number: &Number, power: i64, unit: Option<Unit>) -> Result<f64, Rule> {
    let scale = unit.map_or(0, |unit| i64::from(unit.power));
    let size = from_decimal(&number.digits, power + scale);
    if size.is_infinite() {
        return Err(Rule::TooLarge);
    }
    if size == 0.0 && number.digits.iter().any(|digit| *digit != b'0') {
        return Err(Rule::TooSmall);
    }
    let size = match unit {
        Some(unit) if unit.wavelength => SPEED_OF_LIGHT / size,
        _ => size,
    };
    if size.is_infinite() {
        return Err(Rule::NotPositive);
    }
    Ok(if number.negative { -size } else { size })
}

fn allowed(kind: Kind, value: f64, unit: Option<Unit>) -> Result<(), Rule> {
    match kind {
        Kind::Depth if unit.is_none() && value > 1.0 => Err(Rule::DepthOverOne),
        Kind::Integer if value != libm::trunc(value) => Err(Rule::NotWhole),
        _ => Ok(()),
    }
}

/// Reads a value that has to be above zero.
fn above_zero(kind: Kind, text: &str) -> Result<f64, ParseError> {
    let value = value(kind, text, None)?;
    if value > 0.0 {
        Ok(value)
    } else {
        Err(ParseError::new(kind, Rule::NotPositive, text))
    }
}

/// Reads a value that may be zero but not less.
fn not_negative(kind: Kind, text: &str) -> Result<f64, ParseError> {
    let value = value(kind, text, None)?;
    if value >= 0.0 {
        Ok(value)
    } else {
        Err(ParseError::new(kind, Rule::Negative, text))
    }
}

/// Reads a frequency above zero; a wavelength in metres is turned by the exact speed of
/// light.
///
/// # Errors
/// As [`reading`], and for what is not above zero.
///
/// ```
/// use superhet::units::{Frequency, parse};
/// assert_eq!(parse::frequency("0,455 MHz"), Ok(Frequency::khz(455.0)));
/// assert_eq!(parse::frequency("250 m").unwrap().to_khz(), 1_199.169_832);
/// ```
pub fn frequency(text: &str) -> Result<Frequency, ParseError> {
    above_zero(Kind::Frequency, text).map(Frequency::hz)
}

/// Reads a wavelength above zero.
///
/// # Errors
/// As [`reading`], and for what is not above zero.
///
/// ```
/// use superhet::units::{Wavelength, parse};
/// assert_eq!(parse::wavelength("1500 metres"), Ok(Wavelength::m(1500.0)));
/// ```
pub fn wavelength(text: &str) -> Result<Wavelength, ParseError> {
    above_zero(Kind::Wavelength, text).map(Wavelength::m)
}

/// Reads an inductance above zero.
///
/// # Errors
/// As [`reading`], and for what is not above zero.
///
/// ```
/// use superhet::units::{Inductance, parse};
/// assert_eq!(parse::inductance("175 µH"), Ok(Inductance::uh(175.0)));
/// ```
pub fn inductance(text: &str) -> Result<Inductance, ParseError> {
    above_zero(Kind::Inductance, text).map(Inductance::h)
}

/// Reads a capacitance above zero; `mF` and `MF` are refused with a question.
///
/// # Errors
/// As [`reading`], and for what is not above zero.
///
/// ```
/// use superhet::units::{Capacitance, parse};
/// assert_eq!(parse::capacitance("0.0005 mfd"), Ok(Capacitance::pf(500.0)));
/// ```
pub fn capacitance(text: &str) -> Result<Capacitance, ParseError> {
    above_zero(Kind::Capacitance, text).map(Capacitance::f)
}

/// Reads a resistance above zero.
///
/// # Errors
/// As [`reading`], and for what is not above zero.
///
/// ```
/// use superhet::units::{Resistance, parse};
/// assert_eq!(parse::resistance("47k"), Ok(Resistance::kilohm(47.0)));
/// ```
pub fn resistance(text: &str) -> Result<Resistance, ParseError> {
    above_zero(Kind::Resistance, text).map(Resistance::ohm)
}

/// Reads a voltage that is not below zero.
///
/// # Errors
/// As [`reading`], and for what is below zero.
///
/// ```
/// use superhet::units::{Voltage, parse};
/// assert_eq!(parse::voltage("60 mV"), Ok(Voltage::v(0.06)));
/// ```
pub fn voltage(text: &str) -> Result<Voltage, ParseError> {
    not_negative(Kind::Voltage, text).map(Voltage::v)
}

/// Reads a power that is not below zero.
///
/// # Errors
/// As [`reading`], and for what is below zero.
///
/// ```
/// use superhet::units::{Power, parse};
/// assert_eq!(parse::power("50 kW"), Ok(Power::w(50_000.0)));
/// ```
pub fn power(text: &str) -> Result<Power, ParseError> {
    not_negative(Kind::Power, text).map(Power::w)
}

/// Reads a conductance above zero, such as a valve's mutual conductance.
///
/// # Errors
/// As [`reading`], and for what is not above zero.
///
/// ```
/// use superhet::units::{Conductance, parse};
/// assert_eq!(parse::conductance("2 mA/V"), Ok(Conductance::siemens(0.002)));
/// ```
pub fn conductance(text: &str) -> Result<Conductance, ParseError> {
    above_zero(Kind::Conductance, text).map(Conductance::siemens)
}

/// Reads a length of time that is not below zero.
///
/// # Errors
/// As [`reading`], and for what is below zero.
///
/// ```
/// use superhet::units::{Duration, parse};
/// assert_eq!(parse::duration("100 ms"), Ok(Duration::s(0.1)));
/// ```
pub fn duration(text: &str) -> Result<Duration, ParseError> {
    not_negative(Kind::Duration, text).map(Duration::s)
}

/// Reads decibels of either sign.
///
/// # Errors
/// As [`reading`].
///
/// ```
/// use superhet::units::{Decibels, parse};
/// assert_eq!(parse::decibels("-6 dB"), Ok(Decibels::db(-6.0)));
/// ```
pub fn decibels(text: &str) -> Result<Decibels, ParseError> {
    value(Kind::Decibels, text, None).map(Decibels::db)
}

/// Reads a plain number that is not below zero.
///
/// # Errors
/// As [`reading`], and for what is below zero.
///
/// ```
/// use superhet::units::{Ratio, parse};
/// assert_eq!(parse::ratio("1,200"), Ok(Ratio::new(1200.0)));
/// ```
pub fn ratio(text: &str) -> Result<Ratio, ParseError> {
    not_negative(Kind::Ratio, text).map(Ratio::new)
}

/// Reads a depth of modulation: a fraction up to 1, or a figure in per cent.
///
/// # Errors
/// As [`reading`], for what is below zero, and for a bare number over 1.
///
/// ```
/// use superhet::units::{Depth, parse};
/// assert_eq!(parse::depth("80 %"), Ok(Depth::new(0.8)));
/// assert!(parse::depth("80").is_err());
/// ```
pub fn depth(text: &str) -> Result<Depth, ParseError> {
    not_negative(Kind::Depth, text).map(Depth::new)
}
