//! One learner's way through one problem: what was tried, which hint comes next,
//! whether the working may be seen.
//!
//! Feedback waits for an attempt: before the first one there is no hint and no working.
//! A part is done when it is answered right or its working was seen; then the next one
//! opens.

use alloc::{string::String, vec, vec::Vec};

use super::{
    marking::{Marking, mark},
    problem::Problem,
};

/// How a part or a whole problem was done.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Outcome {
    /// Right at the first attempt, without a hint.
    RightAlone,
    /// Right after a wrong attempt or with a hint.
    RightWithHelp,
    /// The working was seen first.
    Shown,
}

/// One learner's way through one problem.
#[derive(Clone, Debug, PartialEq)]
pub struct Sitting {
    problem: Problem,
    parts: Vec<Progress>,
}

#[derive(Clone, Debug, Default, PartialEq)]
struct Progress {
    attempts: u32,
    hints: usize,
    outcome: Option<Outcome>,
}

impl Sitting {
    /// Sits down before a problem.
    pub fn new(problem: Problem) -> Sitting {
        let parts = vec![Progress::default(); problem.parts.len()];
        Sitting { problem, parts }
    }

    /// The problem.
    pub fn problem(&self) -> &Problem {
        &self.problem
    }

    /// The part to be answered now; none when all are done.
    pub fn current(&self) -> Option<usize> {
        self.parts.iter().position(|part| part.outcome.is_none())
    }

    /// Marks an answer to the current part; none when all are done.
    pub fn answer(&mut self, typed: &str, unit_beside: Option<&str>) -> Option<Marking> {
        let current = self.current()?;
        let marking = mark(&self.problem, current, typed, unit_beside);
        let part = self.parts.get_mut(current)?;
        if marking.verdict.is_attempt() {
            part.attempts += 1;
        }
        if marking.verdict.is_right() {
            let alone = part.attempts == 1 && part.hints == 0;
            part.outcome = Some(if alone {
                Outcome::RightAlone
            } else {
                Outcome::RightWithHelp
            });
        }
        Some(marking)
    }

    /// Whether a hint is left for the current part, and an attempt was made at it.
    pub fn may_hint(&self) -> bool {
        self.current().is_some_and(|current| {
            let part = &self.parts[current];
            part.attempts > 0 && part.hints < self.problem.parts[current].hints.len()
        })
    }

    /// The next hint for the current part, after an attempt.
    pub fn hint(&mut self) -> Option<&str> {
        if !self.may_hint() {
            return None;
        }
        let current = self.current()?;
        let part = self.parts.get_mut(current)?;
        part.hints += 1;
        self.problem.parts[current]
            .hints
            .get(part.hints - 1)
            .map(String::as_str)
    }

    /// Whether the working of the current part may be seen: an attempt was made.
    pub fn may_show(&self) -> bool {
        self.current()
            .is_some_and(|current| self.parts[current].attempts > 0)
    }

    /// Shows the working of the current part, which is done by that; after an attempt.
    pub fn show(&mut self) -> Option<&[String]> {
        let current = self.current().filter(|_| self.may_show())?;
        self.parts[current].outcome = Some(Outcome::Shown);
        self.steps(current)
    }

    /// The working of a part that is done.
    pub fn steps(&self, part: usize) -> Option<&[String]> {
        self.parts.get(part)?.outcome?;
        self.problem
            .parts
            .get(part)
            .map(|part| part.steps.as_slice())
    }

    /// How the whole was done: the least good of its parts; none until all are done.
    pub fn outcome(&self) -> Option<Outcome> {
        let outcomes: Option<Vec<Outcome>> = self.parts.iter().map(|part| part.outcome).collect();
        outcomes?.into_iter().max()
    }
}

#[cfg(test)]
mod tests {
    use super::super::{
        Verdict,
        fixture::{oscillator, two_parts},
    };
    use super::{Outcome, Sitting};

    #[test]
    fn nothing_is_told_before_an_attempt() {
        let mut sitting = Sitting::new(oscillator());
        assert!(!sitting.may_hint() && !sitting.may_show());
        assert_eq!(sitting.hint(), None);
        assert_eq!(sitting.show(), None);
        assert_eq!(sitting.steps(0), None);
        let unclear = sitting.answer("abc", None).unwrap();
        assert_eq!(unclear.verdict, Verdict::Unclear);
        assert_eq!(sitting.hint(), None, "nonsense is no attempt");
    }

    #[test]
    fn hints_come_in_order_after_an_attempt() {
        let mut sitting = Sitting::new(oscillator());
        sitting.answer("730 kHz", None).unwrap();
        assert_eq!(sitting.hint(), Some("Think of the gap."));
        assert_eq!(sitting.hint(), Some("Add the IF."));
        assert_eq!(sitting.hint(), None);
        sitting.answer("1670 kHz", None).unwrap();
        assert_eq!(sitting.outcome(), Some(Outcome::RightWithHelp));
        assert_eq!(sitting.steps(0).map(<[_]>::len), Some(1));
        assert_eq!(sitting.answer("1670 kHz", None), None, "all is done");
    }

    #[test]
    fn right_at_once_is_right_alone() {
        let mut sitting = Sitting::new(oscillator());
        sitting.answer("1670", None).unwrap();
        assert_eq!(sitting.outcome(), None, "no unit: not an attempt");
        sitting.answer("1670", Some("kHz")).unwrap();
        assert_eq!(sitting.outcome(), Some(Outcome::RightAlone));
    }

    #[test]
    fn parts_open_one_after_another_and_the_least_good_counts() {
        let mut sitting = Sitting::new(two_parts());
        assert_eq!(sitting.current(), Some(0));
        sitting.answer("1 MHz", None).unwrap();
        let steps = sitting.show().unwrap();
        assert_eq!(steps, ["From 1.2 MHz, one IF of 470 kHz more is 1670 kHz."]);
        assert_eq!(sitting.current(), Some(1));
        assert_eq!(sitting.outcome(), None);
        sitting.answer("high", None).unwrap();
        assert_eq!(sitting.current(), None);
        assert_eq!(sitting.outcome(), Some(Outcome::Shown));
    }
}
