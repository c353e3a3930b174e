//! The reader's notebook: lessons ticked, problems tallied. Pure: text in, text out.
//!
//! It lives in this browser's storage as JSON:
//! `{"version":1,"lessons":{slug:"2026-11-25"},"problems":{family:{"right":2,"wrong":1,"mistakes":{id:1}}}}`.
//! What is read may come from a link that anybody made: everything is bounded and
//! checked, and names stay text.

use crate::json::Json;
use superhet::problems::Marking;

/// The version written, and the only one read.
const VERSION: u32 = 1;
/// The longest text that is read, in bytes. The most that can be written is a little
/// less: 80 lessons of at most 78 bytes, 80 families of at most 107 bytes with 20
/// mistakes of at most 69 bytes each.
pub(crate) const LONGEST: usize = 130_000;
/// The most lessons, and the most families.
const MOST_NAMES: usize = 80;
/// The most mistakes of one family.
const MOST_MISTAKES: usize = 20;
/// The longest name.
const LONGEST_NAME: usize = 60;
/// The greatest count; counting stops there.
const MOST: u32 = 99_999;

/// The reader's notebook.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(crate) struct Notebook {
    /// Slugs of the lessons ticked, each with its day.
    lessons: Vec<(String, String)>,
    /// Families tried.
    problems: Vec<(String, Tally)>,
}

/// How a family went so far.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(crate) struct Tally {
    /// Answers marked right.
    pub(crate) right: u32,
    /// Answers marked wrong.
    pub(crate) wrong: u32,
    /// Mistakes by their names.
    pub(crate) mistakes: Vec<(String, u32)>,
}

/// Why a text is no notebook, in a phrase.
pub(crate) type Damage = &'static str;

impl Notebook {
    /// Reads a notebook.
    pub(crate) fn read(text: &str) -> Result<Self, Damage> {
        if text.len() > LONGEST {
            return Err("it is too long");
        }
        let json = Json::read(text).map_err(|_| "it is cut or garbled")?;
        Self::from_json(&json)
    }

    /// Reads a notebook that is part of something else.
    pub(crate) fn from_json(json: &Json) -> Result<Self, Damage> {
        if json.member("version").and_then(Json::number) != Some(VERSION) {
            return Err("it is of another version");
        }
        let lessons = named(json.member("lessons"), MOST_NAMES, |day| {
            day.text().filter(|day| is_day(day)).map(str::to_owned)
        });
        let problems = named(json.member("problems"), MOST_NAMES, Tally::from_json);
        match (lessons, problems) {
            (Some(lessons), Some(problems)) => Ok(Self { lessons, problems }),
            _ => Err("it holds something that no notebook holds"),
        }
    }

    /// The notebook as JSON.
    pub(crate) fn to_json(&self) -> Json {
        let lessons = self.lessons.iter();
        let lessons = lessons.map(|(slug, day)| (slug.clone(), Json::Text(day.clone())));
        let problems = self.problems.iter();
        let problems = problems.map(|(family, tally)| (family.clone(), tally.to_json()));
        Json::Object(vec![
            ("version".into(), Json::Number(VERSION)),
            ("lessons".into(), Json::Object(lessons.collect())),
            ("problems".into(), Json::Object(problems.collect())),
        ])
    }

    /// Whether nothing is written in it.
    pub(crate) fn is_empty(&self) -> bool {
        self.lessons.is_empty() && self.problems.is_empty()
    }

    /// Whether a lesson is ticked.
    pub(crate) fn has_tick(&self) -> bool {
        !self.lessons.is_empty()
    }

    /// The day on which a lesson was ticked.
    pub(crate) fn day_of(&self, slug: &str) -> Option<&str> {
        find(&self.lessons, slug).map(String::as_str)
    }

    /// Ticks a lesson.
    pub(crate) fn tick(&mut self, slug: &str, day: &str) {
        if let Some(known) = entry(&mut self.lessons, slug, MOST_NAMES) {
            day.clone_into(known);
        }
    }

    /// Takes a lesson's tick away.
    pub(crate) fn untick(&mut self, slug: &str) {
        self.lessons.retain(|(known, _)| known != slug);
    }

    /// Tallies a marking. What was not read is no attempt and is not tallied.
    pub(crate) fn tally(&mut self, family: &str, marking: &Marking) {
        if !marking.verdict.is_attempt() {
            return;
        }
        let Some(tally) = entry(&mut self.problems, family, MOST_NAMES) else {
            return;
        };
        if marking.verdict.is_right() {
            count(&mut tally.right);
        } else {
            count(&mut tally.wrong);
        }
        let mistake = marking.mistake.as_ref();
        if let Some(times) =
            mistake.and_then(|mistake| entry(&mut tally.mistakes, &mistake.id, MOST_MISTAKES))
        {
            count(times);
        }
    }

