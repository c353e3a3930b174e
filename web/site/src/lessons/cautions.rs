//! The cautions as every page can show them: the one text of `lessons/cautions.md`, in
//! its two halves.

use super::block::Block;
use super::prose::{Inline, plain};
use maud::{Markup, html};

/// The title and the list; a paragraph that only leads on to another page is left out.
pub(super) fn cautions(blocks: &[Block]) -> Markup {
    html! {
        div.caution {
            @for block in blocks {
                @match block {
                    Block::Paragraph(run) if !leads_on(run) => p.caution-title { (plain(run)) },
                    Block::List(_, items) => ul { @for item in items { li { (words(item)) } } },
                    _ => {},
                }
            }
        }
    }
}

/// The longer half, each of its headings a third-level one of the page.
pub(super) fn more(blocks: &[Block]) -> Markup {
    html! {
        @for block in blocks {
            @match block {
                Block::Heading(_, run, _) => h3 { (plain(run)) },
                Block::Paragraph(run) => p { (inlines(run)) },
                Block::List(_, items) => ul { @for item in items { li { (words(item)) } } },
                _ => {},
            }
        }
    }
}

fn leads_on(run: &[Inline]) -> bool {
    run.iter().any(|inline| matches!(inline, Inline::Link(_)))
}

fn words(item: &[Block]) -> Markup {
    let runs = item.iter().filter_map(|block| match block {
        Block::Paragraph(run) => Some(run),
        _ => None,
    });
    html! { @for run in runs { (inlines(run)) } }
}

fn inlines(run: &[Inline]) -> Markup {
    html! {
        @for inline in run {
            @match inline {
                Inline::Strong(inside) => strong { (plain(inside)) },
                other => (plain(std::slice::from_ref(other))),
            }
        }
    }
}
