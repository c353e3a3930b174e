//! A check that was begun and not yet handed in, as its tab keeps it. Pure.
//!
//! It lies in the tab's storage as JSON:
//! `{"version":1,"form":2,"answers":[["families/….json",3,"909","kHz"]]}`. A question goes by
//! where its family is found and by its seed, so that no answer comes back to another one;
//! then follow what was typed or chosen, and the unit whose button is pressed. It outlives a
//! reload, goes with the tab, and is forgotten when the check is handed in.

use super::items::Item;
use crate::json::Json;
use crate::notebook::Damage;
use crate::storage::{CHECK, Shelf};
use superhet::problems::before_after::{Form, Next, QUESTIONS};

/// The version written.
const VERSION: u32 = 1;
/// The longest text that is read, in bytes. The most that is written is less: twelve answers
/// of at most 80 UTF-16 units (`maxlength` of the boxes), three bytes of UTF-8 each at most, an
/// address and a unit of a few dozen.
const LONGEST: usize = 10_000;

/// A check that was begun.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Unfinished {
    /// The form that lies open.
    pub(super) form: Form,
    answers: Vec<Answered>,
}

/// What a question was answered with so far.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Answered {
    address: String,
    seed: u32,
    typed: String,
    unit: String,
}

impl Unfinished {
    /// The answers to a form, in the order of its questions: what was typed or chosen, and
    /// the unit.
    pub(super) fn of(form: Form, items: &[Item], answers: Vec<(String, String)>) -> Self {
        let answered = |(item, (typed, unit)): (&Item, (String, String))| Answered {
            address: item.address.clone(),
            seed: item.seed(form),
            typed,
            unit,
        };
        Self {
            form,
            answers: items.iter().zip(answers).map(answered).collect(),
        }
    }

    /// What a shelf keeps. Something damaged is thrown away, and said.
    pub(super) fn on(shelf: &impl Shelf) -> Result<Option<Self>, Damage> {
        let Some(text) = shelf.read(CHECK) else {
            return Ok(None);
        };
        let read = Self::read(&text);
        if read.is_err() {
            shelf.remove(CHECK);
        }
        read.map(Some)
    }

    /// Keeps it. False where that cannot be done.
    pub(super) fn keep(&self, shelf: &impl Shelf) -> bool {
        shelf.write(CHECK, &self.to_json().write())
    }

    /// What a question was answered with, and the unit.
    pub(super) fn answer(&self, item: &Item) -> Option<(&str, &str)> {
        let is_it = |it: &&Answered| it.address == item.address && it.seed == item.seed(self.form);
        let found = self.answers.iter().find(is_it)?;
        Some((&found.typed, &found.unit))
    }

    /// Whether it is the form that comes next: the first time either may be drawn.
    pub(super) fn comes(&self, next: Next) -> bool {
        match next {
            Next::Before(_) => true,
            Next::After(form) | Next::Again(form) => form == self.form,
            Next::AfterTheCourse | Next::FromDay(_) | Next::Nothing => false,
        }
    }

    fn read(text: &str) -> Result<Self, Damage> {
        if text.len() > LONGEST {
            return Err("it is too long");
        }
        let json = Json::read(text).map_err(|_| "it is cut or garbled")?;
        if json.member("version").and_then(Json::number) != Some(VERSION) {
            return Err("it is of another version");
        }
        let form = json.member("form").and_then(Json::number);
        let answers = json.member("answers").map(Json::entries);
        let answers = answers.filter(|all| all.len() <= QUESTIONS as usize);
        let answers = answers.and_then(|all| all.iter().map(answered).collect());
        match (form.and_then(Form::from_number), answers) {
            (Some(form), Some(answers)) => Ok(Self { form, answers }),
            _ => Err("it holds something that no check holds"),
        }
    }

