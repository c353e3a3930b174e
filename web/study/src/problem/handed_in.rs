//! A question among others, told how it went only when all are handed in.

use super::desk::told;
use super::paper::{self, class_of, lines, marking};
use crate::dom::{Result, append, made};
use superhet::problems::problem::{Answer, Part};
use superhet::problems::{Marking, Problem, Verdict};
use web_sys::Element;

/// The question as HTML: the scene, the first part, no button.
pub(crate) fn question(problem: &Problem, id: &str) -> String {
    let part = problem.parts.first();
    let part = part.map(|part| paper::question(part, id, ""));
    [
        "<p class=\"scene\">",
        &paper::words(&problem.scene),
        "</p>",
        &part.unwrap_or_default(),
    ]
    .concat()
}

/// Says at an element how a question went, and beneath it how it is done.
pub(crate) fn tell(said: &Element, problem: &Problem, judged: &Marking, typed: &str) -> Result<()> {
    said.set_class_name(class_of(judged));
    let part = problem.parts.first();
    said.set_inner_html(&marking(&closed(part, judged, typed)));
    let steps = made("ol", "steps", "")?;
    steps.set_inner_html(&part.map(|part| lines(&part.steps)).unwrap_or_default());
    match said.parent_element() {
        Some(slip) => append(&slip, &steps),
        None => Ok(()),
    }
}

/// What is said of a question that is closed: nobody can answer it any more.
fn closed(part: Option<&Part>, judged: &Marking, typed: &str) -> Vec<String> {
    if judged.verdict != Verdict::Unclear {
        return told(judged, typed);
    }
    let right = match part.map(|part| &part.answer) {
        Some(Answer::Number(number)) => number.text.as_str(),
        Some(Answer::Choice(choices)) => {
            let right = choices.iter().find(|choice| choice.right);
            right.map_or("", |choice| choice.text.trim_end_matches('.'))
        }
        None => "",
    };
    let answer = ["The answer: ", right, "."].concat();
    if typed.trim().is_empty() {
        return vec!["Left open.".to_owned(), answer];
    }
    let read = ["It could not be read: ", typed.trim(), "."].concat();
    vec![read, answer]
}

#[cfg(test)]
mod tests {
    use super::super::desk::tests::desk_of;
    use super::closed;
    use superhet::problems::mark;

    #[test]
    fn a_closed_question_is_asked_for_nothing() {
        let mut desk = desk_of("oscillator-from-dial", 2, 5);
        let problem = desk.sitting().problem().clone();
        let part = &problem.parts[0];
        for (typed, says) in [("", "Left open."), ("abc", "It could not be read: abc.")] {
            let said = closed(Some(part), &mark(&problem, 0, typed, None), typed);
            assert_eq!(said[0], says);
            assert!(said[1].starts_with("The answer: ") && said[1].ends_with("Hz."));
        }
    }
}
