//! What a dial setting fixes: the signal, the oscillator, the IF, and the image.

use crate::arithmetic::{chosen, frequency, quantity};
use crate::{Control, ControlKind, FigureError, Input, Quantity, Slider};
use superhet::quantities::bands::Region;

/// The side of the signal on which the oscillator runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Side {
    /// The oscillator runs above the signal.
    Above,
    /// The oscillator runs below the signal.
    Below,
}

impl Side {
    /// The side as the core spells it.
    pub(crate) fn name(self) -> &'static str {
        match self {
            Self::Above => "above",
            Self::Below => "below",
        }
    }

    fn read(text: &str) -> Result<Self, FigureError> {
        [Self::Above, Self::Below]
            .into_iter()
            .find(|side| side.name().eq_ignore_ascii_case(text))
            .ok_or_else(|| {
                let sentence = format!("side must be above or below (got '{text}')");
                FigureError::about("side", sentence)
            })
    }
}

/// A set tuned to a station.
#[derive(Clone, Debug)]
pub(crate) struct Tuning {
    pub(crate) side: Side,
    pub(crate) signal: Quantity,
    pub(crate) intermediate: Quantity,
    pub(crate) oscillator: Quantity,
    typed: [(&'static str, String); 3],
}

impl Tuning {
    /// Reads `dial`, `if` and `side`, and asks the core for the oscillator.
    pub(crate) fn read(input: &Input) -> Result<Self, FigureError> {
        let typed = ["dial", "if", "side"].map(|key| (key, input.get(key).unwrap_or("")));
        // Asked first: what is wrong with a value is said in the core's words.
        let oscillator = quantity("oscillator", &typed)?;
        Ok(Self {
            side: Side::read(typed[2].1)?,
            signal: frequency("dial", "dial", typed[0].1)?,
            intermediate: frequency("difference", "if", typed[1].1)?,
            oscillator,
            typed: typed.map(|(key, text)| (key, text.to_owned())),
        })
    }

    /// The image of this tuning.
    pub(crate) fn image(&self) -> Result<Quantity, FigureError> {
        let [dial, intermediate, side] = &self.typed;
        quantity(
            "image",
            &[dial, intermediate, side].map(|(key, text)| (*key, text.as_str())),
        )
    }

    /// The handle for the IF.
    pub(crate) fn intermediate_control(&self, text: String) -> Control {
        Control {
            parameter: "if",
            label: "IF",
            kind: ControlKind::Slider(Slider {
                min: 100,
                max: 600,
                step: 5,
                value: self.intermediate.value / 1e3,
                parts: 1,
                unit: "kHz",
                place: None,
            }),
            text,
        }
    }

    /// The handle for the side of the oscillator.
    pub(crate) fn side_control(&self) -> Control {
        Control {
            parameter: "side",
            label: "Oscillator",
            kind: ControlKind::Choice {
                options: vec![("above", "above the signal"), ("below", "below it")],
                chosen: self.side.name(),
            },
            text: self.side.name().to_owned(),
        }
    }
}

/// The Region whose bands are shown; the first where none is named.
pub(crate) fn region(input: &Input) -> Result<Region, FigureError> {
    Ok(Region::ALL[chosen(input, "region", &["1", "2", "3"])?])
}

/// The lowest and highest signal, in kHz, that a handle reaches in a Region: from the bottom
/// of its lowest broadcast band to the top of medium wave, at whole steps of 5.
pub(crate) fn signal_range(region: Region) -> (i32, i32) {
    match region {
        Region::One => (150, 1605),
        Region::Two => (525, 1705),
        Region::Three => (525, 1605),
    }
}
