//! A figure: its name and input, a caption, and perhaps something to do on it.

use super::keyed::{Keyed, trim};
use super::{Opening, Pairs};
use crate::lessons::block::Fence;
use crate::lessons::prose::Run;
use crate::report::Report;
use figures::{FigureError, Input};
use numbers::Givens;

/// A figure.
#[derive(Clone, Debug)]
pub(crate) struct Figure {
    /// Place of the block.
    pub(crate) at: usize,
    /// Name of the figure.
    pub(crate) name: String,
    /// Its input.
    pub(crate) input: Pairs,
    /// The caption.
    pub(crate) caption: Run,
    /// Something to do.
    pub(crate) task: Option<Task>,
}

/// Something to do on a figure.
#[derive(Clone, Debug)]
pub(crate) struct Task {
    /// What to do.
    pub(crate) words: Run,
    /// When it is done.
    pub(crate) done: String,
    /// Place of that condition.
    pub(crate) done_at: usize,
}

impl Figure {
    pub(super) fn read(opening: &Opening<'_>, fence: &Fence, report: &mut Report) -> Option<Self> {
        let file = opening.file;
        let name = opening.rest.split_whitespace().next().unwrap_or("");
        if name.is_empty() {
            file.fault(opening.at, "the block names a figure behind it", report);
            return None;
        }
        let from = opening.rest_at + name.len();
        let pairs_range = trim(file.text(), from..opening.rest_at + opening.rest.len());
        let keyed = Keyed::read(opening, fence.body.clone(), &["task", "done"], report);
        let caption = trim(file.text(), keyed.lead.clone());
        if caption.is_empty() {
            file.fault(opening.at, "a figure needs a caption", report);
        }
        Some(Self {
            at: opening.at,
            name: name.to_owned(),
            input: Pairs::read(file, pairs_range, report),
            caption: keyed.run(caption, report),
            task: read_task(opening, &keyed, report),
        })
    }

    /// Its input; a value may be the name of a lesson's input. Not that of `move`: it lists
    /// the figure's handles, which are called like the inputs they move.
    pub(crate) fn input(&self, givens: &Givens) -> Result<Input, FigureError> {
        let pairs = self.input.pairs.iter().map(|(key, value)| {
            let given = givens.get(value).filter(|_| key != "move");
            format!("{key}={}", given.map_or(value, |given| &given.typed))
        });
        Input::parse(&pairs.collect::<Vec<_>>().join("&"))
    }
}

fn read_task(opening: &Opening<'_>, keyed: &Keyed<'_>, report: &mut Report) -> Option<Task> {
    match (keyed.optional("task"), keyed.optional("done")) {
        (Some(words), Some(done)) => Some(Task {
            words: keyed.run(words, report),
            done: opening.file.text()[done.clone()].to_owned(),
            done_at: done.start,
        }),
        (None, None) => None,
        _ => {
            let message = "\"task:\" and \"done:\" go together: one says what to do, the other when it is done";
            opening.file.fault(opening.at, message, report);
            None
        }
    }
}
