//! The formula of a catalogue quantity.

use super::Opening;
use crate::lessons::block::Fence;
use crate::report::Report;

/// A formula, which the catalogue holds.
#[derive(Clone, Debug)]
pub(crate) struct FormulaBlock {
    /// Name in the catalogue.
    pub(crate) quantity: String,
    /// Place of the block.
    pub(crate) at: usize,
}

impl FormulaBlock {
    pub(super) fn read(opening: &Opening<'_>, fence: &Fence, report: &mut Report) -> Option<Self> {
        opening.no_body(fence, report);
        Some(Self {
            quantity: opening.id("a quantity of the catalogue", report)?,
            at: opening.at,
        })
    }
}
