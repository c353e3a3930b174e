//! A round of practice by keys alone, from picking a lesson to its end.

use super::{answered_rightly, are_hidden, are_told_of};
use crate::drawn::Drawn;
use anyhow::{Context, Result, ensure};
use checks::{Engine, Visit, Window, journey};
use thirtyfour::Key;

const DESK: &str = "#round-problem .desk";
const FETCHED: &str = "The problem is being fetched …";

#[tokio::test(flavor = "multi_thread")]
async fn a_round_is_told_from_first_to_last() -> Result<()> {
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
                match number {
                    1 => is_left(&visit).await?,
                    _ => is_done(&visit, number == of).await?,
                }
            }
            it_ends(&visit).await
        })
        .await?;
    }
    Ok(())
}

/// Picks the third lesson alone; the button says how much that is.
async fn pick(visit: &Visit) -> Result<usize> {
    visit.tab_to("#choose [name=wish]").await?;
    let read = "What I have read: no lesson is ticked yet";
    visit.hears("radio", read).await?;
    visit.press(Key::Down).await?;
    visit.hears("radio", "Lessons that I pick").await?;
    are_told_of(visit, &["#pick-lessons"]).await?;
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

/// Waits for the next problem; nothing but its coming is said meanwhile, and the focus stands
/// at its number.
async fn comes(visit: &Visit, number: usize, of: usize) -> Result<()> {
    visit.element(&format!("{DESK} [type=submit]")).await?;
    let title = format!("Problem {number} of {of}");
    visit.hears("heading", &title).await?;
    let spoken = visit.spoken().await?;
    ensure!(spoken == [FETCHED], "{spoken:?}");
    Ok(())
}

/// One that is left: what held the focus goes, and the next one's number has it.
async fn is_left(visit: &Visit) -> Result<()> {
    visit.tab_to("#round-leave").await?;
    visit.hears("button", "Leave this one").await?;
    visit.press(Key::Enter).await
}

/// One that is done rightly, and left by the button that follows.
async fn is_done(visit: &Visit, is_last: bool) -> Result<()> {
    let drawn = Drawn::at(visit, DESK).await?;
    for part in &drawn.problem.parts {
        answered_rightly(visit, DESK, part).await?;
    }
    are_hidden(visit, &["#round-leave"]).await?;
    visit.press(Key::Tab).await?;
    let next = ["Next problem", "To the end"][usize::from(is_last)];
    visit.hears("button", next).await?;
    visit.press(Key::Enter).await
}

async fn it_ends(visit: &Visit) -> Result<()> {
    visit.hears("heading", "That is all for now").await?;
    are_hidden(visit, &["#round"]).await?;
    let spoken = visit.spoken().await?;
    ensure!(spoken.len() <= 1, "{spoken:?}");
    are_told_of(visit, &["#round-said li"]).await?;
    visit.accessible().await
}
