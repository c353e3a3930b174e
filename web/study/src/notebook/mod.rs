//! The reader's notebook: lessons ticked, problems tallied, checks taken. Pure: text in,
//! text out.
//!
//! It lives in this browser's storage as JSON:
//! `{"version":2,"lessons":{slug:"2026-11-25"},"problems":{family:[right,wrong,box,due,{mistake:times}]},"checks":[[day,form,right]]}`,
//! short, since all of it travels in a link. Box and due are where the family stands on the
//! ladder of `superhet::problems::schedule`, 0 where it does not yet; days count from
//! 1 January 1970; the right answers of a check are bits, the first question's lowest.
//! Version 1, which is read too, had `{"right":2,"wrong":1,"mistakes":{id:1}}` for a family,
//! and no checks.
//!
//! What is read may come from a link that anybody made: everything is bounded and
//! checked, and names stay text.

mod named;
mod takings;
mod tally;
#[cfg(test)]
mod tests;

pub(crate) use tally::Tally;

use crate::json::Json;
use named::{entry, find, is_day, named};
use superhet::problems::Standing;
use superhet::problems::before_after::Taking;
use superhet::problems::schedule::Day;
#[cfg(feature = "problems")]
use superhet::problems::{Marking, Outcome};

/// The version written.
const VERSION: u32 = 2;
/// The longest text that is read, in bytes. The most that can be written is a little
/// less: 80 lessons of at most 78 bytes, 80 families of at most 100 bytes with 20
/// mistakes of at most 69 bytes each, a few checks.
pub(crate) const LONGEST: usize = 130_000;
/// The most lessons, and the most families.
const MOST_NAMES: usize = 80;

/// The reader's notebook.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(crate) struct Notebook {
    /// Slugs of the lessons ticked, each with its day.
    lessons: Vec<(String, String)>,
    /// Families tried.
    problems: Vec<(String, Tally)>,
    /// Checks taken, in the order of their days.
    checks: Vec<Taking>,
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
        let tally = match json.member("version").and_then(Json::number) {
            Some(1) => Tally::from_version_1,
            Some(VERSION) => Tally::from_json,
            _ => return Err("it is of another version"),
        };
        let lessons = named(json.member("lessons"), MOST_NAMES, |day| {
            day.text().filter(|day| is_day(day)).map(str::to_owned)
        });
        let problems = named(json.member("problems"), MOST_NAMES, tally);
        let checks = takings::read(json.member("checks"));
        match (lessons, problems, checks) {
            (Some(lessons), Some(problems), Some(checks)) => Ok(Self {
                lessons,
                problems,
                checks,
            }),
            _ => Err("it holds something that no notebook holds"),
        }
    }

    /// The notebook as JSON.
    pub(crate) fn to_json(&self) -> Json {
        let lessons = self.lessons.iter();
        let lessons = lessons.map(|(slug, day)| (slug.clone(), Json::Text(day.clone())));
        let problems = self.problems.iter();
        let problems = problems.map(|(family, tally)| (family.clone(), tally.to_json()));
        let mut members = vec![
            ("version".into(), Json::Number(VERSION)),
            ("lessons".into(), Json::Object(lessons.collect())),
            ("problems".into(), Json::Object(problems.collect())),
        ];
        if !self.checks.is_empty() {
            members.push(("checks".into(), takings::to_json(&self.checks)));
        }
        Json::Object(members)
    }

    /// Whether nothing is written in it.
    pub(crate) fn is_empty(&self) -> bool {
        self.lessons.is_empty() && self.problems.is_empty() && self.checks.is_empty()
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

    /// How many families are due.
    pub(crate) fn due(&self, today: Day) -> u32 {
        let standings = self.problems.iter().filter_map(|(_, tally)| tally.standing);
        let due = standings.filter(|standing: &Standing| standing.is_due(today));
        u32::try_from(due.count()).unwrap_or(tally::MOST)
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
        takings::take_in(&mut self.checks, &other.checks);
    }

    /// What the notebook holds, in words.
    #[cfg(feature = "carrying")]
    pub(crate) fn told(&self) -> String {
        let answers: u32 = self
            .problems
            .iter()
            .map(|(_, tally)| tally.right + tally.wrong)
            .sum();
        let length = |length: usize| u32::try_from(length).unwrap_or(tally::MOST);
        let lessons = counted(length(self.lessons.len()), "lesson");
        let answers = counted(answers, "answer");
        let mut told = [&lessons, " ticked, ", &answers, " marked"].concat();
        if !self.checks.is_empty() {
            let checks = counted(length(self.checks.len()), "check");
            told.push_str(&[", ", &checks, " taken"].concat());
        }
        told
    }
}

/// What pages with problems ask of it.
#[cfg(feature = "problems")]
impl Notebook {
    /// Tallies a marking. What was not read is no attempt and is not tallied.
    pub(crate) fn tally(&mut self, family: &str, marking: &Marking) {
        if marking.verdict.is_attempt()
            && let Some(tally) = entry(&mut self.problems, family, MOST_NAMES)
        {
            tally.mark(marking);
        }
    }

    /// A problem of a family was done to its end: the family moves on its ladder.
    pub(crate) fn done(&mut self, family: &str, outcome: Outcome, today: Day) {
        if let Some(tally) = entry(&mut self.problems, family, MOST_NAMES) {
            tally.done(outcome, today);
        }
    }
}

/// What the practice page alone asks of it.
#[cfg(feature = "rounds")]
impl Notebook {
    /// How a family went so far.
    pub(crate) fn tally_of(&self, family: &str) -> Option<&Tally> {
        find(&self.problems, family)
    }

    /// Every family tried.
    pub(crate) fn tallies(&self) -> &[(String, Tally)] {
        &self.problems
    }
}

/// What the check alone asks of it.
#[cfg(feature = "check")]
impl Notebook {
    /// The checks taken, in the order of their days.
    pub(crate) fn checks(&self) -> &[Taking] {
        &self.checks
    }

    /// A check was taken.
    pub(crate) fn check(&mut self, taking: Taking) {
        takings::take_in(&mut self.checks, &[taking]);
    }
}

/// "1 lesson", "3 lessons", "no lesson".
pub(crate) fn counted(number: u32, noun: &str) -> String {
    match number {
        0 => ["no ", noun].concat(),
        1 => ["1 ", noun].concat(),
        _ => [&number.to_string(), " ", noun, "s"].concat(),
    }
}
