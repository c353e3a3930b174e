//! A problem family from the JSON that the site keeps of it.
//!
//! The site writes it with serde from the very type that is filled here; a test reads
//! every family of the course back. Reading by hand costs a tenth of the bytes.

use crate::json::Json;
use superhet::problems::family::{
    Given, LevelForm, MistakeForm, Named, OptionForm, OwnSetForm, PartForm, PrecisionForm, Range,
    SetOnForm,
};
use superhet::problems::{Family, Registered};

/// The family of a file, `{"number":3,"family":{…}}`, or a sentence where it holds none.
pub(crate) fn open(text: &str) -> Result<Registered, &'static str> {
    let json = Json::read(text).ok();
    let family = json.and_then(|json| {
        Some(Registered {
            number: u16::try_from(json.member("number")?.number()?).ok()?,
            family: read(json.member("family")?)?,
        })
    });
    family.ok_or("what was fetched for it holds no problem family.")
}

/// The family, or none where it is something else.
fn read(json: &Json) -> Option<Family> {
    Some(Family {
        id: text(json, "id")?,
        revision: small(json.member("revision")?)?,
        title: text(json, "title")?,
        lesson: text(json, "lesson")?,
        mistakes: list(json, "mistake", mistake)?,
        parts: list(json, "part", part)?,
        level_1: level(json.member("level-1")?)?,
        level_2: level(json.member("level-2")?)?,
        level_3: level(json.member("level-3")?)?,
        transfer: level(json.member("transfer")?)?,
    })
}

fn level(json: &Json) -> Option<LevelForm> {
    Some(LevelForm {
        scenes: texts(json, "scenes")?,
        givens: list(json, "given", given)?,
        values: list(json, "value", |json| {
            Some(Named {
                name: text(json, "name")?,
                is: text(json, "is")?,
            })
        })?,
        keep: texts(json, "keep")?,
        parts: texts(json, "parts")?,
        own_set: optional(json, "own-set", own_set)?,
    })
}

fn own_set(json: &Json) -> Option<OwnSetForm> {
    Some(OwnSetForm {
        scene: text(json, "scene")?,
        givens: texts(json, "givens")?,
    })
}

fn given(json: &Json) -> Option<Given> {
    Some(Given {
        name: text(json, "name")?,
        kind: text(json, "kind")?,
        values: texts(json, "values")?,
        range: optional(json, "range", range)?,
        fact: optional(json, "fact", plain)?,
    })
}

fn range(json: &Json) -> Option<Range> {
    Some(Range {
        from: json.member("from")?.number()?,
        to: json.member("to")?.number()?,
        step: json.member("step")?.number()?,
        places: optional(json, "places", small)?.unwrap_or(0),
        unit: optional(json, "unit", plain)?.unwrap_or_default(),
    })
}

fn part(json: &Json) -> Option<PartForm> {
    Some(PartForm {
        id: text(json, "id")?,
        ask: text(json, "ask")?,
        asks: optional(json, "asks", plain)?,
        precision: optional(json, "precision", precision)?,
        shuffle: json.member("shuffle") == Some(&Json::Truth(true)),
        units: texts(json, "units")?,
        set_on: optional(json, "set-on", set_on)?,
        options: list(json, "option", option)?,
        hints: texts(json, "hints")?,
        steps: texts(json, "steps")?,
        mistakes: texts(json, "mistakes")?,
    })
}

fn set_on(json: &Json) -> Option<SetOnForm> {
    Some(SetOnForm {
        figure: text(json, "figure")?,
        parameter: text(json, "parameter")?,
        label: text(json, "label")?,
        caption: text(json, "caption")?,
        from: text(json, "from")?,
        to: text(json, "to")?,
        begin: text(json, "begin")?,
        with: texts(json, "with")?,
    })
}

fn precision(json: &Json) -> Option<PrecisionForm> {
    match json.member("nearest") {
        Some(nearest) => plain(nearest).map(PrecisionForm::Nearest),
        None => small(json.member("figures")?).map(PrecisionForm::Figures),
    }
}

fn option(json: &Json) -> Option<OptionForm> {
    Some(OptionForm {
        id: text(json, "id")?,
        text: text(json, "text")?,
        right_when: optional(json, "right-when", plain)?,
        says: text(json, "says")?,
        misconception: optional(json, "misconception", plain)?,
    })
}

fn mistake(json: &Json) -> Option<MistakeForm> {
    Some(MistakeForm {
        id: text(json, "id")?,
        answer: text(json, "answer")?,
        says: text(json, "says")?,
        misconception: optional(json, "misconception", plain)?,
    })
}

/// What may be left out, or be `null`: none inside; none outside where it is unreadable.
fn optional<T>(json: &Json, name: &str, read: impl Fn(&Json) -> Option<T>) -> Option<Option<T>> {
    match json.member(name) {
        None | Some(Json::Null) => Some(None),
        Some(value) => read(value).map(Some),
    }
}

/// A list; one that is left out is empty.
fn list<T>(json: &Json, name: &str, read: impl Fn(&Json) -> Option<T>) -> Option<Vec<T>> {
    let entries = json.member(name).map_or(&[][..], Json::entries);
    entries.iter().map(read).collect()
}

fn texts(json: &Json, name: &str) -> Option<Vec<String>> {
    list(json, name, plain)
}

fn text(json: &Json, name: &str) -> Option<String> {
    plain(json.member(name)?)
}

fn plain(json: &Json) -> Option<String> {
    json.text().map(str::to_owned)
}

fn small(json: &Json) -> Option<u8> {
    u8::try_from(json.number()?).ok()
}

#[cfg(test)]
mod tests {
    use super::{open, read};
    use crate::json::Json;
    use std::fs;
    use superhet::problems::Family;

    #[test]
    fn every_family_of_the_course_comes_through() {
        let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../../lessons/problems");
        let mut count = 0;
        for entry in fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.ends_with("registry.toml") || path.extension() != Some("toml".as_ref()) {
                continue;
            }
            let family: Family = toml::from_str(&fs::read_to_string(&path).unwrap()).unwrap();
            let json = Json::read(&serde_json::to_string(&family).unwrap()).unwrap();
            assert_eq!(read(&json), Some(family), "{}", path.display());
            count += 1;
        }
        assert!(count >= 3, "{count} families");
    }

    #[test]
    fn what_is_no_file_of_a_family_is_refused() {
        for text in [
            "",
            "{}",
            r#"{"number":3,"family":{}}"#,
            r#"{"number":70000}"#,
        ] {
            assert!(open(text).is_err(), "{text}");
        }
    }

    #[test]
    fn what_is_no_family_is_none() {
        for text in ["{}", "[]", "null", r#"{"id":"a","revision":1}"#] {
            assert_eq!(read(&Json::read(text).unwrap()), None, "{text}");
        }
    }
}
