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
    for (id, chosen, says, belief) in wrongs(family) {
        match belief {
            Some(belief) => shows.push((id, belief)),
            None => mistakes.push((id, called(id, chosen, says))),
        }
    }
    let id = &family.id;
    OfFamily {
        id,
        shows,
        mistakes,
    }
}

/// Every wrong answer of a family that has a name: its id, the choice that was made, what is
/// said, the belief.
fn wrongs(family: &Family) -> impl Iterator<Item = (&str, &str, &str, Option<&str>)> {
    let mistakes = family.mistakes.iter();
    let mistakes = mistakes.map(|it| (&it.id, "", &it.says, &it.misconception));
    let options = family.parts.iter().flat_map(|part| &part.options);
    let options = options.map(|it| (&it.id, it.text.as_str(), &it.says, &it.misconception));
    mistakes
        .chain(options)
        .map(|(id, chosen, says, belief)| (id.as_str(), chosen, says.as_str(), belief.as_deref()))
}

/// What a mistake is called in a list that is read long afterwards: the choice, and what is
/// said of it as far as that speaks of no number of the problem; else its own name.
fn called(id: &str, chosen: &str, says: &str) -> String {
    let said = unfilled(says);
    match (unfilled(chosen), said) {
        ("", "") => {
            let words = id.replace('-', " ");
            let (first, rest) = words.split_at(words.len().min(1));
            format!("{}{rest}.", first.to_uppercase())
        }
        ("", said) => said.to_owned(),
        (chosen, said) => format!("“{chosen}” {said}").trim_end().to_owned(),
    }
}

/// The sentences before the first that holds a slot.
fn unfilled(text: &str) -> &str {
    let Some(slot) = text.find('{') else {
        return text;
    };
    text[..slot].rfind(". ").map_or("", |end| &text[..=end])
}

#[cfg(test)]
mod tests {
    use super::called;

    #[test]
    fn a_mistake_is_called_by_a_sentence_without_slots() {
        let says = "You added. That is the IF. It is {if}.";
        assert_eq!(called("the-if", "", says), "You added. That is the IF.");
        let says = "It is {side} the station.";
        assert_eq!(called("wrong-side", "", says), "Wrong side.");
        assert_eq!(called("two-ifs", "", "Two IFs"), "Two IFs");
        let says = "They do so at the top.";
        assert_eq!(
            called("both", "Both are as good.", says),
            "“Both are as good.” They do so at the top."
        );
        assert_eq!(called("both", "At {f}.", says), says);
    }
}
