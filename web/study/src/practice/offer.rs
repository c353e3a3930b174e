//! What the check offers next, and what it says about that and about open questions. Pure.

use crate::day;
use crate::notebook::counted;
use superhet::problems::Marking;
use superhet::problems::before_after::{Form, Next, QUESTIONS};

/// What is said where answers are kept from before.
pub(super) const GO_ON: &str = "You have begun it: what you answered so far is \
    kept in this tab, until you hand it in or close the tab.";

/// The form that is offered now.
pub(super) fn offered(next: Next) -> Option<Form> {
    match next {
        Next::Before(form) | Next::After(form) | Next::Again(form) => Some(form),
        Next::AfterTheCourse | Next::FromDay(_) | Next::Nothing => None,
    }
}

/// What stands on the button that hands it in, and once open questions were told.
pub(super) const HAND_IN: (&str, &str) = ("Hand it in", "Hand it in as it is");

/// What is said about what comes next to somebody with so many ticked lessons.
pub(super) fn told(next: Next, ticked: u32) -> String {
    match next {
        Next::Before(_) if ticked > 0 => [
            "You have not taken it yet, and have ticked ",
            &counted(ticked, "lesson"),
            ". It counts as “before” all the same: guess where you must, and leave open what \
             says nothing to you.",
        ]
        .concat(),
        Next::Before(_) => "You have not taken it yet. Before lesson 1 is the best time: guess \
             where you must, and leave open what says nothing to you."
            .to_owned(),
        Next::AfterTheCourse => {
            "The second form waits until you have ticked the last lesson.".to_owned()
        }
        Next::After(_) => "You have ticked the last lesson: here is the second form.".to_owned(),
        Next::FromDay(from) => {
            let day = day::said(&day::of_number(from));
            [
                "It comes once more from ",
                &day,
                " on: what is still there by then?",
            ]
            .concat()
        }
        Next::Again(_) => "Thirty days have passed: here it is once more.".to_owned(),
        Next::Nothing => "You have taken it three times. That is all it can do.".to_owned(),
    }
}

/// Which questions have no answer, and which none that can be read; nothing where all have.
pub(super) fn left_open(marked: &[(Marking, String)]) -> String {
    let listed = |words: &str, blank: bool| {
        let places = (1..=QUESTIONS).zip(marked);
        let open = places.filter(|(_, (marking, typed))| {
            !marking.verdict.is_attempt() && typed.trim().is_empty() == blank
        });
        let open: Vec<String> = open.map(|(number, _)| number.to_string()).collect();
        match open.is_empty() {
            true => String::new(),
            false => [words, &open.join(", "), ". "].concat(),
        }
    };
    let open = [
        listed("Left open: ", true),
        listed("Not to be read (a number needs its unit): ", false),
    ];
    match open.concat() {
        nothing if nothing.is_empty() => nothing,
        open => [&open, "Fill in what you can, or hand it in as it is."].concat(),
    }
}

#[cfg(test)]
mod tests {
    use super::{left_open, offered, told};
    use superhet::problems::before_after::{Form, Next};
    use superhet::problems::{Marking, Verdict};

    #[test]
    fn what_is_offered_is_told() {
        assert_eq!(offered(Next::After(Form::Two)), Some(Form::Two));
        assert_eq!(offered(Next::FromDay(20_000)), None);
        assert!(told(Next::FromDay(20_000), 0).contains("from 4 October 2024 on"));
        assert!(!told(Next::Before(Form::One), 0).contains("ticked"));
        let late = told(Next::Before(Form::One), 4);
        assert!(late.contains("ticked 4 lessons. It counts as “before”"));
    }

    #[test]
    fn questions_left_open_are_named() {
        let marking = |verdict| Marking {
            verdict,
            read_as: None,
            mistake: None,
            says: String::new(),
        };
        let all = [Verdict::Unclear, Verdict::Wrong, Verdict::Unclear];
        let mut all = all.map(|it| (marking(it), String::new()));
        assert!(left_open(&all).starts_with("Left open: 1, 3. Fill"));
        all[2].1 = "12".to_owned();
        let says = "Left open: 1. Not to be read (a number needs its unit): 3. Fill";
        assert!(left_open(&all).starts_with(says));
        assert_eq!(left_open(&all[1..2]), "");
    }
}
