//! The list of figures.

use crate::{FigureError, Input, View, block_diagram, frequency_line};

/// A figure that can be drawn by name.
struct Figure {
    name: &'static str,
    /// Parameters that must be given.
    needed: &'static [&'static str],
    /// Parameters that have a default of their own.
    optional: &'static [&'static str],
    draw: fn(&Input) -> Result<View, FigureError>,
}

/// Every figure.
const FIGURES: [Figure; 2] = [
    Figure {
        name: "frequency-line",
        needed: &["dial", "if", "side"],
        optional: &["region", "axis"],
        draw: frequency_line::draw,
    },
    Figure {
        name: "block-diagram",
        needed: &["dial", "if", "side"],
        optional: &[],
        draw: block_diagram::draw,
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
    (figure.draw)(input)
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
        let mut parameters = self.needed.join(", ");
        if !self.optional.is_empty() {
            parameters = format!("{parameters} and may be given {}", self.optional.join(", "));
        }
        FigureError::about(
            key,
            format!(
                "the figure {} {what} '{key}'; it needs {parameters}",
                self.name
            ),
        )
    }
}
