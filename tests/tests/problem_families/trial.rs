//! Drawing one level of one family many times, and answering as learners do.

use crate::spellings;
use crate::tally::Tally;
use superhet::problems::english::complaints;
use superhet::problems::problem::{Answer, Choice, NumberAnswer, Part};
use superhet::problems::{Family, Level, Problem, Verdict, generate, mark};
use superhet::units::{Kind, display};

/// Draws the level with the seeds from 0 and answers each problem in every known way.
pub(crate) fn run(family: &Family, level: Level, seeds: u32) -> Tally {
    let mut tally = Tally::new(family, level);
    for seed in 0..seeds {
        match generate(family, level, seed) {
            Ok(problem) => one(&problem, &mut tally),
            Err(error) => tally.fault(seed, &error.to_string()),
        }
    }
    tally
}

fn one(problem: &Problem, tally: &mut Tally) {
    tally.drawn(problem);
    reads_well(problem, tally);
    for (place, part) in problem.parts.iter().enumerate() {
        match &part.answer {
            Answer::Number(answer) => {
                in_range(problem, answer, tally);
                right_is_right(problem, place, answer, tally);
                mistakes_are_named(problem, place, part, answer, tally);
            }
            Answer::Choice(choices) => choices_are_marked(problem, place, part, choices, tally),
        }
    }
}

fn reads_well(problem: &Problem, tally: &mut Tally) {
    let mut texts = vec![&problem.scene];
    for part in &problem.parts {
        texts.push(&part.ask);
        texts.extend(part.hints.iter().chain(&part.steps));
        match &part.answer {
            Answer::Number(answer) => texts.extend(answer.mistakes.iter().map(|m| &m.says)),
            Answer::Choice(choices) => {
                texts.extend(choices.iter().flat_map(|c| [&c.text, &c.says]));
            }
        }
    }
    for text in texts
        .into_iter()
        .filter(|text| tally.is_new(text))
        .collect::<Vec<_>>()
    {
        for complaint in complaints(text) {
            tally.fault(problem.seed, &format!("{text:?}: {complaint}"));
        }
    }
}

/// A frequency that a broadcast set can meet, an ear can hear or a circuit can be wide, a
/// wavelength of a dial, a coil and a capacitor of a set, a ratio that a capacitor can
/// swing or a Q or a coupling can be, a weakening that can be measured, the power of
/// a sender, a voltage that a
/// set can hold.
fn in_range(problem: &Problem, answer: &NumberAnswer, tally: &mut Tally) {
    let range = match answer.kind {
        Kind::Frequency if answer.value < 100e3 => 50.0..=100e3,
        Kind::Frequency => 100e3..=30e6,
        Kind::Wavelength => 10.0..=2_100.0,
        Kind::Inductance => 1e-6..=5e-3,
        Kind::Capacitance => 5e-12..=600e-12,
        Kind::Ratio => 0.002..=1_000.0,
        Kind::Decibels => 0.1..=130.0,
        Kind::Depth => 0.01..=1.0,
        Kind::Power => 1.0..=300e3,
        Kind::Voltage => 0.05..=700.0,
        other => panic!(
            "no family asks a {} yet: say which range is sane",
            other.name()
        ),
    };
    if !range.contains(&answer.value) {
        tally.fault(
            problem.seed,
            &format!("the answer {} is out of range", answer.text),
        );
    }
}

fn right_is_right(problem: &Problem, place: usize, answer: &NumberAnswer, tally: &mut Tally) {
    let spellings = spellings::of(answer);
    let least = if answer.unit_buttons.is_empty() { 2 } else { 3 };
    assert!(spellings.len() > least, "too few spellings are tried");
    for (typed, beside) in spellings {
        let marking = mark(problem, place, &typed, beside);
        if marking.verdict != Verdict::Right {
            tally.fault(
                problem.seed,
                &format!("{typed:?} ({beside:?}) is right: {marking:?}"),
            );
        }
        if marking.read_as.is_none() {
            tally.fault(problem.seed, &format!("{typed:?} is not shown as read"));
        }
    }
}

/// Each mistake, typed to the precision asked and again to seven figures.
fn mistakes_are_named(
    problem: &Problem,
    place: usize,
    part: &Part,
    answer: &NumberAnswer,
    tally: &mut Tally,
) {
    for mistake in &answer.mistakes {
        let rounded = answer.precision.round(mistake.value);
        let typed = [rounded, mistake.value].map(|value| display::text(answer.kind, value));
        let markings = typed.map(|typed| mark(problem, place, &typed, None));
        let wrong = markings
            .iter()
            .all(|marking| marking.verdict == Verdict::Wrong);
        let named = markings.iter().all(|marking| {
            marking
                .mistake
                .as_ref()
                .is_some_and(|named| named.id == mistake.id)
        });
        tally.mistaken(&part.id, &mistake.id, wrong, wrong && named);
    }
}

fn choices_are_marked(
    problem: &Problem,
    place: usize,
    part: &Part,
    choices: &[Choice],
    tally: &mut Tally,
) {
    for choice in choices {
        let marking = mark(problem, place, &choice.id, None);
        if choice.right {
            if marking.verdict != Verdict::Right {
                tally.fault(
                    problem.seed,
                    &format!("{:?} is right: {marking:?}", choice.id),
                );
            }
        } else {
            let named = marking.mistake.is_some_and(|named| named.id == choice.id);
            let wrong = marking.verdict == Verdict::Wrong;
            tally.mistaken(&part.id, &choice.id, wrong, wrong && named);
        }
    }
}
