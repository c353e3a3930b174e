//! Markdown read into blocks and runs, each with its place in the file.
//!
//! In: headings, paragraphs, lists, quotes, tables, rules, fenced blocks, emphasis, code
//! spans, links. Left out and refused: HTML, images, indented code.

use super::block::{Block, Fence, Table};
use super::extract::Extract;
use super::prose::{Flat, Inline, Link, Piece, Run};
use super::target::Target;
use crate::report::Report;
use pulldown_cmark::{Alignment, CodeBlockKind, Event, OffsetIter, Options, Parser, Tag};
use std::iter::Peekable;
use std::ops::Range;

/// CommonMark with tables; straight quotes are drawn as curly ones.
const OPTIONS: Options = Options::ENABLE_TABLES.union(Options::ENABLE_SMART_PUNCTUATION);

/// Reads Markdown; what is not part of the format goes to the report.
pub(crate) fn blocks(extract: Extract<'_>, report: &mut Report) -> Vec<Block> {
    let events = Parser::new_ext(extract.text, OPTIONS)
        .into_offset_iter()
        .peekable();
    Reader {
        events,
        extract,
        report,
    }
    .blocks()
}

/// Reads one paragraph's worth of Markdown; anything else goes to the report.
pub(crate) fn run(extract: Extract<'_>, report: &mut Report) -> Run {
    let mut runs = Vec::new();
    for block in blocks(extract, report) {
        match block {
            Block::Paragraph(run) => runs.push(run),
            _ => extract.fault(
                0,
                "only plain words, emphasis and links can stand here",
                report,
            ),
        }
    }
    let mut runs = runs.into_iter();
    let first = runs.next().unwrap_or_default();
    if runs.next().is_some() {
        extract.fault(0, "only one paragraph can stand here", report);
    }
    first
}

struct Reader<'a, 'r> {
    events: Peekable<OffsetIter<'a>>,
    extract: Extract<'a>,
    report: &'r mut Report,
}

