//! The lists beside the lessons: sources and facts, misconceptions, glossary, sets.

mod glossary;
mod misconceptions;
mod set_profiles;
mod sources;

pub(crate) use glossary::{Glossary, Term};
pub(crate) use misconceptions::Misconceptions;
pub(crate) use numbers::is_id;
pub(crate) use set_profiles::read as read_practice_set;
pub(crate) use sources::{Fact, Source, Sources};

use super::front_matter::one_line;
use super::source_text::SourceText;
use crate::report::Report;
use serde::de::DeserializeOwned;
use toml::Spanned;

/// Reads a whole TOML file; a slip goes to the report.
fn read<T: DeserializeOwned>(file: &SourceText, report: &mut Report) -> Option<T> {
    match toml::from_str(file.text()) {
        Ok(list) => Some(list),
        Err(error) => {
            let at = error.span().map_or(0, |span| span.start);
            file.fault(at, one_line(error.message()), report);
            None
        }
    }
}

/// Reports every id that stands twice and every id that is not in lower case with hyphens.
fn check_ids<'a>(
    file: &SourceText,
    what: &str,
    ids: impl Iterator<Item = &'a Spanned<String>>,
    report: &mut Report,
) {
    let mut seen = std::collections::BTreeSet::new();
    for id in ids {
        let name = id.get_ref();
        if !is_id(name) {
            file.fault(
                id.span().start,
                format!(
                    "an id is written in lower-case letters, digits and hyphens (got \"{name}\")"
                ),
                report,
            );
        }
        if !seen.insert(name) {
            file.fault(
                id.span().start,
                format!("the {what} \"{name}\" stands here a second time"),
                report,
            );
        }
    }
}

/// Checks that an entry has either a source that is listed or `practice = true`, not both.
fn check_backing(
    file: &SourceText,
    entry: &Spanned<String>,
    source: Option<&Spanned<String>>,
    practice: bool,
    sources: &Sources,
    report: &mut Report,
) {
    let name = entry.get_ref();
    match source {
        Some(id) if sources.source(id.get_ref()).is_none() => file.fault(
            id.span().start,
            format!("no source has the id \"{}\" in sources.toml", id.get_ref()),
            report,
        ),
        Some(_) if practice => file.fault(
            entry.span().start,
            format!("\"{name}\" has a source and is also marked as common practice: keep one"),
            report,
        ),
        None if !practice => file.fault(
            entry.span().start,
            format!("\"{name}\" needs a source, or practice = true where there is none"),
            report,
        ),
        _ => {}
    }
}