    /// How a family went so far.
    #[cfg(test)]
    pub(crate) fn tally_of(&self, family: &str) -> Option<&Tally> {
        find(&self.problems, family)
    }

    /// Adds what another copy of the notebook holds. Doing it twice changes nothing
    /// more: of two days the earlier stays, of two counts the greater.
    pub(crate) fn take_in(&mut self, other: &Self) {
        for (slug, day) in &other.lessons {
            if let Some(known) = entry(&mut self.lessons, slug, MOST_NAMES)
                && (known.is_empty() || day < known)
            {
                known.clone_from(day);
            }
        }
        for (family, tally) in &other.problems {
            if let Some(known) = entry(&mut self.problems, family, MOST_NAMES) {
                known.take_in(tally);
            }
        }
    }

    /// What the notebook holds, in words.
    pub(crate) fn told(&self) -> String {
        let answers: u32 = self
            .problems
            .iter()
            .map(|(_, tally)| tally.right + tally.wrong)
            .sum();
        let lessons = counted(u32::try_from(self.lessons.len()).unwrap_or(MOST), "lesson");
        [
            &lessons,
            " ticked, ",
            &counted(answers, "answer"),
            " marked",
        ]
        .concat()
    }
}

/// "1 lesson", "3 lessons", "no lesson".
fn counted(number: u32, noun: &str) -> String {
    match number {
        0 => ["no ", noun].concat(),
        1 => ["1 ", noun].concat(),
        _ => [&number.to_string(), " ", noun, "s"].concat(),
    }
}

impl Tally {
    fn from_json(json: &Json) -> Option<Self> {
        let count = |json: &Json| json.number().filter(|count| *count <= MOST);
        Some(Self {
            right: count(json.member("right")?)?,
            wrong: count(json.member("wrong")?)?,
            mistakes: named(json.member("mistakes"), MOST_MISTAKES, count)?,
        })
    }

    fn to_json(&self) -> Json {
        let mistakes = self.mistakes.iter();
        let mistakes = mistakes.map(|(id, times)| (id.clone(), Json::Number(*times)));
        Json::Object(vec![
            ("right".into(), Json::Number(self.right)),
            ("wrong".into(), Json::Number(self.wrong)),
            ("mistakes".into(), Json::Object(mistakes.collect())),
        ])
    }

    fn take_in(&mut self, other: &Self) {
        self.right = self.right.max(other.right);
        self.wrong = self.wrong.max(other.wrong);
        for (id, times) in &other.mistakes {
            if let Some(known) = entry(&mut self.mistakes, id, MOST_MISTAKES) {
                *known = (*known).max(*times);
            }
        }
    }
}

/// The members of an object under names that are ids, each read; none if anything is
/// amiss. An absent object is an empty one.
fn named<T>(
    json: Option<&Json>,
    most: usize,
    read: impl Fn(&Json) -> Option<T>,
) -> Option<Vec<(String, T)>> {
    let members = match json {
        None => &[],
        Some(object @ Json::Object(_)) => object.members(),
        Some(_) => return None,
    };
    let mut all: Vec<(String, T)> = Vec::with_capacity(members.len());
    for (name, value) in members {
        if !is_id(name) || find(&all, name).is_some() || all.len() == most {
            return None;
        }
        all.push((name.clone(), read(value)?));
    }
    Some(all)
}

/// The value under a name, made if it is not there yet; none for what is no id, or when
/// the list is full.
fn entry<'a, T: Default>(
    all: &'a mut Vec<(String, T)>,
    name: &str,
    most: usize,
) -> Option<&'a mut T> {
    let place = match all.iter().position(|(known, _)| known == name) {
        Some(place) => place,
        None if is_id(name) && all.len() < most => {
            all.push((name.to_owned(), T::default()));
            all.len() - 1
        }
        None => return None,
    };
    all.get_mut(place).map(|(_, value)| value)
}

fn find<'a, T>(all: &'a [(String, T)], name: &str) -> Option<&'a T> {
    all.iter()
        .find(|(known, _)| known == name)
        .map(|(_, value)| value)
}

fn count(number: &mut u32) {
    *number = (*number + 1).min(MOST);
}

