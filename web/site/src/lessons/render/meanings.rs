//! The words of a lesson with their meanings, at its end.

use super::Drawing;
use super::inline::Manner;
use maud::{Markup, html};

/// Every term that the page links, in order of first use; each leads back to it.
pub(super) fn meanings(drawing: &Drawing<'_>) -> Markup {
    let ids = drawing.terms.borrow().clone();
    let terms: Vec<_> = ids
        .iter()
        .filter_map(|id| drawing.course.glossary.find(id))
        .collect();
    html! {
        @if !terms.is_empty() {
            section.meanings aria-labelledby="meanings" {
                h2 #meanings { "Words in this lesson" }
                dl {
                    @for term in terms {
                        dt #{ "term-" (term.id.get_ref()) } { (term.name.get_ref()) }
                        dd {
                            (drawing.run(&term.words, Manner::LINE)) " "
                            a.back href={ "#use-" (term.id.get_ref()) } aria-label={ "Back to “" (term.name.get_ref()) "” in the text" } {
                                "back"
                            }
                        }
                    }
                }
            }
        }
    }
}
