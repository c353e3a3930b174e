//! A problem on the page: one on paper, and where the program finds its family.

use super::Drawing;
use crate::lessons::blocks::{self, ProblemBlock};
use anyhow::Context;
use maud::{Markup, html};
use superhet::problems::problem::{Answer, Part};
use superhet::problems::text::unbroken;
use superhet::problems::{Level, Problem, generate};

/// The seed of the problem that stands on the page; which one it is does not matter.
const SEED: u32 = 1;

impl Drawing<'_> {
    /// A problem of a family that the lesson teaches.
    pub(super) fn problem(&self, block: &ProblemBlock) -> anyhow::Result<Markup> {
        let parts = self.lesson.parts.iter();
        let all = parts.filter(|part| matches!(part, blocks::Part::Problem(_)));
        let heading = format!("Problem {} of {}", self.next_problem(), all.count());
        self.problem_of(&block.family, SEED, &heading)
    }

    /// A problem of a family by its id; the seed is that of the problem on paper.
    pub(super) fn problem_of(&self, id: &str, seed: u32, heading: &str) -> anyhow::Result<Markup> {
        let registered = self.families.find(id);
        let registered = registered.with_context(|| format!("no problem family {id}"))?;
        let problem = generate(&registered.family, Level::One, seed)?;
        Ok(html! {
            section.problem #{ "problem-" (id) } data-problem=(id) data-number=(registered.number)
                data-family=(self.links.family(id)) data-seed=(seed)
                aria-labelledby={ "heading-" (id) } {
                h3.slip-name #{ "heading-" (id) } { (heading) }
                div.on-paper { (on_paper(&problem)) }
            }
        })
    }
}

/// A problem that is worked on paper: hints, answers and steps are folded away.
pub(crate) fn on_paper(problem: &Problem) -> Markup {
    html! {
        p.scene { (unbroken(&problem.scene)) }
        @let parts = problem.parts.len();
        @for (place, part) in (1..).zip(&problem.parts) {
            @if parts > 1 { p.slip-name { "Part " (place) " of " (parts) } }
            p.question { (unbroken(&part.ask)) }
            @match &part.answer {
                Answer::Number(number) => p.precision { "Answer " (unbroken(&number.precision_text)) "." },
                Answer::Choice(choices) => ul.options { @for choice in choices { li { (choice.text) } } },
            }
            @for (index, hint) in part.hints.iter().enumerate() {
                details.hint {
                    summary { @if index == 0 { "A hint" } @else { "Another hint" } }
                    p { (unbroken(hint)) }
                }
            }
            details.answer {
                summary { "Answer and steps" }
                (answer(part))
                ol.steps { @for step in &part.steps { li { (unbroken(step)) } } }
            }
        }
    }
}

fn answer(part: &Part) -> Markup {
    html! {
        @match &part.answer {
            Answer::Number(number) => p.right { data.number value=(number.value) { (number.text) } },
            Answer::Choice(choices) => {
                @for choice in choices.iter().filter(|choice| choice.right) {
                    p.right { (choice.text) }
                }
            },
        }
    }
}
