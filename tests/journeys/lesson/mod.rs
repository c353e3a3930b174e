//! The lessons.

mod fetched;
pub(crate) mod figure;
mod on_figure;
mod on_paper;
mod own_set;
mod prediction;
pub(crate) mod problem;

/// The first lesson.
const FIRST: &str = "lessons/why-one-fixed-frequency/";
/// The second.
const SECOND: &str = "lessons/oscillator-mixer-difference/";
/// The one about the image.
const IMAGE: &str = "lessons/the-image/";
