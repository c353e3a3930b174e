//! What every lesson has, and in which order.

use crate::lessons::block::Block;
use crate::lessons::blocks::Part;
use crate::lessons::course::Course;
use crate::lessons::lesson::Lesson;
use crate::lessons::prose::{plain, word_count};
use crate::lessons::texts;
use crate::report::Report;
use pulldown_cmark::HeadingLevel;
use std::ops::RangeInclusive;
use toml::Spanned;

/// Words of a lesson's text, blocks and all.
const WORDS: RangeInclusive<usize> = 500..=1200;

/// The title of the last section.
const LAST_SECTION: &str = "Carry to the bench";

/// Reports what a lesson lacks or has in the wrong place.
pub(super) fn check(course: &Course, families: &[&str], report: &mut Report) {
    let near_a_set = course.lessons.iter().any(|lesson| lesson.front.near_a_set);
    if near_a_set && course.cautions.brief().is_empty() {
        let message = "a lesson comes near a set, and there are no cautions to show";
        course.cautions.file.fault(0, message, report);
    }
    for (index, lesson) in course.lessons.iter().enumerate() {
        check_place(course, index, report);
        check_needs(course, lesson, report);
        check_prediction(lesson, report);
        check_named(lesson, course, report);
        check_families(lesson, families, report);
        check_last_section(lesson, report);
        check_words(lesson, report);
        if !lesson
            .parts
            .iter()
            .any(|part| matches!(part, Part::Worked(_)))
        {
            lesson.fault("a lesson has a worked example", report);
        }
        if lesson.goals.is_empty() {
            lesson.fault("a lesson has at least one goal", report);
        }
    }
}

impl Lesson {
    /// Reports what concerns the whole lesson, at its title.
    fn fault(&self, message: impl Into<String>, report: &mut Report) {
        self.file
            .fault(self.front.title.span().start, message, report);
    }
}

fn check_place(course: &Course, index: usize, report: &mut Report) {
    let lesson = &course.lessons[index];
    for earlier in &course.lessons[..index] {
        if earlier.number == lesson.number {
            let message = format!(
                "{} is lesson {} already",
                earlier.file.path(),
                lesson.number
            );
            lesson.file.fault(0, message, report);
        }
        if earlier.slug == lesson.slug {
            let message = format!(
                "{} has the address \"{}\" already",
                earlier.file.path(),
                lesson.slug
            );
            lesson.file.fault(0, message, report);
        }
    }
}

fn check_needs(course: &Course, lesson: &Lesson, report: &mut Report) {
    for need in &lesson.front.needs {
        let slug = need.get_ref();
        let message = match course.lesson(slug) {
            None => format!("no lesson has the address \"{slug}\""),
            Some(needed) if needed.number >= lesson.number => {
                format!(
                    "lesson {} needs \"{slug}\", which comes later or is itself",
                    lesson.number
                )
            }
            Some(_) => continue,
        };
        lesson.file.fault(need.span().start, message, report);
    }
}

fn check_prediction(lesson: &Lesson, report: &mut Report) {
    let position = |wanted: fn(&Part) -> bool| lesson.parts.iter().position(wanted);
    let predict = position(|part| matches!(part, Part::Predict(_)));
    let figure = position(|part| matches!(part, Part::Figure(_)));
    match (predict, figure) {
        (_, None) => lesson.fault("a lesson has a figure", report),
        (None, Some(_)) => lesson.fault(
            "a lesson asks for a prediction before its first figure",
            report,
        ),
        (Some(predict), Some(figure)) if predict > figure => {
            if let Part::Predict(block) = &lesson.parts[predict] {
                let message =
                    "the prediction stands before the lesson's first figure, which would answer it";
                lesson.file.fault(block.at, message, report);
            }
        }
        _ => {}
    }
}

