//! The check by keys alone, from its start to its result: nothing tells how it goes before
//! the end, and nothing is shouted then.

use super::{are_hidden, are_told_of, asked, takes_the_right_one};
use crate::check::lying_open;
use crate::practice::content;
use anyhow::{Context, Result, ensure};
use checks::{Engine, Visit, Window, journey};
use superhet::problems::Problem;
use superhet::problems::problem::{Answer, Part};
use thirtyfour::Key;

#[tokio::test(flavor = "multi_thread")]
async fn the_check_is_told_from_start_to_result() -> Result<()> {
    let content = content()?;
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            visit.open("practice/check/").await?;
            visit.ready().await?;
            are_hidden(&visit, &["#check-form", "#check-result"]).await?;
            visit.listen().await?;
            it_begins(&visit).await?;
            let (_, problems) = lying_open(&visit, &content).await?;
            all_but_the_last_are_answered(&visit, &problems).await?;
            it_is_handed_in(&visit).await?;
            its_result_is_told(&visit).await
        })
        .await?;
    }
    Ok(())
}

/// Begins it: that the questions are coming is said, and the focus goes to them.
async fn it_begins(visit: &Visit) -> Result<()> {
    visit.tab_to("#check-begin").await?;
    visit.hears("button", "Begin").await?;
    visit.press(Key::Enter).await?;
    let focus = visit.focus().await;
    focus.context("while the questions are fetched")?;
    let last = "#check-questions section:nth-child(12)";
    visit.element(last).await?;
    visit.hears("heading", "The questions").await?;
    ensure!(visit.spoken().await? == ["The questions are being fetched …"]);
    are_hidden(visit, &["#check-begin", "#check-how"]).await
}

async fn all_but_the_last_are_answered(visit: &Visit, problems: &[Problem]) -> Result<()> {
    for (number, problem) in (1..12).zip(problems) {
        answer(visit, number, &problem.parts[0]).await?;
        let spoken = visit.spoken().await?;
        ensure!(spoken.is_empty(), "{number}: told before the end");
    }
    Ok(())
}

/// Answers a question by keys; what is asked is told.
async fn answer(visit: &Visit, number: usize, part: &Part) -> Result<()> {
    let slip = format!("#check-questions section:nth-child({number})");
    let told = visit.tab_to_hear(&format!("{slip} input")).await?;
    match &part.answer {
        Answer::Number(answer) => {
            ensure!(told.is("textbox", &asked(part)), "{told:?}");
            visit.type_text(&answer.text).await
        }
        Answer::Choice(choices) => {
            let group = visit.told_of(&format!("{slip} .choices")).await?;
            ensure!(group.is("radiogroup", &asked(part)), "{group:?}");
            takes_the_right_one(visit, choices).await
        }
    }
}

/// Hands it in: first the open question is said, then what comes next, and the focus goes to
/// the result.
async fn it_is_handed_in(visit: &Visit) -> Result<()> {
    visit.tab_to("#check-hand-in").await?;
    visit.hears("button", "Hand it in").await?;
    visit.press(Key::Enter).await?;
    visit.hears("button", "Hand it in").await?;
    let spoken = visit.spoken().await?;
    let one = spoken.len() == 1 && spoken[0].contains("Left open: 12.");
    ensure!(one, "{spoken:?}");
    visit.press(Key::Enter).await?;
    visit.hears("heading", "Your result").await?;
    let spoken = visit.spoken().await?;
    let one = spoken.len() == 1 && spoken[0].contains("second form");
    ensure!(one, "{spoken:?}");
    Ok(())
}

/// The picture has its words, and all of it stands in a table.
async fn its_result_is_told(visit: &Visit) -> Result<()> {
    let told = visit.told_of("#check-result .check-picture").await?;
    let fits = ["img", "image"].contains(&told.role.as_str());
    ensure!(fits && told.name.contains("11 of 12 right"), "{told:?}");
    visit.press(Key::Tab).await?;
    ensure!(visit.focused("#check-result summary").await?);
    let name = visit.focus().await?.name;
    ensure!(name == "The same as a table", "{name}");
    visit.press(Key::Enter).await?;
    let rows = "return [...document.querySelectorAll('#check-result tbody tr')] \
        .filter((row) => row.checkVisibility()).map((row) => row.lastElementChild.innerText)";
    let rows: Vec<String> = visit.script(rows).await?;
    ensure!(rows.len() == 12 && rows[11] == "not", "{rows:?}");
    ensure!(rows[..11].iter().all(|it| it == "right"), "{rows:?}");
    are_told_of(visit, &["#check-result table"]).await?;
    visit.accessible().await
}
