//! The check before and after the course: which of its two forms comes when.
//!
//! It is offered three times: before the course, after its last lesson, and again thirty
//! days later. Each time it is the form that was not taken last, so no question comes back
//! before the third time. Which form is first depends on a seed that is handed in, so that
//! of many readers about half begin with either.
//!
//! In scope: what was taken, and what comes next. Left out: the questions, which the
//! course names, and where a taking is kept.

use super::{draw::Draw, family::Level, schedule::Day};

/// Questions of a form.
pub const QUESTIONS: u32 = 12;
/// Days from the second time to the third. Long enough that numbers are forgotten, short
/// enough that a reader is still about (common practice, no source).
pub const AGAIN_AFTER: Day = 30;

/// One of the two forms: the same kinds of questions, with other numbers.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Form {
    /// The first.
    One,
    /// The second.
    Two,
}

impl Form {
    /// The form that a reader with this seed begins with: each for half of all seeds.
    pub fn first(seed: u32) -> Form {
        match Draw::new("check", 1, Level::One, seed).below(2) {
            0 => Form::One,
            _ => Form::Two,
        }
    }

    /// The form with this number, 1 or 2.
    pub fn from_number(number: u32) -> Option<Form> {
        [Form::One, Form::Two]
            .into_iter()
            .find(|form| form.number() == number)
    }

    /// Its number, 1 or 2.
    pub fn number(self) -> u32 {
        match self {
            Form::One => 1,
            Form::Two => 2,
        }
    }

    /// The other one.
    #[must_use]
    pub fn other(self) -> Form {
        match self {
            Form::One => Form::Two,
            Form::Two => Form::One,
        }
    }
}

/// A form that was taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Taking {
    /// On which day.
    pub day: Day,
    /// Which one.
    pub form: Form,
    /// A bit for each question, the first one's lowest: set where it was right.
    pub right: u16,
}

impl Taking {
    /// Whether a question was right, counted from 0.
    pub fn is_right(self, question: u32) -> bool {
        question < QUESTIONS && self.right >> question & 1 == 1
    }

    /// How many were right.
    pub fn count(self) -> u32 {
        (0..QUESTIONS).filter(|&it| self.is_right(it)).count() as u32
    }
}

/// What comes next.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Next {
    /// The first time.
    Before(Form),
    /// The second, once the course is done.
    AfterTheCourse,
    /// The second time.
    After(Form),
    /// The third, from this day on.
    FromDay(Day),
    /// The third time.
    Again(Form),
    /// It was taken three times.
    Nothing,
}

/// What comes next for a reader who has taken these, in their order.
///
/// ```
/// use superhet::problems::before_after::{Form, Next, Taking, next};
///
/// let form = Form::first(7);
/// assert_eq!(next(&[], false, 100, 7), Next::Before(form));
/// let first = Taking { day: 100, form, right: 0 };
/// assert_eq!(next(&[first], false, 140, 7), Next::AfterTheCourse);
/// assert_eq!(next(&[first], true, 140, 7), Next::After(form.other()));
/// ```
pub fn next(takings: &[Taking], course_is_done: bool, today: Day, seed: u32) -> Next {
    match takings {
        [] => Next::Before(Form::first(seed)),
        [_] if !course_is_done => Next::AfterTheCourse,
        [first] => Next::After(first.form.other()),
        [_, second] => {
            let from = second.day.saturating_add(AGAIN_AFTER);
            // A day still to come can only be from a clock that was wrong.
            if today < from && second.day <= today {
                Next::FromDay(from)
            } else {
                Next::Again(second.form.other())
            }
        }
        _ => Next::Nothing,
    }
}

#[cfg(test)]
mod tests {
    use super::{Form, Next, Taking, next};

    fn taken(day: u32, form: Form, right: u16) -> Taking {
        Taking { day, form, right }
    }

    #[test]
    fn the_third_time_waits_thirty_days() {
        let two = [taken(10, Form::Two, 0), taken(50, Form::One, 0)];
        assert_eq!(next(&two, true, 50, 1), Next::FromDay(80));
        assert_eq!(next(&two, true, 79, 1), Next::FromDay(80));
        assert_eq!(next(&two, true, 80, 1), Next::Again(Form::Two));
        assert_eq!(next(&two, false, 80, 1), Next::Again(Form::Two));
        let three = [two[0], two[1], taken(80, Form::Two, 0)];
        assert_eq!(next(&three, true, 500, 1), Next::Nothing);
    }

    #[test]
    fn a_clock_that_was_wrong_keeps_nothing_away() {
        let two = [taken(10, Form::Two, 0), taken(90_000, Form::One, 0)];
        assert_eq!(next(&two, true, 20_000, 1), Next::Again(Form::Two));
    }

    /// Of 10 000 fair coins, heads differ from half by more than 300, six standard
    /// deviations of 50, once in five hundred million runs.
    #[test]
    fn half_of_all_readers_begin_with_either() {
        let ones = (0..10_000).filter(|&seed| Form::first(seed) == Form::One);
        let ones = ones.count();
        assert!((4_700..=5_300).contains(&ones), "{ones}");
    }

    #[test]
    fn right_answers_are_counted_by_their_bits() {
        let taking = taken(1, Form::One, 0b1000_0000_0101);
        assert_eq!(taking.count(), 3);
        assert!(taking.is_right(0) && !taking.is_right(1) && taking.is_right(11));
        assert!(!taken(1, Form::One, u16::MAX).is_right(12));
        assert_eq!(taken(1, Form::One, u16::MAX).count(), 12);
        for form in [Form::One, Form::Two] {
            assert_eq!(Form::from_number(form.number()), Some(form));
            assert_ne!(form.other(), form);
        }
        assert_eq!(Form::from_number(3), None);
    }
}
