//! One lesson, read: its front matter and the parts of its text.

use super::block::Block;
use super::blocks::Part;
use super::extract::Extract;
use super::front_matter::{self, FrontMatter};
use super::lists::is_id;
use super::markdown;
use super::prose::{Run, plain};
use super::source_text::SourceText;
use super::summary;
use crate::report::Report;
use pulldown_cmark::HeadingLevel;
use std::collections::BTreeMap;

/// A lesson.
#[derive(Clone, Debug)]
pub(crate) struct Lesson {
    /// Its file.
    pub(crate) file: SourceText,
    /// Its place in the course.
    pub(crate) number: u32,
    /// Its address under `lessons/`.
    pub(crate) slug: String,
    /// What it says of itself.
    pub(crate) front: FrontMatter,
    /// The title, read as running text.
    pub(crate) title: Run,
    /// The goals, likewise.
    pub(crate) goals: Vec<Run>,
    /// The text.
    pub(crate) parts: Vec<Part>,
}

impl Lesson {
    /// Reads a lesson; what cannot be read goes to the report.
    pub(crate) fn read(file: SourceText, report: &mut Report) -> Option<Self> {
        let named = number_and_slug(file.path());
        if named.is_none() {
            let message =
                "a lesson's file is named NN-slug.md: its place in the course, then its address";
            file.fault(0, message, report);
        }
        let (front, body) = front_matter::read(&file, report)?;
        let (number, slug) = named?;
        let title = markdown::run(Extract::toml(&file, &front.title), report);
        let goals = front
            .goals
            .iter()
            .map(|goal| markdown::run(Extract::toml(&file, goal), report))
            .collect();
        let parts = read_parts(&file, body, report);
        Some(Self {
            number,
            slug,
            front,
            title,
            goals,
            parts,
            file,
        })
    }

    /// The page of the lesson.
    pub(crate) fn path(&self) -> String {
        summary::path(&self.slug)
    }

    /// The title as plain words.
    pub(crate) fn plain_title(&self) -> String {
        plain(&self.title)
    }

    /// The inputs as typed.
    pub(crate) fn raw_givens(&self) -> BTreeMap<String, String> {
        let given = self.front.given.iter();
        given
            .map(|(key, value)| (key.get_ref().clone(), value.get_ref().clone()))
            .collect()
    }

    /// The inputs with others laid over them.
    pub(crate) fn raw_givens_with(&self, over: &[(String, String)]) -> BTreeMap<String, String> {
        let mut raw = self.raw_givens();
        raw.extend(over.iter().cloned());
        raw
    }
}

fn read_parts(file: &SourceText, body: usize, report: &mut Report) -> Vec<Part> {
    let extract = Extract::part(file, body..file.text().len());
    let blocks = markdown::blocks(extract, report);
    for block in &blocks {
        if let Block::Heading(HeadingLevel::H1, _, at) = block {
            file.fault(
                *at,
                "the title is the lesson's only first-level heading: use \"##\" here",
                report,
            );
        }
    }
    blocks
        .into_iter()
        .filter_map(|block| Part::read(block, file, report))
        .collect()
}

/// `lessons/05-the-image.md` is number 5 with the slug `the-image`.
fn number_and_slug(path: &str) -> Option<(u32, String)> {
    let name = path.rsplit('/').next()?.strip_suffix(".md")?;
    let (number, slug) = name.split_once('-')?;
    let plain =
        number.len() == 2 && number.bytes().all(|byte| byte.is_ascii_digit()) && is_id(slug);
    if !plain {
        return None;
    }
    Some((
        number.parse().ok().filter(|number| *number > 0)?,
        slug.to_owned(),
    ))
}

#[cfg(test)]
mod tests {
    use super::{Lesson, number_and_slug};
    use crate::lessons::source_text::{SourceText, faults_of};

    #[test]
    fn the_name_holds_place_and_address() {
        assert_eq!(
            number_and_slug("lessons/05-the-image.md"),
            Some((5, "the-image".to_owned()))
        );
        for wrong in [
            "lessons/5-the-image.md",
            "lessons/00-x.md",
            "lessons/05-The-image.md",
            "lessons/the-image.md",
        ] {
            assert_eq!(number_and_slug(wrong), None, "{wrong}");
        }
    }

    #[test]
    fn faults_of_name_and_headings_stand_together() {
        let text = "+++\ntitle = \"T\"\nminutes = 1\ngoals = []\n+++\n\n# One\n";
        let file = SourceText::new("lessons/one.md", text);
        assert_eq!(
            faults_of(|report| drop(Lesson::read(file, report))),
            "lessons/one.md:1:1: a lesson's file is named NN-slug.md: its place in the course, then its address"
        );
        let file = SourceText::new("lessons/01-one.md", text);
        assert_eq!(
            faults_of(|report| drop(Lesson::read(file, report))),
            "lessons/01-one.md:7:1: the title is the lesson's only first-level heading: use \"##\" here"
        );
    }
}
