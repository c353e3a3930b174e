//! A lesson as lists of lessons show it.

use super::lesson::Lesson;
use super::prose::plain;

/// The page of the lesson with this slug.
pub(crate) fn path(slug: &str) -> String {
    format!("lessons/{slug}/")
}

/// What a list of lessons shows of one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Summary {
    /// Its place in the course.
    pub number: u32,
    /// Its address under `lessons/`.
    pub slug: String,
    /// Its title, plain text.
    pub title: String,
    /// Minutes to read and work.
    pub minutes: u32,
    /// What the reader can do afterwards, plain text.
    pub goals: Vec<String>,
    /// Addresses of the lessons to read first.
    pub needs: Vec<String>,
}

impl Summary {
    /// The page of the lesson.
    pub fn path(&self) -> String {
        path(&self.slug)
    }

    pub(super) fn of(lesson: &Lesson) -> Self {
        let needs = lesson.front.needs.iter();
        Self {
            number: lesson.number,
            slug: lesson.slug.clone(),
            title: lesson.plain_title(),
            minutes: lesson.front.minutes,
            goals: lesson.goals.iter().map(|goal| plain(goal)).collect(),
            needs: needs.map(|slug| slug.get_ref().clone()).collect(),
        }
    }
}
