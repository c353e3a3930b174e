//! `glossary.toml`: the words of the trade and their meanings.

use crate::lessons::extract::Extract;
use crate::lessons::markdown;
use crate::lessons::prose::Run;
use crate::lessons::source_text::SourceText;
use crate::report::Report;
use serde::Deserialize;
use std::collections::BTreeMap;
use toml::Spanned;

/// The glossary.
#[derive(Clone, Debug)]
pub(crate) struct Glossary {
    file: SourceText,
    list: List,
}

#[derive(Clone, Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct List {
    #[serde(default, rename = "term")]
    terms: Vec<Term>,
}

/// One word or phrase.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Term {
    /// Its name in links.
    pub(crate) id: Spanned<String>,
    /// As a lesson writes it.
    pub(crate) name: Spanned<String>,
    /// Plurals and other spellings.
    #[serde(default)]
    pub(crate) also: Vec<Spanned<String>>,
    /// What it means, in a sentence or two.
    meaning: Spanned<String>,
    /// The meaning, read as running text.
    #[serde(skip)]
    pub(crate) words: Run,
}

impl Glossary {
    /// Reads the glossary and checks what can be checked within it.
    pub(crate) fn read(file: SourceText, report: &mut Report) -> Self {
        let mut list: List = super::read(&file, report).unwrap_or_default();
        for term in &mut list.terms {
            term.words = markdown::run(Extract::toml(&file, &term.meaning), report);
        }
        super::check_ids(&file, "term", list.terms.iter().map(|it| &it.id), report);
        let glossary = Self { file, list };
        glossary.check_spellings(report);
        glossary
    }

    fn check_spellings(&self, report: &mut Report) {
        let mut seen: BTreeMap<String, &str> = BTreeMap::new();
        for term in self.terms() {
            for spelling in term.spellings() {
                let known = seen.insert(spelling.get_ref().to_lowercase(), term.id.get_ref());
                if let Some(other) = known {
                    self.file.fault(
                        spelling.span().start,
                        format!(
                            "\"{}\" is already a spelling of the term \"{other}\"",
                            spelling.get_ref()
                        ),
                        report,
                    );
                }
            }
        }
    }

    /// The file.
    pub(crate) fn file(&self) -> &SourceText {
        &self.file
    }

    /// Every term, in the list's order.
    pub(crate) fn terms(&self) -> &[Term] {
        &self.list.terms
    }

    /// The term of that id.
    pub(crate) fn find(&self, id: &str) -> Option<&Term> {
        self.terms().iter().find(|it| it.id.get_ref() == id)
    }
}

impl Term {
    /// The name and the other spellings.
    pub(crate) fn spellings(&self) -> impl Iterator<Item = &Spanned<String>> {
        std::iter::once(&self.name).chain(&self.also)
    }
}

#[cfg(test)]
mod tests {
    use super::{Glossary, SourceText};
    use crate::lessons::source_text::faults_of;

    #[test]
    fn one_spelling_belongs_to_one_term() {
        let text = "[[term]]\nid = \"if\"\nname = \"IF\"\nmeaning = \"x\"\n\
                    [[term]]\nid = \"other\"\nname = \"y\"\nalso = [\"if\"]\nmeaning = \"x\"\n";
        let file = SourceText::new("lessons/glossary.toml", text);
        assert_eq!(
            faults_of(|report| drop(Glossary::read(file, report))),
            "lessons/glossary.toml:8:9: \"if\" is already a spelling of the term \"if\""
        );
    }
}
