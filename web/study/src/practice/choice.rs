//! Which kinds of problems come into question for what a reader wants. Pure.

use super::kinds::{Kind, Kinds};
use crate::notebook::Notebook;
use superhet::problems::schedule::Day;
use superhet::problems::session::Candidate;
use superhet::problems::{LeitnerBox, Standing};

/// A family in a higher box is no weakness any more, whatever is on record.
const WEAK_UP_TO: u8 = 2;

/// What a reader wants to practise.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Wish {
    /// These lessons, by their numbers.
    Lessons(Vec<u32>),
    /// Whatever went wrong and stands low.
    Weak,
}

/// The lessons that a reader has done: those ticked, those with problems tried where none is
/// ticked, or the first.
pub(super) fn done(kinds: &Kinds, notebook: &Notebook, ticked: &[u32]) -> Vec<u32> {
    if !ticked.is_empty() {
        return ticked.to_vec();
    }
    let tried = kinds.all.iter().filter(|kind| is_tried(kind, notebook));
    let furthest = tried.map(|kind| kind.lesson).max().unwrap_or(1);
    (1..=furthest).collect()
}

/// Every kind that may be set, by its place in the list: those wished for, and for the mix
/// those of lessons done or tried before.
pub(super) fn candidates(
    kinds: &Kinds,
    notebook: &Notebook,
    wish: &Wish,
    done: &[u32],
    today: Day,
) -> Vec<(usize, Candidate)> {
    let all = kinds.all.iter().enumerate();
    let candidates = all.map(|(place, kind)| {
        let candidate = Candidate {
            lesson: kind.lesson,
            standing: standing(kind, notebook).unwrap_or(Standing::new(today)),
            wanted: is_wanted(kind, notebook, wish),
        };
        (place, candidate)
    });
    let may_be_set = |(place, candidate): &(usize, Candidate)| {
        let kind = &kinds.all[*place];
        candidate.wanted || done.contains(&kind.lesson) || is_tried(kind, notebook)
    };
    candidates.filter(may_be_set).collect()
}

fn is_wanted(kind: &Kind, notebook: &Notebook, wish: &Wish) -> bool {
    match wish {
        Wish::Lessons(lessons) => lessons.contains(&kind.lesson),
        Wish::Weak => {
            let wrong = notebook.tally_of(&kind.id).is_some_and(|it| it.wrong > 0);
            let stands = standing(kind, notebook);
            let number = stands
                .map_or(LeitnerBox::FIRST, |it| it.leitner_box)
                .number();
            wrong && number <= WEAK_UP_TO
        }
    }
}

fn is_tried(kind: &Kind, notebook: &Notebook) -> bool {
    notebook.tally_of(&kind.id).is_some()
}

fn standing(kind: &Kind, notebook: &Notebook) -> Option<Standing> {
    notebook.tally_of(&kind.id)?.standing
}

/// What stands behind "What I have read": the lessons that will be asked about, and where
/// nothing is ticked that they are taken for read.
pub(super) fn read_told(kinds: &Kinds, notebook: &Notebook, ticked: &[u32]) -> String {
    let lessons = lessons_told(&done(kinds, notebook, ticked));
    let why = match ticked {
        [_, ..] => return lessons,
        [] if kinds.all.iter().any(|kind| is_tried(kind, notebook)) => {
            "no lesson is ticked yet; by the problems you have tried you are asked about "
        }
        [] => "no lesson is ticked yet, so you are asked about ",
    };
    [why, &lessons].concat()
}

