//! `misconceptions.toml`: what people believe, and the case that breaks it.

use super::Sources;
use crate::lessons::extract::Extract;
use crate::lessons::markdown;
use crate::lessons::prose::Run;
use crate::lessons::source_text::SourceText;
use crate::report::Report;
use serde::Deserialize;
use toml::Spanned;

/// The list of misconceptions.
#[derive(Clone, Debug)]
pub(crate) struct Misconceptions {
    file: SourceText,
    list: List,
}

#[derive(Clone, Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct List {
    #[serde(default, rename = "misconception")]
    misconceptions: Vec<Misconception>,
}

/// A belief that does not hold.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Misconception {
    /// Its name in blocks and choices.
    pub(crate) id: Spanned<String>,
    /// The belief, as someone would say it.
    belief: Spanned<String>,
    /// The case that breaks it, in a sentence.
    case: Spanned<String>,
    /// The belief, read as running text.
    #[serde(skip)]
    pub(crate) belief_words: Run,
    /// The case, likewise.
    #[serde(skip)]
    pub(crate) case_words: Run,
    /// The publication that names the belief or the case.
    pub(crate) source: Option<Spanned<String>>,
    /// Where in the publication.
    pub(crate) clause: Option<String>,
    /// Common practice without a source.
    #[serde(default)]
    pub(crate) practice: bool,
}

impl Misconceptions {
    /// Reads the list and checks what can be checked within it.
    pub(crate) fn read(file: SourceText, sources: &Sources, report: &mut Report) -> Self {
        let mut list: List = super::read(&file, report).unwrap_or_default();
        for it in &mut list.misconceptions {
            it.belief_words = markdown::run(Extract::toml(&file, &it.belief), report);
            it.case_words = markdown::run(Extract::toml(&file, &it.case), report);
        }
        super::check_ids(
            &file,
            "misconception",
            list.misconceptions.iter().map(|it| &it.id),
            report,
        );
        for it in &list.misconceptions {
            super::check_backing(
                &file,
                &it.id,
                it.source.as_ref(),
                it.practice,
                sources,
                report,
            );
        }
        Self { file, list }
    }

    /// The file.
    pub(crate) fn file(&self) -> &SourceText {
        &self.file
    }

    /// Every misconception, in the list's order.
    pub(crate) fn all(&self) -> &[Misconception] {
        &self.list.misconceptions
    }

    /// The misconception of that id.
    pub(crate) fn find(&self, id: &str) -> Option<&Misconception> {
        self.all().iter().find(|it| it.id.get_ref() == id)
    }
}
