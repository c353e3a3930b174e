//! Practice: what its journeys share, and the journeys by subject.

mod coming;
mod own_set;
mod paper;
mod round;

use crate::drawn::Drawn;
use anyhow::{Result, anyhow, ensure};
use checks::Visit;
use serde_json::{Value, json};
use site::content::Content;
use site::repository;
use superhet::problems::Problem;
use superhet::problems::problem::Answer;

const PAGE: &str = "practice/";
const DESK: &str = "#round-problem .desk .part:last-child";

async fn open(visit: &Visit, page: &str) -> Result<()> {
    visit.open(page).await?;
    visit.ready().await
}

/// Puts a notebook into the browser's storage, as another visit would have left it.
async fn with_notebook(visit: &Visit, problems: Value, ticked: &[&str]) -> Result<()> {
    let lessons = ticked
        .iter()
        .map(|slug| ((*slug).to_owned(), json!("2026-11-01")));
    let lessons: serde_json::Map<String, Value> = lessons.collect();
    let notebook = json!({"version": 2, "lessons": lessons, "problems": problems});
    open(visit, "about/").await?;
    let write = "localStorage.setItem('before-the-bench:notebook', arguments[0])";
    visit
        .browser
        .execute(write, vec![json!(notebook.to_string())])
        .await?;
    Ok(())
}

/// A heading stands at the top of the window, with all that follows it beneath.
pub(crate) async fn at_the_top(visit: &Visit, heading: &str) -> Result<()> {
    let place = visit.place(heading).await?;
    ensure!((0.0..=24.0).contains(&place.top), "{heading}: {place:?}");
    Ok(())
}

pub(crate) fn content() -> Result<Content> {
    Content::load(&repository::root()).map_err(|faults| anyhow!("{faults}"))
}

/// The problem that lies open.
async fn lying_open(visit: &Visit) -> Result<Problem> {
    let drawn = Drawn::at(visit, "#round-problem .desk").await?;
    Ok(drawn.problem)
}

/// What is typed for a part, or which of its choices is made.
enum Right {
    Typed(String),
    Choice(usize),
}

fn right(problem: &Problem, part: usize) -> Right {
    match &problem.parts[part].answer {
        Answer::Number(number) => Right::Typed(number.text.clone()),
        Answer::Choice(choices) => {
            Right::Choice(choices.iter().position(|choice| choice.right).unwrap_or(0))
        }
    }
}

/// Answers every part of the problem that lies open rightly, with the mouse.
pub(crate) async fn answer_rightly(visit: &Visit) -> Result<()> {
    let problem = lying_open(visit).await?;
    for part in 0..problem.parts.len() {
        let submit = match right(&problem, part) {
            Right::Typed(text) => {
                visit.type_into(&format!("{DESK} input"), &text).await?;
                format!("{DESK} [type=submit]")
            }
            Right::Choice(place) => {
                visit
                    .click(&format!("{DESK} label:nth-of-type({})", place + 1))
                    .await?;
                format!("{DESK} [type=submit]")
            }
        };
        visit.click(&submit).await?;
        let marked = format!("#round-problem .part:nth-child({}) .is-right", part + 1);
        visit.element(&marked).await?;
    }
    Ok(())
}
