//! The recall set: one problem of each family that an earlier lesson taught.

use super::Drawing;
use crate::lessons::blocks::RecallBlock;
use maud::{Markup, html};

impl Drawing<'_> {
    /// Problems of earlier lessons. On paper each lesson that comes back to a family
    /// draws another problem of it.
    pub(super) fn recall(&self, block: &RecallBlock) -> anyhow::Result<Markup> {
        let seed = self.lesson.number;
        let all = block.families.len();
        let problems = block.families.iter().zip(1_usize..);
        let problems = problems.map(|((id, _), number)| {
            self.problem_of(id, seed, &format!("Earlier problem {number} of {all}"))
        });
        let problems: Vec<Markup> = problems.collect::<anyhow::Result<_>>()?;
        Ok(html! {
            section.recall {
                h2 { "From earlier lessons" }
                p { "Try these before you look back." }
                @for problem in &problems { (problem) }
            }
        })
    }
}
