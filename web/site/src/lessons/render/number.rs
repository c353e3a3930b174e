//! Marked numbers on the page.

use super::Drawing;
use super::inline::Manner;
use crate::lessons::prose::{Link, plain};
use crate::lessons::target::Target;
use maud::{Markup, html};
use numbers::{Expression, Givens, written_like};
use superhet::catalogue::Kind;

/// Where the numbers of a run come from.
#[derive(Clone, Copy)]
pub(super) enum Numbers<'a> {
    /// From the lesson, as its author typed and the check confirmed them.
    AsTyped,
    /// From other inputs, worked out here.
    WorkedOut(&'a Givens),
}

impl Drawing<'_> {
    /// A marked number.
    pub(super) fn number(&self, target: &Target, link: &Link, manner: Manner<'_>) -> Markup {
        let typed = plain(&link.inside);
        let givens = match manner.numbers {
            Numbers::AsTyped => &self.givens,
            Numbers::WorkedOut(givens) => givens,
        };
        self.note_number(target, &typed);
        match target {
            Target::Calc(expression) => self.calc(expression, &typed, givens),
            Target::Given(name) => self.given(name, &typed, givens),
            Target::Fact(id) => self.fact(id, &typed, manner.links),
            _ => html! { (typed) },
        }
    }

    fn calc(&self, expression: &Expression, typed: &str, givens: &Givens) -> Markup {
        let Ok(found) = givens.work_out(expression) else {
            return html! { (typed) };
        };
        let (answer, same) = (&found.answer, self.givens.work_out(expression));
        let as_typed = same.is_ok_and(|same| same.answer.value == answer.value);
        let text = if as_typed {
            typed.to_owned()
        } else {
            written_like(typed, answer.kind, answer.value)
        };
        html! {
            data.number value=(answer.value) data-kind="calc" data-quantity=(answer.name)
                data-value=(answer.value) { (text) }
        }
    }

    fn given(&self, name: &str, typed: &str, givens: &Givens) -> Markup {
        let Some(given) = givens.get(name) else {
            return html! { (typed) };
        };
        let text = match self.givens.get(name) {
            Some(same) if same == given => typed.to_owned(),
            _ if given.kind == Kind::Choice => given.typed.clone(),
            _ => written_like(typed, given.kind, given.value),
        };
        let value = match given.kind {
            Kind::Choice => given.typed.clone(),
            _ => given.value.to_string(),
        };
        html! {
            data.number value=(value) data-kind="given" data-given=(name) data-value=(value) { (text) }
        }
    }

    fn fact(&self, id: &str, typed: &str, links: bool) -> Markup {
        self.meet_fact(id);
        let number =
            html! { data.number value=(typed) data-kind="fact" data-fact=(id) { (typed) } };
        let source = self
            .course
            .sources
            .fact(id)
            .and_then(|fact| fact.source.as_ref());
        let source = source.map_or("practice", |source| source.get_ref());
        if links {
            html! { a.fact href={ "#source-" (source) } { (number) } }
        } else {
            number
        }
    }
}
