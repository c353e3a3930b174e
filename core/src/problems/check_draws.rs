//! Faults that only show in drawn problems: texts that read badly, mistakes that never
//! have an answer, questions that give away what is asked.

use alloc::{
    collections::BTreeSet,
    format,
    string::{String, ToString},
    vec::Vec,
};

use crate::catalogue::{self, Entry};

use super::{
    check::Faults,
    english::complaints,
    expression::Expression,
    family::{Family, Level, PartForm},
    fault::Place,
    generate::{GenerateError, generate, generate_for_set},
    problem::{Answer, Part, Problem},
    set_on,
};

/// Seeds tried for each level: enough for a slip in a file to show at each build, few
/// enough for hundreds of families. A test draws ten thousand.
const TRIALS: u32 = 8;

/// Adds what is wrong with trial draws of each level.
pub(super) fn check(family: &Family, faults: &mut Faults) {
    let mut all: Vec<Problem> = Vec::new();
    for level in Level::ALL {
        let drawn: Result<Vec<Problem>, _> = (0..TRIALS)
            .map(|seed| generate(family, level, seed))
            .collect();
        match drawn {
            Ok(problems) => {
                check_texts(family, level, &problems, faults);
                all.extend(problems);
            }
            Err(GenerateError::Faulty { fault, .. }) if !fault.place.is_empty() => {
                faults.push(&fault.place, fault.says);
            }
            Err(error) => faults.push(&[Place::Key(level.key())], error.to_string()),
        }
    }
    check_own_sets(family, faults);
    if all.len() < Level::ALL.len() * TRIALS as usize {
        return;
    }
    let parts: Vec<&Part> = all.iter().flat_map(|problem| &problem.parts).collect();
    for (place, form) in family.parts.iter().enumerate() {
        let drawn: Vec<&Part> = parts
            .iter()
            .copied()
            .filter(|part| part.id == form.id)
            .collect();
        let place = [Place::Key("part"), Place::Entry(place)];
        check_mistakes(form, &drawn, &place, faults);
        check_stops(form, &drawn, &place, faults);
    }
}

/// Sets on which a level that is offered on others is tried.
const SETS: [[(&str, &str); 2]; 4] = [
    [("if", "455 kHz"), ("side", "above")],
    [("if", "468 kHz"), ("side", "below")],
    [("if", "125 kHz"), ("side", "above")],
    [("if", "1600 kHz"), ("side", "above")],
];

/// A level that is offered on other sets must go with one of them at least. On a set that its
/// conditions refuse it is asked of a drawn one.
fn check_own_sets(family: &Family, faults: &mut Faults) {
    for level in Level::ALL {
        if family.level(level).own_set.is_none() {
            continue;
        }
        let place = [Place::Key(level.key()), Place::Key("own-set")];
        let drawn = SETS.iter().flat_map(|set| {
            (0..TRIALS).map(move |seed| generate_for_set(family, level, seed, set))
        });
        let mut problems = Vec::new();
        for draw in drawn {
            match draw {
                Ok(problem) => problems.push(problem),
                Err(GenerateError::NoDraw { .. }) => {}
                Err(error) => return faults.push(&place, error.to_string()),
            }
        }
        if problems.is_empty() {
            faults.push(&place, "its conditions refuse every set that is tried");
        }
        check_texts(family, level, &problems, faults);
    }
}

/// The first text that reads badly, and the first question that gives itself away.
fn check_texts(family: &Family, level: Level, problems: &[Problem], faults: &mut Faults) {
    let place = [Place::Key(level.key())];
    let distinct: BTreeSet<&String> = problems.iter().flat_map(texts).collect();
    let bad = |text: &&String| {
        let complaint = complaints(text).into_iter().next()?;
        Some(format!("{text:?} reads badly: {complaint}"))
    };
    if let Some(says) = distinct.iter().find_map(bad) {
        faults.push(&place, says);
    }
    if let Some(says) = problems
        .iter()
        .find_map(|problem| gives_away(family, problem))
    {
        faults.push(&place, says);
    }
}

/// Every text of a problem that a learner may read as a sentence.
fn texts(problem: &Problem) -> Vec<&String> {
    let mut texts = Vec::from([&problem.scene]);
    for part in &problem.parts {
        texts.push(&part.ask);
        texts.extend(part.hints.iter().chain(&part.steps));
        match &part.answer {
            Answer::Number(number) => texts.extend(number.mistakes.iter().map(|m| &m.says)),
            Answer::Choice(choices) => {
                texts.extend(
                    choices
                        .iter()
                        .flat_map(|choice| [&choice.text, &choice.says]),
                );
            }
        }
    }
    texts
}

fn check_mistakes(form: &PartForm, parts: &[&Part], place: &[Place], faults: &mut Faults) {
    for (entry, mistake) in form.mistakes.iter().enumerate() {
        let occurs = parts.iter().any(|part| match &part.answer {
            Answer::Number(number) => number.mistakes.iter().any(|m| m.id == *mistake),
            Answer::Choice(_) => false,
        });
        if !occurs {
            let place = [place, &[Place::Key("mistakes"), Place::Entry(entry)]].concat();
            let says = format!("the mistake {mistake:?} has no answer in any trial draw");
            faults.push(&place, says);
        }
    }
}

/// The stops of a slider are whole multiples of what is asked, and it begins among them.
fn check_stops(form: &PartForm, parts: &[&Part], place: &[Place], faults: &mut Faults) {
    let (Some(set_on), Some(part)) = (&form.set_on, parts.first()) else {
        return;
    };
    let Answer::Number(number) = &part.answer else {
        return;
    };
    if let Some((key, says)) = set_on::fault(set_on, number.kind, &number.precision) {
        let within: &[Place] = match key {
            "precision" => &[Place::Key(key)],
            _ => &[Place::Key("set-on"), Place::Key(key)],
        };
        faults.push(&[place, within].concat(), says);
    }
}

/// A question must name neither what it asks nor the lesson that it belongs to: finding
/// out what is needed is part of it.
fn gives_away(family: &Family, problem: &Problem) -> Option<String> {
    for part in &problem.parts {
        let form = family.parts.iter().find(|form| form.id == part.id)?;
        let mut given_away = Vec::from([family.lesson.replace('-', " ")]);
        for entry in form.asks.iter().flat_map(|asks| quantities(asks)) {
            given_away.push(entry.name.replace('-', " "));
            given_away.push(entry.title.into());
        }
        let label = form.set_on.as_ref().map(|set_on| &set_on.label);
        for text in [&problem.scene, &part.ask].into_iter().chain(label) {
            if let Some(name) = given_away.iter().find(|name| names(text, name)) {
                return Some(format!("{text:?} names what is asked: {name:?}"));
            }
        }
    }
    None
}

/// The catalogue's quantities that an expression asks for.
fn quantities(expression: &str) -> Vec<&'static Entry> {
    let read = Expression::read(expression);
    let names = read.as_ref().map(Expression::names).unwrap_or_default();
    names.into_iter().filter_map(catalogue::find).collect()
}

/// Whether a text holds these words one after another, in any case.
fn names(text: &str, words: &str) -> bool {
    let split = |text: &str| -> Vec<String> {
        text.split(|c: char| !c.is_alphanumeric())
            .filter(|word| !word.is_empty())
            .map(str::to_lowercase)
            .collect()
    };
    let (text, words) = (split(text), split(words));
    !words.is_empty() && text.windows(words.len()).any(|window| window == words)
}
