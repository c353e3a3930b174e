//! Why a typed value was not read.

use crate::units::Kind;
use alloc::string::String;
use core::fmt;

/// Characters of what was typed that a message repeats.
const QUOTED: usize = 40;

/// The rule that a typed value broke.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Rule {
    /// Nothing was typed.
    Empty,
    /// More was typed than a value can need.
    TooLong,
    /// It does not start with a number.
    NoNumber,
    /// A point and a comma in one number.
    MixedMarks,
    /// Marks or spaces that neither group thousands nor mark a decimal.
    MisplacedMark,
    /// The number needs a unit and has none.
    MissingUnit,
    /// The unit is none of this kind's.
    UnknownUnit,
    /// The unit could mean two things; the question asks which.
    Ambiguous(&'static str),
    /// The number is beyond what can be held.
    TooLarge,
    /// The number is nearer to zero than can be held.
    TooSmall,
    /// The value must be above zero.
    NotPositive,
    /// The value must not be below zero.
    Negative,
    /// The number must be whole.
    NotWhole,
    /// A depth over 1 without a per cent sign.
    DepthOverOne,
    /// This kind is a choice between words and is not typed as a number.
    NotNumeric,
}

/// A typed value that could not be read: what it should be, the rule, and the text.
///
/// ```
/// use superhet::units::parse;
/// let error = parse::frequency("-5 kHz").unwrap_err();
/// assert_eq!(error.to_string(), "a frequency must be above zero (got \"-5 kHz\")");
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ParseError {
    kind: Kind,
    rule: Rule,
    typed: String,
}

impl ParseError {
    pub(super) fn new(kind: Kind, rule: Rule, typed: &str) -> Self {
        Self {
            kind,
            rule,
            typed: quoted(typed),
        }
    }

    /// The rule that was broken.
    #[must_use]
    pub const fn rule(&self) -> Rule {
        self.rule
    }

    /// The whole message: one sentence of at most 300 characters without line breaks.
    #[must_use]
    pub fn sentence(&self) -> String {
        let kind = self.kind.with_article();
        let pieces: [&str; 3] = match self.rule {
            Rule::Empty => ["nothing was typed; type ", self.example(), ""],
            Rule::TooLong => ["too long to be ", kind, ""],
            Rule::NoNumber => [kind, " starts with a number, such as ", self.example()],
            Rule::MixedMarks => [
                "use a point or a comma in one number, not both, such as ",
                self.example(),
                "",
            ],
            Rule::MisplacedMark => [
                "points, commas and spaces in a number mark one decimal or groups of three \
                 digits, such as 1,200 or 1 200 or 0.455",
                "",
                "",
            ],
            Rule::MissingUnit => [kind, " needs a unit, such as ", self.example()],
            Rule::UnknownUnit => [kind, " is typed in ", self.units()],
            Rule::Ambiguous(question) => [question, "", ""],
            Rule::TooLarge => ["too large for ", kind, ""],
            Rule::TooSmall => ["too near to zero for ", kind, ""],
            Rule::NotPositive => [kind, " must be above zero", ""],
            Rule::Negative => [kind, " must not be below zero", ""],
            Rule::NotWhole => ["this must be a whole number, such as 2", "", ""],
            Rule::DepthOverOne => [
                "a depth of modulation is from 0 to 1, or typed in per cent, such as 80 %",
                "",
                "",
            ],
            Rule::NotNumeric => ["this is a choice between words, not a number", "", ""],
        };
        let mut sentence = pieces.concat();
        sentence.push_str(" (got \"");
        sentence.push_str(&self.typed);
        sentence.push_str("\")");
        sentence
    }

    const fn example(&self) -> &'static str {
        match self.kind {
            Kind::Frequency => "1200 kHz",
            Kind::Wavelength => "250 m",
            Kind::Inductance => "175 µH",
            Kind::Capacitance => "500 pF",
            Kind::Resistance => "47 kΩ",
            Kind::Voltage => "60 mV",
            Kind::Power => "50 kW",
            Kind::Conductance => "2 mA/V",
            Kind::Duration => "100 ms",
            Kind::Decibels => "6 dB",
            Kind::Ratio => "100",
            Kind::Depth => "80 %",
            Kind::Integer | Kind::Choice => "2",
        }
    }

    const fn units(&self) -> &'static str {
        match self.kind {
            Kind::Frequency => "Hz, kHz, MHz, kc/s, Mc/s, or in metres as a wavelength",
            Kind::Wavelength => "m",
            Kind::Inductance => "µH or uH, mH, H",
            Kind::Capacitance => "pF, mmfd, nF, µF or uF, mfd",
            Kind::Resistance => "ohm or Ω, k, kΩ, meg, MΩ",
            Kind::Voltage => "µV or uV, mV, V, kV",
            Kind::Power => "mW, W, kW, MW",
            Kind::Conductance => "mA/V, µA/V or uA/V, mS, micromho",
            Kind::Duration => "s, ms, µs or us",
            Kind::Decibels => "dB",
            Kind::Depth => "per cent or as a fraction without a unit",
            Kind::Ratio | Kind::Integer | Kind::Choice => "digits, without a unit",
        }
    }
}

/// The start of what was typed, fit to stand in one line of a message: control
/// characters and those that turn the writing direction become blanks.
pub(crate) fn quoted(typed: &str) -> String {
    let mut shown: String = typed
        .chars()
        .take(QUOTED)
        .map(|letter| match letter {
            letter if letter.is_control() => ' ',
            '\u{200b}'..='\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2066}'..='\u{2069}' => ' ',
            '\u{feff}' => ' ',
            letter => letter,
        })
        .collect();
    if typed.chars().nth(QUOTED).is_some() {
        shown.push('…');
    }
    shown
}

impl fmt::Display for ParseError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.sentence())
    }
}

impl core::error::Error for ParseError {}
