//! What the check offers next, and what it says about that and about open questions. Pure.

use crate::day;
use superhet::problems::Marking;
use superhet::problems::before_after::{Form, Next, QUESTIONS};

/// What is said where answers are kept from before.
pub(super) const GO_ON: &str = "You have begun it: what you answered so far is kept in this tab, until you \
                     hand it in or close the tab.";

/// The form that is offered now.
pub(super) fn offered(next: Next) -> Option<Form> {
    match next {
        Next::Before(form) | Next::After(form) | Next::Again(form) => Some(form),
        Next::AfterTheCourse | Next::FromDay(_) | Next::Nothing => None,
    }
}

/// What is said about what comes next.
pub(super) fn told(next: Next) -> String {
    match next {
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

/// Which questions have no answer that can be read; nothing where all have.
pub(super) fn left_open(marked: &[(Marking, String)]) -> String {
    let places = (1..=QUESTIONS).zip(marked);
    let open = places.filter(|(_, (marking, _))| !marking.verdict.is_attempt());
    let open: Vec<String> = open.map(|(number, _)| number.to_string()).collect();
    if open.is_empty() {
        return String::new();
    }
    let list = open.join(", ");
    [
        "Without an answer that can be read (a number needs its unit): ",
        &list,
        ". Fill in what you can, or hand it in as it is.",
    ]
    .concat()
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
        assert!(told(Next::FromDay(20_000)).contains("from 4 October 2024 on"));
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
        let all = all.map(|it| (marking(it), String::new()));
        assert!(left_open(&all).contains("unit): 1, 3. "));
        assert_eq!(left_open(&all[1..2]), "");
    }
}