impl<'a> Reader<'a, '_> {
    /// Blocks up to the end of what holds them, which is consumed.
    fn blocks(&mut self) -> Vec<Block> {
        let mut blocks = Vec::new();
        while let Some((event, range)) = self.events.peek() {
            if starts_or_is_inline(event) {
                let run = self.run();
                self.check_links_closed(&run);
                blocks.push(Block::Paragraph(run));
                continue;
            }
            let (event, range) = (event.clone(), range.clone());
            self.events.next();
            match event {
                Event::End(_) => break,
                Event::Start(tag) => blocks.extend(self.block(tag, range)),
                Event::Rule => blocks.push(Block::Rule),
                _ => self.refuse(&range, "HTML is not part of the lesson format"),
            }
        }
        blocks
    }

    fn block(&mut self, tag: Tag<'a>, range: Range<usize>) -> Option<Block> {
        match tag {
            Tag::Paragraph => Some(Block::Paragraph(self.block_run())),
            Tag::Heading { level, .. } => {
                let at = self.extract.place(range.start);
                Some(Block::Heading(level, self.block_run(), at))
            }
            Tag::BlockQuote(_) => Some(Block::Quote(self.blocks())),
            Tag::List(start) => Some(Block::List(start, self.items())),
            Tag::Table(alignments) => Some(Block::Table(self.table(alignments))),
            Tag::CodeBlock(kind) => self.code(&kind, range),
            _ => {
                self.refuse(&range, "HTML is not part of the lesson format");
                while !matches!(self.events.next(), None | Some((Event::End(_), _))) {}
                None
            }
        }
    }

    fn items(&mut self) -> Vec<Vec<Block>> {
        let mut items = Vec::new();
        while let Some((Event::Start(Tag::Item), _)) = self.events.next() {
            items.push(self.blocks());
        }
        items
    }

    fn table(&mut self, alignments: Vec<Alignment>) -> Table {
        let mut rows = Vec::new();
        while let Some((Event::Start(_), _)) = self.events.next() {
            let mut cells = Vec::new();
            while let Some((Event::Start(_), _)) = self.events.next() {
                cells.push(self.block_run());
            }
            rows.push(cells);
        }
        let headings = if rows.is_empty() {
            Vec::new()
        } else {
            rows.remove(0)
        };
        Table {
            alignments,
            headings,
            rows,
        }
    }

    fn code(&mut self, kind: &CodeBlockKind<'a>, range: Range<usize>) -> Option<Block> {
        let mut body: Option<Range<usize>> = None;
        while let Some((Event::Text(_), part)) = self.events.next() {
            let from = body.map_or(part.start, |body| body.start);
            body = Some(from..part.end);
        }
        let CodeBlockKind::Fenced(info) = kind else {
            self.refuse(&range, "indented code is not part of the lesson format");
            return None;
        };
        let start = self.extract.place(range.start);
        let fence = self.extract.text[range.start..].trim_start_matches(['`', '~', ' ']);
        let opening = self.extract.text.len() - range.start - fence.len();
        let body = body.unwrap_or(range.end..range.end);
        Some(Block::Fence(Fence {
            info: info.to_string(),
            at: start + opening,
            body: self.extract.place(body.start)..self.extract.place(body.end),
        }))
    }

    /// The run of a whole block and the block's end.
    fn block_run(&mut self) -> Run {
        let run = self.closed_run();
        self.check_links_closed(&run);
        run
    }

    /// Brackets that meet in plain words were meant as a link.
    fn check_links_closed(&mut self, run: &Run) {
        let flat = Flat::of(run);
        for (at, _) in flat.text.match_indices("](") {
            let message =
                "this is not read as a link: its address may hold a space, or a bracket is missing";
            self.extract
                .file
                .fault(flat.place(at), message, self.report);
        }
    }

    /// A run and the end of what holds it.
    fn closed_run(&mut self) -> Run {
        let run = self.run();
        self.events.next();
        run
    }

    /// Inline events up to the first that is not.
    fn run(&mut self) -> Run {
        let mut run = Run::new();
        while let Some((event, _)) = self.events.peek() {
            if !starts_or_is_inline(event) {
                break;
            }
            if let Some((event, range)) = self.events.next() {
                run.extend(self.inline(event, range));
            }
        }
        run
    }

    fn inline(&mut self, event: Event<'a>, range: Range<usize>) -> Option<Inline> {
        let at = self.extract.place(range.start);
        match event {
            Event::Text(text) => Some(Inline::Text(self.piece(&text, range))),
            Event::Code(text) => Some(Inline::Code(self.piece(&text, range))),
            Event::SoftBreak => Some(Inline::SoftBreak(at)),
            Event::HardBreak => Some(Inline::HardBreak(at)),
            Event::Start(Tag::Emphasis) => Some(Inline::Emphasis(self.closed_run())),
            Event::Start(Tag::Strong) => Some(Inline::Strong(self.closed_run())),
            Event::Start(Tag::Link { dest_url, .. }) => {
                let inside = self.closed_run();
                let target = Target::read(&dest_url);
                Some(Inline::Link(Link { target, inside, at }))
            }
            Event::Start(_) => {
                self.refuse(
                    &range,
                    "an image is not part of the lesson format: draw a figure",
                );
                self.closed_run();
                None
            }
            _ => {
                self.refuse(&range, "HTML is not part of the lesson format");
                None
            }
        }
    }

    fn piece(&mut self, text: &str, range: Range<usize>) -> Piece {
        let found = self.extract.text[range.clone()].find(text);
        Piece {
            text: text.to_owned(),
            at: self.extract.place(range.start + found.unwrap_or(0)),
            verbatim: found.is_some() && self.extract.verbatim,
        }
    }

    fn refuse(&mut self, range: &Range<usize>, message: &str) {
        self.extract.fault(range.start, message, self.report);
    }
}

