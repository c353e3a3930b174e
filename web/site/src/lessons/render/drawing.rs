//! What the parts of a page need while it is drawn.

use super::recipes::Notes;
use crate::families::Families;
use crate::lessons::course::Course;
use crate::lessons::lesson::Lesson;
use crate::lessons::words::Phrases;
use crate::links::Links;
use numbers::Givens;
use std::cell::{Cell, RefCell};

/// A lesson while it is drawn.
pub(crate) struct Drawing<'a> {
    /// The course.
    pub(crate) course: &'a Course,
    /// The lesson.
    pub(crate) lesson: &'a Lesson,
    /// The links of its page.
    pub(crate) links: &'a Links<'a>,
    /// The problem families.
    pub(crate) families: &'a Families,
    /// The lesson's inputs.
    pub(crate) givens: Givens,
    /// Spellings of every term.
    pub(super) phrases: &'a Phrases<&'a str>,
    /// Terms linked so far, in order.
    pub(super) terms: RefCell<Vec<String>>,
    /// Facts shown so far, in order.
    pub(super) facts: RefCell<Vec<String>>,
    /// Blocks counted so far, for names that must differ.
    counted: Cell<usize>,
    /// Problems drawn so far.
    problems: Cell<usize>,
    /// Figures drawn so far.
    figures: Cell<usize>,
    /// Worked examples drawn so far.
    worked: Cell<usize>,
    /// How its numbers came about.
    pub(super) notes: RefCell<Notes>,
}

impl<'a> Drawing<'a> {
    /// A lesson about to be drawn.
    pub(crate) fn new(
        course: &'a Course,
        lesson: &'a Lesson,
        phrases: &'a Phrases<&'a str>,
        families: &'a Families,
        links: &'a Links<'a>,
    ) -> Self {
        let (givens, _) = Givens::read(&lesson.raw_givens());
        Self {
            course,
            lesson,
            links,
            families,
            givens,
            phrases,
            terms: RefCell::default(),
            facts: RefCell::default(),
            counted: Cell::new(0),
            problems: Cell::new(0),
            figures: Cell::new(0),
            worked: Cell::new(0),
            notes: RefCell::default(),
        }
    }

    /// A number that no other block of the page has.
    pub(super) fn count(&self) -> usize {
        self.counted.set(self.counted.get() + 1);
        self.counted.get()
    }

    /// The number of the lesson's next problem.
    pub(super) fn next_problem(&self) -> usize {
        self.problems.set(self.problems.get() + 1);
        self.problems.get()
    }

    /// The number of the next figure on the page.
    pub(super) fn next_figure(&self) -> usize {
        self.figures.set(self.figures.get() + 1);
        self.figures.get()
    }

    /// The number of the next worked example on the page.
    pub(super) fn next_worked(&self) -> usize {
        self.worked.set(self.worked.get() + 1);
        self.worked.get()
    }

    /// Notes a term's link; whether it is the first.
    pub(super) fn meet_term(&self, id: &str) -> bool {
        meet(&self.terms, id)
    }

    /// Notes a fact shown.
    pub(super) fn meet_fact(&self, id: &str) {
        meet(&self.facts, id);
    }
}

fn meet(known: &RefCell<Vec<String>>, id: &str) -> bool {
    let mut known = known.borrow_mut();
    let first = !known.iter().any(|earlier| earlier == id);
    if first {
        known.push(id.to_owned());
    }
    first
}
