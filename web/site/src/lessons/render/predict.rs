//! A prediction on the page.

use super::Drawing;
use super::inline::Manner;
use crate::lessons::blocks::{Choice, Predict};
use crate::lessons::prose::plain;
use anyhow::anyhow;
use maud::{Markup, html};

impl Drawing<'_> {
    /// A prediction: choices to commit to, and what settles it folded away.
    pub(super) fn predict(&self, predict: &Predict) -> anyhow::Result<Markup> {
        let settled = self
            .givens
            .work_out(&predict.settled_by)
            .map_err(|error| anyhow!(error))?;
        let number = self.count();
        Ok(html! {
            section.predict data-settled-by=(settled.expression) aria-labelledby={ "question-" (number) } {
                p.slip-name { "What do you expect?" }
                p.question #{ "question-" (number) } { (self.run(&predict.question, Manner::TEXT)) }
                fieldset.choices aria-labelledby={ "question-" (number) } {
                    @for (index, choice) in predict.choices.iter().enumerate() {
                        (self.choice(choice, number, index))
                    }
                }
                details {
                    summary { "See what happens" }
                    @for choice in predict.choices.iter().filter(|choice| choice.right) {
                        p.right-choice { "What happens: " (self.run(&choice.words, Manner::LINE)) }
                    }
                    p.because { (self.run(&predict.because, Manner::TEXT)) }
                }
            }
        })
    }

    fn choice(&self, choice: &Choice, number: usize, index: usize) -> Markup {
        let id = choice.misconception.as_ref().map(|(id, _)| id.as_str());
        let belief = id.and_then(|id| self.course.misconceptions.find(id));
        html! {
            label.choice data-right[choice.right] data-misconception=[id]
                data-belief=[belief.map(|belief| plain(&belief.belief_words))] {
                input type="radio" name={ "predict-" (number) } value=(index + 1);
                span { (self.run(&choice.words, Manner::LABEL)) }
            }
        }
    }
}
