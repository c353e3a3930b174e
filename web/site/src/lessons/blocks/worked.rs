//! A worked example, shown three times from the same steps.

use super::items::{self, Item, number_mark};
use super::keyed::Keyed;
use super::{Opening, Pairs};
use crate::lessons::block::Fence;
use crate::lessons::prose::Run;
use crate::report::Report;

/// A worked example.
#[derive(Clone, Debug)]
pub(crate) struct Worked {
    /// What is worked out, as a heading.
    pub(crate) title: Run,
    /// The question.
    pub(crate) ask: Run,
    /// The steps.
    pub(crate) steps: Vec<Step>,
    /// Inputs of the second example, over those of the lesson.
    pub(crate) again: Pairs,
    /// Inputs of the third, over those of the lesson.
    pub(crate) alone: Pairs,
}

/// One step.
#[derive(Clone, Debug)]
pub(crate) struct Step {
    /// What is done.
    pub(crate) words: Run,
}

/// Two steps can only be left blank if one is shown before them.
const FEWEST_STEPS: usize = 3;

impl Worked {
    pub(super) fn read(opening: &Opening<'_>, fence: &Fence, report: &mut Report) -> Option<Self> {
        opening.nothing_more(report);
        let file = opening.file;
        let keyed = Keyed::read(
            opening,
            fence.body.clone(),
            &["title", "ask", "again", "alone"],
            report,
        );
        let [title, ask, again, alone] =
            ["title", "ask", "again", "alone"].map(|key| keyed.required(key, report));
        let (title, ask, again, alone) = (title?, ask?, again?, alone?);
        let (ask, items) = items::split(file.text(), ask, number_mark);
        check_steps(opening, &items, report);
        let steps = items.into_iter().map(|item| Step {
            words: keyed.run(item.words, report),
        });
        let steps = steps.collect();
        Some(Self {
            title: keyed.run(title, report),
            ask: keyed.run(ask, report),
            steps,
            again: Pairs::read(file, again, report),
            alone: Pairs::read(file, alone, report),
        })
    }

    /// Its texts in reading order.
    pub(crate) fn runs(&self) -> impl Iterator<Item = &Run> {
        let steps = self.steps.iter().map(|step| &step.words);
        [&self.title, &self.ask].into_iter().chain(steps)
    }
}

fn check_steps(opening: &Opening<'_>, items: &[Item], report: &mut Report) {
    let file = opening.file;
    if items.len() < FEWEST_STEPS {
        let message = format!(
            "a worked example has at least {FEWEST_STEPS} numbered steps behind its question (got {})",
            items.len()
        );
        file.fault(opening.at, message, report);
    }
    for (item, number) in items.iter().zip(1_usize..) {
        if !file.text()[item.at..].starts_with(&format!("{number}. ")) {
            file.fault(item.at, format!("this step is number {number}"), report);
        }
    }
}