fn starts_or_is_inline(event: &Event<'_>) -> bool {
    match event {
        Event::Start(tag) => matches!(
            tag,
            Tag::Emphasis | Tag::Strong | Tag::Link { .. } | Tag::Image { .. }
        ),
        Event::Text(_)
        | Event::Code(_)
        | Event::SoftBreak
        | Event::HardBreak
        | Event::InlineHtml(_) => true,
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::{Block, blocks};
    use crate::lessons::extract::Extract;
    use crate::lessons::prose::{Flat, MARKED};
    use crate::lessons::source_text::{SourceText, faults_of};
    use crate::report::Report;

    fn read(text: &str) -> (SourceText, Vec<Block>) {
        let file = SourceText::new("lessons/01-x.md", text);
        let found = blocks(Extract::whole(&file), &mut Report::default());
        (file, found)
    }

    #[test]
    fn offsets_run_through_emphasis_entities_and_links() {
        let text = "A **bold &amp; word**, `x`, [9 kHz](fact:f) and [it](term:t) end";
        let (_, found) = read(text);
        let [Block::Paragraph(run)] = found.as_slice() else {
            panic!("one paragraph (got {found:?})");
        };
        let flat = Flat::of(run);
        assert_eq!(flat.text, format!("A bold & word, x, {MARKED} and it end"));
        for word in ["A", "bold", "word", "x", "it", "end"] {
            let here = flat.text.find(word).expect("in the flat text");
            assert_eq!(
                flat.place(here),
                text.find(word).expect("in the file"),
                "{word}"
            );
        }
    }

    #[test]
    fn a_fence_knows_its_first_line_and_its_text() {
        let text = "Before\n\n```figure line dial=1kHz\nCaption\nmore\n```\n";
        let (file, found) = read(text);
        let Block::Fence(fence) = &found[1] else {
            panic!("a fence (got {found:?})");
        };
        assert_eq!(fence.info, "figure line dial=1kHz");
        assert_eq!(&file.text()[fence.at..fence.at + 6], "figure");
        assert_eq!(&file.text()[fence.body.clone()], "Caption\nmore\n");
    }

    #[test]
    fn lists_tables_and_headings_keep_their_shape() {
        let (_, found) =
            read("## H\n\n3. one\n4. two\n   - in\n\n| a | b |\n| - | -: |\n| 1 | 2 |\n");
        assert!(matches!(&found[0], Block::Heading(_, run, 0) if Flat::of(run).text == "H"));
        let Block::List(Some(3), items) = &found[1] else {
            panic!("a list from 3 (got {found:?})");
        };
        assert!(matches!(
            items[1].as_slice(),
            [Block::Paragraph(_), Block::List(None, _)]
        ));
        let Block::Table(table) = &found[2] else {
            panic!("a table (got {found:?})");
        };
        assert_eq!((table.headings.len(), table.rows.len()), (2, 1));
        assert_eq!(Flat::of(&table.rows[0][1]).text, "2");
    }

    #[test]
    fn what_is_not_part_of_the_format_is_refused_in_its_place() {
        let text = "One <b>two</b>\n\n<p>x</p>\n\n![a](b)\n\n    code\n\n[470 kHz](given: if)\n";
        let file = SourceText::new("lessons/01-x.md", text);
        assert_eq!(
            faults_of(|report| drop(blocks(Extract::whole(&file), report))),
            "lessons/01-x.md:1:11: HTML is not part of the lesson format\n\
             lessons/01-x.md:1:5: HTML is not part of the lesson format\n\
             lessons/01-x.md:3:1: HTML is not part of the lesson format\n\
             lessons/01-x.md:5:1: an image is not part of the lesson format: draw a figure\n\
             lessons/01-x.md:7:5: indented code is not part of the lesson format\n\
             lessons/01-x.md:9:9: this is not read as a link: its address may hold a space, or a bracket is missing"
        );
    }
}
