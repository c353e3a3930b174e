//! When a kind of problem comes back: the ladder of boxes.
//!
//! Each family that a reader has met stands in one of five boxes. A problem of it done
//! right alone, on its day or later, moves it one box up; done with help, one box down;
//! where the working was seen first, back to the first box. From each box it comes back
//! after that box's days. That is all: the reader is never asked how hard it was, and
//! nothing depends on a clock, since days are handed in.
//!
//! In scope: one family's standing. Left out: which families are practised together
//! (`session`), and where a standing is kept.
//!
//! Source: S. Leitner, So lernt man lernen, Herder 1972: a box of five compartments, a
//! card that was known moves one compartment on, any other goes back to the first
//! (from memory of the book).
//!
//! DIFFERENCE: Leitner takes a compartment up again when it is full; here each has its
//! days, as is usual where no cards fill anything (common practice, no source). A problem
//! done with help goes back one box, not to the first: it was done in the end.

use super::{family::Level, sitting::Outcome};

/// A day, counted from any first day that stays the same: the pages count from 1 January
/// 1970.
pub type Day = u32;

/// Days until a family comes back, from each box: the next day, three days, then one,
/// two and four weeks. They are our choice, each about twice the one before (common
/// practice, no source).
const DAYS: [Day; LeitnerBox::COUNT as usize] = [1, 3, 7, 14, 28];

/// One of the five boxes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct LeitnerBox(u8);

impl LeitnerBox {
    /// How many there are.
    pub const COUNT: u8 = 5;
    /// The one in which every family begins.
    pub const FIRST: LeitnerBox = LeitnerBox(1);
    /// The one beyond which there is none.
    pub const LAST: LeitnerBox = LeitnerBox(Self::COUNT);

    /// The box with this number, 1 to 5.
    pub fn from_number(number: u8) -> Option<LeitnerBox> {
        (Self::FIRST.0..=Self::LAST.0)
            .contains(&number)
            .then_some(LeitnerBox(number))
    }

    /// Its number, 1 to 5.
    pub fn number(self) -> u8 {
        self.0
    }

    /// Days until a family comes back from it.
    pub fn days(self) -> Day {
        DAYS.get(usize::from(self.0) - 1).copied().unwrap_or(1)
    }

    /// The level of the problems drawn from it: 1, 2 and 3, then the transfer form in
    /// the last two.
    pub fn level(self) -> Level {
        Level::from_number(self.0).unwrap_or(Level::Transfer)
    }

    fn up(self) -> LeitnerBox {
        LeitnerBox((self.0 + 1).min(Self::LAST.0))
    }

    fn down(self) -> LeitnerBox {
        LeitnerBox((self.0 - 1).max(Self::FIRST.0))
    }
}

/// Where a family stands: its box, and the day on which it comes back.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Standing {
    /// The box.
    pub leitner_box: LeitnerBox,
    /// The day from which it is due.
    pub due: Day,
}

impl Standing {
    /// A family not practised before: in the first box, and due.
    pub fn new(today: Day) -> Standing {
        Standing {
            leitner_box: LeitnerBox::FIRST,
            due: today,
        }
    }

    /// Whether the family is to be practised. A day further off than its box ever
    /// sends a family can only come from a clock that was wrong, and does not keep it
    /// away.
    pub fn is_due(self, today: Day) -> bool {
        self.due <= today || self.due - today > self.leitner_box.days()
    }

    /// Where it stands after a problem of it was done today.
    ///
    /// Right alone before its day says nothing about later, so the standing stays;
    /// whatever else was done counts on any day.
    ///
    /// ```
    /// use superhet::problems::{LeitnerBox, Outcome, Standing};
    ///
    /// let monday = Standing::new(100).after(Outcome::RightAlone, 100);
    /// assert_eq!((monday.leitner_box.number(), monday.due), (2, 103));
    /// let too_early = monday.after(Outcome::RightAlone, 101);
    /// assert_eq!(too_early, monday);
    /// let shown = monday.after(Outcome::Shown, 101);
    /// assert_eq!((shown.leitner_box, shown.due), (LeitnerBox::FIRST, 102));
    /// ```
    #[must_use]
    pub fn after(self, outcome: Outcome, today: Day) -> Standing {
        let leitner_box = match outcome {
            Outcome::RightAlone if !self.is_due(today) => return self,
            Outcome::RightAlone => self.leitner_box.up(),
            Outcome::RightWithHelp => self.leitner_box.down(),
            Outcome::Shown => LeitnerBox::FIRST,
        };
        Standing {
            leitner_box,
            due: today.saturating_add(leitner_box.days()),
        }
    }

