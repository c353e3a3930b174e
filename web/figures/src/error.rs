//! Why a figure cannot be drawn, in one sentence.

use std::fmt;

/// Why a figure cannot be drawn: one sentence for the reader, and the parameter it is
/// about where there is one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FigureError {
    sentence: String,
    parameter: Option<String>,
}

impl FigureError {
    /// An error that is about the whole figure.
    pub(crate) fn new(sentence: String) -> Self {
        Self {
            sentence,
            parameter: None,
        }
    }

    /// An error about one parameter.
    pub(crate) fn about(parameter: &str, sentence: String) -> Self {
        Self {
            sentence,
            parameter: Some(parameter.to_owned()),
        }
    }

    /// The name of the parameter at fault, where one is.
    #[must_use]
    pub fn parameter(&self) -> Option<&str> {
        self.parameter.as_deref()
    }
}

impl fmt::Display for FigureError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.sentence)
    }
}

impl std::error::Error for FigureError {}
