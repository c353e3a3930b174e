//! What a lesson's script asks and is answered: texts in, lines out.
//!
//! | line | what the script does |
//! | --- | --- |
//! | `number PLACE TEXT VALUE` | writes the number that stands at that place among all |
//! | `figure PLACE INPUT` | gives the figure at that place another input |
//! | `stays UNIT REASON` | says in the unit that it stays, and why |
//! | `summary TEXT` | says beside the switch what was done |

use crate::{Recipes, own};
use myset::kept;
#[cfg(feature = "page")]
use wasm_bindgen::prelude::wasm_bindgen;

/// Works out the recipes of a lesson for the set that was kept.
#[cfg_attr(feature = "page", wasm_bindgen)]
#[must_use]
pub fn own_numbers(recipes: &str, kept: &str) -> String {
    let recipes = serde_json::from_str(recipes).ok().filter(Recipes::is_sound);
    let recipes = match recipes {
        Some(recipes) => recipes,
        None => {
            return line(&[
                "summary",
                "The numbers of this lesson could not be read, so none has changed.",
            ]);
        }
    };
    let set = kept::read(kept).and_then(|kept| {
        let faults = |faults: Vec<myset::FieldFault>| {
            faults.first().map_or_else(String::new, |fault| {
                format!("{}: {}", fault.key, fault.says)
            })
        };
        kept.typed.set().map_err(faults)
    });
    match set {
        Ok(set) => answer(&own::apply(&recipes, &set), &set),
        Err(why) => line(&[
            "summary",
            &format!("Your set could not be read, so no number has changed: {why}."),
        ]),
    }
}

fn answer(outcome: &own::Outcome, set: &myset::OwnSet) -> String {
    let mut lines = String::new();
    for (place, text, value) in &outcome.numbers {
        lines.push_str(&line(&["number", &place.to_string(), text, value]));
    }
    for (place, input) in &outcome.figures {
        lines.push_str(&line(&["figure", &place.to_string(), input]));
    }
    for (unit, why) in &outcome.stays {
        lines.push_str(&line(&["stays", unit, why]));
    }
    lines.push_str(&line(&["summary", &summary(outcome, set)]));
    lines
}

fn line(fields: &[&str]) -> String {
    let plain = |text: &&str| text.replace(char::is_control, " ");
    let fields: Vec<String> = fields.iter().map(plain).collect();
    fields.join("\t") + "\n"
}

/// "31 numbers and 1 figure are for your set: IF 455 kHz, …"
fn summary(outcome: &own::Outcome, set: &myset::OwnSet) -> String {
    let count = |number: usize, one: &str, more: &str| match number {
        1 => format!("1 {one}"),
        _ => format!("{number} {more}"),
    };
    let numbers = count(outcome.numbers.len(), "number is", "numbers are");
    let mut text = match outcome.numbers.len() {
        0 => format!("No number here changes for your set: {}.", set.told()),
        _ => format!("{numbers} now worked out for your set: {}.", set.told()),
    };
    if !outcome.stays.is_empty() {
        let places = count(outcome.stays.len(), "place", "places");
        text.push_str(&format!(
            " In {places} the lesson’s numbers stay ({} of them would change), and each says why.",
            outcome.left
        ));
    }
    text.push_str(" Predictions and problems keep the lesson’s set.");
    text
}

#[cfg(test)]
mod tests {
    use super::own_numbers;
    use proptest::prelude::proptest;

    const KEPT: &str = r#"{"version":2,"if":"455 kHz","side":"above","region":1}"#;
    const RECIPES: &str = r#"{"givens":{"dial":"909 kHz","if":"470 kHz","side":"above"},"own":{"if":"if"},"over":[],
        "units":[{"id":"opening","rule":{"follows":[]}},{"id":"end","rule":{"stays":"It is a story."}}],
        "numbers":[{"what":"calc:image","typed":"1849 kHz","unit":0},{"what":"given:if","typed":"470 kHz","unit":1}],"figures":[]}"#;

    #[test]
    fn the_answer_is_lines() {
        assert_eq!(
            own_numbers(RECIPES, KEPT),
            "number\t0\t1819 kHz\t1819000\nstays\tend\tIt is a story.\n\
             summary\t1 number is now worked out for your set: IF 455 kHz, oscillator above, Region 1. \
             In 1 place the lesson’s numbers stay (1 of them would change), and each says why. \
             Predictions and problems keep the lesson’s set.\n"
        );
    }

    #[test]
    fn what_cannot_be_read_changes_nothing() {
        for (recipes, kept) in [
            ("{}", KEPT),
            (RECIPES, "{}"),
            (
                RECIPES,
                r#"{"version":2,"if":"5 kHz","side":"above","region":1}"#,
            ),
        ] {
            let said = own_numbers(recipes, kept);
            assert!(
                said.starts_with("summary\t") && said.contains("could not be read"),
                "{said}"
            );
        }
    }

    proptest! {
        #[test]
        fn no_recipes_make_it_panic(what in "(calc|given):[a-z?=&0-9-]{0,24}", raw in "(calc:)?[a-z0-9?=& ]{0,20}", holds in "[a-z<>=0-9 ?]{0,24}", unit in 0_usize..3) {
            let text = format!(r#"{{"givens":{{"dial":"{raw}","if":"470 kHz","side":"above"}},"own":{{"if":"if"}},"over":[],
                "units":[{{"id":"a","rule":{{"follows":[{{"holds":"{holds}","says":"s"}}]}}}}],
                "numbers":[{{"what":"{what}","typed":"1 kHz","unit":{unit},"over":{unit}}}],"figures":[{{"unit":{unit},"pairs":[["dial","dial"]]}}]}}"#);
            let _ = own_numbers(&text, KEPT);
        }
    }
}
