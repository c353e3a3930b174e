//! Every text of a lesson and of the lists, in reading order.

use super::block::Block;
use super::blocks::Part;
use super::course::Course;
use super::lesson::Lesson;
use super::prose::Inline;
use super::source_text::SourceText;

/// A run and where it is read.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Text<'a> {
    /// The file in which it stands.
    pub(crate) file: &'a SourceText,
    /// The words.
    pub(crate) run: &'a [Inline],
    /// Whether the lesson's front matter holds it: titles and goals name what is to come.
    pub(crate) in_front: bool,
}

/// The texts of a lesson's own file, in reading order.
pub(crate) fn of_lesson(lesson: &Lesson) -> Vec<Text<'_>> {
    let front = std::iter::once(&lesson.title).chain(&lesson.goals);
    let front = front.map(|run| Text {
        file: &lesson.file,
        run,
        in_front: true,
    });
    let mut texts: Vec<Text<'_>> = front.collect();
    for part in &lesson.parts {
        for run in of_part(part) {
            texts.push(Text {
                file: &lesson.file,
                run,
                in_front: false,
            });
        }
    }
    texts
}

/// The texts that a lesson shows from the lists: meanings of the terms that it
/// introduces, and the misconceptions that it breaks.
pub(crate) fn shown_from_lists<'a>(lesson: &Lesson, course: &'a Course) -> Vec<Text<'a>> {
    let terms = &lesson.front.introduces.terms;
    let meanings = terms
        .iter()
        .filter_map(|id| course.glossary.find(id.get_ref()));
    let meanings = meanings.map(|term| (course.glossary.file(), &term.words));
    let broken = &lesson.front.misconceptions;
    let beliefs = broken
        .iter()
        .filter_map(|id| course.misconceptions.find(id.get_ref()));
    let beliefs = beliefs.flat_map(|it| [&it.belief_words, &it.case_words]);
    let beliefs = beliefs.map(|run| (course.misconceptions.file(), run));
    meanings
        .chain(beliefs)
        .map(|(file, run)| Text {
            file,
            run,
            in_front: false,
        })
        .collect()
}

/// The texts of the lists and the cautions, whether a lesson shows them or not.
pub(crate) fn of_lists(course: &Course) -> Vec<Text<'_>> {
    let meanings = course
        .glossary
        .terms()
        .iter()
        .map(|term| (course.glossary.file(), term.words.as_slice()));
    let beliefs = course.misconceptions.all().iter();
    let beliefs = beliefs.flat_map(|it| [&it.belief_words, &it.case_words]);
    let beliefs = beliefs.map(|run| (course.misconceptions.file(), run.as_slice()));
    let mut cautions = Vec::new();
    for block in &course.cautions.blocks {
        push_block(block, &mut cautions);
    }
    let cautions = cautions.into_iter().map(|run| (&course.cautions.file, run));
    let all = meanings.chain(beliefs).chain(cautions);
    all.map(|(file, run)| Text {
        file,
        run,
        in_front: false,
    })
    .collect()
}

/// The texts of one part, in reading order.
pub(crate) fn of_part(part: &Part) -> Vec<&[Inline]> {
    let mut runs: Vec<&[Inline]> = Vec::new();
    match part {
        Part::Prose(block) => push_block(block, &mut runs),
        Part::Figure(figure) => {
            runs.extend(figure.task.iter().map(|task| task.words.as_slice()));
            runs.push(&figure.caption);
        }
        Part::Predict(predict) => {
            runs.push(&predict.question);
            runs.extend(predict.choices.iter().map(|choice| choice.words.as_slice()));
            runs.push(&predict.because);
        }
        Part::Worked(worked) => {
            runs.extend(worked.runs().map(Vec::as_slice));
        }
        Part::Misconception(block) => {
            for inner in &block.body {
                push_block(inner, &mut runs);
            }
        }
        Part::Formula(_) | Part::Problem(_) | Part::Recall(_) => {}
    }
    runs
}

fn push_block<'a>(block: &'a Block, runs: &mut Vec<&'a [Inline]>) {
    match block {
        Block::Heading(_, run, _) | Block::Paragraph(run) => runs.push(run),
        Block::List(_, items) => items
            .iter()
            .flatten()
            .for_each(|block| push_block(block, runs)),
        Block::Quote(blocks) => blocks.iter().for_each(|block| push_block(block, runs)),
        Block::Table(table) => {
            let cells = table.headings.iter().chain(table.rows.iter().flatten());
            runs.extend(cells.map(Vec::as_slice));
        }
        Block::Rule | Block::Fence(_) => {}
    }
}
