//! Every link leads somewhere, and every marked number is right.

use crate::lessons::blocks::{Pairs, Part, Worked};
use crate::lessons::course::Course;
use crate::lessons::lesson::Lesson;
use crate::lessons::mathml::{Display, mathml};
use crate::lessons::prose::{self, Link, plain};
use crate::lessons::source_text::SourceText;
use crate::lessons::target::Target;
use crate::lessons::texts;
use crate::report::Report;
use numbers::{Expression, Given, Givens, Printed};
use superhet::catalogue::{Kind, find};

/// Pages that a lesson may link to, besides the lessons.
const PAGES: [&str; 4] = ["", "lessons/", "lookup/", "about/"];

/// Reports links that lead nowhere and marked numbers that are wrong.
pub(super) fn check(course: &Course, report: &mut Report) {
    for lesson in &course.lessons {
        let givens = read_givens(lesson, report);
        let scope = Scope {
            course,
            givens: &givens,
            file: &lesson.file,
        };
        for text in texts::of_lesson(lesson) {
            scope.check_run(text.run, report);
        }
        for part in &lesson.parts {
            scope.check_part(part, lesson, report);
        }
        for id in &lesson.front.sources {
            if course.sources.source(id.get_ref()).is_none() {
                lesson
                    .file
                    .fault(id.span().start, no_source(id.get_ref()), report);
            }
        }
        for name in &lesson.front.introduces.quantities {
            if find(name.get_ref()).is_none() {
                lesson
                    .file
                    .fault(name.span().start, no_quantity(name.get_ref()), report);
            }
        }
    }
    for text in texts::of_lists(course) {
        let scope = Scope {
            course,
            givens: &Givens::default(),
            file: text.file,
        };
        scope.check_run(text.run, report);
    }
    check_facts(course, report);
}

fn read_givens(lesson: &Lesson, report: &mut Report) -> Givens {
    let (givens, refused) = Givens::read(&lesson.raw_givens());
    for (name, message) in refused {
        let place = lesson
            .front
            .given
            .iter()
            .find(|(key, _)| *key.get_ref() == name);
        let at = place.map_or(0, |(_, value)| value.span().start);
        lesson.file.fault(at, message, report);
    }
    givens
}

/// What a link may lead to.
struct Scope<'a> {
    course: &'a Course,
    givens: &'a Givens,
    file: &'a SourceText,
}

