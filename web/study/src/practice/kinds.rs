//! What the page knows of each kind of problem before it is fetched. Pure.
//!
//! The site writes it (`web/site/src/pages/practice/kinds.rs`) into the page itself.

use crate::json::Json;

/// Every kind of problem.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Kinds {
    /// The kinds, in the order of their numbers.
    pub(super) all: Vec<Kind>,
}

/// One kind of problem.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Kind {
    /// The name of the family.
    pub(super) id: String,
    /// Its registered number.
    pub(super) number: u16,
    /// The number of its lesson.
    pub(super) lesson: u32,
    /// What it is about.
    pub(super) title: String,
    /// Where it is found.
    pub(super) address: String,
}

impl Kinds {
    /// Reads what the page holds; what cannot be read is left out.
    pub(super) fn read(text: &str) -> Self {
        let json = Json::read(text).unwrap_or(Json::Null);
        let all = json.entries().iter().filter_map(kind).collect();
        Self { all }
    }

    /// The kind of this name.
    pub(super) fn find(&self, id: &str) -> Option<&Kind> {
        self.all.iter().find(|kind| kind.id == id)
    }

    /// The kind with this registered number.
    pub(super) fn numbered(&self, number: u16) -> Option<usize> {
        self.all.iter().position(|kind| kind.number == number)
    }
}

fn kind(json: &Json) -> Option<Kind> {
    let text = |name: &str| Some(json.member(name)?.text()?.to_owned());
    let number = |name: &str| json.member(name)?.number();
    Some(Kind {
        id: text("id")?,
        number: u16::try_from(number("number")?).ok()?,
        lesson: number("lesson")?,
        title: text("title")?,
        address: text("at")?,
    })
}

#[cfg(test)]
pub(super) mod tests {
    use super::Kinds;

    /// Three kinds: two of lesson 1, one of lesson 2.
    pub(in crate::practice) const KINDS: &str = r#"[
        {"id":"one","number":1,"lesson":1,"title":"The first","at":"a.json"},
        {"id":"two","number":2,"lesson":1,"title":"The <second>","at":"b.json"},
        {"id":"three","number":5,"lesson":2,"title":"The third","at":"c.json"}]"#;

    #[test]
    fn kinds_are_found_by_name_and_number() {
        let kinds = Kinds::read(KINDS);
        assert_eq!(kinds.all.len(), 3);
        assert_eq!(kinds.find("two").unwrap().title, "The <second>");
        assert_eq!(kinds.numbered(5), Some(2));
        assert_eq!(kinds.numbered(3), None);
    }

    #[test]
    fn a_page_without_kinds_has_none() {
        assert_eq!(Kinds::read("nonsense"), Kinds::default());
        assert_eq!(Kinds::read(r#"[{"id":"one"}]"#), Kinds::default());
    }
}
