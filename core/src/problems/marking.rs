//! What is said about one typed answer.

use alloc::string::String;

/// How an answer was judged.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// Right, as closely as asked.
    Right,
    /// The right value, rounded further than asked or rounded on the way: it counts
    /// as right and the rounding is explained.
    RightButRounded,
    /// Read, and not right.
    Wrong,
    /// Not read: blank, nonsense, no unit. It does not count as an attempt.
    Unclear,
}

impl Verdict {
    /// Whether the answer counts as right.
    pub fn is_right(self) -> bool {
        matches!(self, Verdict::Right | Verdict::RightButRounded)
    }

    /// Whether it counts as an attempt.
    pub fn is_attempt(self) -> bool {
        self != Verdict::Unclear
    }
}

/// What is said about one typed answer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Marking {
    /// How it was judged.
    pub verdict: Verdict,
    /// How it was read, `1.67 MHz`; none when it could not be read.
    pub read_as: Option<String>,
    /// The mistake that fits, where one does.
    pub mistake: Option<NamedMistake>,
    /// What to say, whole sentences.
    pub says: String,
}

/// A mistake recognised in an answer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NamedMistake {
    /// Id in the family, or one of the slips that any answer can show
    /// (`thousand-times`, `other-unit`).
    pub id: String,
    /// Id of the misconception that it shows.
    pub misconception: Option<String>,
}
