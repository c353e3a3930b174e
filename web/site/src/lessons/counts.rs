//! What a lesson holds, counted.

use super::blocks::Part;
use super::checks::words_of;
use super::lesson::Lesson;
use super::prose;
use super::target::Target;
use super::texts;

/// What one lesson holds, counted in its file: the three examples of a worked one, which
/// are made from one text, count once.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Counts {
    /// Address of the lesson.
    pub slug: String,
    /// Words of its text.
    pub words: usize,
    /// Numbers worked out by the core.
    pub calc: usize,
    /// Numbers that are inputs.
    pub given: usize,
    /// Numbers that are facts.
    pub facts: usize,
    /// Figures.
    pub figures: usize,
    /// Predictions.
    pub predictions: usize,
    /// Worked examples.
    pub worked: usize,
    /// Misconceptions broken.
    pub misconceptions: usize,
    /// Problems shown.
    pub problems: usize,
    /// Problems of earlier lessons in its recall set.
    pub recall: usize,
    /// Terms introduced.
    pub terms: usize,
}

impl Counts {
    /// Counts a lesson.
    pub(super) fn of(lesson: &Lesson) -> Self {
        let texts = texts::of_lesson(lesson);
        let targets: Vec<&Target> = texts
            .iter()
            .flat_map(|text| prose::links(text.run))
            .filter_map(|link| link.target.as_ref().ok())
            .collect();
        let numbers =
            |wanted: fn(&Target) -> bool| targets.iter().filter(|target| wanted(target)).count();
        let parts =
            |wanted: fn(&Part) -> bool| lesson.parts.iter().filter(|part| wanted(part)).count();
        Self {
            slug: lesson.slug.clone(),
            words: words_of(lesson),
            calc: numbers(|target| matches!(target, Target::Calc(_))),
            given: numbers(|target| matches!(target, Target::Given(_))),
            facts: numbers(|target| matches!(target, Target::Fact(_))),
            figures: parts(|part| matches!(part, Part::Figure(_))),
            predictions: parts(|part| matches!(part, Part::Predict(_))),
            worked: parts(|part| matches!(part, Part::Worked(_))),
            misconceptions: parts(|part| matches!(part, Part::Misconception(_))),
            problems: parts(|part| matches!(part, Part::Problem(_))),
            recall: lesson.parts.iter().map(recalled).sum(),
            terms: lesson.front.introduces.terms.len(),
        }
    }
}

fn recalled(part: &Part) -> usize {
    match part {
        Part::Recall(block) => block.families.len(),
        _ => 0,
    }
}
