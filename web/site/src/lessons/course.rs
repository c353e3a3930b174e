//! The whole course: its lessons in order and the lists beside them.

use super::block::Block;
use super::extract::Extract;
use super::lesson::Lesson;
use super::lists::{Glossary, Misconceptions, Sources, read_practice_set};
use super::markdown;
use super::source_text::SourceText;
use crate::report::Report;
use std::path::Path;
use superhet::receiver::SetProfile;

/// The lessons in order and the lists beside them.
#[derive(Clone, Debug)]
pub(crate) struct Course {
    /// The lessons that could be read, in the order of the course.
    pub(crate) lessons: Vec<Lesson>,
    /// Publications and facts.
    pub(crate) sources: Sources,
    /// Beliefs and the cases that break them.
    pub(crate) misconceptions: Misconceptions,
    /// The words of the trade.
    pub(crate) glossary: Glossary,
    /// What is shown wherever a reader comes near a set.
    pub(crate) cautions: Cautions,
    /// The set that the lessons speak of; none where its list has faults.
    pub(crate) practice_set: Option<SetProfile>,
    /// The files of the problem families, for their words alone.
    pub(crate) families: Vec<SourceText>,
}

/// The cautions, as running text: a list for every page that comes near a set, and, from
/// its first heading on, what only the page about the site has room for.
#[derive(Clone, Debug)]
pub(crate) struct Cautions {
    /// Their file.
    pub(crate) file: SourceText,
    /// Their text.
    pub(crate) blocks: Vec<Block>,
}

impl Cautions {
    /// What stands before the first heading.
    pub(crate) fn brief(&self) -> &[Block] {
        &self.blocks[..self.first_heading()]
    }

    /// What stands from the first heading on.
    pub(crate) fn more(&self) -> &[Block] {
        &self.blocks[self.first_heading()..]
    }

    fn first_heading(&self) -> usize {
        let heading = |block: &Block| matches!(block, Block::Heading(..));
        let found = self.blocks.iter().position(heading);
        found.unwrap_or(self.blocks.len())
    }
}

/// The files of the course, before any of them is looked into.
#[derive(Clone, Debug, Default)]
pub(crate) struct CourseFiles {
    files: Vec<SourceText>,
}

impl CourseFiles {
    /// The files of the folder `lessons` under the repository's root.
    pub(crate) fn open(root: &Path, report: &mut Report) -> Self {
        let mut files = Self::default();
        for folder in ["lessons", "lessons/problems"] {
            match std::fs::read_dir(root.join(folder)) {
                Ok(entries) => {
                    for path in entries.flatten().map(|entry| entry.path()) {
                        files.open_one(folder, &path, report);
                    }
                }
                Err(error) => {
                    report.fault(folder, 1, 1, format!("the folder cannot be read: {error}"));
                }
            }
        }
        files
            .files
            .sort_by(|one, other| one.path().cmp(other.path()));
        files
    }

    fn open_one(&mut self, folder: &str, path: &Path, report: &mut Report) {
        let name = path.file_name().unwrap_or_default().to_string_lossy();
        let kind = path.extension().and_then(|it| it.to_str());
        if !matches!(kind, Some("md" | "toml")) || name == "README.md" {
            return;
        }
        let shown = format!("{folder}/{name}");
        match std::fs::read_to_string(path) {
            Ok(text) => self.files.push(SourceText::new(shown, text)),
            Err(error) => report.fault(shown, 1, 1, format!("the file cannot be read: {error}")),
        }
    }

    /// Files given as path and text.
    #[cfg(test)]
    pub(crate) fn from_texts<'a>(texts: impl IntoIterator<Item = (&'a str, &'a str)>) -> Self {
        let files = texts
            .into_iter()
            .map(|(path, text)| SourceText::new(path, text));
        Self {
            files: files.collect(),
        }
    }

    fn take(&mut self, name: &str, report: &mut Report) -> SourceText {
        let path = format!("lessons/{name}");
        match self.files.iter().position(|file| file.path() == path) {
            Some(index) => self.files.remove(index),
            None => {
                report.fault(path.as_str(), 1, 1, "the file is missing");
                SourceText::new(path, "")
            }
        }
    }
}

impl Course {
    /// Reads every file; what cannot be read goes to the report.
    pub(crate) fn read(mut files: CourseFiles, report: &mut Report) -> Self {
        let sources = Sources::read(files.take("sources.toml", report), report);
        let misconceptions =
            Misconceptions::read(files.take("misconceptions.toml", report), &sources, report);
        let glossary = Glossary::read(files.take("glossary.toml", report), report);
        let practice_set = read_practice_set(&files.take("set-profiles.toml", report), report);
        let cautions = files.take("cautions.md", report);
        let cautions = Cautions {
            blocks: markdown::blocks(Extract::whole(&cautions), report),
            file: cautions,
        };
        let (families, others): (Vec<_>, Vec<_>) = files
            .files
            .into_iter()
            .partition(|file| file.path().starts_with("lessons/problems/"));
        let mut lessons = Vec::new();
        for file in others {
            // Read by `crate::check`, which knows the families.
            if file.path() == crate::check::FILE {
                continue;
            }
            if file.path().ends_with(".md") {
                lessons.extend(Lesson::read(file, report));
            } else {
                file.fault(0, "no such list belongs to the course", report);
            }
        }
        lessons.sort_by_key(|lesson: &Lesson| lesson.number);
        Self {
            lessons,
            sources,
            misconceptions,
            glossary,
            cautions,
            practice_set,
            families,
        }
    }

    /// The lesson of that slug.
    pub(crate) fn lesson(&self, slug: &str) -> Option<&Lesson> {
        self.lessons.iter().find(|lesson| lesson.slug == slug)
    }
}
