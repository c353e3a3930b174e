//! A round of practice by keys alone, from picking a lesson to its end.

use super::{Drawn, answered_rightly, are_hidden};
use crate::practice::content;
use anyhow::{Context, Result, ensure};
use checks::{Engine, Visit, Window, journey};
use thirtyfour::Key;

const DESK: &str = "#round-problem .desk";
const FETCHED: &str = "The problem is being fetched …";

/// Waits for the next problem; nothing but its coming is said meanwhile, and the focus stands
/// at its number.
async fn comes(visit: &Visit, number: usize, of: usize) -> Result<()> {
    visit.element(&format!("{DESK} [type=submit]")).await?;
    visit
        .hears("heading", &format!("Problem {number} of {of}"))
        .await?;
    let spoken = visit.spoken().await?;
    ensure!(spoken.iter().all(|it| it == FETCHED), "{spoken:?}");
    Ok(())
}

/// Picks the third lesson alone; the button says how much that is.
async fn pick(visit: &Visit) -> Result<usize> {
    visit.tab_to("#choose [name=wish]").await?;
    visit
        .hears("radio", "What I have read: no lesson is ticked yet")
        .await?;
    visit.press(Key::Down).await?;
    visit.hears("radio", "Lessons that I pick").await?;
    let boxes = visit.is_in_tree("#pick-lessons").await?;
    ensure!(boxes != Some(false), "lessons to pick are not told of");
    visit.press(Key::Tab).await?;
    visit.hears("checkbox", "1 ").await?;
    visit.press(Key::Space).await?;
    visit.press(Key::Tab).await?;
    visit.press(Key::Tab).await?;
    visit.hears("checkbox", "3 ").await?;
    visit.press(Key::Space).await?;
    visit.tab_to("#begin").await?;
    let told = visit.hears("button", "Begin: ").await?;
    let of = told.name.split(' ').nth(1).and_then(|it| it.parse().ok());
    of.with_context(|| format!("{told:?}"))
}

#[tokio::test(flavor = "multi_thread")]
async fn a_round_is_told_from_first_to_last() -> Result<()> {
    let content = content()?;
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            visit.open("practice/").await?;
            visit.ready().await?;
            are_hidden(&visit, &["#pick-lessons", "#round", "#round-end"]).await?;
            visit.listen().await?;
            let of = pick(&visit).await?;
            ensure!(visit.spoken().await?.is_empty());
            visit.press(Key::Enter).await?;
            for number in 1..=of {
                comes(&visit, number, of).await?;
                are_hidden(&visit, &["#choose", "#round-end"]).await?;
                if number == 1 {
                    // One that is left: what held the focus goes, and the next one's number has it.
                    visit.tab_to("#round-leave").await?;
                    visit.hears("button", "Leave this one").await?;
                    visit.press(Key::Enter).await?;
                    continue;
                }
                let drawn = Drawn::at(&visit, &content, DESK).await?;
                for part in &drawn.problem.parts {
                    answered_rightly(&visit, DESK, part).await?;
                }
                are_hidden(&visit, &["#round-leave"]).await?;
                visit.press(Key::Tab).await?;
                visit
                    .hears(
                        "button",
                        if number == of {
                            "To the end"
                        } else {
                            "Next problem"
                        },
                    )
                    .await?;
                visit.press(Key::Enter).await?;
            }
            visit.hears("heading", "That is all for now").await?;
            are_hidden(&visit, &["#round"]).await?;
            let spoken = visit.spoken().await?;
            ensure!(spoken.len() <= 1, "{spoken:?}");
            let list = visit.is_in_tree("#round-said li").await?;
            ensure!(list != Some(false), "what was done is not told of");
            visit.accessible().await
        })
        .await?;
    }
    Ok(())
}
