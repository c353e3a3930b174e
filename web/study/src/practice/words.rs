//! What is said before, during and after a round. Pure.

use super::kinds::Kinds;
use super::round::Done;
use crate::course::{about, due_words};
use crate::day;
use crate::notebook::{Notebook, counted};
use figures::escape;
use superhet::problems::Outcome;

/// What is due, before a round.
pub(super) fn due(due: u32) -> String {
    match due {
        0 => "Nothing waits for you today; a round does no harm.".to_owned(),
        _ => [&due_words(due), "."].concat(),
    }
}

/// What stands on the button that begins a round.
pub(super) fn begin(problems: usize) -> String {
    if problems == 0 {
        return "Begin".to_owned();
    }
    let problems = u32::try_from(problems).unwrap_or(u32::MAX);
    let words = [&counted(problems, "problem"), ", ", &about(problems)];
    ["Begin: ", &words.concat()].concat()
}

/// "Problem 2 of 6".
pub(super) fn title(at: usize, of: usize) -> String {
    ["Problem ", &(at + 1).to_string(), " of ", &of.to_string()].concat()
}

/// How one problem was done.
fn outcome(outcome: Option<Outcome>) -> &'static str {
    match outcome {
        Some(Outcome::RightAlone) => "Right, without help",
        Some(Outcome::RightWithHelp) => "Right in the end",
        Some(Outcome::Shown) => "Its working was shown",
        None => "Left",
    }
}

/// "5 of 6 right, 4 of them without help."
pub(super) fn sum(done: &[Done]) -> String {
    let count = |outcome| done.iter().filter(|it| it.outcome == Some(outcome)).count();
    let alone = count(Outcome::RightAlone);
    let right = alone + count(Outcome::RightWithHelp);
    let how = match alone {
        _ if right == 0 => String::new(),
        0 => ", with help".to_owned(),
        _ if alone == right => ", without help".to_owned(),
        _ => [", ", &alone.to_string(), " of them without help"].concat(),
    };
    let (right, all) = (right.to_string(), done.len().to_string());
    [&right, " of ", &all, " right", &how, "."].concat()
}

/// The end of a round: each problem, how it was done and when its kind comes back.
pub(super) fn end(done: &[Done], kinds: &Kinds, notebook: &Notebook) -> String {
    let items: String = done.iter().map(|it| item(it, kinds, notebook)).collect();
    ["<ul class=\"round-list\">", &items, "</ul>"].concat()
}

fn item(done: &Done, kinds: &Kinds, notebook: &Notebook) -> String {
    let Some(kind) = kinds.all.get(done.kind) else {
        return String::new();
    };
    let tally = notebook.tally_of(&kind.id);
    let standing = tally.and_then(|tally| tally.standing);
    let back = standing.map_or(String::new(), |standing| {
        let day = day::said(&day::of_number(standing.due));
        ["; comes back on ", &day].concat()
    });
    [
        "<li><strong>",
        &escape(&kind.title),
        "</strong><span>",
        outcome(done.outcome),
        &back,
        ".</span></li>",
    ]
    .concat()
}

#[cfg(test)]
mod tests {
    use super::super::kinds::{Kinds, tests::KINDS};
    use super::super::round::Done;
    use super::{begin, due, end, sum, title};
    use crate::notebook::Notebook;
    use superhet::problems::Outcome;

    #[test]
    fn a_round_is_told_before_and_after() {
        assert_eq!(begin(0), "Begin");
        assert_eq!(begin(6), "Begin: 6 problems, about 8 minutes");
        assert_eq!(due(1), "1 problem due, about 2 minutes.");
        assert!(due(0).contains("Nothing waits"));
        assert_eq!(title(1, 6), "Problem 2 of 6");
        let mut notebook = Notebook::default();
        notebook.done("two", Outcome::RightAlone, 20_000);
        let done = |kind, outcome| Done { kind, outcome };
        let all = [done(1, Some(Outcome::RightAlone)), done(2, None)];
        let html = end(&all, &Kinds::read(KINDS), &notebook);
        // Three days after day 20 000, which is 4 October 2024.
        let first =
            "The &lt;second&gt;</strong><span>Right, without help; comes back on 7 October 2024.";
        assert!(html.contains(first), "{html}");
        assert!(html.contains("The third</strong><span>Left."), "{html}");
        let alone = done(1, Some(Outcome::RightAlone));
        let helped = done(1, Some(Outcome::RightWithHelp));
        for (all, says) in [
            (&[][..], "0 of 0 right."),
            (&[done(1, None)], "0 of 1 right."),
            (&[alone, done(2, None)], "1 of 2 right, without help."),
            (&[helped, helped], "2 of 2 right, with help."),
            (
                &[alone, helped, alone],
                "3 of 3 right, 2 of them without help.",
            ),
        ] {
            assert_eq!(sum(all), says);
        }
    }
}
