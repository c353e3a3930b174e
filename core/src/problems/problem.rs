//! One problem, drawn and filled in, ready to be shown and marked.

use alloc::{boxed::Box, string::String, vec::Vec};

use crate::units::Kind;

use super::{family::Level, precision::Precision};

/// A problem drawn from a family.
#[derive(Clone, Debug, PartialEq)]
pub struct Problem {
    /// Id of the family.
    pub family: String,
    /// Revision of the family.
    pub revision: u8,
    /// Level it was drawn from.
    pub level: Level,
    /// Seed it was drawn with.
    pub seed: u32,
    /// The scene: whole sentences, shown once above the parts.
    pub scene: String,
    /// What was drawn, in the order of the family.
    pub givens: Vec<GivenValue>,
    /// What is asked, in this order; a later part opens when the one before is done.
    pub parts: Vec<Part>,
    /// Pairs of answers that could not be told apart after all the draws allowed.
    pub collisions: Vec<Collision>,
}

/// A given with the value drawn for it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct GivenValue {
    /// Name in the family.
    pub name: String,
    /// As written in the scene: `1200 kHz`, `above`.
    pub text: String,
}

/// One thing asked.
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// Id in the family.
    pub id: String,
    /// The question itself.
    pub ask: String,
    /// What is right, and what is offered to answer with.
    pub answer: Answer,
    /// Given one after another, the gentlest first.
    pub hints: Vec<String>,
    /// The working with this problem's numbers; shown only after an attempt.
    pub steps: Vec<String>,
}

/// The right answer of a part.
#[derive(Clone, Debug, PartialEq)]
pub enum Answer {
    /// A number, with a unit unless it is a ratio.
    Number(NumberAnswer),
    /// One of several choices.
    Choice(Vec<Choice>),
}

/// A right answer that is a number.
#[derive(Clone, Debug, PartialEq)]
pub struct NumberAnswer {
    /// Its kind: which units it may be typed in.
    pub kind: Kind,
    /// In the SI base unit, not rounded.
    pub value: f64,
    /// How closely it is asked.
    pub precision: Precision,
    /// Rounded as asked and written out: `1670 kHz`.
    pub text: String,
    /// How closely it is asked, in words: `to the nearest 1 kHz`.
    pub precision_text: String,
    /// Units to offer beside the box; empty for a plain number.
    pub unit_buttons: Vec<String>,
    /// Wrong answers that have a name.
    pub mistakes: Vec<Mistake>,
    /// The figure on which it is set, on pages that can draw it.
    pub set_on: Option<Box<SetOn>>,
}

/// A slider of a figure that stands at the answer when it is set right.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SetOn {
    /// Name of the figure.
    pub figure: String,
    /// The figure's parameters without the slider's, `f0=470 kHz&circuits=1`.
    pub with: String,
    /// The parameter that the slider sets.
    pub parameter: String,
    /// What the question calls it.
    pub label: String,
    /// What the drawing shows, in the question's words.
    pub caption: String,
    /// Where it stands before the learner moves it, as the parameter takes it.
    pub begin: String,
}

/// A wrong answer that has a name.
#[derive(Clone, Debug, PartialEq)]
pub struct Mistake {
    /// Id in the family.
    pub id: String,
    /// The answer it leads to, in the SI base unit.
    pub value: f64,
    /// What to say to the person who took it.
    pub says: String,
    /// Id of the misconception that it shows.
    pub misconception: Option<String>,
}

/// One thing that can be chosen.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Choice {
    /// Id in the family; what is handed to marking when chosen.
    pub id: String,
    /// What the learner reads.
    pub text: String,
    /// Whether it is the right one.
    pub right: bool,
    /// What to say when it is chosen and wrong.
    pub says: String,
    /// Id of the misconception that it shows.
    pub misconception: Option<String>,
}

/// Two answers of one part that lie within each other's tolerance.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Collision {
    /// Id of the part.
    pub part: String,
    /// Id of one mistake, or `right`.
    pub one: String,
    /// Id of the other mistake.
    pub other: String,
}
