//! A belief and the case that breaks it.

use super::Opening;
use crate::lessons::block::{Block, Fence};
use crate::lessons::extract::Extract;
use crate::lessons::markdown;
use crate::report::Report;

/// The case that breaks a belief; the belief's words stand in the list.
#[derive(Clone, Debug)]
pub(crate) struct MisconceptionBlock {
    /// Id in `misconceptions.toml`.
    pub(crate) id: String,
    /// Place of the block.
    pub(crate) at: usize,
    /// The case, worked out.
    pub(crate) body: Vec<Block>,
}

impl MisconceptionBlock {
    pub(super) fn read(opening: &Opening<'_>, fence: &Fence, report: &mut Report) -> Option<Self> {
        let id = opening.id("a misconception", report)?;
        let body = markdown::blocks(Extract::part(opening.file, fence.body.clone()), report);
        if body.is_empty() {
            let message = "the case that breaks the belief stands inside this block";
            opening.file.fault(opening.at, message, report);
        }
        for block in &body {
            match block {
                Block::Fence(inner) => opening.file.fault(
                    inner.at,
                    "a block stands by itself, not inside a list, a quotation or another block",
                    report,
                ),
                Block::Heading(_, _, at) => {
                    opening
                        .file
                        .fault(*at, "no heading stands inside a block", report);
                }
                other => super::refuse_inner_fences(other, opening.file, report),
            }
        }
        Some(Self {
            id,
            at: opening.at,
            body,
        })
    }
}
