//! A term of the glossary as a list of terms shows it.

use super::course::Course;
use super::lists::Term;
use super::prose::plain;
use super::summary::Summary;

/// What a list of terms shows of one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Definition {
    /// Its name in links.
    pub id: String,
    /// As a lesson writes it.
    pub name: String,
    /// Plurals and other spellings.
    pub also: Vec<String>,
    /// What it means, plain text.
    pub meaning: String,
    /// The lesson that introduces it.
    pub lesson: Option<Summary>,
}

impl Definition {
    /// Every term of a course by the alphabet, capitals and small letters alike.
    pub(super) fn all(course: &Course) -> Vec<Self> {
        let terms = course.glossary.terms().iter();
        let mut all: Vec<Self> = terms.map(|term| Self::of(term, course)).collect();
        all.sort_by_key(|definition| definition.name.to_lowercase());
        all
    }

    fn of(term: &Term, course: &Course) -> Self {
        let id = term.id.get_ref();
        let introducing = course.lessons.iter().find(|lesson| {
            let mut terms = lesson.front.introduces.terms.iter();
            terms.any(|introduced| introduced.get_ref() == id)
        });
        Self {
            id: id.clone(),
            name: term.name.get_ref().clone(),
            also: term.also.iter().map(|it| it.get_ref().clone()).collect(),
            meaning: plain(&term.words),
            lesson: introducing.map(Summary::of),
        }
    }
}
