//! What mistakes are called in the notebook. Pure.
//!
//! The site writes it (`web/site/src/mistake_names.rs`) as an asset of its own, which is
//! fetched once there is a mistake to name.

use crate::json::Json;

/// The names of all mistakes.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Names {
    /// Slips that any answer can show.
    slips: Pairs,
    /// Beliefs by their ids.
    beliefs: Pairs,
    families: Vec<OfFamily>,
}

type Pairs = Vec<(String, String)>;

#[derive(Clone, Debug, PartialEq, Eq)]
struct OfFamily {
    id: String,
    /// Mistakes that show a belief.
    shows: Pairs,
    /// All others.
    mistakes: Pairs,
}

/// What a mistake is in the notebook.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Named<'a> {
    /// It shows this belief.
    Belief(&'a str),
    /// It is called this.
    Mistake(&'a str),
}

impl Names {
    /// Reads the asset; what cannot be read is left out.
    pub(super) fn read(text: &str) -> Self {
        let json = Json::read(text).unwrap_or(Json::Null);
        let families = json.member("families").map_or(&[][..], Json::entries);
        let of_family = |json: &Json| {
            Some(OfFamily {
                id: json.member("id")?.text()?.to_owned(),
                shows: pairs(json, "shows"),
                mistakes: pairs(json, "mistakes"),
            })
        };
        Self {
            slips: pairs(&json, "slips"),
            beliefs: pairs(&json, "beliefs"),
            families: families.iter().filter_map(of_family).collect(),
        }
    }

    /// What a mistake of a family is called; none for one that is not known any more.
    pub(super) fn named(&self, family: &str, mistake: &str) -> Option<Named<'_>> {
        let family = self.families.iter().find(|it| it.id == family)?;
        if let Some(belief) = called(&family.shows, mistake) {
            return called(&self.beliefs, belief).map(Named::Belief);
        }
        let name = called(&family.mistakes, mistake).or(called(&self.slips, mistake));
        name.map(Named::Mistake)
    }
}

fn called<'a>(pairs: &'a [(String, String)], name: &str) -> Option<&'a str> {
    let found = pairs.iter().find(|(known, _)| known == name);
    found.map(|(_, called)| called.as_str())
}

fn pairs(json: &Json, name: &str) -> Pairs {
    let entries = json.member(name).map_or(&[][..], Json::entries);
    let pair = |json: &Json| match json.entries() {
        [one, other] => Some((one.text()?.to_owned(), other.text()?.to_owned())),
        _ => None,
    };
    entries.iter().filter_map(pair).collect()
}

#[cfg(test)]
pub(super) mod tests {
    use super::{Named, Names};

    pub(in crate::practice) const NAMES: &str = r#"{"slips":[["decimal-point","A point in the wrong place."]],
        "beliefs":[["if-moves","The IF moves."]],
        "families":[{"id":"one","shows":[["stays","if-moves"]],"mistakes":[["added","You added."]]},
        {"id":"three","shows":[],"mistakes":[["added","You added."]]}]}"#;

    #[test]
    fn mistakes_are_beliefs_or_have_a_name() {
        let names = Names::read(NAMES);
        let named = |mistake| names.named("one", mistake);
        assert_eq!(named("stays"), Some(Named::Belief("The IF moves.")));
        assert_eq!(named("added"), Some(Named::Mistake("You added.")));
        let slip = Named::Mistake("A point in the wrong place.");
        assert_eq!(named("decimal-point"), Some(slip));
        assert_eq!(named("gone"), None);
        assert_eq!(names.named("other", "added"), None);
        assert_eq!(Names::read("nonsense"), Names::default());
    }
}
