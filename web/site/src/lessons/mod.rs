//! The lessons: read, checked number by number and word by word, and drawn as pages.
//!
//! The format is described in `lessons/README.md`. Everything wrong is collected in one
//! report; nothing is drawn from a course that has faults.
//!
//! The order of the work: [`course`] reads the files ([`front_matter`], [`markdown`],
//! [`blocks`], [`lists`]), [`checks`] holds every rule against them, [`render`] draws.

mod block;
mod blocks;
mod cautions;
mod checks;
mod counts;
mod course;
mod definition;
mod extract;
mod front_matter;
mod lesson;
mod lists;
mod markdown;
pub(crate) mod mathml;
mod prose;
mod reach;
mod render;
mod scan;
mod section;
mod source_text;
pub(crate) mod summary;
mod target;
#[cfg(test)]
mod tests;
mod texts;
mod words;

pub use counts::Counts;
pub use definition::Definition;

pub(crate) use render::on_paper;
pub use section::Section;
pub use summary::Summary;

use crate::families::{Families, References};
use crate::page::Page;
use crate::render::Site;
use crate::report::Report;
use course::{Course, CourseFiles};
use lesson::Lesson;
use maud::{Markup, html};
use render::{Cited, Drawing};
use std::path::Path;
use superhet::receiver::SetProfile;
use words::Phrases;

/// The lessons and the lists beside them, read and checked.
#[derive(Clone, Debug)]
pub struct Lessons {
    course: Course,
}

impl Lessons {
    /// Reads and checks the folder `lessons` under the repository's root; what is wrong
    /// goes to the report.
    pub fn load(root: &Path, families: &Families, report: &mut Report) -> Self {
        let files = CourseFiles::open(root, report);
        let course = Course::read(files, report);
        let known: Vec<&str> = families.newest().map(|it| it.family.id.as_str()).collect();
        checks::all(&course, &known, report);
        let lessons = Self { course };
        lessons.check_families(families, report);
        lessons
    }

    /// Holds what the families say about lessons, misconceptions and facts against them.
    fn check_families(&self, families: &Families, report: &mut Report) {
        let course = &self.course;
        let lessons: Vec<&str> = course.lessons.iter().map(|it| it.slug.as_str()).collect();
        let misconceptions = course.misconceptions.all().iter();
        let misconceptions: Vec<&str> = misconceptions.map(|it| it.id.get_ref().as_str()).collect();
        let facts = course.sources.facts().iter();
        let facts = facts.map(|it| (it.id.get_ref().as_str(), it.text.get_ref().as_str()));
        let facts: Vec<(&str, &str)> = facts.collect();
        let references = References {
            lessons: &lessons,
            misconceptions: &misconceptions,
            facts: &facts,
        };
        families.check_references(&references, report);
    }

    /// What lists of the lessons show, in the order of the course.
    pub fn summaries(&self) -> impl Iterator<Item = Summary> {
        self.course.lessons.iter().map(Summary::of)
    }

    /// What people believe and is not so: (id, the belief in plain text).
    pub fn beliefs(&self) -> impl Iterator<Item = (&str, String)> {
        let all = self.course.misconceptions.all().iter();
        all.map(|it| (it.id.get_ref().as_str(), prose::plain(&it.belief_words)))
    }

    /// What each lesson holds, counted.
    pub fn counts(&self) -> impl Iterator<Item = Counts> {
        self.course.lessons.iter().map(Counts::of)
    }

    /// Every term of the glossary, by the alphabet.
    pub fn definitions(&self) -> Vec<Definition> {
        Definition::all(&self.course)
    }

    /// The lesson that introduces a quantity of the catalogue.
    pub fn lesson_of(&self, quantity: &str) -> Option<Summary> {
        let introduces = |lesson: &&Lesson| {
            let mut quantities = lesson.front.introduces.quantities.iter();
            quantities.any(|introduced| introduced.get_ref() == quantity)
        };
        let lesson = self.course.lessons.iter().find(introduces);
        lesson.map(Summary::of)
    }

    /// Every lesson with its sections, in the order of the course.
    pub fn sections(&self) -> Vec<(Summary, Vec<Section>)> {
        Section::all(&self.course)
    }

    /// The pages of all lessons.
    ///
    /// # Errors
    /// When a part cannot be drawn that the check has let through.
    pub fn pages(&self, site: &Site<'_>) -> anyhow::Result<Vec<Page>> {
        let phrases = Phrases::of_terms(&self.course.glossary);
        let lessons = self.course.lessons.iter();
        lessons
            .map(|lesson| {
                let links = site.links(&lesson.path());
                let families = &site.content.families;
                let drawing = Drawing::new(&self.course, lesson, &phrases, families, &links);
                render::page(&drawing)
            })
            .collect()
    }

    /// The set that the lessons speak of.
    pub fn practice_set(&self) -> Option<&SetProfile> {
        self.course.practice_set.as_ref()
    }

    /// The cautions for anyone near a set, in their box.
    pub fn cautions(&self) -> Markup {
        cautions::cautions(self.course.cautions.brief())
    }

    /// What to do when something goes wrong near a set, and what else is in an old one.
    pub fn more_cautions(&self) -> Markup {
        cautions::more(self.course.cautions.more())
    }

    /// Every publication that the lessons draw on, as list items.
    pub fn sources(&self) -> Markup {
        html! {
            @for source in self.course.sources.sources() { li { (Cited(source)) } }
        }
    }
}
