//! Running text on the page.

use super::Drawing;
use super::number::Numbers;
use crate::lessons::prose::{Inline, Link, Piece};
use crate::lessons::summary;
use crate::lessons::target::Target;
use maud::{Markup, html};

/// How a run is drawn where it stands.
#[derive(Clone, Copy)]
pub(super) struct Manner<'a> {
    /// Where its numbers come from.
    pub(super) numbers: Numbers<'a>,
    /// Whether links may stand there: not inside a label or another link.
    pub(super) links: bool,
    /// Whether the first use of a term links to its meaning.
    pub(super) terms: bool,
}

impl Manner<'_> {
    /// Running text: links, and terms at first use.
    pub(super) const TEXT: Self = Self {
        numbers: Numbers::AsTyped,
        links: true,
        terms: true,
    };

    /// A line of its own, such as a heading or caption: links, no terms but linked ones.
    pub(super) const LINE: Self = Self {
        terms: false,
        ..Self::TEXT
    };

    /// Words inside a label: no links at all.
    pub(super) const LABEL: Self = Self {
        links: false,
        ..Self::LINE
    };
}

impl Drawing<'_> {
    /// A run as it stands on the page.
    pub(super) fn run(&self, run: &[Inline], manner: Manner<'_>) -> Markup {
        html! {
            @for inline in run {
                @match inline {
                    Inline::Text(piece) => (self.words(piece, manner)),
                    Inline::Code(piece) => code { (piece.text) },
                    Inline::Emphasis(inside) => em { (self.run(inside, manner)) },
                    Inline::Strong(inside) => strong { (self.run(inside, manner)) },
                    Inline::Link(link) => (self.link(link, manner)),
                    Inline::SoftBreak(_) => "\n",
                    Inline::HardBreak(_) => br;,
                }
            }
        }
    }

    /// Words, with the first use of each term linked.
    fn words(&self, piece: &Piece, manner: Manner<'_>) -> Markup {
        if !(manner.terms && manner.links) {
            return html! { (piece.text) };
        }
        let mut at = 0;
        let mut parts: Vec<Markup> = Vec::new();
        for (range, id) in self.phrases.find(&piece.text) {
            if self.terms.borrow().iter().any(|known| known == id) {
                continue;
            }
            parts.push(html! { (piece.text[at..range.start]) });
            parts.push(self.term(id, &html! { (piece.text[range.clone()]) }));
            at = range.end;
        }
        parts.push(html! { (piece.text[at..]) });
        html! { @for part in &parts { (part) } }
    }

    /// A link to a term's meaning; from the first one the meaning leads back.
    fn term(&self, id: &str, words: &Markup) -> Markup {
        let first = self.meet_term(id).then(|| format!("use-{id}"));
        html! { a.term id=[first] href={ "#term-" (id) } { (words) } }
    }

    fn link(&self, link: &Link, manner: Manner<'_>) -> Markup {
        let Ok(target) = &link.target else {
            return self.run(&link.inside, manner);
        };
        if target.is_marked_number() {
            return self.number(target, link, manner);
        }
        let inside = Manner {
            links: false,
            ..manner
        };
        let words = self.run(&link.inside, inside);
        if !manner.links {
            return words;
        }
        match target {
            Target::Term(id) => self.term(id, &words),
            Target::Lesson(slug) => {
                html! { a href=(self.links.page(&summary::path(slug))) { (words) } }
            }
            Target::Page(path) => html! { a href=(self.links.page(path)) { (words) } },
            Target::Source(id) => html! { a href={ "#source-" (id) } { (words) } },
            Target::Calc(_) | Target::Given(_) | Target::Fact(_) => words,
        }
    }
}
