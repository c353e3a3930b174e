//! One quantity of the catalogue, and an answer.

use super::{Arguments, Kind, Parameter, Refusal};
use alloc::string::String;

/// A quantity: what it is called, what it is worked out from and how.
///
/// In wasm the texts `title`, `symbol`, `formula`, `model_error` and `source` are empty, and
/// `example` too unless the feature `examples` is on.
#[derive(Clone, Copy, Debug)]
pub struct Entry {
    /// The name in expressions: lower case and hyphens.
    pub name: &'static str,
    /// The name in words, as a heading.
    pub title: &'static str,
    /// The formula letter, in LaTeX.
    pub symbol: &'static str,
    /// The formula, in LaTeX.
    pub formula: &'static str,
    /// What it is worked out from, in the order in which it is listed.
    pub parameters: &'static [Parameter],
    /// The kind of the result.
    pub result: Kind,
    /// Where the model stops being true, and by how much.
    pub model_error: &'static str,
    /// Where the formula is from.
    pub source: &'static str,
    /// An expression that is small enough to be checked by hand.
    pub example: &'static str,
    /// Works out the value in the SI unit of `result`.
    pub function: fn(&Arguments<'_>) -> Result<f64, Refusal>,
    /// What a reader should be told about certain arguments, if anything.
    pub note: Option<fn(&Arguments<'_>) -> Option<&'static str>>,
}

impl Entry {
    /// The parameter with this name.
    #[must_use]
    pub fn parameter(&self, name: &str) -> Option<&'static Parameter> {
        self.parameters
            .iter()
            .find(|parameter| parameter.name == name)
    }
}

/// What an expression comes to.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// The quantity's name.
    pub name: &'static str,
    /// The value in the SI unit.
    pub value: f64,
    /// The kind of the value.
    pub kind: Kind,
    /// The symbol of the SI unit; empty for a number without one.
    pub unit: &'static str,
    /// The value as the trade writes it, at most seven significant digits.
    pub text: String,
    /// Something to know about this answer, where there is anything.
    pub note: Option<&'static str>,
}
