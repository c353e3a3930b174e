//! A formula on the page: folded away, so that it can be skipped.

use super::Drawing;
use crate::lessons::blocks::FormulaBlock;
use crate::lessons::mathml::{Display, mathml};
use crate::pages::formulas;
use crate::wording::inside_sentence;
use anyhow::{Context, anyhow};
use maud::{Markup, PreEscaped, html};
use superhet::catalogue::{Entry, find};

impl Drawing<'_> {
    /// The formula of a quantity, with its letters in words.
    pub(super) fn formula(&self, block: &FormulaBlock) -> anyhow::Result<Markup> {
        let entry =
            find(&block.quantity).with_context(|| format!("no quantity {}", block.quantity))?;
        let formula = draw(entry.formula, Display::Block)?;
        let letters = letters(entry)?;
        Ok(html! {
            section.formula data-formula=(entry.name) {
                details {
                    summary { "The formula, for those who like one: " (inside_sentence(entry.title)) }
                    (formula)
                    dl.letters {
                        @for (letter, meaning) in &letters {
                            dt { (letter) }
                            dd { (meaning) }
                        }
                    }
                    p {
                        a href=(self.links.page(&format!("{}#{}", formulas::PATH, entry.name))) {
                            "Its limits, an example and its source"
                        }
                    }
                }
            }
        })
    }
}

/// The result's letter and those of the parameters, each with its meaning.
fn letters(entry: &Entry) -> anyhow::Result<Vec<(Markup, String)>> {
    let result = std::iter::once((entry.symbol, inside_sentence(entry.title)));
    let parameters = entry.parameters.iter();
    let parameters = parameters.map(|parameter| (parameter.symbol, parameter.meaning.to_owned()));
    result
        .chain(parameters)
        .map(|(symbol, meaning)| Ok((draw(symbol, Display::Inline)?, meaning)))
        .collect()
}

fn draw(latex: &str, display: Display) -> anyhow::Result<Markup> {
    mathml(latex, display)
        .map(PreEscaped)
        .map_err(|error| anyhow!(error))
}
