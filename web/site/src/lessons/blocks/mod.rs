//! The fenced blocks of a lesson, one kind a file.

mod figure;
mod formula;
mod items;
mod keyed;
mod misconception;
mod pairs;
mod predict;
mod problem;
mod recall;
mod worked;

pub(crate) use figure::Figure;
pub(crate) use formula::FormulaBlock;
pub(crate) use misconception::MisconceptionBlock;
pub(crate) use pairs::Pairs;
pub(crate) use predict::{Choice, Predict};
pub(crate) use problem::ProblemBlock;
pub(crate) use recall::RecallBlock;
pub(crate) use worked::Worked;

use super::block::{Block, Fence};
use super::source_text::SourceText;
use crate::report::Report;

/// A part of a lesson's text, in order.
#[derive(Clone, Debug)]
pub(crate) enum Part {
    /// Running text.
    Prose(Block),
    /// A figure.
    Figure(Figure),
    /// A prediction.
    Predict(Predict),
    /// A worked example.
    Worked(Worked),
    /// A belief and the case that breaks it.
    Misconception(MisconceptionBlock),
    /// A formula.
    Formula(FormulaBlock),
    /// A problem.
    Problem(ProblemBlock),
    /// Problems of earlier lessons.
    Recall(RecallBlock),
}

/// The words of a fence's first line: the block's name and what follows it.
#[derive(Clone, Debug)]
pub(crate) struct Opening<'a> {
    /// The file.
    pub(crate) file: &'a SourceText,
    /// Everything behind the block's name.
    pub(crate) rest: &'a str,
    /// Place of the block's name.
    pub(crate) at: usize,
    /// Place of what follows it.
    pub(crate) rest_at: usize,
}

impl Part {
    /// Looks into a block; what cannot be read goes to the report.
    pub(crate) fn read(block: Block, file: &SourceText, report: &mut Report) -> Option<Self> {
        let Block::Fence(fence) = block else {
            refuse_inner_fences(&block, file, report);
            return Some(Self::Prose(block));
        };
        let info = fence.info.trim_end();
        let name = info.split_whitespace().next().unwrap_or("");
        let rest = info[name.len()..].trim_start();
        let opening = Opening {
            file,
            rest,
            at: fence.at,
            rest_at: fence.at + info.len() - rest.len(),
        };
        match name {
            "figure" => Figure::read(&opening, &fence, report).map(Self::Figure),
            "predict" => Predict::read(&opening, &fence, report).map(Self::Predict),
            "worked" => Worked::read(&opening, &fence, report).map(Self::Worked),
            "misconception" => {
                MisconceptionBlock::read(&opening, &fence, report).map(Self::Misconception)
            }
            "formula" => FormulaBlock::read(&opening, &fence, report).map(Self::Formula),
            "problem" => ProblemBlock::read(&opening, &fence, report).map(Self::Problem),
            "recall" => Some(Self::Recall(RecallBlock::read(&opening, &fence, report))),
            _ => {
                file.fault(fence.at, unknown_block(name), report);
                None
            }
        }
    }
}

fn unknown_block(name: &str) -> String {
    format!(
        "a block is a figure, predict, worked, misconception, formula, problem or recall (got \"{name}\")"
    )
}

/// A fence inside a list or quotation would be lost on the page.
fn refuse_inner_fences(block: &Block, file: &SourceText, report: &mut Report) {
    let inner: Vec<&Block> = match block {
        Block::List(_, items) => items.iter().flatten().collect(),
        Block::Quote(blocks) => blocks.iter().collect(),
        _ => Vec::new(),
    };
    for block in inner {
        match block {
            Block::Fence(fence) => file.fault(
                fence.at,
                "a block stands by itself, not inside a list, a quotation or another block",
                report,
            ),
            _ => refuse_inner_fences(block, file, report),
        }
    }
}

impl Opening<'_> {
    /// The one id that must follow the block's name.
    fn id(&self, what: &str, report: &mut Report) -> Option<String> {
        if super::lists::is_id(self.rest) {
            return Some(self.rest.to_owned());
        }
        let message = format!("the block names {what} behind it (got \"{}\")", self.rest);
        self.file.fault(self.at, message, report);
        None
    }

    /// Refuses words behind the block's name.
    fn nothing_more(&self, report: &mut Report) {
        if !self.rest.is_empty() {
            let message = format!(
                "nothing stands behind the name of this block (got \"{}\")",
                self.rest
            );
            self.file.fault(self.rest_at, message, report);
        }
    }

    /// Refuses text inside a block that has none.
    fn no_body(&self, fence: &Fence, report: &mut Report) {
        if !self.file.text()[fence.body.clone()].trim().is_empty() {
            self.file
                .fault(fence.body.start, "nothing stands inside this block", report);
        }
    }
}

#[cfg(test)]
mod tests;