/// Misconceptions and problem families are named in front and stand as blocks.
fn check_named(lesson: &Lesson, course: &Course, report: &mut Report) {
    let front = &lesson.front;
    if front.misconceptions.len() < 2 {
        let message = format!(
            "a lesson breaks at least two misconceptions (got {})",
            front.misconceptions.len()
        );
        lesson.fault(message, report);
    }
    let named = |part: &Part| match part {
        Part::Misconception(block) => Some((block.id.clone(), block.at)),
        _ => None,
    };
    check_both_ways(
        lesson,
        "misconception",
        &front.misconceptions,
        named,
        report,
    );
    let named = |part: &Part| match part {
        Part::Problem(block) => Some((block.family.clone(), block.at)),
        _ => None,
    };
    check_both_ways(lesson, "problem", &front.problems, named, report);
    for id in &front.misconceptions {
        if course.misconceptions.find(id.get_ref()).is_none() {
            let message = format!(
                "no misconception has the id \"{}\" in misconceptions.toml",
                id.get_ref()
            );
            lesson.file.fault(id.span().start, message, report);
        }
    }
    check_choices(lesson, report);
}

fn check_families(lesson: &Lesson, families: &[&str], report: &mut Report) {
    if lesson.front.problems.is_empty() {
        lesson.fault("a lesson has at least one problem family", report);
    }
    for id in &lesson.front.problems {
        if !families.contains(&id.get_ref().as_str()) {
            let message = format!(
                "no problem family has the id \"{}\" in problems/registry.toml",
                id.get_ref()
            );
            lesson.file.fault(id.span().start, message, report);
        }
    }
}

fn check_both_ways(
    lesson: &Lesson,
    what: &str,
    front: &[Spanned<String>],
    named: impl Fn(&Part) -> Option<(String, usize)>,
    report: &mut Report,
) {
    let blocks: Vec<(String, usize)> = lesson.parts.iter().filter_map(named).collect();
    for id in front {
        if !blocks.iter().any(|(block, _)| block == id.get_ref()) {
            let message = format!(
                "\"{0}\" is named here, but no block \"{what} {0}\" stands in the text",
                id.get_ref()
            );
            lesson.file.fault(id.span().start, message, report);
        }
    }
    for (index, (id, at)) in blocks.iter().enumerate() {
        if !front.iter().any(|entry| entry.get_ref() == id) {
            let message = format!(
                "\"{id}\" stands here, but \"{what}s\" in the front matter does not name it"
            );
            lesson.file.fault(*at, message, report);
        }
        if blocks[..index].iter().any(|(earlier, _)| earlier == id) {
            lesson.file.fault(
                *at,
                format!("the block \"{what} {id}\" stands here a second time"),
                report,
            );
        }
    }
}

fn check_choices(lesson: &Lesson, report: &mut Report) {
    for part in &lesson.parts {
        let Part::Predict(predict) = part else {
            continue;
        };
        for choice in &predict.choices {
            let Some((id, at)) = &choice.misconception else {
                continue;
            };
            if choice.right {
                lesson
                    .file
                    .fault(*at, "the right choice shows no misconception", report);
            } else if !lesson
                .front
                .misconceptions
                .iter()
                .any(|it| it.get_ref() == id)
            {
                let message = format!("\"{id}\" is no misconception that this lesson names");
                lesson.file.fault(*at, message, report);
            }
        }
    }
}

fn check_last_section(lesson: &Lesson, report: &mut Report) {
    let sections: Vec<(String, usize)> = lesson
        .parts
        .iter()
        .filter_map(|part| match part {
            Part::Prose(Block::Heading(HeadingLevel::H2, run, at)) => Some((plain(run), *at)),
            _ => None,
        })
        .collect();
    match sections.iter().find(|(title, _)| title == LAST_SECTION) {
        None => lesson.fault(
            format!("a lesson ends with the section \"## {LAST_SECTION}\""),
            report,
        ),
        Some((_, at)) if sections.last().is_some_and(|(_, last)| last != at) => {
            lesson.file.fault(
                *at,
                format!("\"{LAST_SECTION}\" is the last section"),
                report,
            );
        }
        Some(_) => {}
    }
}

fn check_words(lesson: &Lesson, report: &mut Report) {
    let words = words_of(lesson);
    if !WORDS.contains(&words) {
        let message = format!(
            "a lesson has {} to {} words (got {words})",
            WORDS.start(),
            WORDS.end()
        );
        lesson.fault(message, report);
    }
}

/// Words of the text, with those in the blocks; titles and goals are not counted.
pub(crate) fn words_of(lesson: &Lesson) -> usize {
    let texts = texts::of_lesson(lesson);
    let body = texts.iter().filter(|text| !text.in_front);
    body.map(|text| word_count(&plain(text.run))).sum()
}