/// Lessons in words: "lesson 1", "lessons 1 and 3", "lessons 1 to 4".
fn lessons_told(lessons: &[u32]) -> String {
    let text = |number: &u32| number.to_string();
    let in_a_row = lessons.windows(2).all(|pair| pair[0] + 1 == pair[1]);
    match lessons {
        [] => "no lesson".to_owned(),
        [one] => ["lesson ", &text(one)].concat(),
        [first, .., last] if in_a_row && lessons.len() > 2 => {
            ["lessons ", &text(first), " to ", &text(last)].concat()
        }
        [others @ .., last] => {
            let others: Vec<String> = others.iter().map(text).collect();
            ["lessons ", &others.join(", "), " and ", &text(last)].concat()
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::kinds::{Kinds, tests::KINDS};
    use super::{Wish, candidates, done, lessons_told, read_told};
    use crate::notebook::Notebook;
    use superhet::problems::Outcome;

    const TODAY: u32 = 20_000;

    fn notebook(text: &str) -> Notebook {
        let text = [r#"{"version":2,"problems":{"#, text, "}}"].concat();
        Notebook::read(&text).unwrap()
    }

    fn wanted(notebook: &Notebook, wish: &Wish, done: &[u32]) -> Vec<(usize, bool)> {
        let kinds = Kinds::read(KINDS);
        let all = candidates(&kinds, notebook, wish, done, TODAY);
        all.into_iter()
            .map(|(place, it)| (place, it.wanted))
            .collect()
    }

    #[test]
    fn a_new_reader_has_the_first_lesson() {
        let (kinds, empty) = (Kinds::read(KINDS), Notebook::default());
        assert_eq!(done(&kinds, &empty, &[]), [1]);
        assert_eq!(done(&kinds, &empty, &[1, 2]), [1, 2]);
        let wish = Wish::Lessons(vec![1]);
        assert_eq!(wanted(&empty, &wish, &[1]), [(0, true), (1, true)]);
        let tried = notebook(r#""three":[1,0,2,20003,{}]"#);
        assert_eq!(done(&kinds, &tried, &[]), [1, 2]);
    }

    #[test]
    fn others_are_there_for_the_mix_where_the_reader_has_met_them() {
        let wish = Wish::Lessons(vec![2]);
        let tried = notebook(r#""two":[1,0,2,20003,{}]"#);
        assert_eq!(wanted(&tried, &wish, &[]), [(1, false), (2, true)]);
        let all = [(0, false), (1, false), (2, true)];
        assert_eq!(wanted(&Notebook::default(), &wish, &[1]), all);
    }

    #[test]
    fn weak_is_what_went_wrong_and_stands_low() {
        let mut tried = notebook(
            r#""one":[5,1,3,20003,{}],"two":[0,1,0,0,{"added":1}],"three":[1,0,1,20001,{}]"#,
        );
        let weak = |notebook: &Notebook| wanted(notebook, &Wish::Weak, &[]);
        let expected = [(0, false), (1, true), (2, false)];
        assert_eq!(weak(&tried), expected);
        tried.done("one", Outcome::Shown, TODAY);
        assert_eq!(weak(&tried)[0], (0, true));
    }

    #[test]
    fn a_reader_without_a_tick_is_told_what_comes_instead() {
        let (kinds, empty) = (Kinds::read(KINDS), Notebook::default());
        let told = |notebook: &Notebook, ticked: &[u32]| read_told(&kinds, notebook, ticked);
        let nothing = "no lesson is ticked yet, so you are asked about lesson 1";
        assert_eq!(told(&empty, &[]), nothing);
        let tried = notebook(r#""three":[1,0,2,20003,{}]"#);
        let instead = "no lesson is ticked yet; by the problems you have tried you are asked \
                       about lessons 1 and 2";
        assert_eq!(told(&tried, &[]), instead);
        assert_eq!(told(&tried, &[1]), "lesson 1");
    }

    #[test]
    fn lessons_are_told() {
        for (lessons, told) in [
            (&[][..], "no lesson"),
            (&[3], "lesson 3"),
            (&[3, 4], "lessons 3 and 4"),
            (&[1, 2, 3, 4], "lessons 1 to 4"),
            (&[1, 2, 5], "lessons 1, 2 and 5"),
        ] {
            assert_eq!(lessons_told(lessons), told);
        }
    }
}
