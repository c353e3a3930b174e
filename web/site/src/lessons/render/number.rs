//! Marked numbers on the page.

use super::Drawing;
use super::inline::Manner;
use crate::lessons::givens::Givens;
use crate::lessons::printed::Printed;
use crate::lessons::prose::{Link, plain};
use crate::lessons::target::{Expression, Target};
use maud::{Markup, html};
use superhet::catalogue::Kind;
use superhet::units::display;

/// Where the numbers of a run come from.
#[derive(Clone, Copy)]
pub(super) enum Numbers<'a> {
    /// From the lesson, as its author typed and the check confirmed them.
    AsTyped,
    /// From other inputs, worked out here.
    WorkedOut(&'a Givens),
}

/// Significant digits with which a worked-out number is always shown in full.
const FULL: usize = 5;

/// Significant digits left of a longer one, unless the author typed more.
const ROUNDED: usize = 4;

impl Drawing<'_> {
    /// A marked number.
    pub(super) fn number(&self, target: &Target, link: &Link, manner: Manner<'_>) -> Markup {
        let typed = plain(&link.inside);
        let givens = match manner.numbers {
            Numbers::AsTyped => &self.givens,
            Numbers::WorkedOut(givens) => givens,
        };
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
        let fixed: Vec<&str> = expression
            .typed
            .iter()
            .map(|(key, _)| key.as_str())
            .collect();
        html! {
            data.number value=(answer.value) data-kind="calc" data-quantity=(answer.name)
                data-value=(answer.value) data-expression=(found.expression)
                data-typed=[(!fixed.is_empty()).then(|| fixed.join(" "))] { (text) }
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

/// A value written as the trade writes it, about as closely as another was typed, with
/// the same words behind a plain ratio.
fn written_like(typed: &str, kind: Kind, value: f64) -> String {
    let printed = Printed::read(typed).ok();
    let shown = display::text(kind, value);
    let wanted = printed
        .as_ref()
        .map_or(ROUNDED, |printed| ROUNDED.max(printed.digits()));
    let full = Printed::read(&shown).is_ok_and(|shown| shown.digits() <= FULL);
    let text = if full {
        shown
    } else {
        display::text(kind, rounded(value, wanted))
    };
    match printed {
        Some(printed)
            if kind.unit().is_empty() && kind != Kind::Depth && !printed.unit.is_empty() =>
        {
            format!("{text} {}", printed.unit)
        }
        _ => text,
    }
}

/// A value to so many significant digits.
fn rounded(value: f64, digits: usize) -> f64 {
    let text = format!("{value:.*e}", digits.saturating_sub(1));
    text.parse().unwrap_or(value)
}

#[cfg(test)]
mod tests {
    use super::{Kind, written_like};

    #[test]
    fn worked_out_numbers_are_as_close_as_the_typed_ones() {
        let frequency = |typed, value| written_like(typed, Kind::Frequency, value);
        assert_eq!(frequency("1559 kHz", 1.163e6), "1163 kHz");
        assert_eq!(frequency("1559 kHz", 9.08e6), "9.08 MHz");
        assert_eq!(frequency("1670 kHz", 1_173_500.0), "1173.5 kHz");
        assert_eq!(frequency("712 kHz", 711_762.6), "711.8 kHz");
        assert_eq!(written_like("9.346 times", Kind::Ratio, 3.61), "3.61 times");
        assert_eq!(
            written_like("9.346 times", Kind::Ratio, 9.849_123),
            "9.849 times"
        );
        assert_eq!(written_like("2.1", Kind::Ratio, 1.9), "1.9");
    }
}
