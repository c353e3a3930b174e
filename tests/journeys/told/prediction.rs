//! A prediction, and the tick at the end of a lesson.

use super::{are_hidden, are_told_of};
use anyhow::{Result, ensure};
use checks::{Engine, Visit, Window, journey};
use thirtyfour::Key;

const LESSON: &str = "lessons/why-one-fixed-frequency/";
const COMMIT: &str = "section.predict button.commit";

/// Opens the lesson, and listens.
async fn open(visit: &Visit) -> Result<()> {
    visit.open(LESSON).await?;
    visit.ready().await?;
    visit.listen().await
}

#[tokio::test(flavor = "multi_thread")]
async fn a_prediction_is_told_once_and_its_outcome_only_then() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            open(&visit).await?;
            are_hidden(&visit, &["section.predict details"]).await?;
            without_a_choice_it_waits(&visit).await?;
            open(&visit).await?;
            a_choice_is_made(&visit).await?;
            the_outcome_follows(&visit).await?;
            visit.accessible().await
        })
        .await?;
    }
    Ok(())
}

async fn without_a_choice_it_waits(visit: &Visit) -> Result<()> {
    visit.tab_to(COMMIT).await?;
    visit.hears("button", "That is my answer").await?;
    visit.press(Key::Enter).await?;
    let first = "Pick one of the choices first.";
    ensure!(visit.spoken().await? == [first]);
    visit.hears("button", "That is my answer").await?;
    Ok(())
}

async fn a_choice_is_made(visit: &Visit) -> Result<()> {
    visit.tab_to("section.predict input[type=radio]").await?;
    for key in [Key::Space, Key::Down] {
        visit.press(key).await?;
        let words = "return document.activeElement.closest('label').textContent";
        let words: String = visit.script(words).await?;
        visit.hears("radio", &words).await?;
    }
    visit.tab_to(COMMIT).await?;
    visit.press(Key::Enter).await
}

/// The focus tells what was said, no region does besides, and the way on goes through the
/// outcome.
async fn the_outcome_follows(visit: &Visit) -> Result<()> {
    let told = visit.hears("group", "You said: “").await?;
    let said = visit.text("section.predict .said").await?;
    ensure!(told.is("group", &said), "{told:?} for {said:?}");
    ensure!(visit.spoken().await?.is_empty(), "said by a region as well");
    are_hidden(visit, &[COMMIT]).await?;
    are_told_of(visit, &["section.predict details .right-choice"]).await?;
    visit.press(Key::Tab).await?;
    let stays = "return document.activeElement.closest('section.predict') !== null";
    let stays: bool = visit.script(stays).await?;
    ensure!(stays, "the focus leaves the prediction");
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn a_tick_and_its_undoing_are_said() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            visit.open(LESSON).await?;
            visit.ready().await?;
            visit.past_every_problem().await?;
            visit.listen().await?;
            visit.tab_to(".tick button").await?;
            visit
                .hears("button", "Tick this lesson in my notebook")
                .await?;
            visit.press(Key::Enter).await?;
            visit.hears("button", "Take the tick away").await?;
            let spoken = visit.spoken().await?;
            let ticked = spoken
                .iter()
                .filter(|it| it.contains("Ticked in your notebook on"));
            ensure!(ticked.count() == 1, "{spoken:?}");
            visit.press(Key::Enter).await?;
            visit
                .hears("button", "Tick this lesson in my notebook")
                .await?;
            let spoken = visit.spoken().await?;
            ensure!(spoken == ["The tick is taken away."], "{spoken:?}");
            Ok(())
        })
        .await?;
    }
    Ok(())
}
