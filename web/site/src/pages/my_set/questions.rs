//! The questions, one below the other: what every set must say, and what it may.

use maud::{Markup, html};
use myset::field::{self, Field, Group};
use superhet::problems::text::unbroken;

/// All questions and the button that keeps the answers.
pub(super) fn form() -> Markup {
    html! {
        form.entry.questions #set-form autocomplete="off" novalidate {
            p.no-margin { "Three answers are needed. Of everything else, leave open what you do not know." }
            div.question {
                h2 { "What is its IF?" }
                (field_box(&field::INTERMEDIATE))
            }
            div.question {
                (choice("side", "Where does its oscillator run, against the station?", &["above", "below"],
                    "Above in nearly every medium wave set. Take that where the sheet says nothing."))
            }
            div.question {
                (choice("region", "In which ITU Region do you listen?", &["1", "2", "3"],
                    "1: Europe, Africa, northern Asia. 2: the Americas. 3: the rest of Asia, Australia, the Pacific."))
            }
            h2.rest { "If you know more" }
            @for group in &field::GROUPS { (fold(group)) }
            div.question { (field_box(&field::NAME)) }
            div.save {
                button.main #save type="submit" { "Save as my set" }
                p.said #saved role="status" {}
            }
        }
    }
}

fn fold(group: &Group) -> Markup {
    html! {
        details.group id={ "group-" (group.id) } {
            summary { (group.question) }
            p.hint { (unbroken(group.why)) }
            @for field in group.fields { (field_box(field)) }
            @if group.id == "gang" || group.id == "tracking" {
                p.hint {
                    "Take these from a parts list or sheet. Measuring inside a set is no work for "
                    "a page: mains and HT can kill, and capacitors stay charged."
                }
            }
        }
    }
}

/// A box: label, where to find the value, unit buttons, how it was read, what is wrong.
fn field_box(field: &Field) -> Markup {
    let key = field.key;
    let (hint, reading, fault) = (
        format!("hint-{key}"),
        format!("reading-{key}"),
        format!("fault-{key}"),
    );
    html! {
        div.box {
            p.box-head {
                label for=(key) { (field.label) }
                span.reading id=(reading) {}
            }
            p.hint id=(hint) { (unbroken(field.hint)) }
            div.box-row {
                input id=(key) name=(key) type="text" inputmode=[field.kind.map(|_| "decimal")]
                    autocapitalize="off" spellcheck="false" maxlength="100"
                    aria-describedby={ (hint) " " (fault) } aria-invalid="false";
                @if field.units.len() > 1 { (units(field)) }
            }
            p.problem id=(fault) hidden {}
        }
    }
}

fn units(field: &Field) -> Markup {
    let name = format!("{}-unit", field.key);
    html! {
        fieldset.choice {
            legend.visually-hidden { "Unit of “" (field.label) "”" }
            @for (index, unit) in field.units.iter().enumerate() { (key(&name, unit, index == 0)) }
        }
    }
}

/// Buttons of which one is pressed; none from the start, since nothing is adopted unasked.
fn choice(name: &str, question: &str, words: &[&str], hint: &str) -> Markup {
    html! {
        fieldset.choice id={ "choice-" (name) } aria-describedby={ "hint-" (name) " fault-" (name) } {
            legend { (question) }
            @for word in words { (key(name, word, false)) }
        }
        p.hint id={ "hint-" (name) } { (unbroken(hint)) }
        p.problem id={ "fault-" (name) } hidden {}
    }
}

fn key(name: &str, word: &str, pressed: bool) -> Markup {
    html! {
        label {
            input.visually-hidden type="radio" name=(name) value=(word) checked[pressed];
            span { (word) }
        }
    }
}
