//! A course in a folder of its own, to be changed and made longer.

use anyhow::{Context, Result};
use std::env;
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicU32, Ordering};

/// The lesson that is copied to make a course longer: by its place in the course it needs
/// most of the others.
const COPIED: &str = "05-the-image.md";

/// A copy of the lessons and of the pages' files, removed when this is dropped.
#[derive(Debug)]
pub(super) struct Course {
    root: PathBuf,
}

impl Course {
    /// Copies the course of a repository and makes it `lessons` lessons long.
    pub(super) fn of(root: &Path, lessons: usize) -> Result<Self> {
        static MADE: AtomicU32 = AtomicU32::new(0);
        let number = MADE.fetch_add(1, Ordering::Relaxed);
        let name = format!("before-the-bench-course-{}-{number}", std::process::id());
        let course = Self {
            root: env::temp_dir().join(name),
        };
        copy_folder(&root.join("lessons"), &course.root.join("lessons"))?;
        copy_folder(&root.join("web/pages"), &course.root.join("web/pages"))?;
        let written = course.written()?;
        let text = course.read(COPIED)?;
        for place in written..lessons {
            let file = format!("{:02}-another-image-{place}.md", 50 + place - written);
            course.write(&file, &without_introductions(&text))?;
        }
        Ok(course)
    }

    /// The folder that stands for the repository.
    pub(super) fn root(&self) -> &Path {
        &self.root
    }

    /// Puts a word of the number's own into the last line of a lesson.
    pub(super) fn change(&self, number: usize) -> Result<()> {
        let text = self.read(COPIED)?;
        let lines: Vec<&str> = text.lines().collect();
        let changed = lines.iter().take_while(|line| !line.starts_with("Changed"));
        let mut text: Vec<&str> = changed.copied().collect();
        let last = format!("Changed {}.", "again ".repeat(number % 7).trim_end());
        text.push(&last);
        self.write(COPIED, &text.join("\n"))
    }

    /// How many lessons there are.
    fn written(&self) -> Result<usize> {
        let folder = self.root.join("lessons");
        let names = fs::read_dir(&folder).context("no lessons")?;
        let is_lesson = |name: &str| {
            name.ends_with(".md") && name.starts_with(|first: char| first.is_ascii_digit())
        };
        Ok(names
            .filter_map(|entry| Some(entry.ok()?.file_name().to_string_lossy().into_owned()))
            .filter(|name| is_lesson(name))
            .count())
    }

    fn read(&self, file: &str) -> Result<String> {
        let path = self.root.join("lessons").join(file);
        fs::read_to_string(&path).with_context(|| format!("cannot read {}", path.display()))
    }

    fn write(&self, file: &str, text: &str) -> Result<()> {
        let path = self.root.join("lessons").join(file);
        fs::write(&path, text).with_context(|| format!("cannot write {}", path.display()))
    }
}

impl Drop for Course {
    fn drop(&mut self) {
        // A folder left behind in the system's own place for such is no harm.
        let _ = fs::remove_dir_all(&self.root);
    }
}

/// A lesson that introduces nothing, since no two may introduce the same.
fn without_introductions(text: &str) -> String {
    let mut inside = false;
    let mut kept = Vec::new();
    for line in text.lines() {
        if line.trim() == "[introduces]" {
            inside = true;
            kept.extend(["[introduces]", "quantities = []", "terms = []", ""]);
            continue;
        }
        let ends = line.starts_with('[') || line.starts_with("+++");
        inside = inside && !ends;
        if !inside {
            kept.push(line);
        }
    }
    kept.join("\n")
}

fn copy_folder(from: &Path, to: &Path) -> Result<()> {
    let told = || format!("cannot copy {}", from.display());
    fs::create_dir_all(to).with_context(told)?;
    for entry in fs::read_dir(from).with_context(told)? {
        let entry = entry.with_context(told)?;
        let target = to.join(entry.file_name());
        if entry.path().is_dir() {
            copy_folder(&entry.path(), &target)?;
        } else {
            fs::copy(entry.path(), &target).with_context(told)?;
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::{Course, without_introductions};
    use crate::content::Content;
    use crate::repository;

    /// More lessons than the course has.
    const LONGER: usize = 24;

    #[test]
    fn a_copied_lesson_introduces_nothing() {
        let text =
            "+++\n[introduces]\nquantities = [\n  \"image\",\n]\n\n[given]\ndial = \"1\"\n+++\nx";
        let wanted =
            "+++\n[introduces]\nquantities = []\nterms = []\n\n[given]\ndial = \"1\"\n+++\nx";
        assert_eq!(without_introductions(text), wanted);
    }

    #[test]
    fn a_longer_and_changed_course_is_still_sound() {
        let course = Course::of(&repository::root(), LONGER).unwrap();
        course.change(1).unwrap();
        course.change(2).unwrap();
        assert_eq!(course.written().unwrap(), LONGER);
        let content = Content::load(course.root());
        assert!(content.is_ok(), "{}", content.err().unwrap_or_default());
    }
}
