//! A prediction, and the tick at the end of a lesson.

use super::are_hidden;
use anyhow::{Result, ensure};
use checks::{Engine, Window, journey};
use thirtyfour::Key;

const LESSON: &str = "lessons/why-one-fixed-frequency/";

#[tokio::test(flavor = "multi_thread")]
async fn a_prediction_is_told_once_and_its_outcome_only_then() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            visit.open(LESSON).await?;
            visit.ready().await?;
            visit.listen().await?;
            are_hidden(&visit, &["section.predict details"]).await?;
            let commit = "section.predict button.commit";
            visit.tab_to(commit).await?;
            visit.hears("button", "That is my answer").await?;
            visit.press(Key::Enter).await?;
            let first = "Pick one of the choices first.";
            ensure!(visit.spoken().await? == [first]);
            visit.hears("button", "That is my answer").await?;

            visit.open(LESSON).await?;
            visit.ready().await?;
            visit.listen().await?;
            visit.tab_to("section.predict input[type=radio]").await?;
            for key in [Key::Space, Key::Down] {
                visit.press(key).await?;
                let words = "return document.activeElement.closest('label').textContent";
                let words: String = visit.script(words).await?;
                visit.hears("radio", &words).await?;
            }
            visit.tab_to(commit).await?;
            visit.press(Key::Enter).await?;
            let told = visit.hears("group", "You said: “").await?;
            let said = visit.text("section.predict .said").await?;
            ensure!(told.is("group", &said), "{told:?} for {said:?}");
            ensure!(visit.spoken().await?.is_empty(), "said by a region as well");
            are_hidden(&visit, &[commit]).await?;
            let outcome = visit
                .is_in_tree("section.predict details .right-choice")
                .await?;
            ensure!(outcome != Some(false), "the outcome is not told of");
            visit.press(Key::Tab).await?;
            let stays = "return document.activeElement.closest('section.predict') !== null";
            ensure!(
                visit.script::<bool>(stays).await?,
                "the focus leaves the prediction"
            );
            visit.accessible().await
        })
        .await?;
    }
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