impl Scope<'_> {
    fn check_run(&self, run: &[prose::Inline], report: &mut Report) {
        for link in prose::links(run) {
            let checked = link
                .target
                .clone()
                .and_then(|target| self.check_link(&target, link));
            if let Err(message) = checked {
                self.file.fault(link.at, message, report);
            }
        }
    }

    fn check_link(&self, target: &Target, link: &Link) -> Result<(), String> {
        let text = plain(&link.inside);
        let exists = |found: bool, message: String| if found { Ok(()) } else { Err(message) };
        match target {
            Target::Calc(expression) => self.check_calc(expression, &text),
            Target::Given(name) => self.check_given(name, &text),
            Target::Fact(id) => self.check_fact(id, &text),
            Target::Term(id) => exists(
                self.course.glossary.find(id).is_some(),
                format!("no term has the id \"{id}\" in glossary.toml"),
            ),
            Target::Lesson(slug) => exists(
                self.course.lesson(slug).is_some(),
                format!("no lesson has the address \"{slug}\""),
            ),
            Target::Page(path) => self.check_page(path),
            Target::Source(id) => exists(self.course.sources.source(id).is_some(), no_source(id)),
        }
    }

    fn check_calc(&self, expression: &Expression, text: &str) -> Result<(), String> {
        let found = self.givens.work_out(expression)?;
        let answer = &found.answer;
        if Printed::read(text)?.agrees(answer.kind, answer.value)? {
            return Ok(());
        }
        Err(format!(
            "the text says {text}, but {} is {}",
            found.expression, answer.text
        ))
    }

    fn check_given(&self, name: &str, text: &str) -> Result<(), String> {
        let Some(given) = self.givens.get(name) else {
            return Err(format!(
                "\"{name}\" is no input of this lesson: [given] does not hold it"
            ));
        };
        if agrees_with_given(given, text)? {
            return Ok(());
        }
        Err(format!(
            "the text says {text}, but the input \"{name}\" is {}",
            given.typed
        ))
    }

    fn check_fact(&self, id: &str, text: &str) -> Result<(), String> {
        let Some(fact) = self.course.sources.fact(id) else {
            return Err(format!("no fact has the id \"{id}\" in sources.toml"));
        };
        let stated = fact.text.get_ref();
        if stated.split_whitespace().eq(text.split_whitespace()) {
            return Ok(());
        }
        Err(format!(
            "the text says \"{text}\", but the fact \"{id}\" is \"{stated}\""
        ))
    }

    fn check_page(&self, address: &str) -> Result<(), String> {
        let path = &address[..address.find(['?', '#']).unwrap_or(address.len())];
        let lesson = path
            .strip_prefix("lessons/")
            .and_then(|rest| rest.strip_suffix('/'));
        let known =
            PAGES.contains(&path) || lesson.is_some_and(|slug| self.course.lesson(slug).is_some());
        if known {
            return Ok(());
        }
        Err(format!(
            "no page has the address \"{path}\" (pages: {})",
            PAGES[1..].join(", ")
        ))
    }

    /// Quantities that stand in blocks outside any text.
    fn check_part(&self, part: &Part, lesson: &Lesson, report: &mut Report) {
        match part {
            Part::Predict(predict) => {
                if let Err(message) = self.givens.work_out(&predict.settled_by) {
                    self.file.fault(predict.settled_at, message, report);
                }
            }
            Part::Formula(block) => {
                let drawn = find(&block.quantity)
                    .ok_or_else(|| no_quantity(&block.quantity))
                    .and_then(|entry| mathml(entry.formula, Display::Block));
                if let Err(message) = drawn {
                    self.file.fault(block.at, message, report);
                }
            }
            Part::Worked(worked) => {
                for overlay in [&worked.again, &worked.alone] {
                    self.check_overlay(overlay, worked, lesson, report);
                }
            }
            _ => {}
        }
    }

    /// The second and third example of a worked one can be worked out too.
    fn check_overlay(
        &self,
        overlay: &Pairs,
        worked: &Worked,
        lesson: &Lesson,
        report: &mut Report,
    ) {
        let mut fault = |message: String| self.file.fault(overlay.at, message, report);
        for (key, _) in &overlay.pairs {
            if self.givens.get(key).is_none() {
                fault(format!(
                    "\"{key}\" is no input of this lesson: [given] does not hold it"
                ));
            }
        }
        let (givens, refused) = Givens::read(&lesson.raw_givens_with(&overlay.pairs));
        for (name, message) in refused {
            if overlay.pairs.iter().any(|(key, _)| *key == name) {
                fault(message);
            }
        }
        for run in worked.runs() {
            for link in prose::links(run) {
                if let Ok(Target::Calc(expression)) = &link.target
                    && self.givens.work_out(expression).is_ok()
                    && let Err(message) = givens.work_out(expression)
                {
                    fault(message);
                }
            }
        }
    }
}

fn agrees_with_given(given: &Given, text: &str) -> Result<bool, String> {
    match given.kind {
        Kind::Choice => Ok(given.typed.eq_ignore_ascii_case(text)),
        kind if given.worked_out => Printed::read(text)?.agrees(kind, given.value),
        kind => Ok(Given::of_kind(kind, &[], text)?.value == given.value),
    }
}

/// A fact that holds one value states it in its text.
fn check_facts(course: &Course, report: &mut Report) {
    for fact in course.sources.facts() {
        let Some(value) = &fact.value else { continue };
        let file = course.sources.file();
        let text = fact.text.get_ref();
        let agrees = Given::with_unit(value.get_ref())
            .ok_or_else(|| {
                format!(
                    "this is one value with its unit (got \"{}\")",
                    value.get_ref()
                )
            })
            .and_then(|given| Printed::read(text)?.agrees(given.kind, given.value));
        match agrees {
            Ok(true) => {}
            Ok(false) => {
                let message = format!("the text says {text}, but the value is {}", value.get_ref());
                file.fault(fact.text.span().start, message, report);
            }
            Err(message) => file.fault(value.span().start, message, report),
        }
    }
}

fn no_source(id: &str) -> String {
    format!("no source has the id \"{id}\" in sources.toml")
}

fn no_quantity(name: &str) -> String {
    format!("no quantity of the catalogue is called \"{name}\"")
}
