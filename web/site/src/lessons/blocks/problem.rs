//! Where a problem of a family is shown.

use super::Opening;
use crate::lessons::block::Fence;
use crate::report::Report;

/// A problem drawn from a family.
#[derive(Clone, Debug)]
pub(crate) struct ProblemBlock {
    /// Id of the family.
    pub(crate) family: String,
    /// Place of the block.
    pub(crate) at: usize,
}

impl ProblemBlock {
    pub(super) fn read(opening: &Opening<'_>, fence: &Fence, report: &mut Report) -> Option<Self> {
        opening.no_body(fence, report);
        Some(Self {
            family: opening.id("a problem family", report)?,
            at: opening.at,
        })
    }
}
