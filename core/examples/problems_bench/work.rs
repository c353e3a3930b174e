//! What is timed: drawing problems and marking their answers. The bench in a browser
//! compiles this very file into its program.

use superhet::problems::problem::{Answer, Part};
use superhet::problems::{Family, Level, Problem, generate, mark};
use superhet::units::display;

/// Draws so many problems of a level and marks their answers, right and mistaken.
pub(crate) fn drawn_and_marked(family: &Family, level: Level, seeds: u32) -> Result<(), String> {
    for seed in 0..seeds {
        marked(&generate(family, level, seed).map_err(|error| error.to_string())?)?;
    }
    Ok(())
}

/// Marks what is right and what every choice or named mistake would be answered with.
fn marked(problem: &Problem) -> Result<(), String> {
    for (place, part) in problem.parts.iter().enumerate() {
        let (right, wrong) = answers(part);
        if !mark(problem, place, right, None).verdict.is_right() {
            let (family, seed) = (&problem.family, problem.seed);
            return Err(format!("{family}, seed {seed}: {right:?} is not right"));
        }
        for typed in wrong {
            std::hint::black_box(mark(problem, place, &typed, None));
        }
    }
    Ok(())
}

fn answers(part: &Part) -> (&str, Vec<String>) {
    match &part.answer {
        Answer::Number(answer) => {
            let typed = |value| display::text(answer.kind, value);
            let wrong = answer.mistakes.iter().map(|mistake| typed(mistake.value));
            (&answer.text, wrong.collect())
        }
        Answer::Choice(choices) => {
            let right = choices.iter().find(|choice| choice.right);
            let wrong = choices.iter().filter(|choice| !choice.right);
            (
                right.map_or("", |choice| &choice.id),
                wrong.map(|choice| choice.id.clone()).collect(),
            )
        }
    }
}