    fn to_json(&self) -> Json {
        let text = |text: &str| Json::Text(text.to_owned());
        let answer = |it: &Answered| {
            let seed = Json::Number(it.seed);
            Json::List(vec![
                text(&it.address),
                seed,
                text(&it.typed),
                text(&it.unit),
            ])
        };
        Json::Object(vec![
            ("version".into(), Json::Number(VERSION)),
            ("form".into(), Json::Number(self.form.number())),
            (
                "answers".into(),
                Json::List(self.answers.iter().map(answer).collect()),
            ),
        ])
    }
}

fn answered(json: &Json) -> Option<Answered> {
    let [address, seed, typed, unit] = json.entries() else {
        return None;
    };
    let text = |json: &Json| json.text().map(str::to_owned);
    Some(Answered {
        address: text(address)?,
        seed: seed.number()?,
        typed: text(typed)?,
        unit: text(unit)?,
    })
}

#[cfg(test)]
mod tests {
    use super::super::items::tests::items;
    use super::Unfinished;
    use crate::storage::tests::Board;
    use crate::storage::{CHECK, Shelf};
    use superhet::problems::before_after::{Form, Next};

    fn begun() -> Unfinished {
        let answers = [("909 \"k\"", "kHz"), ("same", "")];
        let answers = answers.map(|(typed, unit)| (typed.to_owned(), unit.to_owned()));
        Unfinished::of(Form::Two, &items()[..2], answers.to_vec())
    }

    #[test]
    fn what_was_answered_comes_back_to_its_own_question() {
        let board = Board::default();
        assert_eq!(Unfinished::on(&board), Ok(None));
        assert!(begun().keep(&board));
        let kept = Unfinished::on(&board).unwrap().unwrap();
        assert_eq!(kept, begun());
        assert_eq!(kept.answer(&items()[0]), Some(("909 \"k\"", "kHz")));
        let mut other = begun();
        other.form = Form::One;
        assert_eq!(other.answer(&items()[0]), None, "it has another seed there");
    }

    #[test]
    fn only_the_form_that_comes_next_is_gone_on_with() {
        for (next, comes) in [
            (Next::Before(Form::One), true),
            (Next::After(Form::Two), true),
            (Next::After(Form::One), false),
            (Next::AfterTheCourse, false),
            (Next::Nothing, false),
        ] {
            assert_eq!(begun().comes(next), comes, "{next:?}");
        }
    }

    #[test]
    fn what_is_damaged_is_thrown_away() {
        let many = ["[\"a\",1,\"\",\"\"]"; 13].join(",");
        let many = format!("{{\"version\":1,\"form\":1,\"answers\":[{many}]}}");
        for text in [
            "",
            "{",
            "{\"version\":2,\"form\":1,\"answers\":[]}",
            "{\"version\":1,\"form\":3,\"answers\":[]}",
            "{\"version\":1,\"form\":1,\"answers\":[[\"a\",1,\"\"]]}",
            "{\"version\":1,\"form\":1}",
            &many,
            &" ".repeat(10_001),
        ] {
            let board = Board::default();
            board.write(CHECK, text);
            assert!(Unfinished::on(&board).is_err(), "{text}");
            assert_eq!(Unfinished::on(&board), Ok(None), "it is not read for ever");
        }
    }

    /// A text may hold little more than it says, several times over while it is read.
    #[cfg(not(target_arch = "wasm32"))]
    #[test]
    fn a_million_kept_checks_are_read_or_refused() {
        let text = begun().to_json().write();
        let trial = nasty::Trial {
            seed: 6,
            cases: nasty::MILLION,
            most_held: 100 * super::LONGEST as u64,
        };
        let words = [
            "[",
            "]",
            "{",
            "\"",
            ",",
            ":",
            "1",
            "2",
            "13",
            "\"form\":",
            "\"version\":1",
        ];
        let make = |maker: &mut nasty::Maker| maker.near(&text, &words);
        trial.run(make, |text| {
            if let Ok(read) = Unfinished::read(text) {
                assert!(text.len() <= super::LONGEST);
                // A control character is written as a blank, so the second writing counts.
                let written = read.to_json().write();
                let again = Unfinished::read(&written).map(|it| it.to_json().write());
                assert_eq!(again, Ok(written));
            }
        });
    }
}
