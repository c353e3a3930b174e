//! A lesson as a page.
//!
//! Everything stands in the page from the start and is complete without its program;
//! what only the program can do is hidden until the program shows it.
//!
//! | markup | what it is |
//! | --- | --- |
//! | `article.lesson[data-lesson]` | the lesson, with its slug |
//! | `recipes.js` beside the page | how each number came about, for readers with a set of their own |
//! | `p#numbers` | whose numbers they are; the program of own numbers puts its switch there |
//! | `header.lesson-head` with `p.kicker`, `h1`, `p.read-first`, `div.goals` | its head |
//! | `div.caution` | the cautions, where the reader comes near a set |
//! | `data.number[data-kind]` | a number: `calc` with `data-quantity`, and `data-value` (SI), `given` with `data-given`, `fact` with `data-fact` |
//! | `a.fact` | the way from a fact to its source |
//! | `a.term`, `section.meanings dl` with `dt#term-…`, `a.back` | a term, its meaning, and the way back |
//! | `section.predict` with `p.question`, `label.choice[data-right or data-belief]`, `details` with `p.right-choice`, `p.because` | a prediction; the program adds the button to commit with |
//! | `section.worked` with three `div.example`: `p.ask`, `ol.steps`, `details.blank` | a worked example |
//! | `section.misconception#misconception-…` with `p.belief` | a belief and its case |
//! | `section.formula[data-formula] details` with `math` and `dl.letters` | a formula that can be skipped |
//! | `section.problem[data-problem]`, `[data-number]`, `[data-family]`, `[data-seed]`, `h3`, `div.on-paper` | a problem |
//! | `section.recall` with `h2` and a `section.problem` for each family | problems of earlier lessons |
//! | `section.carry` | the last section |
//! | `section.sources ol` with `li#source-…`, `ul.places` | sources, and where in them |
//! | `nav.onward` with `a.previous`, `a.next` | the lessons before and after |
//! | `div.table` around each table, `.to-right`, `.to-centre` on its cells | so that a wide one scrolls by itself |

mod belief;
mod drawing;
mod figure;
mod formula;
mod head;
mod inline;
mod meanings;
mod number;
mod onward;
mod predict;
mod problem;
mod prose;
mod recall;
mod recipes;
mod sources;
mod worked;

pub(crate) use drawing::Drawing;
pub(crate) use problem::on_paper;
pub(crate) use sources::Cited;

use super::block::Block;
use super::blocks::Part;
use super::lesson::Lesson;
use super::prose::{plain, slug};
use crate::page::{Figures, Page, Program};
use crate::report::Report;
use anyhow::bail;
use maud::{Markup, html};
use pulldown_cmark::HeadingLevel;

/// A lesson as a page.
pub(crate) fn page(drawing: &Drawing<'_>) -> anyhow::Result<Page> {
    let lesson = drawing.lesson;
    Ok(Page {
        path: lesson.path(),
        title: lesson.plain_title(),
        description: head::description(lesson),
        styles: styles(lesson),
        program: Program::Study(figures(lesson)),
        main: article(drawing)?,
        recipes: recipes(drawing)?,
    })
}

/// How its numbers came about, where a set of the reader's can change any.
fn recipes(drawing: &Drawing<'_>) -> anyhow::Result<Option<String>> {
    let Some(my_set) = &drawing.lesson.front.my_set else {
        return Ok(None);
    };
    let recipes = drawing.recipes();
    let file = &drawing.lesson.file;
    let head = file.text().find("[my-set]").unwrap_or(0);
    let mut report = Report::default();
    for (at, says) in my_set.faults(&recipes, head) {
        file.fault(at, format!("[my-set]: {says}"), &mut report);
    }
    if !report.faults().is_empty() {
        bail!("{report}");
    }
    Ok(Some(serde_json::to_string(&recipes)?))
}

/// The figures that a lesson brings alive.
fn figures(lesson: &Lesson) -> Figures {
    Figures::least(lesson.parts.iter().filter_map(|part| match part {
        Part::Figure(figure) => Some(figure.name.as_str()),
        _ => None,
    }))
}

/// The style sheets of a lesson: that of formulas only where there is one.
fn styles(lesson: &Lesson) -> &'static [&'static str] {
    let formula = |part: &Part| matches!(part, Part::Formula(_));
    if lesson.parts.iter().any(formula) {
        &["lesson.css", "study.css", "math.css"]
    } else {
        &["lesson.css", "study.css"]
    }
}

fn article(drawing: &Drawing<'_>) -> anyhow::Result<Markup> {
    let parts = &drawing.lesson.parts;
    let last = parts.iter().rposition(is_section).unwrap_or(parts.len());
    let (before, carry) = parts.split_at(last);
    drawing.enter_opening();
    let head = head::head(drawing);
    let before = drawing.parts(before)?;
    let carry = drawing.parts(carry)?;
    drawing.enter(None);
    Ok(html! {
        article.lesson data-lesson=(drawing.lesson.slug) {
            (head)
            (before)
            section.carry { (carry) }
            (meanings::meanings(drawing))
            (sources::section(drawing))
            (onward::onward(drawing))
        }
    })
}

fn is_section(part: &Part) -> bool {
    matches!(part, Part::Prose(Block::Heading(HeadingLevel::H2, ..)))
}

impl Drawing<'_> {
    fn parts(&self, parts: &[Part]) -> anyhow::Result<Markup> {
        let drawn = parts.iter().map(|part| self.part(part));
        let drawn: Vec<Markup> = drawn.collect::<anyhow::Result<_>>()?;
        Ok(html! { @for part in &drawn { (part) } })
    }

    fn part(&self, part: &Part) -> anyhow::Result<Markup> {
        Ok(match part {
            Part::Prose(block) => {
                if let Block::Heading(HeadingLevel::H2, run, _) = block {
                    self.enter(Some(&slug(&plain(run))));
                }
                self.block(block)
            }
            Part::Figure(figure) => {
                let id = format!("figure-{}", self.next_figure());
                self.apart(Some(&id), || self.figure(figure))?
            }
            Part::Predict(predict) => self.apart(None, || self.predict(predict))?,
            Part::Worked(worked) => {
                let id = format!("worked-{}", self.next_worked());
                self.apart(Some(&id), || self.worked(worked))?
            }
            Part::Misconception(block) => self.apart(Some(&block.id), || self.belief(block)),
            Part::Formula(block) => self.formula(block)?,
            Part::Problem(block) => self.problem(block)?,
            Part::Recall(block) => self.recall(block)?,
        })
    }
}
