//! What is wrong with a family, each fault with its place in the file.
//!
//! Checked here is all that needs no other file: names, texts, expressions, trial
//! draws. Whether lesson, misconceptions and facts exist is for the site to say.

use alloc::{
    format,
    string::{String, ToString},
    vec,
    vec::Vec,
};

use crate::units::{Kind, parse};

use super::{
    check_draws,
    family::{Family, Given, Level, LevelForm, OwnSetForm, PartForm, Range, SET_VALUES},
    fault::{Fault, Place},
    text::{Piece, pieces},
};

/// Named wrong answers that every level must be able to tell.
const FEWEST_MISTAKES: usize = 3;

/// Everything wrong with a family; nothing when it may be used.
pub fn faults(family: &Family) -> Vec<Fault> {
    let mut faults = Faults(Vec::new());
    heading(family, &mut faults);
    names_are_used(family, &mut faults);
    for (place, mistake) in family.mistakes.iter().enumerate() {
        faults.text(
            &mistake.says,
            &[
                Place::Key("mistake"),
                Place::Entry(place),
                Place::Key("says"),
            ],
        );
    }
    for (place, part) in family.parts.iter().enumerate() {
        check_part(
            part,
            &[Place::Key("part"), Place::Entry(place)],
            &mut faults,
        );
    }
    for level in Level::ALL {
        check_level(
            family,
            family.level(level),
            Place::Key(level.key()),
            &mut faults,
        );
    }
    if faults.0.is_empty() {
        check_draws::check(family, &mut faults);
    }
    faults.0
}

/// The faults found so far.
pub(super) struct Faults(Vec<Fault>);

impl Faults {
    pub(super) fn push(&mut self, place: &[Place], says: impl Into<String>) {
        self.0.push(Fault {
            place: place.to_vec(),
            says: says.into(),
        });
    }

    /// Checks a text as written: its slots, and that its numbers stand in slots.
    fn text(&mut self, text: &str, place: &[Place]) {
        let pieces = match pieces(text) {
            Ok(pieces) => pieces,
            Err(says) => return self.push(place, says),
        };
        let words = |piece: &Piece<'_>| match *piece {
            Piece::Words(words) => Some(words.to_string()),
            Piece::Slot { .. } => None,
        };
        let words: Vec<String> = pieces.iter().filter_map(words).collect();
        if words
            .iter()
            .any(|words| words.contains(|c: char| c.is_ascii_digit()))
        {
            self.push(
                place,
                "a number in a text must stand in a slot, so that it is accounted for",
            );
        }
        let article = |words: &String| words.ends_with(" a ") || words.ends_with(" an ");
        if words
            .iter()
            .take(pieces.len().saturating_sub(1))
            .any(article)
        {
            self.push(
                place,
                "an article before a slot reads wrong for some numbers",
            );
        }
    }

    fn id(&mut self, id: &str, place: &[Place]) {
        let plain = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-';
        if id.is_empty() || !id.chars().all(plain) || id.starts_with('-') || id.ends_with('-') {
            self.push(
                place,
                format!("a name is lower-case words joined by hyphens (got {id:?})"),
            );
        }
    }

    fn once(&mut self, ids: &[&str], place: &[Place]) {
        for (here, id) in ids.iter().enumerate() {
            let mut place = place.to_vec();
            place.push(Place::Entry(here));
            self.id(id, &place);
            if ids[..here].contains(id) {
                self.push(&place, format!("the name {id:?} is taken already"));
            }
        }
    }
}

fn heading(family: &Family, faults: &mut Faults) {
    faults.id(&family.id, &[Place::Key("id")]);
    if !(1..=63).contains(&family.revision) {
        let says = format!("a revision runs from 1 to 63 (got {})", family.revision);
        faults.push(&[Place::Key("revision")], says);
    }
    if family.title.trim().is_empty() {
        faults.push(&[Place::Key("title")], "the title is empty");
    }
}

fn names_are_used(family: &Family, faults: &mut Faults) {
    let mistakes: Vec<&str> = family
        .mistakes
        .iter()
        .map(|mistake| mistake.id.as_str())
        .collect();
    let parts: Vec<&str> = family.parts.iter().map(|part| part.id.as_str()).collect();
    faults.once(&mistakes, &[Place::Key("mistake")]);
    faults.once(&parts, &[Place::Key("part")]);
    for (place, mistake) in mistakes.iter().enumerate() {
        if !family
            .parts
            .iter()
            .any(|part| part.mistakes.iter().any(|id| id == mistake))
        {
            let says = format!("no part names the mistake {mistake:?}");
            faults.push(&[Place::Key("mistake"), Place::Entry(place)], says);
        }
    }
    for (place, part) in parts.iter().enumerate() {
        let asked = |level: &Level| family.level(*level).parts.iter().any(|id| id == part);
        if !Level::ALL.iter().any(asked) {
            let says = format!("no level asks the part {part:?}");
            faults.push(&[Place::Key("part"), Place::Entry(place)], says);
        }
    }
}

