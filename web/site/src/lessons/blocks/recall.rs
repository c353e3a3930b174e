//! The recall set: families of earlier lessons, one a line.

use super::Opening;
use crate::lessons::block::Fence;
use crate::lessons::lists::is_id;
use crate::report::Report;

/// Problems of earlier lessons, to be worked again.
#[derive(Clone, Debug)]
pub(crate) struct RecallBlock {
    /// Ids of the families, each with its place.
    pub(crate) families: Vec<(String, usize)>,
    /// Place of the block.
    pub(crate) at: usize,
}

impl RecallBlock {
    pub(super) fn read(opening: &Opening<'_>, fence: &Fence, report: &mut Report) -> Self {
        opening.nothing_more(report);
        let mut families = Vec::new();
        let mut at = fence.body.start;
        for line in opening.file.text()[fence.body.clone()].split_inclusive('\n') {
            let id = line.trim();
            if is_id(id) {
                families.push((id.to_owned(), at));
            } else if !id.is_empty() {
                let message = format!(
                    "a recall set names one problem family on each of its lines (got \"{id}\")"
                );
                opening.file.fault(at, message, report);
            }
            at += line.len();
        }
        if families.is_empty() {
            let message = "a recall set names at least one problem family";
            opening.file.fault(opening.at, message, report);
        }
        Self {
            families,
            at: opening.at,
        }
    }
}
