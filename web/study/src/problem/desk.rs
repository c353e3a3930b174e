//! The desk at which a reader works one problem after another of a family.

use super::on_figure::can_draw;
#[cfg(feature = "rounds")]
use superhet::problems::generate_for_set;
use superhet::problems::problem::Answer;
use superhet::problems::{
    Family, Level, Marking, Outcome, Problem, ProblemCode, Registered, Sitting, generate,
};

/// A family and the problem of it that lies on the desk.
pub(crate) struct Desk {
    number: u16,
    family: Family,
    sitting: Sitting,
    /// The set of the reader's own that the problem is asked of, as a link names it; empty
    /// where it is asked of a drawn one.
    set: String,
}

impl Desk {
    /// Draws a first problem of a family, an easy one.
    pub(super) fn new(registered: Registered, seed: u32) -> Result<Self, String> {
        Self::at(registered, Level::One, seed)
    }

    /// Draws a first problem of a family at a level.
    pub(crate) fn at(registered: Registered, level: Level, seed: u32) -> Result<Self, String> {
        let Registered { number, family } = registered;
        let sitting = drawn(&family, level, seed)?;
        Ok(Self {
            number,
            family,
            sitting,
            set: String::new(),
        })
    }

    /// The name of the family.
    pub(crate) fn family(&self) -> &str {
        &self.family.id
    }

    /// The reader's way through the problem on the desk.
    pub(super) fn sitting(&mut self) -> &mut Sitting {
        &mut self.sitting
    }

    /// The reader's way through the problem, to look at.
    pub(crate) fn state(&self) -> &Sitting {
        &self.sitting
    }

    /// Puts another problem of the same level on the desk.
    pub(super) fn another(&mut self, seed: u32) -> Result<(), String> {
        let level = self.sitting.problem().level;
        self.sitting = drawn(&self.family, level, seed)?;
        Ok(())
    }

    /// Puts a harder problem on the desk.
    pub(super) fn harder(&mut self, seed: u32) -> Result<(), String> {
        let level = self.next_level().unwrap_or(Level::Transfer);
        self.sitting = drawn(&self.family, level, seed)?;
        Ok(())
    }

    /// Whether the problem was done without its working being shown, and there is a
    /// harder level.
    pub(super) fn may_go_harder(&self) -> bool {
        let outcome = self.sitting.outcome();
        outcome.is_some_and(|outcome| outcome < Outcome::Shown) && self.next_level().is_some()
    }

    fn next_level(&self) -> Option<Level> {
        Level::from_number(self.sitting.problem().level.number() + 1)
    }

    /// The code that reopens the problem on the desk.
    pub(super) fn code(&self) -> Option<String> {
        let problem = self.sitting.problem();
        let code = ProblemCode {
            family: self.number,
            revision: problem.revision,
            level: problem.level,
            seed: problem.seed,
        };
        code.encode().ok()
    }

    /// The set that it is asked of, as a link names it behind the code.
    pub(super) fn set(&self) -> &str {
        &self.set
    }

    /// Asks the problem on the desk of a set of the reader's own.
    #[cfg(feature = "rounds")]
    pub(crate) fn ask_of(&mut self, set: &[(&str, &str)], link: &str) -> Result<(), String> {
        let problem = self.sitting.problem();
        let drawn = generate_for_set(&self.family, problem.level, problem.seed, set);
        self.sitting = Sitting::new(as_answered(drawn.map_err(|error| error.to_string())?));
        link.clone_into(&mut self.set);
        Ok(())
    }

    /// Whether a code names the very problem on the desk, which is then left as it is.
    pub(super) fn lies_open(&self, code: &ProblemCode) -> bool {
        self.set.is_empty() && code.encode().is_ok_and(|code| Some(code) == self.code())
    }

    /// Opens the problem that a code names. None where it names another family.
    pub(crate) fn reopen(&mut self, code: &ProblemCode) -> Option<Result<(), String>> {
        if code.family != self.number {
            return None;
        }
        if code.revision != self.family.revision {
            let text = "That link is to an older wording of this problem, which is not kept here.";
            return Some(Err(text.to_owned()));
        }
        let sitting = drawn(&self.family, code.level, code.seed);
        self.set.clear();
        Some(sitting.map(|sitting| self.sitting = sitting))
    }
}

