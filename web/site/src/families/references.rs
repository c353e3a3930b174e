//! What a family says about other content, held against that content.

use super::file::File;
use crate::report::Report;
use superhet::problems::fault::Place::{self, Entry, Key};
use superhet::problems::{Family, Level};

/// The content that families refer to.
#[derive(Debug, Clone, Copy)]
pub struct References<'c> {
    /// Slugs of the lessons, in the order of the course.
    pub lessons: &'c [&'c str],
    /// Ids of the misconceptions.
    pub misconceptions: &'c [&'c str],
    /// Ids of the facts, each with its text.
    pub facts: &'c [(&'c str, &'c str)],
}

/// Reports every reference of a family that leads nowhere.
pub(super) fn check(family: &Family, file: &File, known: &References<'_>, report: &mut Report) {
    if !known.lessons.contains(&family.lesson.as_str()) {
        let says = format!("there is no lesson {:?}", family.lesson);
        file.fault(&[Key("lesson")], &says, report);
    }
    for (place, id) in misconceptions(family) {
        if !known.misconceptions.contains(&id) {
            let says = format!("misconceptions.toml has no entry {id:?}");
            file.fault(&place, &says, report);
        }
    }
    for level in Level::ALL {
        for (entry, given) in family.level(level).givens.iter().enumerate() {
            let place = [Key(level.key()), Key("given"), Entry(entry), Key("fact")];
            let Some(id) = &given.fact else { continue };
            let value = given.values.first().map(String::as_str).unwrap_or_default();
            match known.facts.iter().find(|(fact, _)| fact == id) {
                None => file.fault(&place, &format!("sources.toml has no fact {id:?}"), report),
                Some((_, text)) if *text != value => {
                    let says =
                        format!("the fact {id:?} reads {text:?} in sources.toml (got {value:?})");
                    file.fault(&place, &says, report);
                }
                Some(_) => {}
            }
        }
    }
}

fn misconceptions(family: &Family) -> Vec<(Vec<Place>, &str)> {
    let mut found = Vec::new();
    for (entry, mistake) in family.mistakes.iter().enumerate() {
        let place = vec![Key("mistake"), Entry(entry), Key("misconception")];
        found.extend(mistake.misconception.as_deref().map(|id| (place, id)));
    }
    for (entry, part) in family.parts.iter().enumerate() {
        for (choice, option) in part.options.iter().enumerate() {
            let place = vec![
                Key("part"),
                Entry(entry),
                Key("option"),
                Entry(choice),
                Key("misconception"),
            ];
            found.extend(option.misconception.as_deref().map(|id| (place, id)));
        }
    }
    found
}
