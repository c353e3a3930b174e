//! Headings, paragraphs, lists, quotations and tables on the page.

use super::Drawing;
use super::inline::Manner;
use crate::lessons::block::{Block, Table};
use crate::lessons::prose::{plain, slug};
use maud::{Markup, html};
use pulldown_cmark::{Alignment, HeadingLevel};

impl Drawing<'_> {
    /// A block of running text.
    pub(super) fn block(&self, block: &Block) -> Markup {
        match block {
            Block::Heading(level, run, _) => {
                let words = self.run(run, Manner::LINE);
                let id = slug(&plain(run));
                html! {
                    @match level {
                        HeadingLevel::H1 | HeadingLevel::H2 => h2 id=(id) { (words) },
                        HeadingLevel::H3 => h3 id=(id) { (words) },
                        _ => h4 id=(id) { (words) },
                    }
                }
            }
            Block::Paragraph(run) => html! { p { (self.run(run, Manner::TEXT)) } },
            Block::List(None, items) => html! { ul { (self.items(items)) } },
            Block::List(Some(1), items) => html! { ol { (self.items(items)) } },
            Block::List(Some(start), items) => html! { ol start=(start) { (self.items(items)) } },
            Block::Quote(blocks) => html! { blockquote { (self.blocks(blocks)) } },
            Block::Table(table) => self.table(table),
            Block::Rule => html! { hr; },
            Block::Fence(_) => html! {},
        }
    }

    /// Several blocks.
    pub(super) fn blocks(&self, blocks: &[Block]) -> Markup {
        html! { @for block in blocks { (self.block(block)) } }
    }

    /// List items; one that is a single paragraph has no paragraph of its own.
    fn items(&self, items: &[Vec<Block>]) -> Markup {
        html! {
            @for item in items {
                li {
                    @for (index, block) in item.iter().enumerate() {
                        @match block {
                            Block::Paragraph(run) if index == 0 => (self.run(run, Manner::TEXT)),
                            _ => (self.block(block)),
                        }
                    }
                }
            }
        }
    }

    fn table(&self, table: &Table) -> Markup {
        let side = |column: usize| match table.alignments.get(column) {
            Some(Alignment::Right) => Some("to-right"),
            Some(Alignment::Center) => Some("to-centre"),
            _ => None,
        };
        html! {
            div.table tabindex="0" role="group" aria-label="Table" {
                table {
                    thead { tr {
                        @for (column, cell) in table.headings.iter().enumerate() {
                            th scope="col" class=[side(column)] { (self.run(cell, Manner::LINE)) }
                        }
                    } }
                    tbody {
                        @for row in &table.rows {
                            tr {
                                @for (column, cell) in row.iter().enumerate() {
                                    td class=[side(column)] { (self.run(cell, Manner::TEXT)) }
                                }
                            }
                        }
                    }
                }
            }
        }
    }
}
