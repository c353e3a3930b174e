//! Predictions: the reader commits first, then sees what the core makes of it.

use super::{FIRST, SECOND};
use anyhow::{Context, Result, ensure};
use checks::{Engine, Visit, Window, journey};
use thirtyfour::Key;

const PREDICTION: &str = "section.predict";
const COMMIT: &str = "section.predict button.commit";
const SAID: &str = "section.predict .said";
const OUTCOME: &str = "section.predict details";

/// A choice that is wrong for a reason known by name.
const BELIEVED: &str = "section.predict label[data-belief]";
/// The choice that is right.
const RIGHT: &str = "section.predict label[data-right]";

async fn outcome_is_shown(visit: &Visit) -> Result<bool> {
    Ok(visit.element(OUTCOME).await?.is_displayed().await?)
}

/// The outcome holds the core's own number for the expression that settles it.
async fn is_settled(visit: &Visit) -> Result<()> {
    let settled = "return document.querySelector('section.predict').dataset.settledBy";
    let expression: String = visit.script(settled).await?;
    let quantity = expression.split('?').next().unwrap_or_default();
    visit.shows(OUTCOME, quantity, &expression).await?;
    let number = visit.text("section.predict details data").await?;
    ensure!(!number.is_empty(), "the number is not to be seen");
    Ok(())
}

async fn chosen(visit: &Visit, choice: &str) -> Result<()> {
    ensure!(
        !outcome_is_shown(visit).await?,
        "the outcome is there before the choice"
    );
    visit.click(COMMIT).await?;
    let said = visit.text(SAID).await?;
    ensure!(said.contains("first"), "without a choice: {said:?}");
    ensure!(
        !outcome_is_shown(visit).await?,
        "the outcome is there without a choice"
    );
    visit.click(choice).await?;
    visit.click(COMMIT).await?;
    ensure!(outcome_is_shown(visit).await?, "the outcome stays hidden");
    is_settled(visit).await?;
    ensure!(
        visit.focused(SAID).await?,
        "the focus is not on what is said"
    );
    let open = "return document.querySelectorAll('section.predict input:enabled').length";
    ensure!(
        visit.script::<f64>(open).await? == 0.0,
        "another choice can be made"
    );
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn a_belief_is_named_against_the_computed_result() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            for lesson in [FIRST, SECOND] {
                visit.open(lesson).await?;
                visit.ready().await?;
                chosen(&visit, BELIEVED).await.context(lesson)?;
                let belief = format!("return document.querySelector('{BELIEVED}').dataset.belief");
                let belief: String = visit.script(&belief).await?;
                let said = visit.text(SAID).await?;
                ensure!(
                    said.contains(belief.trim_end_matches('.')) && said.contains("differently"),
                    "{lesson}: {said:?} does not name {belief:?}"
                );
            }
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn the_right_choice_is_told_so() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        visit.open(FIRST).await?;
        visit.ready().await?;
        chosen(&visit, RIGHT).await?;
        let said = visit.text(SAID).await?;
        ensure!(said.contains("And so it is."), "{said:?}");
        visit.accessible().await
    })
    .await
}

#[tokio::test(flavor = "multi_thread")]
async fn keys_alone_commit() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            visit.open(FIRST).await?;
            visit.ready().await?;
            visit
                .tab_to(&format!("{PREDICTION} input[type=radio]"))
                .await?;
            visit.press(Key::Down).await?;
            visit.tab_to(COMMIT).await?;
            visit.press(Key::Enter).await?;
            ensure!(outcome_is_shown(&visit).await?, "the outcome stays hidden");
            is_settled(&visit).await?;
            ensure!(
                visit.focused(SAID).await?,
                "the focus is not on what is said"
            );
            Ok(())
        })
        .await?;
    }
    Ok(())
}
