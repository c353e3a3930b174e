//! A prediction on the page.

use super::Drawing;
use super::inline::Manner;
use crate::lessons::blocks::{Choice, Predict};
use crate::lessons::prose::plain;
use anyhow::anyhow;
use maud::{Markup, html};
use superhet::catalogue::Answer;
use superhet::problems::precision::round_to_figures;
use superhet::units::display;

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
                    @let told = self.what_happens(predict);
                    (told)
                    @if !shows(&told, &settled.answer) { (self.settled(&settled.answer)) }
                }
            }
        })
    }

    /// The right choice, and why it is so.
    fn what_happens(&self, predict: &Predict) -> Markup {
        html! {
            @for choice in predict.choices.iter().filter(|choice| choice.right) {
                p.right-choice { "What happens: " (self.run(&choice.words, Manner::LINE)) }
            }
            p.because { (self.run(&predict.because, Manner::TEXT)) }
        }
    }

    /// The number that settles it, which no author typed.
    fn settled(&self, answer: &Answer) -> Markup {
        self.note_other_number();
        let kind = answer.kind;
        let text = display::text(kind, round_to_figures(answer.value, 3));
        html! {
            p.settled {
                "Worked out: "
                data.number value=(answer.value) data-kind="calc" data-quantity=(answer.name)
                    data-value=(answer.value) { (text) }
                "."
            }
        }
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

/// Whether what is told shows the quantity already.
fn shows(told: &Markup, answer: &Answer) -> bool {
    let worked_out = format!("data-quantity=\"{}\"", answer.name);
    told.0.contains(&worked_out)
}
