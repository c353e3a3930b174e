//! The list of figures.

use crate::group::Group;
use crate::{FigureError, Input, View};

/// A figure that can be drawn by name.
struct Figure {
    name: &'static str,
    group: Group,
    /// Parameters that must be given.
    needed: &'static [&'static str],
    /// Parameters that have a default of their own.
    optional: &'static [&'static str],
    draw: fn(&Input) -> Result<View, FigureError>,
}

/// Every figure of the groups that are built in.
const FIGURES: &[Figure] = &[
    #[cfg(feature = "frequencies")]
    Figure {
        name: "frequency-line",
        group: Group::Frequencies,
        needed: &["dial", "if", "side"],
        optional: &["image", "region", "axis", "move"],
        draw: crate::frequency_line::draw,
    },
    #[cfg(feature = "blocks")]
    Figure {
        name: "block-diagram",
        group: Group::Blocks,
        needed: &["dial", "if", "side"],
        optional: &["f-low", "f-high", "move"],
        draw: crate::block_diagram::draw,
    },
    #[cfg(feature = "bands")]
    Figure {
        name: "band-chart",
        group: Group::Bands,
        needed: &[],
        optional: &["if", "side", "region", "image", "dial", "move"],
        draw: crate::band_chart::draw,
    },
    #[cfg(feature = "responses")]
    Figure {
        name: "spurious-map",
        group: Group::Responses,
        needed: &[],
        optional: &[
            "dial", "if", "side", "region", "f-low", "f-high", "axis", "order", "n", "sender",
            "move",
        ],
        draw: crate::spurious_map::draw,
    },
    #[cfg(feature = "circuits")]
    Figure {
        name: "resonance",
        group: Group::Circuits,
        needed: &[],
        optional: &["f0", "q", "circuits", "f", "l", "scale", "span", "move"],
        draw: crate::resonance::draw,
    },
    #[cfg(feature = "transformers")]
    Figure {
        name: "coupled-pair",
        group: Group::Transformers,
        needed: &[],
        optional: &[
            "f0", "q1", "q2", "k", "detune1", "detune2", "span", "critical", "move",
        ],
        draw: crate::coupled_pair::draw,
    },
    #[cfg(feature = "amplifier")]
    Figure {
        name: "if-chain",
        group: Group::Amplifier,
        needed: &[],
        optional: &[
            "if",
            "q",
            "k",
            "transformers",
            "spacing",
            "audio",
            "detune",
            "move",
        ],
        draw: crate::if_chain::draw,
    },
    #[cfg(feature = "tracking")]
    Figure {
        name: "tracking",
        group: Group::Tracking,
        needed: &[],
        optional: &[
            "f1", "f2", "f3", "if", "side", "q", "f-low", "f-high", "dial", "l-signal", "move",
        ],
        draw: crate::tracking::draw,
    },
    #[cfg(feature = "modulation")]
    Figure {
        name: "am-wave",
        group: Group::Modulation,
        needed: &[],
        optional: &["carrier", "audio", "depth", "move"],
        draw: crate::am_wave::draw,
    },
    #[cfg(feature = "detection")]
    Figure {
        name: "detector",
        group: Group::Detection,
        needed: &[],
        optional: &["r", "c", "audio", "depth", "move"],
        draw: crate::detector::draw,
    },
    #[cfg(feature = "detection")]
    Figure {
        name: "agc",
        group: Group::Detection,
        needed: &[],
        optional: &["signal", "loop-gain", "move"],
        draw: crate::agc::draw,
    },
];

/// The names of all figures.
pub fn names() -> impl Iterator<Item = &'static str> {
    FIGURES.iter().map(|figure| figure.name)
}

/// The parameters that the figure called `name` must be given.
#[must_use]
pub fn needed(name: &str) -> Option<&'static [&'static str]> {
    find(name).map(|figure| figure.needed)
}

/// The group that the figure called `name` belongs to.
#[must_use]
pub fn group(name: &str) -> Option<Group> {
    find(name).map(|figure| figure.group)
}

/// The figure called `name` for `input`.
///
/// # Errors
/// There is no such figure; a parameter is missing or unknown; or the core refuses the
/// values, in the core's own words.
pub fn view(name: &str, input: &Input) -> Result<View, FigureError> {
    let figure = find(name).ok_or_else(|| {
        let known: Vec<&str> = names().collect();
        FigureError::new(format!(
            "there is no figure '{name}'; there are {}",
            known.join(", ")
        ))
    })?;
    figure.check(input)?;
    let mut view = (figure.draw)(input)?;
    if let Some(list) = input.get("move") {
        keep_controls(&mut view, list)?;
    }
    Ok(view)
}

/// Leaves the reader only the handles on a list such as `dial,side`: one thing to do at a
/// time. A figure without a list has them all.
fn keep_controls(view: &mut View, list: &str) -> Result<(), FigureError> {
    let kept: Vec<&str> = list.split(',').map(str::trim).collect();
    let handles: Vec<&str> = view
        .controls
        .iter()
        .map(|control| control.parameter)
        .collect();
    if let Some(odd) = kept.iter().find(|name| !handles.contains(name)) {
        let sentence = format!(
            "this figure has no handle '{odd}' to move; it has {}",
            handles.join(", ")
        );
        return Err(FigureError::about("move", sentence));
    }
    view.controls
        .retain(|control| kept.contains(&control.parameter));
    Ok(())
}

fn find(name: &str) -> Option<&'static Figure> {
    FIGURES.iter().find(|figure| figure.name == name)
}

impl Figure {
    fn check(&self, input: &Input) -> Result<(), FigureError> {
        let known = |key: &str| self.needed.contains(&key) || self.optional.contains(&key);
        if let Some((key, _)) = input.iter().find(|(key, _)| !known(key)) {
            return Err(self.slip(key, "does not read"));
        }
        match self.needed.iter().find(|key| input.get(key).is_none()) {
            Some(key) => Err(self.slip(key, "needs")),
            None => Ok(()),
        }
    }

    fn slip(&self, key: &str, what: &str) -> FigureError {
        let optional = self.optional.join(", ");
        let parameters = match self.needed {
            [] => format!("may be given {optional}"),
            needed => format!("needs {} and may be given {optional}", needed.join(", ")),
        };
        let sentence = format!("the figure {} {what} '{key}'; it {parameters}", self.name);
        FigureError::about(key, sentence)
    }
}
