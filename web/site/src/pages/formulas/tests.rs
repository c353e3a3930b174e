//! Every quantity is on the page, and every letter of its formula is in words.

use super::{Display, entry, mathml};
use std::collections::BTreeSet;
use superhet::catalogue::{Entry, Subject, evaluate, subjects};

/// Letters of a formula in LaTeX with their subscripts: `f_\mathrm{osc}`, `\Delta`, `Q_1`.
fn atoms(latex: &str) -> BTreeSet<String> {
    let mut found = BTreeSet::new();
    let mut rest = latex;
    while let Some(first) = rest.chars().next() {
        let (name, after) = match first {
            '\\' => command(rest),
            letter if letter.is_ascii_alphabetic() => (letter.to_string(), &rest[1..]),
            other => (String::new(), &rest[other.len_utf8()..]),
        };
        let (subscript, after) = if name.is_empty() {
            ("", after)
        } else {
            subscript(after)
        };
        if !name.is_empty() {
            found.insert(format!("{name}{subscript}"));
        }
        rest = after;
    }
    found
}

/// A command: its own name where it is a Greek letter, nothing where it is a sign, a
/// function or words, whose argument goes with it.
fn command(text: &str) -> (String, &str) {
    const GREEK: [&str; 4] = ["\\Delta", "\\lambda", "\\tau", "\\omega"];
    let end = text[1..].find(|sign: char| !sign.is_ascii_alphabetic());
    let (name, after) = text.split_at(end.map_or(text.len(), |end| end + 1).max(2));
    match name {
        "\\mathrm" | "\\text" => (String::new(), after.split_once('}').map_or("", |it| it.1)),
        name if GREEK.contains(&name) => (name.to_owned(), after),
        _ => (String::new(), after),
    }
}

fn subscript(text: &str) -> (&str, &str) {
    let Some(inner) = text.strip_prefix('_') else {
        return ("", text);
    };
    let length = if let Some(braced) = inner.strip_prefix("\\mathrm{").or(inner.strip_prefix('{')) {
        inner.len() - braced.len() + braced.find('}').map_or(0, |end| end + 1)
    } else {
        1
    };
    text.split_at(1 + length)
}

/// Whether a letter is bound by its formula itself: a running index or one of j.
const BOUND: [&str; 2] = ["j", "f"];

fn explained(subject: &Subject, entry: &Entry) -> BTreeSet<String> {
    let parameters = entry.parameters.iter().map(|parameter| parameter.symbol);
    let notes = subject.notes().iter().map(|note| note.formula);
    let texts = parameters.chain(notes).chain([entry.symbol]);
    texts.flat_map(atoms).collect()
}

#[test]
fn letters_are_found_with_their_subscripts() {
    let found = atoms(r"f_\mathrm{osc} = \frac{1}{2\pi\sqrt{L_1 C}} + \Delta f\ \text{or}\ B_{60}");
    let wanted = ["B_{60}", "C", "L_1", "\\Delta", "f", "f_\\mathrm{osc}"];
    assert!(found.iter().eq(wanted.iter().copied()), "{found:?}");
}

#[test]
fn every_letter_of_a_formula_is_in_words() {
    for subject in subjects() {
        for entry in subject.entries() {
            let explained = explained(subject, entry);
            for letter in atoms(entry.formula) {
                assert!(
                    explained.contains(&letter) || BOUND.contains(&letter.as_str()),
                    "{}: {letter} is not among {explained:?}",
                    entry.name
                );
            }
        }
    }
}

#[test]
fn every_section_has_its_id_its_worked_value_and_its_source() {
    for entry in subjects().iter().flat_map(|subject| subject.entries()) {
        let drawn = entry::section(entry, &maud::html! {})
            .expect(entry.name)
            .into_string();
        let answer = evaluate(entry.example).expect(entry.name);
        for part in [
            format!("<h3 id=\"{}\">", entry.name),
            format!("data-quantity=\"{}\"", entry.name),
            format!("data-value=\"{}\"", answer.value),
            format!(">{}</data>", answer.text),
        ] {
            assert!(drawn.contains(&part), "{}: no {part}", entry.name);
        }
        assert!(!drawn.contains("style="), "{}", entry.name);
    }
}

#[test]
fn notes_can_be_drawn() {
    for note in subjects().iter().flat_map(|subject| subject.notes()) {
        assert!(
            mathml(note.formula, Display::Block).is_ok(),
            "{}",
            note.formula
        );
    }
}
