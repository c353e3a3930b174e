//! Answers typed to problems of every family.

use crate::fits_a_line;
use nasty::{MILLION, Maker, Trial};
use site::families::Families;
use site::report::Report;
use std::path::Path;
use superhet::problems::problem::{Answer, Part};
use superhet::problems::{Level, Problem, generate, mark};

/// What people answer with.
const WORDS: &[&str] = &[
    "1", "12", "200", "000", ".", ",", " ", "-", "e3", "kHz", "MHz", "kc/s", "m", "pF", "uH", "dB",
    "%", "volts", "times", "to 1", ": 1", "x", "×", "fold", "about ", "= ", "k", "Ω",
];

/// A marking holds what the family says of a mistake and how the answer was read, each a
/// few hundred bytes, beside what reading a value holds (`typed.rs`).
const MOST_HELD: u64 = 16_000;

/// A problem of each family and level.
fn problems() -> Vec<Problem> {
    let mut report = Report::default();
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    let families = Families::load(&root, &mut report);
    assert_eq!(report.faults(), [], "{report}");
    let draw = |family| Level::ALL.map(|level| generate(family, level, 1).expect("it is drawn"));
    families
        .newest()
        .flat_map(|registered| draw(&registered.family))
        .collect()
}

/// The right answer of a part, as it is shown or chosen.
fn right(part: &Part) -> &str {
    match &part.answer {
        Answer::Number(number) => &number.text,
        Answer::Choice(choices) => choices
            .iter()
            .find(|choice| choice.right)
            .map_or("", |choice| &choice.id),
    }
}

#[test]
fn a_million_answers_are_marked() {
    let problems = problems();
    let place = |maker: &mut Maker| {
        let problem = &problems[maker.below(problems.len())];
        (problem, maker.below(problem.parts.len()))
    };
    // Both draw the same problems from the same seed: one for the text, one to mark it.
    let (mut asked, mut answered) = (Maker::new(6), Maker::new(6));
    let make = |maker: &mut Maker| {
        let (problem, part) = place(&mut asked);
        maker.near(right(&problem.parts[part]), WORDS)
    };
    let mut right_ones = 0;
    Trial {
        seed: 7,
        cases: MILLION,
        most_held: MOST_HELD,
    }
    .run(make, |text| {
        let (problem, part) = place(&mut answered);
        let marking = mark(problem, part, text, None);
        assert!(fits_a_line(&marking.says, 700), "{}", marking.says);
        let shown = marking.read_as.as_deref();
        assert!(
            shown.is_none_or(|shown| fits_a_line(shown, 300)),
            "{shown:?}"
        );
        assert!(marking.verdict.is_attempt() || marking.mistake.is_none());
        right_ones += usize::from(marking.verdict.is_right());
    });
    // One case in 64 is the right answer unspoilt, so a generator gone astray is seen.
    assert!(right_ones > MILLION / 64 / 2, "{right_ones}");
}