fn check_part(part: &PartForm, place: &[Place], faults: &mut Faults) {
    let within = |key| [place, &[Place::Key(key)]].concat();
    faults.text(&part.ask, &within("ask"));
    for (key, texts) in [("hints", &part.hints), ("steps", &part.steps)] {
        if texts.is_empty() {
            faults.push(place, format!("part {:?} has no {key}", part.id));
        }
        for (entry, text) in texts.iter().enumerate() {
            faults.text(text, &[within(key), vec![Place::Entry(entry)]].concat());
        }
    }
    let options: Vec<&str> = part
        .options
        .iter()
        .map(|option| option.id.as_str())
        .collect();
    faults.once(&options, &within("option"));
    for (entry, option) in part.options.iter().enumerate() {
        let place = [within("option"), vec![Place::Entry(entry)]].concat();
        faults.text(&option.text, &[&place[..], &[Place::Key("text")]].concat());
        faults.text(&option.says, &[&place[..], &[Place::Key("says")]].concat());
    }
    if let Some(set_on) = &part.set_on {
        faults.text(&set_on.caption, &within("set-on"));
        if set_on.label.trim().is_empty() {
            faults.push(&within("set-on"), "the slider has no label");
        }
        if part.asks.is_none() {
            faults.push(&within("set-on"), "a choice is not set on a figure");
        }
    }
    let one_of_two = match &part.asks {
        Some(_) => part.precision.is_some() && part.options.is_empty(),
        None => part.precision.is_none() && part.mistakes.is_empty() && part.options.len() > 1,
    };
    if !one_of_two {
        let says = format!(
            "part {:?} needs either asks and precision, or two options",
            part.id
        );
        faults.push(place, says);
    }
}

fn check_level(family: &Family, level: &LevelForm, key: Place, faults: &mut Faults) {
    let within = |name| vec![key, Place::Key(name)];
    let entry = |name, entry| vec![key, Place::Key(name), Place::Entry(entry)];
    for (place, scene) in level.scenes.iter().enumerate() {
        faults.text(scene, &entry("scenes", place));
    }
    for (name, count) in [("scenes", level.scenes.len()), ("parts", level.parts.len())] {
        if count == 0 {
            faults.push(&within(name), format!("a level needs {name}"));
        }
    }
    for (place, given) in level.givens.iter().enumerate() {
        check_given(given, &entry("given", place), faults);
    }
    if let Some(own) = &level.own_set {
        check_own_set(own, level, key, faults);
    }
    for (place, id) in level.parts.iter().enumerate() {
        if !family.parts.iter().any(|part| part.id == *id) {
            faults.push(&entry("parts", place), format!("there is no part {id:?}"));
        }
    }
    let told: usize = family
        .parts
        .iter()
        .filter(|part| level.parts.contains(&part.id))
        .map(|part| part.mistakes.len() + part.options.len().saturating_sub(1))
        .sum();
    if told < FEWEST_MISTAKES {
        let says = format!("a level tells at least {FEWEST_MISTAKES} mistakes (got {told})");
        faults.push(&within("parts"), says);
    }
}

fn check_own_set(own: &OwnSetForm, level: &LevelForm, key: Place, faults: &mut Faults) {
    let place = vec![key, Place::Key("own-set")];
    faults.text(&own.scene, &[&place[..], &[Place::Key("scene")]].concat());
    if own.givens.is_empty() {
        faults.push(&place, "nothing in it belongs to the set");
    }
    for given in &own.givens {
        if !level.givens.iter().any(|it| it.name == *given) {
            faults.push(&place, format!("there is no given {given:?}"));
        }
        if !SET_VALUES.contains(&given.as_str()) {
            let values = SET_VALUES.join(", ");
            let says = format!("a set's value is one of {values} (got {given:?})");
            faults.push(&place, says);
        }
    }
}

fn check_given(given: &Given, place: &[Place], faults: &mut Faults) {
    let Some(kind) = given.kind() else {
        return faults.push(place, format!("there is no kind {:?}", given.kind));
    };
    if given.values.is_empty() == given.range.is_none() {
        faults.push(
            place,
            format!("given {:?} needs either values or a range", given.name),
        );
    }
    let whole = |range: &Range| {
        range.step > 0
            && range.from <= range.to
            && (range.to - range.from).is_multiple_of(range.step)
    };
    if !given.range.as_ref().is_none_or(whole) {
        faults.push(
            place,
            "a range runs in whole steps from one end up to the other",
        );
    }
    if given.fact.is_some() && given.values.len() != 1 {
        faults.push(place, "a fact is a single value");
    }
    let ends = [0, given.count().saturating_sub(1)].map(|end| given.nth(end));
    for text in given.values.iter().chain(&ends) {
        if let (true, Err(refused)) = (kind != Kind::Choice, parse::value(kind, text, None)) {
            return faults.push(place, refused.to_string());
        }
    }
}

#[cfg(test)]
mod tests;