fn drawn(family: &Family, level: Level, seed: u32) -> Result<Sitting, String> {
    let problem = generate(family, level, seed).map_err(|error| error.to_string())?;
    Ok(Sitting::new(as_answered(problem)))
}

/// The problem with every answer typed that this program has no figure for.
fn as_answered(mut problem: Problem) -> Problem {
    for part in &mut problem.parts {
        if let Answer::Number(number) = &mut part.answer {
            number.set_on.take_if(|set_on| !can_draw(set_on));
        }
    }
    problem
}

/// What is said about an answer: how it was read where that is not how it was typed,
/// then the judgement.
pub(super) fn told(marking: &Marking, typed: &str) -> Vec<String> {
    let mut lines = Vec::new();
    if let Some(read) = &marking.read_as
        && bare(read) != bare(typed)
    {
        lines.push(["Read as ", read, "."].concat());
    }
    lines.push(marking.says.clone());
    lines
}

fn bare(text: &str) -> String {
    text.chars()
        .filter(|letter| !letter.is_whitespace())
        .collect()
}

#[cfg(test)]
pub(super) mod tests {
    use super::{Desk, told};
    use superhet::problems::{Family, ProblemCode, Registered, Verdict};

    /// A desk with a problem of a family of the course on it.
    pub(crate) fn desk_of(id: &str, number: u16, seed: u32) -> Desk {
        desk_with(&text_of(id), number, seed)
    }

    /// The same from the text of a family's file.
    pub(crate) fn desk_with(text: &str, number: u16, seed: u32) -> Desk {
        let family: Family = toml::from_str(text).unwrap();
        Desk::new(Registered { number, family }, seed).unwrap()
    }

    /// The file of a family.
    pub(crate) fn text_of(id: &str) -> String {
        let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../../lessons/problems");
        std::fs::read_to_string(format!("{folder}/{id}.toml")).unwrap()
    }

    #[test]
    fn a_problem_is_reopened_number_for_number() {
        let mut first = desk_of("image-of-a-station", 3, 11);
        let code = ProblemCode::decode(&first.code().unwrap()).unwrap();
        let scene = first.state().problem().scene.clone();
        assert!(first.lies_open(&code));
        first.another(12).unwrap();
        assert!(!first.lies_open(&code));
        assert_ne!(first.state().problem().scene, scene);
        assert_eq!(first.reopen(&code), Some(Ok(())));
        assert_eq!(first.state().problem().scene, scene);

        let other = ProblemCode { family: 1, ..code };
        assert_eq!(first.reopen(&other), None);
        let older = ProblemCode {
            revision: code.revision + 1,
            ..code
        };
        assert!(first.reopen(&older).unwrap().is_err());
    }

    #[test]
    fn harder_waits_for_a_right_answer() {
        let mut desk = desk_of("oscillator-from-dial", 2, 5);
        assert!(!desk.may_go_harder());
        let wrong = desk.sitting().answer("1 kHz", None).unwrap();
        assert_eq!(wrong.verdict, Verdict::Wrong);
        while let Some(part) = desk.state().current() {
            let answer = match &desk.state().problem().parts[part].answer {
                superhet::problems::problem::Answer::Number(number) => number.text.clone(),
                superhet::problems::problem::Answer::Choice(choices) => choices
                    .iter()
                    .find(|choice| choice.right)
                    .unwrap()
                    .id
                    .clone(),
            };
            assert!(
                desk.sitting()
                    .answer(&answer, None)
                    .unwrap()
                    .verdict
                    .is_right()
            );
        }
        assert!(desk.may_go_harder());
        desk.harder(6).unwrap();
        assert_eq!(desk.state().problem().level.number(), 2);
    }

    #[test]
    fn the_reading_is_told_where_it_differs() {
        let mut desk = desk_of("oscillator-from-dial", 2, 5);
        let marking = desk.sitting().answer("0,9 MHz", None).unwrap();
        assert_eq!(told(&marking, "0,9 MHz")[0], "Read as 0.9 MHz.");
        let marking = desk.sitting().answer("900kHz", None).unwrap();
        assert_eq!(told(&marking, "900kHz").len(), 1);
        let marking = desk.sitting().answer("", None).unwrap();
        assert_eq!(marking.verdict, Verdict::Unclear);
    }
}
