//! `sources.toml`: the publications, and the facts taken from them.

use crate::lessons::source_text::SourceText;
use crate::report::Report;
use serde::Deserialize;
use toml::Spanned;

/// The one list of sources, with its facts.
#[derive(Clone, Debug)]
pub(crate) struct Sources {
    file: SourceText,
    list: List,
}

#[derive(Clone, Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct List {
    #[serde(default, rename = "source")]
    sources: Vec<Source>,
    #[serde(default, rename = "fact")]
    facts: Vec<Fact>,
}

/// A publication.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Source {
    /// Its name in links.
    pub(crate) id: Spanned<String>,
    /// Author or issuing body.
    pub(crate) author: String,
    /// Title.
    pub(crate) title: String,
    /// Edition, where there are several.
    pub(crate) edition: Option<String>,
    /// Year, or years, where known.
    pub(crate) year: Option<Year>,
    /// Where it can be found: publisher, number, library.
    #[serde(rename = "where")]
    pub(crate) found: Option<String>,
}

/// A year as a number, or as text where it needs more ("1953, reprinted 1960").
#[derive(Clone, Debug, Deserialize)]
#[serde(untagged)]
pub(crate) enum Year {
    Number(u16),
    Text(String),
}

/// A value that nobody here calculates.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Fact {
    /// Its name in links.
    pub(crate) id: Spanned<String>,
    /// The words as a lesson prints them.
    pub(crate) text: Spanned<String>,
    /// The value with its unit, where the text holds one value.
    pub(crate) value: Option<Spanned<String>>,
    /// The publication.
    pub(crate) source: Option<Spanned<String>>,
    /// Where in the publication.
    pub(crate) clause: Option<String>,
    /// Common practice without a source.
    #[serde(default)]
    pub(crate) practice: bool,
}

impl Sources {
    /// Reads the list and checks what can be checked within it.
    pub(crate) fn read(file: SourceText, report: &mut Report) -> Self {
        let list: List = super::read(&file, report).unwrap_or_default();
        let sources = Self { file, list };
        sources.check(report);
        sources
    }

    fn check(&self, report: &mut Report) {
        let file = &self.file;
        super::check_ids(
            file,
            "source",
            self.list.sources.iter().map(|it| &it.id),
            report,
        );
        super::check_ids(
            file,
            "fact",
            self.list.facts.iter().map(|it| &it.id),
            report,
        );
        for fact in &self.list.facts {
            super::check_backing(
                file,
                &fact.id,
                fact.source.as_ref(),
                fact.practice,
                self,
                report,
            );
            if fact.source.is_some() && fact.clause.is_none() {
                file.fault(
                    fact.id.span().start,
                    format!(
                        "\"{}\" names a source but no clause in it",
                        fact.id.get_ref()
                    ),
                    report,
                );
            }
        }
    }

    /// The file.
    pub(crate) fn file(&self) -> &SourceText {
        &self.file
    }

    /// Every source, in the list's order.
    pub(crate) fn sources(&self) -> &[Source] {
        &self.list.sources
    }

    /// Every fact, in the list's order.
    pub(crate) fn facts(&self) -> &[Fact] {
        &self.list.facts
    }

    /// The source of that id.
    pub(crate) fn source(&self, id: &str) -> Option<&Source> {
        self.list.sources.iter().find(|it| it.id.get_ref() == id)
    }

    /// The fact of that id.
    pub(crate) fn fact(&self, id: &str) -> Option<&Fact> {
        self.list.facts.iter().find(|it| it.id.get_ref() == id)
    }
}

impl std::fmt::Display for Year {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            Self::Number(year) => write!(out, "{year}"),
            Self::Text(text) => out.write_str(text),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{SourceText, Sources};
    use crate::lessons::source_text::faults_of;

    fn slips(text: &str) -> String {
        let file = SourceText::new("lessons/sources.toml", text);
        faults_of(|report| drop(Sources::read(file, report)))
    }

    const BOOK: &str = "[[source]]\nid = \"book\"\nauthor = \"A\"\ntitle = \"T\"\nyear = 1953\n";

    #[test]
    fn a_fact_names_a_listed_source_and_a_clause_or_is_practice() {
        let fact = |rest: &str| format!("{BOOK}[[fact]]\nid = \"f\"\ntext = \"9 kHz\"\n{rest}");
        assert_eq!(slips(&fact("source = \"book\"\nclause = \"p. 1\"\n")), "");
        assert_eq!(slips(&fact("practice = true\n")), "");
        assert_eq!(
            slips(&fact("source = \"film\"\nclause = \"p. 1\"\n")),
            "lessons/sources.toml:9:10: no source has the id \"film\" in sources.toml"
        );
        assert_eq!(
            slips(&fact("source = \"book\"\n")),
            "lessons/sources.toml:7:6: \"f\" names a source but no clause in it"
        );
        assert_eq!(
            slips(&fact("")),
            "lessons/sources.toml:7:6: \"f\" needs a source, or practice = true where there is none"
        );
    }

    #[test]
    fn ids_are_single_and_plain() {
        assert_eq!(
            slips(&format!("{BOOK}{BOOK}")),
            "lessons/sources.toml:7:6: the source \"book\" stands here a second time"
        );
        assert_eq!(
            slips(&BOOK.replace("\"book\"", "\"The Book\"")),
            "lessons/sources.toml:2:6: an id is written in lower-case letters, digits and hyphens (got \"The Book\")"
        );
    }
}
