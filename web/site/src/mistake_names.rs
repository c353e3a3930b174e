//! What mistakes are called in a reader's notebook: an asset of its own, which the practice
//! page fetches for those who have a mistake on record.

use crate::content::Content;
use crate::families::as_asset;
use anyhow::Result;
use serde::Serialize;
use superhet::problems::{Family, Registered};

/// The slips that any answer can show (`superhet::problems::marking`), as the notebook calls
/// them.
const SLIPS: [(&str, &str); 4] = [
    ("thousand-times", "A thousand times too large or too small."),
    ("decimal-point", "A decimal point in the wrong place."),
    ("rounded-away", "Rounded further than was asked."),
    ("other-unit", "The right figure with another unit."),
];

/// Everything, as `study` reads it (`web/study/src/practice/names.rs`).
#[derive(Serialize)]
struct Names<'a> {
    slips: Vec<(&'a str, &'a str)>,
    beliefs: Vec<(&'a str, String)>,
    families: Vec<OfFamily<'a>>,
}

#[derive(Serialize)]
struct OfFamily<'a> {
    id: &'a str,
    /// Mistakes that show a belief: (mistake, belief).
    shows: Vec<(&'a str, &'a str)>,
    /// All others: (mistake, what it is called).
    mistakes: Vec<(&'a str, String)>,
}

/// The asset's name.
pub fn asset_name(portable: bool) -> &'static str {
    if portable {
        "mistake-names.js"
    } else {
        "mistake-names.json"
    }
}

/// The asset's bytes.
///
/// # Errors
/// When the names cannot be written as JSON.
pub fn asset(content: &Content, portable: bool) -> Result<Vec<u8>> {
    let families = content.families.newest();
    let names = Names {
        slips: SLIPS.to_vec(),
        beliefs: content.lessons.beliefs().collect(),
        families: families.map(of_family).collect(),
    };
    as_asset(&serde_json::to_string(&names)?, portable)
}

fn of_family(it: &Registered) -> OfFamily<'_> {
    let family = &it.family;
    let (mut shows, mut mistakes) = (Vec::new(), Vec::new());
    for (id, says, belief) in wrongs(family) {
        match belief {
            Some(belief) => shows.push((id, belief)),
            None => mistakes.push((id, called(id, says))),
        }
    }
    let id = &family.id;
    OfFamily {
        id,
        shows,
        mistakes,
    }
}

/// Every wrong answer of a family that has a name: its id, what is said, the belief.
fn wrongs(family: &Family) -> impl Iterator<Item = (&str, &str, Option<&str>)> {
    let mistakes = family.mistakes.iter();
    let mistakes = mistakes.map(|it| (&it.id, &it.says, &it.misconception));
    let options = family.parts.iter().flat_map(|part| &part.options);
    let options = options.map(|it| (&it.id, &it.says, &it.misconception));
    mistakes
        .chain(options)
        .map(|(id, says, belief)| (id.as_str(), says.as_str(), belief.as_deref()))
}

/// What a mistake is called in a list: the first sentence of what is said of it, where that
/// speaks of no number of the problem; else its own name.
fn called(id: &str, says: &str) -> String {
    let end = says.find(". ").map_or(says.len(), |end| end + 1);
    let sentence = &says[..end];
    if sentence.contains('{') || sentence.is_empty() {
        let words = id.replace('-', " ");
        let (first, rest) = words.split_at(words.len().min(1));
        format!("{}{rest}.", first.to_uppercase())
    } else {
        sentence.to_owned()
    }
}

#[cfg(test)]
mod tests {
    use super::called;

    #[test]
    fn a_mistake_is_called_by_a_sentence_without_slots() {
        let says = "That is the IF. It is {if}.";
        assert_eq!(called("the-if", says), "That is the IF.");
        assert_eq!(
            called("wrong-side", "It is {side} the station."),
            "Wrong side."
        );
        assert_eq!(called("two-ifs", "Two IFs"), "Two IFs");
    }
}
