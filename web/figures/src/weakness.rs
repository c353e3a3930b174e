//! How much weaker a signal comes out: in times, or in decibels once a lesson has them.

use crate::arithmetic::{chosen, roughly};
use crate::{FigureError, Input, Quantity};
use superhet::units::{Kind, display};

/// The scale that a curve of attenuation is drawn on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Scale {
    /// The voltage that is left, as a part of the greatest.
    Times,
    /// Decibels under the greatest.
    Decibels {
        /// What the lowest line of the drawing stands for.
        deepest: f64,
    },
}

impl Scale {
    /// Reads `scale=times` (as without) or `scale=decibels`.
    pub(crate) fn read(input: &Input, deepest: f64) -> Result<Self, FigureError> {
        Ok(match chosen(input, "scale", &["times", "decibels"])? {
            0 => Self::Times,
            _ => Self::Decibels { deepest },
        })
    }

    /// The height on a plot of a loss in decibels.
    pub(crate) fn height(self, decibels: f64) -> f64 {
        match self {
            Self::Times => voltage_left(decibels),
            Self::Decibels { deepest } => 1.0 - decibels / deepest,
        }
    }

    /// Heights of fine lines, each with its meaning.
    pub(crate) fn rules(self) -> Vec<(f64, String)> {
        match self {
            Self::Times => [
                (1.0, "full strength"),
                (0.5, "2 times weaker"),
                (0.25, "4 times weaker"),
            ]
            .map(|(height, text)| (height, text.to_owned()))
            .to_vec(),
            Self::Decibels { deepest } => (0..4)
                .map(|part| {
                    let height = 1.0 - f64::from(part) / 4.0;
                    let text = display::text(Kind::Decibels, deepest * f64::from(part) / 4.0);
                    (
                        height,
                        if part == 0 {
                            text
                        } else {
                            ["−", &text].concat()
                        },
                    )
                })
                .collect(),
        }
    }

    /// A loss in words: "3.42 times weaker", "10.7 dB weaker".
    pub(crate) fn words(self, decibels: f64) -> String {
        if decibels.abs() < 0.005 {
            return "as strong".to_owned();
        }
        let (size, kind, unit) = match self {
            Self::Times => (1.0 / voltage_left(decibels.abs()), Kind::Ratio, " times"),
            Self::Decibels { .. } => (decibels.abs(), Kind::Decibels, ""),
        };
        let more = if decibels < 0.0 {
            " stronger"
        } else {
            " weaker"
        };
        [&roughly(kind, "", size).text, unit, more].concat()
    }

    /// A loss as a result of the catalogue's, shown in this scale.
    pub(crate) fn quantity(self, name: &'static str, decibels: f64) -> Quantity {
        Quantity {
            name,
            kind: Kind::Decibels,
            value: decibels,
            text: self.words(decibels),
        }
    }
}

/// The part of the voltage that a loss leaves.
fn voltage_left(decibels: f64) -> f64 {
    libm::pow(10.0, -decibels / 20.0)
}
