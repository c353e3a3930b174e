//! One quantity on the page of formulas.

use super::{draw, lines};
use crate::lessons::mathml::Display;
use crate::wording::{as_sentence, in_words, inside_sentence};
use anyhow::{Result, anyhow};
use maud::{Markup, html};
use superhet::catalogue::{Entry, Parameter, evaluate, split};
use superhet::units::{Kind, display, parse};

/// A quantity: heading to link to, formula, letters, worked line, lesson, limits, source.
/// `lesson` is its line about the lesson, if one brings it in.
pub(super) fn section(entry: &'static Entry, lesson: &Markup) -> Result<Markup> {
    let name = entry.name;
    let formula = lines(entry.formula)?;
    let letters = letters(entry)?;
    let worked = worked(entry)?;
    Ok(html! {
        section.entry data-formula=(name) aria-labelledby=(name) {
            h3 #(name) { a href={ "#" (name) } { (entry.title) } }
            (formula)
            dl.letters {
                @for (letter, meaning, limits) in &letters {
                    dt { (letter) }
                    dd { (meaning) @if let Some(limits) = limits { span.limits { " (" (limits) ")" } } }
                }
            }
            (worked)
            dl.small-print {
                (lesson)
                dt { "How far it can be wrong" }
                dd { (as_sentence(entry.model_error)) }
                dt { "Source" }
                dd { (as_sentence(entry.source)) }
                dt { "Typed" }
                dd { code { (entry.example) } }
            }
        }
    })
}

type Letter = (Markup, String, Option<String>);

/// The result's letter and those of the parameters, in words, with their limits.
fn letters(entry: &Entry) -> Result<Vec<Letter>> {
    let title = format!("{}, the result", inside_sentence(entry.title));
    let mut letters = vec![(draw(entry.symbol, Display::Inline)?, title, None)];
    for parameter in entry.parameters {
        let letter = letter(parameter)?;
        letters.push((
            letter,
            parameter.meaning.to_owned(),
            Some(limits(parameter)),
        ));
    }
    Ok(letters)
}

/// The letter of a parameter; its name where it has none, as the words of a choice.
fn letter(parameter: &Parameter) -> Result<Markup> {
    if parameter.symbol.is_empty() {
        return Ok(html! { (parameter.name.replace('-', " ")) });
    }
    draw(parameter.symbol, Display::Inline)
}

fn limits(parameter: &Parameter) -> String {
    if parameter.kind == Kind::Choice {
        return in_words(parameter.choices, "or");
    }
    let mut rule = parameter.rule();
    // A number never breaks from its unit.
    for end in [parameter.min, parameter.max] {
        let text = display::text(parameter.kind, end);
        rule = rule.replace(&text, &text.replace(' ', "\u{a0}"));
    }
    match rule.strip_prefix("be ") {
        Some(limits) => limits.to_owned(),
        None => rule.replace("not be", "not"),
    }
}

/// The entry's example: what is given, and what the core makes of it.
fn worked(entry: &Entry) -> Result<Markup> {
    let answer = evaluate(entry.example).map_err(|refusal| anyhow!("{}: {refusal}", entry.name))?;
    let mut given = Vec::new();
    for (key, typed) in split(entry.example).1 {
        let parameter = entry
            .parameter(&key)
            .ok_or_else(|| anyhow!("{} has no {key}", entry.name))?;
        given.push(given_value(parameter, &typed)?);
    }
    let last = given.len().saturating_sub(1);
    let result = draw(entry.symbol, Display::Inline)?;
    Ok(html! {
        p.worked-line {
            "For example, with "
            @for (place, given) in given.iter().enumerate() {
                @if place > 0 { @if place == last { " and " } @else { ", " } }
                (given)
            }
            ": " (result) " = "
            data data-quantity=(entry.name) data-value=(answer.value) value=(answer.value) { (answer.text) }
        }
    })
}

/// "F = 470 kHz", or "side above".
fn given_value(parameter: &Parameter, typed: &str) -> Result<Markup> {
    if parameter.kind == Kind::Choice {
        let name = parameter.name.replace('-', " ");
        return Ok(html! { (name) " " (typed.replace('-', " ")) });
    }
    let value = parse::value(parameter.kind, typed, None).map_err(|error| anyhow!("{error}"))?;
    let letter = letter(parameter)?;
    let text = display::text(parameter.kind, value);
    Ok(html! { span.value { (letter) " = " (text) } })
}
