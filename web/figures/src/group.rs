//! Figures that a page's program brings together.

/// A group of figures. Each is a feature of this package, so that a program for pages can
/// be built with the groups its pages show and no others: on a slow line every figure
/// counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Group {
    /// Where signal, oscillator, image and IF lie: feature `frequencies`.
    Frequencies,
    /// The parts of a set in a row, and what runs between them: feature `blocks`.
    Blocks,
    /// What else lies in the bands: feature `bands`.
    Bands,
    /// What else a set answers to: feature `responses`.
    Responses,
    /// The curve of tuned circuits: feature `circuits`.
    Circuits,
    /// Two coupled circuits: feature `transformers`.
    Transformers,
    /// The whole IF amplifier: feature `amplifier`.
    Amplifier,
    /// A modulated wave: feature `modulation`.
    Modulation,
    /// Detector and AGC: feature `detection`.
    Detection,
    /// One knob, two circuits: feature `tracking`.
    Tracking,
}
