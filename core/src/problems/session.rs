//! Which families are practised together, and in which order: pure, from a seed.
//!
//! In scope: choosing from a list of candidates. Left out: what a reader wants to
//! practise, which the caller says by the candidates it hands over.
//!
//! What holds for every session that is chosen:
//! - families wanted and due come before those wanted and not yet due, those in lower
//!   boxes first;
//! - it touches three lessons, if the candidates are of as many; families that are not
//!   wanted are taken for that alone;
//! - no two neighbours are of one lesson, unless all are. Where one lesson has more than
//!   its share, the session is shorter and the rest waits for the next.

use alloc::vec::Vec;
use core::cmp::Reverse;

use super::{
    draw::Draw,
    family::Level,
    schedule::{Day, Standing},
};

/// Lessons that a session touches at least, where the candidates allow it.
pub const LESSONS: usize = 3;

/// A family that may be practised.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Candidate {
    /// Place of its lesson in the course, or any other number that the lesson has alone.
    pub lesson: u32,
    /// Where it stands.
    pub standing: Standing,
    /// Whether the reader asked for it. Others are taken only to touch more lessons.
    pub wanted: bool,
}

/// A problem to come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pick {
    /// Which of the candidates.
    pub candidate: usize,
    /// The level to draw it from.
    pub level: Level,
}

/// Chooses at most `most` problems, in the order in which they are set: the same ones
/// for the same candidates, day and seed.
pub fn session(candidates: &[Candidate], today: Day, most: usize, seed: u32) -> Vec<Pick> {
    let mut draw = Draw::new("session", 1, Level::One, seed);
    let mut order: Vec<usize> = (0..candidates.len()).collect();
    draw.shuffle(&mut order);
    let order = ranked(&order, |place| urgency(&candidates[place], today));
    let lesson = |place: usize| candidates[place].lesson;
    let chosen = evened(chosen(&order, candidates, most), lesson);
    mixed(chosen, lesson)
        .into_iter()
        .map(|candidate| Pick {
            candidate,
            level: candidates[candidate].standing.leitner_box.level(),
        })
        .collect()
}

/// The same in the order of their ranks; equals keep theirs. A few dozen at most are ranked
/// here, and the standard library's sort would weigh more than the rest of this module.
fn ranked<Rank: Ord>(places: &[usize], rank: impl Fn(usize) -> Rank) -> Vec<usize> {
    let mut ranked: Vec<usize> = Vec::with_capacity(places.len());
    for &place in places {
        let after = ranked.iter().position(|&it| rank(it) > rank(place));
        ranked.insert(after.unwrap_or(ranked.len()), place);
    }
    ranked
}

/// What comes first: the wanted, then the due, then the lower box. Families that nobody
/// asked for come by the day on which they are due.
fn urgency(candidate: &Candidate, today: Day) -> (bool, bool, u32) {
    let standing = candidate.standing;
    let then = if candidate.wanted {
        u32::from(standing.leitner_box.number())
    } else {
        standing.due
    };
    (!candidate.wanted, !standing.is_due(today), then)
}

/// The most urgent of each lesson until three are touched, then the most urgent of those
/// that are wanted; the most urgent first.
fn chosen(order: &[usize], candidates: &[Candidate], most: usize) -> Vec<usize> {
    let mut taken: Vec<usize> = Vec::new();
    for &place in order {
        let lesson = candidates[place].lesson;
        let new = taken.iter().all(|&it| candidates[it].lesson != lesson);
        if new && taken.len() < LESSONS.min(most) {
            taken.push(place);
        }
    }
    for &place in order {
        if taken.len() < most && candidates[place].wanted && !taken.contains(&place) {
            taken.push(place);
        }
    }
    let in_order = order.iter().filter(|place| taken.contains(place));
    in_order.copied().collect()
}

/// Drops the least urgent of a lesson that has more than its share: the others, and one.
/// With fewer there is always an order without two of it side by side.
fn evened(mut chosen: Vec<usize>, lesson: impl Fn(usize) -> u32) -> Vec<usize> {
    loop {
        let of = |wanted: u32| chosen.iter().filter(|&&it| lesson(it) == wanted).count();
        let Some(largest) = chosen.iter().map(|&it| lesson(it)).max_by_key(|&it| of(it)) else {
            return chosen;
        };
        let others = chosen.len() - of(largest);
        if others == 0 || of(largest) <= others + 1 {
            return chosen;
        }
        if let Some(last) = chosen.iter().rposition(|&it| lesson(it) == largest) {
            chosen.remove(last);
        }
    }
}

/// An order without two of one lesson side by side: always one of the lesson that has
/// most left, but not of the one just taken.
fn mixed(mut left: Vec<usize>, lesson: impl Fn(usize) -> u32) -> Vec<usize> {
    let mut order: Vec<usize> = Vec::with_capacity(left.len());
    while !left.is_empty() {
        let last = order.last().map(|&it| lesson(it));
        let of = |wanted: u32| left.iter().filter(|&&it| lesson(it) == wanted).count();
        let next = (0..left.len())
            .filter(|&place| Some(lesson(left[place])) != last)
            .min_by_key(|&place| (Reverse(of(lesson(left[place]))), place));
        // Where all that is left is of the lesson just taken, so is everything.
        order.push(left.remove(next.unwrap_or(0)));
    }
    order
}

#[cfg(test)]
mod tests {
    use alloc::{collections::BTreeSet, vec, vec::Vec};

    use proptest::prelude::{Strategy, any, prop_assert, prop_assert_eq, proptest};

    use super::super::schedule::LeitnerBox;
    use super::*;

    const TODAY: Day = 20_000;