/// Whether a name is a slug or id: small letters, digits and hyphens.
fn is_id(name: &str) -> bool {
    let fits = |byte: u8| byte.is_ascii_lowercase() || byte.is_ascii_digit() || byte == b'-';
    !name.is_empty() && name.len() <= LONGEST_NAME && name.bytes().all(fits)
}

/// Whether a text has the form of a day, `2026-11-25`.
fn is_day(text: &str) -> bool {
    text.len() == 10
        && text.bytes().enumerate().all(|(place, byte)| match place {
            4 | 7 => byte == b'-',
            _ => byte.is_ascii_digit(),
        })
}

#[cfg(test)]
mod tests {
    use super::{LONGEST, Notebook, Tally};
    use proptest::prelude::{prop_assert, prop_assert_eq, proptest};
    use superhet::problems::marking::NamedMistake;
    use superhet::problems::{Marking, Verdict};

    fn marking(verdict: Verdict, mistake: Option<&str>) -> Marking {
        let mistake = mistake.map(|id| NamedMistake {
            id: id.to_owned(),
            misconception: None,
        });
        Marking {
            verdict,
            read_as: None,
            mistake,
            says: String::new(),
        }
    }

    fn example() -> Notebook {
        let mut notebook = Notebook::default();
        notebook.tick("the-image", "2026-11-25");
        notebook.tally(
            "image-of-a-station",
            &marking(Verdict::Wrong, Some("one-if")),
        );
        notebook.tally(
            "image-of-a-station",
            &marking(Verdict::Wrong, Some("one-if")),
        );
        notebook.tally(
            "image-of-a-station",
            &marking(Verdict::RightButRounded, None),
        );
        notebook.tally("image-of-a-station", &marking(Verdict::Unclear, None));
        notebook
    }

    #[test]
    fn the_text_is_the_one_promised() {
        assert_eq!(
            example().to_json().write(),
            r#"{"version":1,"lessons":{"the-image":"2026-11-25"},"problems":{"image-of-a-station":{"right":1,"wrong":2,"mistakes":{"one-if":2}}}}"#
        );
        assert_eq!(example().told(), "1 lesson ticked, 3 answers marked");
    }

    #[test]
    fn it_is_read_as_it_was_written() {
        let text = example().to_json().write();
        assert_eq!(Notebook::read(&text), Ok(example()));
        assert_eq!(Notebook::read(r#"{"version":1}"#), Ok(Notebook::default()));
    }

    #[test]
    fn damage_is_named_and_nothing_half_is_kept() {
        let long = " ".repeat(LONGEST + 1);
        for text in [
            "",
            "null",
            r#"{"version":2}"#,
            r#"{"version":1,"lessons":[]}"#,
            r#"{"version":1,"lessons":{"<b>":"2026-11-25"}}"#,
            r#"{"version":1,"lessons":{"a":"yesterday"}}"#,
            r#"{"version":1,"lessons":{"a":"2026-11-25","a":"2026-11-26"}}"#,
            r#"{"version":1,"problems":{"a":{"right":1}}}"#,
            r#"{"version":1,"problems":{"a":{"right":100000,"wrong":0,"mistakes":{}}}}"#,
            &long,
        ] {
            assert!(Notebook::read(text).is_err(), "{text:.60}");
        }
    }

    #[test]
    fn two_copies_become_one_and_again_the_same() {
        let mut here = Notebook::default();
        here.tick("the-image", "2026-12-01");
        here.tick("oscillator", "2026-12-02");
        here.tally("image-of-a-station", &marking(Verdict::Right, None));
        here.take_in(&example());
        assert_eq!(here.day_of("the-image"), Some("2026-11-25"));
        assert_eq!(here.day_of("oscillator"), Some("2026-12-02"));
        let tally = here.tally_of("image-of-a-station").unwrap();
        let expected = Tally {
            right: 1,
            wrong: 2,
            mistakes: vec![("one-if".to_owned(), 2)],
        };
        assert_eq!(*tally, expected);
        let once = here.clone();
        here.take_in(&example());
        assert_eq!(here, once);
        here.untick("oscillator");
        assert_eq!(here.day_of("oscillator"), None);
    }

    proptest! {
        #[test]
        fn what_is_ticked_can_be_read_again(slugs in proptest::collection::vec("[a-z-]{0,70}", 0..300)) {
            let mut notebook = Notebook::default();
            for slug in &slugs {
                notebook.tick(slug, "2026-01-02");
            }
            let text = notebook.to_json().write();
            prop_assert!(text.len() <= LONGEST);
            prop_assert_eq!(Notebook::read(&text), Ok(notebook));
        }
    }
}
