//! A formula on the page: folded away, so that it can be skipped.

use super::Drawing;
use crate::lessons::blocks::FormulaBlock;
use crate::lessons::mathml::{Display, mathml};
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
                    summary { "The formula, for those who like one: " (lower(entry.title)) }
                    (formula)
                    dl.letters {
                        @for (letter, meaning) in &letters {
                            dt { (letter) }
                            dd { (meaning) }
                        }
                    }
                }
            }
        })
    }
}

/// The result's letter and those of the parameters, each with its meaning.
fn letters(entry: &Entry) -> anyhow::Result<Vec<(Markup, String)>> {
    let result = std::iter::once((entry.symbol, lower(entry.title)));
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

/// A title inside a sentence: "Oscillator frequency" becomes "oscillator frequency", "IF
/// rejection" stays.
fn lower(title: &str) -> String {
    let mut letters = title.chars();
    match (letters.next(), letters.clone().next()) {
        (Some(first), Some(second)) if second.is_lowercase() => {
            first.to_lowercase().chain(letters).collect()
        }
        _ => title.to_owned(),
    }
}
