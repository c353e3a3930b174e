//! What a set will do, as markup; the page's script makes the same of the program's lines.

use maud::{Markup, html};
use myset::OwnSet;
use myset::paper::{Block, Piece, Table};
use myset::report::report;

/// The results of the practice set, said to be an example; without it, what is waited for.
pub(super) fn section(example: Option<&OwnSet>) -> Markup {
    html! {
        @match example {
            Some(set) => {
                h2 #results-title {
                    "An example: what the practice set will do"
                }
                p.example-note #results-note {
                    (set.text("name").unwrap_or("The practice set")) ", " (set.told())
                    ". None of it is taken for yours."
                }
                div #results-body { @for block in &report(set) { (part(block)) } }
            }
            None => {
                h2 #results-title { "What your set will do" }
                p #results-note { "This comes when IF, side and Region are answered." }
                div #results-body {}
            }
        }
    }
}

fn part(block: &Block) -> Markup {
    html! {
        @match block {
            Block::Heading(text) => h3 { (text) },
            Block::Says(pieces) => p { @for piece in pieces { (words(piece)) } },
            Block::Needs(text) => p.needs { (text) },
            Block::Table(table) => (grid(table)),
        }
    }
}

fn words(piece: &Piece) -> Markup {
    html! {
        @match &piece.found {
            None => (piece.text),
            Some(found) => data value=(found.value) data-quantity=(found.quantity) data-value=(found.value)
                data-expression=(found.expression) { (piece.text) },
        }
    }
}

fn grid(table: &Table) -> Markup {
    html! {
        div.table tabindex="0" role="group" aria-label=(table.caption) {
            table {
                caption { (table.caption) }
                thead { tr { @for head in &table.heads { th scope="col" { (head) } } } }
                tbody {
                    @for row in &table.rows {
                        tr {
                            @for (index, piece) in row.iter().enumerate() {
                                @if index == 0 { th scope="row" { (words(piece)) } }
                                @else { td { (words(piece)) } }
                            }
                        }
                    }
                }
            }
        }
    }
}
