//! The way through a round of problems: which comes now, how each was done.

use superhet::problems::session::{Pick, session};
use superhet::problems::{Level, Outcome, ProblemCode};

use super::choice::Wish;
use super::kinds::Kinds;
use crate::notebook::Notebook;
use superhet::problems::schedule::Day;

/// Problems of a round.
const MOST: usize = 6;

/// A problem to come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Coming {
    /// Which kind, by its place in the list.
    pub(super) kind: usize,
    /// The level to draw it from.
    pub(super) level: Level,
    /// The very problem, where a link asked for it.
    pub(super) code: Option<ProblemCode>,
}

/// A problem behind the reader.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Done {
    /// Which kind, by its place in the list.
    pub(super) kind: usize,
    /// How it was done; none where it was left.
    pub(super) outcome: Option<Outcome>,
}

/// A round of problems.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Round {
    coming: Vec<Coming>,
    done: Vec<Done>,
}

impl Round {
    /// Chooses a round.
    pub(super) fn choose(
        kinds: &Kinds,
        notebook: &Notebook,
        wish: &Wish,
        done: &[u32],
        today: Day,
        seed: u32,
    ) -> Self {
        let all = super::choice::candidates(kinds, notebook, wish, done, today);
        // Others are there for the mix; without anything asked for there is nothing to mix.
        if !all.iter().any(|(_, candidate)| candidate.wanted) {
            return Self::default();
        }
        let (places, candidates): (Vec<_>, Vec<_>) = all.into_iter().unzip();
        let coming = |pick: &Pick| Coming {
            kind: places[pick.candidate],
            level: pick.level,
            code: None,
        };
        let picks = session(&candidates, today, MOST, seed);
        Self {
            coming: picks.iter().map(coming).collect(),
            done: Vec::new(),
        }
    }

    /// A round of the one problem that a link names.
    pub(super) fn of(kind: usize, code: ProblemCode) -> Self {
        let coming = Coming {
            kind,
            level: code.level,
            code: Some(code),
        };
        Self {
            coming: vec![coming],
            done: Vec::new(),
        }
    }

    /// How many problems it has.
    pub(super) fn length(&self) -> usize {
        self.coming.len()
    }

    /// The number of the problem now, from 0, and what it is; none at the end.
    pub(super) fn now(&self) -> Option<(usize, Coming)> {
        let at = self.done.len();
        self.coming.get(at).map(|coming| (at, *coming))
    }

    /// Whether the problem now is the last.
    pub(super) fn is_last(&self) -> bool {
        self.done.len() + 1 >= self.coming.len()
    }

    /// Goes on to the next.
    pub(super) fn go_on(&mut self, outcome: Option<Outcome>) {
        if let Some((_, coming)) = self.now() {
            let kind = coming.kind;
            self.done.push(Done { kind, outcome });
        }
    }

    /// What is behind the reader.
    pub(super) fn done(&self) -> &[Done] {
        &self.done
    }
}

#[cfg(test)]
mod tests {
    use super::super::kinds::{Kinds, tests::KINDS};
    use super::{Round, Wish};
    use crate::notebook::Notebook;
    use superhet::problems::Outcome;

    fn round(wish: &Wish) -> Round {
        let (kinds, empty) = (Kinds::read(KINDS), Notebook::default());
        Round::choose(&kinds, &empty, wish, &[1], 20_000, 3)
    }

    #[test]
    fn a_round_goes_from_first_to_last() {
        let mut round = round(&Wish::Lessons(vec![1, 2]));
        assert_eq!(round.length(), 3);
        let kinds: Vec<usize> = (0..3)
            .map(|at| {
                let (now, coming) = round.now().unwrap();
                assert_eq!((now, round.is_last()), (at, at == 2));
                round.go_on(Some(Outcome::RightAlone).filter(|_| at > 0));
                coming.kind
            })
            .collect();
        assert_eq!(round.now(), None);
        assert_eq!(kinds[1], 2, "lesson 2 stands between the two of lesson 1");
        let left: Vec<bool> = round.done().iter().map(|it| it.outcome.is_none()).collect();
        assert_eq!(left, [true, false, false]);
        round.go_on(None);
        assert_eq!(round.done().len(), 3, "nothing follows the last");
    }

    #[test]
    fn nothing_asked_for_is_no_round() {
        assert_eq!(round(&Wish::Weak), Round::default());
        assert_eq!(round(&Wish::Lessons(vec![])), Round::default());
    }
}
