//! How one family went so far, and where it stands. Pure.

use super::named::{entry, named};
use crate::json::Json;
use superhet::problems::{LeitnerBox, Standing};
#[cfg(feature = "problems")]
use superhet::problems::{Marking, Outcome, schedule::Day};

/// The greatest count; counting stops there.
pub(super) const MOST: u32 = 99_999;
/// The most mistakes of one family.
const MOST_MISTAKES: usize = 20;

/// How a family went so far.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(crate) struct Tally {
    /// Answers marked right.
    pub(crate) right: u32,
    /// Answers marked wrong.
    pub(crate) wrong: u32,
    /// Where it stands; none before a problem of it was done to its end.
    pub(crate) standing: Option<Standing>,
    /// Mistakes by their names.
    pub(crate) mistakes: Vec<(String, u32)>,
}

impl Tally {
    /// Reads `[right,wrong,box,due,{mistake:times}]`; box 0 is no standing.
    pub(super) fn from_json(json: &Json) -> Option<Self> {
        let [right, wrong, number, due, mistakes] = json.entries() else {
            return None;
        };
        let (number, due) = (number.number()?, due.number()?);
        let standing = match number {
            0 => None,
            _ => Some(Standing {
                leitner_box: LeitnerBox::from_number(u8::try_from(number).ok()?)?,
                due,
            }),
        };
        Some(Self {
            right: counted(right)?,
            wrong: counted(wrong)?,
            standing,
            mistakes: named(Some(mistakes), MOST_MISTAKES, counted)?,
        })
    }

    /// Reads what version 1 kept: `{"right":2,"wrong":1,"mistakes":{id:1}}`.
    pub(super) fn from_version_1(json: &Json) -> Option<Self> {
        Some(Self {
            right: counted(json.member("right")?)?,
            wrong: counted(json.member("wrong")?)?,
            standing: None,
            mistakes: named(json.member("mistakes"), MOST_MISTAKES, counted)?,
        })
    }

    pub(super) fn to_json(&self) -> Json {
        let (number, due) = self.standing.map_or((0, 0), |standing| {
            (u32::from(standing.leitner_box.number()), standing.due)
        });
        let mistakes = self.mistakes.iter();
        let mistakes = mistakes.map(|(id, times)| (id.clone(), Json::Number(*times)));
        let numbers = [self.right, self.wrong, number, due].map(Json::Number);
        let mut all = Vec::from(numbers);
        all.push(Json::Object(mistakes.collect()));
        Json::List(all)
    }

    /// Adds another copy's: of two counts the greater stays, of two standings the later.
    pub(super) fn take_in(&mut self, other: &Self) {
        self.right = self.right.max(other.right);
        self.wrong = self.wrong.max(other.wrong);
        self.standing = match (self.standing, other.standing) {
            (Some(own), Some(other)) => Some(own.later(other)),
            (own, other) => own.or(other),
        };
        for (id, times) in &other.mistakes {
            if let Some(known) = entry(&mut self.mistakes, id, MOST_MISTAKES) {
                *known = (*known).max(*times);
            }
        }
    }
}

/// What pages with problems ask of it.
#[cfg(feature = "problems")]
impl Tally {
    /// Counts a marking.
    pub(super) fn mark(&mut self, marking: &Marking) {
        count(if marking.verdict.is_right() {
            &mut self.right
        } else {
            &mut self.wrong
        });
        let mistake = marking.mistake.as_ref();
        if let Some(times) =
            mistake.and_then(|mistake| entry(&mut self.mistakes, &mistake.id, MOST_MISTAKES))
        {
            count(times);
        }
    }

    /// A problem was done to its end.
    pub(super) fn done(&mut self, outcome: Outcome, today: Day) {
        let standing = self.standing.unwrap_or(Standing::new(today));
        self.standing = Some(standing.after(outcome, today));
    }
}

fn counted(json: &Json) -> Option<u32> {
    json.number().filter(|count| *count <= MOST)
}

#[cfg(feature = "problems")]
fn count(number: &mut u32) {
    *number = (*number + 1).min(MOST);
}
