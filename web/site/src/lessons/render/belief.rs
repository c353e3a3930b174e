//! A misconception on the page: the belief, and the case that breaks it.

use super::Drawing;
use super::inline::Manner;
use crate::lessons::blocks::MisconceptionBlock;
use maud::{Markup, html};

impl Drawing<'_> {
    /// A belief and its case.
    pub(super) fn belief(&self, block: &MisconceptionBlock) -> Markup {
        let entry = self.course.misconceptions.find(&block.id);
        html! {
            section.misconception #{ "misconception-" (block.id) } {
                p.slip-name { "You might think" }
                @if let Some(entry) = entry {
                    p.belief { (self.run(&entry.belief_words, Manner::LINE)) }
                }
                (self.blocks(&block.body))
            }
        }
    }
}
