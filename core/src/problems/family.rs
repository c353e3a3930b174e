//! A problem family as plain data: what its file says, read and nothing worked out.
//!
//! The site reads the file, the wasm of the lesson pages gets the same data as JSON.
//! Every text may hold slots in braces, `{dial}`, filled when a problem is
//! drawn, and may hold expressions: catalogue
//! quantities, the names of givens, `+ - * /`.

use alloc::{string::String, vec::Vec};

use serde::{Deserialize, Serialize};

/// One kind of question, from which any number of problems can be drawn.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Family {
    /// The name in links, notebook and registry: lower-case words joined by hyphens.
    pub id: String,
    /// Raised by one whenever a text, range or rounding changes.
    pub revision: u8,
    /// What the family is about, for a tutor's list. Never shown with a question.
    pub title: String,
    /// Slug of the lesson that introduces what is asked.
    pub lesson: String,
    /// Wrong ways that people take, for the parts to name.
    #[serde(rename = "mistake", default)]
    pub mistakes: Vec<MistakeForm>,
    /// Things that can be asked, for the levels to name.
    #[serde(rename = "part")]
    pub parts: Vec<PartForm>,
    /// The easiest level.
    pub level_1: LevelForm,
    /// The middle level.
    pub level_2: LevelForm,
    /// The hardest level.
    pub level_3: LevelForm,
    /// The same idea on a set that no lesson uses.
    pub transfer: LevelForm,
}

/// One level of a family: the scene, what is drawn for it, what is asked.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct LevelForm {
    /// The scene, in one or more phrasings; one of them is drawn.
    pub scenes: Vec<String>,
    /// What is drawn, in this order.
    #[serde(rename = "given")]
    pub givens: Vec<Given>,
    /// What is worked out from the givens under a name, in this order.
    #[serde(rename = "value", default)]
    pub values: Vec<Named>,
    /// Conditions that a draw must meet; any other draw is thrown back.
    #[serde(default)]
    pub keep: Vec<String>,
    /// Ids of the parts asked, in this order.
    pub parts: Vec<String>,
    /// The same on a set of the reader's own; none where it is not offered.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub own_set: Option<OwnSetForm>,
}

/// The values of a set that a problem may take from the reader's own: what every set says.
pub const SET_VALUES: [&str; 2] = ["if", "side"];

/// A level on a set of the reader's own.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct OwnSetForm {
    /// The scene, which speaks of the reader's set.
    pub scene: String,
    /// Names of the givens that are the set's values of the same name.
    pub givens: Vec<String>,
}

/// Something drawn for a problem.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Given {
    /// The name in slots and expressions.
    pub name: String,
    /// The kind, as the catalogue names it: `frequency`, `ratio`, `choice` ...
    pub kind: String,
    /// A list to draw from, as a person would write the entries.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub values: Vec<String>,
    /// Or a range of whole steps.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub range: Option<Range>,
    /// Id of the fact in the list of sources that the single value is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fact: Option<String>,
}

/// Whole multiples of a unit, from one end to the other.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Range {
    /// First number.
    pub from: u32,
    /// Last number, a whole number of steps after the first.
    pub to: u32,
    /// Distance between neighbours.
    pub step: u32,
    /// Decimal places: with two, the three numbers above count hundredths.
    #[serde(default)]
    pub places: u8,
    /// Unit written behind the number; empty for a ratio.
    #[serde(default)]
    pub unit: String,
}

/// An expression under a name.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Named {
    /// The name in slots and expressions.
    pub name: String,
    /// The expression.
    pub is: String,
}

/// One thing asked. Either `asks` with `precision` and `units`, or `options`.
///
/// Its texts may use the slot `{answer}`: the right answer, rounded as asked.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct PartForm {
    /// The name by which a level calls it.
    pub id: String,
    /// The question itself.
    pub ask: String,
    /// Expression for the right answer, in catalogue quantities over the givens.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub asks: Option<String>,
    /// How closely it is asked.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub precision: Option<PrecisionForm>,
    /// Whether the choices are put in a drawn order; else they stand as written.
    #[serde(default)]
    pub shuffle: bool,
    /// Units offered beside the box; none for a plain number.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub units: Vec<String>,
    /// The figure on which the number is set, on pages that can draw it; elsewhere it is typed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub set_on: Option<SetOnForm>,
    /// What can be chosen, where a choice is asked instead of a number.
    #[serde(rename = "option", default, skip_serializing_if = "Vec::is_empty")]
    pub options: Vec<OptionForm>,
    /// Given one after another, the gentlest first.
    pub hints: Vec<String>,
    /// The working, with this problem's own numbers.
    pub steps: Vec<String>,
    /// Ids of the family's mistakes that a learner may make here.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub mistakes: Vec<String>,
}

/// A slider of a figure that stands at the answer when it is set right. It stops at whole
/// multiples of what the part's precision asks for.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct SetOnForm {
    /// Name of the figure.
    pub figure: String,
    /// The parameter that the slider sets.
    pub parameter: String,
    /// What the question calls it, beside the slider.
    pub label: String,
    /// What the drawing shows, in the question's words.
    pub caption: String,
    /// The slider's lowest stop.
    pub from: String,
    /// The slider's highest stop.
    pub to: String,
    /// Where it stands before the learner moves it.
    pub begin: String,
    /// The figure's other parameters, `f0={if}`; slots are filled as in texts.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub with: Vec<String>,
}

/// How closely an answer is asked.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum PrecisionForm {
    /// To the nearest whole multiple of this: `"1 kHz"`.
    Nearest(String),
    /// To so many significant figures.
    Figures(u8),
}

/// One choice of a part.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct OptionForm {
    /// The name in the marking and the notebook.
    pub id: String,
    /// What the learner reads.
    pub text: String,
    /// Condition under which it is the right one; never right without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub right_when: Option<String>,
    /// What to say when it is chosen and wrong.
    pub says: String,
    /// Id of the misconception that it shows.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub misconception: Option<String>,
}

/// A wrong way that people take.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct MistakeForm {
    /// The name in the marking and the notebook.
    pub id: String,
    /// Expression for the answer that it leads to.
    pub answer: String,
    /// What to say to the person who took it.
    pub says: String,
    /// Id of the misconception that it shows.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub misconception: Option<String>,
}

/// Which of a family's four forms a problem is drawn from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Level {
    /// The easiest.
    One,
    /// The middle.
    Two,
    /// The hardest.
    Three,
    /// The same idea on a set that no lesson uses.
    Transfer,
}

impl Level {
    /// All four, the easiest first.
    pub const ALL: [Level; 4] = [Level::One, Level::Two, Level::Three, Level::Transfer];

    /// The number in codes and links: 1, 2, 3, and 4 for the transfer form.
    pub fn number(self) -> u8 {
        match self {
            Level::One => 1,
            Level::Two => 2,
            Level::Three => 3,
            Level::Transfer => 4,
        }
    }

    /// The level with this number.
    pub fn from_number(number: u8) -> Option<Level> {
        Level::ALL
            .into_iter()
            .find(|level| level.number() == number)
    }
}

impl Family {
    /// The form of one level.
    pub fn level(&self, level: Level) -> &LevelForm {
        match level {
            Level::One => &self.level_1,
            Level::Two => &self.level_2,
            Level::Three => &self.level_3,
            Level::Transfer => &self.transfer,
        }
    }
}

/// A family with its permanent number, as it is handed to a page.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Registered {
    /// Number in the registry; problem codes hold it.
    pub number: u16,
    /// The family.
    pub family: Family,
}
