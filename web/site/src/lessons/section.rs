//! The sections of a lesson as a search finds them: their headings and the words in them.

use super::block::Block;
use super::blocks::Part;
use super::course::Course;
use super::lesson::Lesson;
use super::prose::{plain, slug};
use super::summary::Summary;
use super::texts;
use pulldown_cmark::HeadingLevel;

/// A stretch of a lesson under one heading.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Section {
    /// Its heading, plain text; none for what stands before the first.
    pub title: Option<String>,
    /// Its words, in reading order.
    pub text: String,
}

impl Section {
    /// Where it begins on the lesson's page: a fragment, or nothing for its top.
    pub fn fragment(&self) -> String {
        let fragment = |title| format!("#{}", slug(title));
        self.title.as_deref().map(fragment).unwrap_or_default()
    }

    /// Every lesson with its sections, in the order of the course.
    pub(super) fn all(course: &Course) -> Vec<(Summary, Vec<Self>)> {
        let lessons = course.lessons.iter();
        lessons
            .map(|lesson| (Summary::of(lesson), Self::of(lesson, course)))
            .collect()
    }

    fn of(lesson: &Lesson, course: &Course) -> Vec<Self> {
        let mut sections = vec![Self::called(None)];
        for part in &lesson.parts {
            if let Part::Prose(Block::Heading(HeadingLevel::H2, run, _)) = part {
                sections.push(Self::called(Some(plain(run))));
                continue;
            }
            let Some(section) = sections.last_mut() else {
                continue;
            };
            for run in texts::of_part(part) {
                section.add(&plain(run));
            }
            if let Part::Misconception(block) = part {
                let broken = course.misconceptions.find(&block.id);
                broken
                    .into_iter()
                    .for_each(|it| section.add(&plain(&it.belief_words)));
            }
        }
        sections
    }

    fn called(title: Option<String>) -> Self {
        let text = String::new();
        Self { title, text }
    }

    fn add(&mut self, words: &str) {
        self.text.push(' ');
        self.text.push_str(words);
    }
}
