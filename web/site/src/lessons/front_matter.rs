//! A lesson's front matter: TOML between two lines of `+++`.

use super::source_text::SourceText;
use crate::report::Report;
use numbers::Need;
use serde::Deserialize;
use std::collections::BTreeMap;
use std::ops::Range;
use toml::Spanned;

/// What a lesson says of itself before its text. Spans count from the start of the file.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub(crate) struct FrontMatter {
    /// The lesson's title, plain text.
    pub title: Spanned<String>,
    /// Minutes to read and work.
    pub minutes: u32,
    /// Slugs of lessons to read first.
    #[serde(default)]
    pub needs: Vec<Spanned<String>>,
    /// What the reader can do afterwards.
    pub goals: Vec<Spanned<String>>,
    /// Problem families.
    #[serde(default)]
    pub problems: Vec<Spanned<String>>,
    /// Misconceptions that the lesson breaks.
    #[serde(default)]
    pub misconceptions: Vec<Spanned<String>>,
    /// Sources to list besides those of the facts used.
    #[serde(default)]
    pub sources: Vec<Spanned<String>>,
    /// Whether the reader comes near a set: the cautions are then shown.
    #[serde(default)]
    pub near_a_set: bool,
    /// What the lesson introduces.
    #[serde(default)]
    pub introduces: Introduces,
    /// Inputs of the lesson's numbers.
    #[serde(default)]
    pub given: BTreeMap<Spanned<String>, Spanned<String>>,
    /// What of it follows a set of the reader's own.
    pub my_set: Option<MySet>,
}

/// What follows a set of the reader's own, and what stays the lesson's.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct MySet {
    /// Inputs that belong to the set: input to field of the set.
    pub own: BTreeMap<Spanned<String>, Spanned<String>>,
    /// Units whose sentences stay true for every set, or for those that meet conditions.
    #[serde(default)]
    pub follows: BTreeMap<Spanned<String>, Vec<Need>>,
    /// Units that stay, each with the reason that is told.
    #[serde(default)]
    pub stays: BTreeMap<Spanned<String>, Spanned<String>>,
}

/// Quantities and terms that are first used in a lesson.
#[derive(Clone, Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Introduces {
    /// Names in the catalogue.
    #[serde(default)]
    pub quantities: Vec<Spanned<String>>,
    /// Ids in the glossary.
    #[serde(default)]
    pub terms: Vec<Spanned<String>>,
}

/// Where the front matter ends and the text begins.
struct Split {
    toml: Range<usize>,
    body: usize,
}

/// Reads the front matter and says where the text begins; a slip goes to the report.
pub(crate) fn read(file: &SourceText, report: &mut Report) -> Option<(FrontMatter, usize)> {
    let Some(split) = split(file.text()) else {
        file.fault(
            0,
            "a lesson begins with front matter: TOML between two lines of \"+++\"",
            report,
        );
        return None;
    };
    // Blank lines in place of what stands before keep every span true to the file.
    let mut padded = "\n".repeat(split.toml.start);
    padded.push_str(&file.text()[split.toml.clone()]);
    match toml::from_str::<FrontMatter>(&padded) {
        Ok(front) => Some((front, split.body)),
        Err(error) => {
            let at = error.span().map_or(0, |span| span.start);
            file.fault(at.max(split.toml.start), one_line(error.message()), report);
            None
        }
    }
}

/// A message of the TOML reader in one line.
pub(crate) fn one_line(message: &str) -> String {
    message.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn split(text: &str) -> Option<Split> {
    let start = text
        .strip_prefix("+++\n")
        .map(|_| 4)
        .or_else(|| text.strip_prefix("+++\r\n").map(|_| 5))?;
    let mut at = start;
    for line in text[start..].split_inclusive('\n') {
        if line.trim_end() == "+++" {
            return Some(Split {
                toml: start..at,
                body: at + line.len(),
            });
        }
        at += line.len();
    }
    None
}

#[cfg(test)]
mod tests {
    use super::{Report, SourceText, read};
    use crate::lessons::source_text::faults_of;

    fn slips(text: &str) -> String {
        let file = SourceText::new("lessons/01-x.md", text);
        faults_of(|report| drop(read(&file, report)))
    }

    #[test]
    fn spans_are_those_of_the_file() {
        let text = "+++\ntitle = \"One\"\nminutes = 12\ngoals = [\"Say it\"]\n[given]\ndial = \"1200 kHz\"\n+++\n\nBody";
        let mut report = Report::default();
        let file = SourceText::new("lessons/01-x.md", text);
        let (front, body) = read(&file, &mut report).expect("front matter is right");
        assert!(report.faults().is_empty());
        assert_eq!(&text[front.title.span()], "\"One\"");
        let (key, value) = front.given.iter().next().expect("one given");
        assert_eq!(&text[key.span()], "dial");
        assert_eq!(&text[value.span()], "\"1200 kHz\"");
        assert_eq!(text[body..].trim(), "Body");
    }

    #[test]
    fn an_unknown_key_is_refused_where_it_stands() {
        assert_eq!(
            slips("+++\ntitle = \"One\"\nminutes = 12\ngoals = []\nauthor = \"x\"\n+++\n"),
            "lessons/01-x.md:5:1: unknown field `author`, expected one of `title`, `minutes`, \
             `needs`, `goals`, `problems`, `misconceptions`, `sources`, `near-a-set`, \
             `introduces`, `given`, `my-set`"
        );
    }

    #[test]
    fn a_missing_key_and_broken_toml_are_told() {
        assert_eq!(
            slips("+++\ntitle = \"One\"\ngoals = []\n+++\n"),
            "lessons/01-x.md:2:1: missing field `minutes`"
        );
        assert_eq!(
            slips("+++\ntitle = One\n+++\n"),
            "lessons/01-x.md:2:9: string values must be quoted, expected literal string"
        );
    }

    #[test]
    fn a_file_without_front_matter_is_refused() {
        let rule = "lessons/01-x.md:1:1: a lesson begins with front matter: TOML between two lines of \"+++\"";
        assert_eq!(slips("# One\n"), rule);
        assert_eq!(slips("+++\ntitle = \"One\"\n"), rule);
    }
}