    fn candidate(lesson: u32, number: u8, due: Day) -> Candidate {
        let leitner_box = LeitnerBox::from_number(number).unwrap();
        Candidate {
            lesson,
            standing: Standing { leitner_box, due },
            wanted: true,
        }
    }

    fn any_candidates() -> impl Strategy<Value = Vec<Candidate>> {
        let one = (1..6_u32, 1..=5_u8, TODAY - 30..TODAY + 30, any::<bool>());
        let one = one.prop_map(|(lesson, number, due, wanted)| Candidate {
            wanted,
            ..candidate(lesson, number, due)
        });
        proptest::collection::vec(one, 0..30)
    }

    #[test]
    fn nothing_to_choose_from_is_an_empty_session() {
        assert_eq!(session(&[], TODAY, 6, 1), []);
        assert_eq!(session(&[candidate(1, 1, TODAY)], TODAY, 0, 1), []);
    }

    /// Five of lesson 1 and one of lesson 2: only three have an order without
    /// neighbours, 1 2 1.
    #[test]
    fn one_lesson_with_more_than_its_share_waits() {
        let mut candidates = vec![candidate(1, 1, TODAY); 5];
        candidates.push(candidate(2, 5, TODAY));
        let picks = session(&candidates, TODAY, 6, 3);
        let lessons: Vec<u32> = picks
            .iter()
            .map(|it| candidates[it.candidate].lesson)
            .collect();
        assert_eq!(lessons, [1, 2, 1]);
        assert_eq!(picks[1].level, Level::Transfer);
        assert_eq!(picks[0].level, Level::One);
    }

    #[test]
    fn a_single_lesson_is_practised_by_itself() {
        let candidates = vec![candidate(4, 2, TODAY); 3];
        let picks = session(&candidates, TODAY, 6, 3);
        assert_eq!(picks.len(), 3);
        assert!(picks.iter().all(|pick| pick.level == Level::Two));
    }

    #[test]
    fn the_seed_decides_among_equals() {
        let candidates: Vec<Candidate> =
            (1..=16).map(|lesson| candidate(lesson, 1, TODAY)).collect();
        let first = session(&candidates, TODAY, 6, 1);
        assert_eq!(session(&candidates, TODAY, 6, 1), first);
        assert_ne!(session(&candidates, TODAY, 6, 2), first);
    }

    proptest! {
        /// Every pick is a candidate, taken once, and there are at most as many as asked.
        #[test]
        fn a_session_is_a_choice(candidates in any_candidates(), most in 0..12_usize, seed in any::<u32>()) {
            let picks = session(&candidates, TODAY, most, seed);
            prop_assert!(picks.len() <= most.min(candidates.len()));
            let places: BTreeSet<usize> = picks.iter().map(|pick| pick.candidate).collect();
            prop_assert_eq!(places.len(), picks.len());
            for pick in &picks {
                let leitner_box = candidates[pick.candidate].standing.leitner_box;
                prop_assert_eq!(pick.level, leitner_box.level());
            }
        }

        #[test]
        fn no_neighbours_are_of_one_lesson(candidates in any_candidates(), most in 0..12_usize, seed in any::<u32>()) {
            let picks = session(&candidates, TODAY, most, seed);
            let lessons: Vec<u32> = picks.iter().map(|it| candidates[it.candidate].lesson).collect();
            let apart = lessons.windows(2).all(|pair| pair[0] != pair[1]);
            let one = lessons.iter().collect::<BTreeSet<_>>().len() <= 1;
            prop_assert!(apart || one, "{lessons:?}");
        }

        /// min(3, lessons there are, problems asked for).
        #[test]
        fn three_lessons_are_touched_where_there_are_three(
            candidates in any_candidates(), most in 0..12_usize, seed in any::<u32>()
        ) {
            let touched: BTreeSet<u32> = session(&candidates, TODAY, most, seed)
                .iter().map(|it| candidates[it.candidate].lesson).collect();
            let there: BTreeSet<u32> = candidates.iter().map(|it| it.lesson).collect();
            prop_assert!(touched.len() >= LESSONS.min(there.len()).min(most), "{touched:?}");
        }

        /// Within one lesson nothing is taken before something more urgent, and what
        /// nobody asked for is never more than the lessons it is taken for.
        #[test]
        fn the_urgent_come_first(candidates in any_candidates(), most in 0..12_usize, seed in any::<u32>()) {
            let picks = session(&candidates, TODAY, most, seed);
            let taken = |place: usize| picks.iter().any(|pick| pick.candidate == place);
            for (place, one) in candidates.iter().enumerate() {
                for (other, two) in candidates.iter().enumerate() {
                    if one.lesson == two.lesson && taken(place) && !taken(other) {
                        prop_assert!(urgency(one, TODAY) <= urgency(two, TODAY), "{one:?} {two:?}");
                    }
                }
            }
            let unasked = picks.iter().filter(|pick| !candidates[pick.candidate].wanted).count();
            prop_assert!(unasked <= LESSONS);
        }

        /// A session is short only for want of candidates, or for the sake of the mix:
        /// then the lesson that fills it has one problem more than all the others.
        #[test]
        fn a_session_is_as_long_as_the_mix_allows(
            candidates in any_candidates(), most in 3..12_usize, seed in any::<u32>()
        ) {
            let picks = session(&candidates, TODAY, most, seed);
            let wanted = candidates.iter().filter(|it| it.wanted).count();
            if picks.len() < most.min(wanted) {
                let of = |lesson: u32| picks.iter().filter(|it| candidates[it.candidate].lesson == lesson).count();
                let largest = picks.iter().map(|it| of(candidates[it.candidate].lesson)).max().unwrap_or(0);
                prop_assert_eq!(2 * largest, picks.len() + 1);
            }
        }
    }
}
