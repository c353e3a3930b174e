//! A worked example on the page, three times from the same steps.

use super::Drawing;
use super::inline::Manner;
use super::number::Numbers;
use crate::lessons::blocks::{Pairs, Worked};
use anyhow::bail;
use maud::{Markup, html};
use numbers::Givens;

/// Steps left to the reader in the second example.
const LEFT_BLANK: usize = 2;

impl Drawing<'_> {
    /// All steps shown, then the last two left to the reader, then none.
    pub(super) fn worked(&self, worked: &Worked) -> anyhow::Result<Markup> {
        let again = self.over(&worked.again)?;
        let alone = self.over(&worked.alone)?;
        let manner = |givens| Manner {
            numbers: Numbers::WorkedOut(givens),
            ..Manner::TEXT
        };
        let steps = worked.steps.len();
        Ok(html! {
            section.worked {
                h3 { (self.run(&worked.title, Manner::LINE)) }
                div.example {
                    h4 { "Step by step" }
                    p.ask { (self.run(&worked.ask, Manner::TEXT)) }
                    (self.steps(worked, Manner::TEXT, steps))
                }
                div.example {
                    h4 { "Again: the last two steps are yours" }
                    (self.over_inputs(&worked.again, || html! {
                        p.ask { (self.run(&worked.ask, manner(&again))) }
                        (self.steps(worked, manner(&again), steps.saturating_sub(LEFT_BLANK)))
                    }))
                }
                div.example {
                    h4 { "On your own" }
                    (self.over_inputs(&worked.alone, || html! {
                        p.ask { (self.run(&worked.ask, manner(&alone))) }
                        details.blank {
                            summary { "Work it out, then look at the steps" }
                            (self.steps(worked, manner(&alone), steps))
                        }
                    }))
                }
            }
        })
    }

    /// The steps, those from `shown` on folded away.
    fn steps(&self, worked: &Worked, manner: Manner<'_>, shown: usize) -> Markup {
        html! {
            ol.steps {
                @for (index, step) in worked.steps.iter().enumerate() {
                    @if index < shown {
                        li { (self.run(&step.words, manner)) }
                    } @else {
                        li.blank {
                            details.blank {
                                summary { "Your step: work it out, then look" }
                                p { (self.run(&step.words, manner)) }
                            }
                        }
                    }
                }
            }
        }
    }

    fn over(&self, pairs: &Pairs) -> anyhow::Result<Givens> {
        let (givens, refused) = Givens::read(&self.lesson.raw_givens_with(&pairs.pairs));
        match refused.first() {
            Some((name, message)) => bail!("{}: {name}: {message}", self.lesson.slug),
            None => Ok(givens),
        }
    }
}