    /// The one of two copies' standings that was reached later; of two of one day the
    /// one in the lower box. The order in which copies are joined makes no difference,
    /// nor does joining one twice.
    #[must_use]
    pub fn later(self, other: Standing) -> Standing {
        let reached = |it: Standing| it.due.saturating_sub(it.leitner_box.days());
        let rank = |it: Standing| (reached(it), core::cmp::Reverse(it.leitner_box), it.due);
        if rank(other) > rank(self) {
            other
        } else {
            self
        }
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::{
        Just, Strategy, any, prop_assert, prop_assert_eq, prop_oneof, proptest,
    };

    use super::*;

    fn any_box() -> impl Strategy<Value = LeitnerBox> {
        (1..=LeitnerBox::COUNT).prop_map(LeitnerBox)
    }

    fn any_standing() -> impl Strategy<Value = Standing> {
        (any_box(), any::<Day>()).prop_map(|(leitner_box, due)| Standing { leitner_box, due })
    }

    fn any_outcome() -> impl Strategy<Value = Outcome> {
        prop_oneof![
            Just(Outcome::RightAlone),
            Just(Outcome::RightWithHelp),
            Just(Outcome::Shown)
        ]
    }

    #[test]
    fn levels_rise_with_the_box() {
        let levels = [1, 2, 3, 4, 5].map(|number| LeitnerBox(number).level());
        let [one, two, three, four, five] = levels;
        assert_eq!((one, two, three), (Level::One, Level::Two, Level::Three));
        assert_eq!((four, five), (Level::Transfer, Level::Transfer));
        assert_eq!(LeitnerBox::from_number(0), None);
        assert_eq!(LeitnerBox::from_number(6), None);
    }

    /// Right alone on each day asked for: 1 + 3 + 7 + 14 days after the first problem
    /// the family is asked from the last box. By hand, from [`DAYS`] and the first
    /// step, which leads from box 1 to box 2.
    #[test]
    fn a_family_always_right_reaches_the_last_box_in_three_steps_and_a_first() {
        let mut standing = Standing::new(0);
        let mut days = alloc::vec![];
        for _ in 0..6 {
            days.push((standing.leitner_box.number(), standing.due));
            standing = standing.after(Outcome::RightAlone, standing.due);
        }
        let expected = [(1, 0), (2, 3), (3, 10), (4, 24), (5, 52), (5, 80)];
        assert_eq!(days, expected);
    }

    #[test]
    fn a_clock_that_was_wrong_keeps_nothing_away() {
        let far = Standing {
            leitner_box: LeitnerBox::LAST,
            due: 50_000,
        };
        assert!(far.is_due(20_000));
        assert!(far.is_due(50_000 - 29), "28 days is the most");
        assert!(!far.is_due(50_000 - 28));
        assert!(!far.is_due(49_999));
        assert!(far.is_due(50_000));
    }

    proptest! {
        /// After any problem that counts the family comes back, and within the longest
        /// wait there is: at least 1 day and at most `DAYS`' last, 28.
        #[test]
        fn a_family_comes_back_within_its_days(
            standing in any_standing(), outcome in any_outcome(), today in 0..Day::MAX - 100
        ) {
            let next = standing.after(outcome, today);
            if next != standing || outcome != Outcome::RightAlone {
                let wait = next.due - today;
                prop_assert!((DAYS[0]..=DAYS[4]).contains(&wait), "{wait}");
                prop_assert_eq!(wait, next.leitner_box.days());
                prop_assert!(!next.is_due(today));
            }
            prop_assert!(next.is_due(next.due));
        }

        /// One problem moves a family by one box, but back to the first.
        #[test]
        fn a_step_is_one_box(standing in any_standing(), outcome in any_outcome(), today in any::<Day>()) {
            let (was, is) = (standing.leitner_box.0, standing.after(outcome, today).leitner_box.0);
            match outcome {
                Outcome::RightAlone => prop_assert!(is == was || is == was + 1),
                Outcome::RightWithHelp => prop_assert_eq!(is, if was == 1 { 1 } else { was - 1 }),
                Outcome::Shown => prop_assert_eq!(is, 1),
            }
        }

        /// However a reader answers, n problems of one family, all right alone and each
        /// on a day of the reader's own, take it up by n boxes at most, and never
        /// faster than its days: box b is reached no sooner than the sum of the days
        /// of boxes 2 to b - 1 after the first of them.
        #[test]
        fn nobody_climbs_faster_than_the_days(waits in proptest::collection::vec(0_u32..40, 1..20)) {
            let mut standing = Standing::new(1_000);
            let mut today = 1_000;
            for wait in waits {
                today += wait;
                standing = standing.after(Outcome::RightAlone, today);
            }
            let reached = usize::from(standing.leitner_box.0);
            let least: Day = DAYS[1..reached.max(2) - 1].iter().sum();
            prop_assert!(today - 1_000 >= least, "box {reached} after {} days", today - 1_000);
        }

        #[test]
        fn copies_join_the_same_in_any_order(
            a in any_standing(), b in any_standing(), c in any_standing()
        ) {
            prop_assert_eq!(a.later(a), a);
            prop_assert_eq!(a.later(b), b.later(a));
            prop_assert_eq!(a.later(b).later(c), a.later(b.later(c)));
            prop_assert_eq!(a.later(b).later(b), a.later(b));
        }

        /// A failure on one device is not undone by an older success on another, though
        /// the success sends the family further.
        #[test]
        fn what_was_done_later_counts(standing in any_standing(), today in 100..1_000_000_u32, ago in 1..50_u32) {
            let now = standing.after(Outcome::Shown, today);
            let earlier = Standing { due: today - ago, ..standing }.after(Outcome::RightAlone, today - ago);
            prop_assert_eq!(earlier.later(now), now);
        }
    }
}
