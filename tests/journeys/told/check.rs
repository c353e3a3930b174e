//! The check by keys alone, from its start to its result: nothing tells how it goes before
//! the end, and nothing is shouted then.

use super::{are_hidden, asked, plain, right};
use crate::practice::content;
use anyhow::{Context, Result, ensure};
use checks::{Engine, Visit, Window, journey};
use site::content::Content;
use superhet::problems::generate;
use superhet::problems::problem::{Answer, Part};
use thirtyfour::Key;

/// The first part of each question that lies open.
async fn questions(visit: &Visit, content: &Content) -> Result<Vec<Part>> {
    let first = "return document.querySelector('#check-questions .scene').textContent";
    let first = plain(&visit.script::<String>(first).await?);
    for form in 0..2 {
        let mut parts = Vec::new();
        let mut scenes = Vec::new();
        for item in &content.check.items {
            let found = content.families.find(&item.family);
            let family = &found.with_context(|| item.family.clone())?.family;
            let problem = generate(family, item.level, item.seeds[form])?;
            scenes.push(plain(&problem.scene));
            parts.extend(problem.parts.into_iter().take(1));
        }
        if scenes[0] == first {
            return Ok(parts);
        }
    }
    anyhow::bail!("neither form begins with {first:?}")
}

/// Answers a question by keys; what is asked is told.
async fn answer(visit: &Visit, number: usize, part: &Part) -> Result<()> {
    let slip = format!("#check-questions section:nth-child({number})");
    let told = visit.tab_to_hear(&format!("{slip} input")).await?;
    match &part.answer {
        Answer::Number(answer) => {
            ensure!(told.is("textbox", &asked(part)), "{told:?}");
            visit.type_text(&answer.text).await?;
        }
        Answer::Choice(choices) => {
            let group = visit.told_of(&format!("{slip} .choices")).await?;
            ensure!(group.is("radiogroup", &asked(part)), "{group:?}");
            visit.press(Key::Space).await?;
            for choice in choices {
                if choice.id == right(choices) {
                    visit.hears("radio", &choice.text).await?;
                    break;
                }
                visit.press(Key::Down).await?;
            }
        }
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn the_check_is_told_from_start_to_result() -> Result<()> {
    let content = content()?;
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            visit.open("practice/check/").await?;
            visit.ready().await?;
            are_hidden(&visit, &["#check-form", "#check-result"]).await?;
            visit.listen().await?;
            visit.tab_to("#check-begin").await?;
            visit.hears("button", "Begin").await?;
            visit.press(Key::Enter).await?;
            visit
                .focus()
                .await
                .context("while the questions are fetched")?;
            visit
                .element("#check-questions section:nth-child(12)")
                .await?;
            visit.hears("heading", "The questions").await?;
            ensure!(visit.spoken().await? == ["The questions are being fetched …"]);
            are_hidden(&visit, &["#check-begin", "#check-how"]).await?;

            let parts = questions(&visit, &content).await?;
            for (number, part) in (1..12).zip(&parts) {
                answer(&visit, number, part).await?;
                ensure!(
                    visit.spoken().await?.is_empty(),
                    "{number}: told before the end"
                );
            }
            visit.tab_to("#check-hand-in").await?;
            visit.hears("button", "Hand it in").await?;
            visit.press(Key::Enter).await?;
            visit.hears("button", "Hand it in").await?;
            let spoken = visit.spoken().await?;
            ensure!(
                spoken.len() == 1 && spoken[0].contains("Left open: 12."),
                "{spoken:?}"
            );
            visit.press(Key::Enter).await?;
            visit.hears("heading", "Your result").await?;
            let spoken = visit.spoken().await?;
            let only = spoken.iter().all(|it| it.contains("second form"));
            ensure!(only && spoken.len() <= 1, "{spoken:?}");
            result(&visit).await
        })
        .await?;
    }
    Ok(())
}

/// The picture has its words, and all of it stands in a table.
async fn result(visit: &Visit) -> Result<()> {
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
    ensure!(visit.is_in_tree("#check-result table").await? != Some(false));
    visit.accessible().await
}
