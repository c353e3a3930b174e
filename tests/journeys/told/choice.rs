//! A problem with choices, in several parts: by arrows, Space and Enter.

use super::{answered_rightly, marks, takes_the_right_one};
use crate::drawn::Drawn;
use anyhow::{Result, bail, ensure};
use checks::{Engine, Visit, Window, journey};
use superhet::problems::problem::{Answer, Choice};
use thirtyfour::Key;

const LESSON: &str = "lessons/before-you-touch-a-set/";
const FAMILY: &str = "who-does-it";
const DESK: &str = "#problem-who-does-it .desk";

#[tokio::test(flavor = "multi_thread")]
async fn choices_are_made_by_arrows_and_part_follows_part() -> Result<()> {
    let drawn = Drawn::of(FAMILY)?;
    let parts = &drawn.problem.parts;
    let Answer::Choice(choices) = &parts[0].answer else {
        bail!("{FAMILY} asks for a number");
    };
    let wrong = choices.iter().position(|choice| !choice.right).unwrap_or(0);
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            let address = format!("{LESSON}#problem={}", drawn.code);
            visit.open(&address).await?;
            visit.ready().await?;
            visit.element(&format!("{DESK} [type=submit]")).await?;
            visit.listen().await?;
            a_wrong_one_is_said(&visit, &choices[..=wrong]).await?;
            it_is_changed_for_the_right_one(&visit, choices, wrong).await?;
            for part in &parts[1..] {
                answered_rightly(&visit, DESK, part).await?;
            }
            visit.press(Key::Tab).await?;
            visit.hears("button", "Another like this").await?;
            visit.accessible().await
        })
        .await?;
    }
    Ok(())
}

/// Takes the last of the first few choices: that it is wrong is said, and the button keeps the
/// focus.
async fn a_wrong_one_is_said(visit: &Visit, as_far_as: &[Choice]) -> Result<()> {
    visit.tab_to(&format!("{DESK} .answer input")).await?;
    visit.press(Key::Space).await?;
    for choice in &as_far_as[1..] {
        visit.press(Key::Down).await?;
        visit.hears("radio", &choice.text).await?;
    }
    marks(visit, DESK).await?;
    visit.element(&format!("{DESK} .is-wrong")).await?;
    visit.hears("button", "Mark it").await?;
    let spoken = visit.spoken().await?;
    ensure!(spoken.len() == 1, "a wrong choice is told by {spoken:?}");
    Ok(())
}

/// Back to the choices: the one that was made has the focus.
async fn it_is_changed_for_the_right_one(
    visit: &Visit,
    choices: &[Choice],
    wrong: usize,
) -> Result<()> {
    let chain = visit.browser.action_chain_with_delay(None, None);
    let back = chain.key_down(Key::Shift).send_keys(Key::Tab);
    back.key_up(Key::Shift).perform().await?;
    visit.hears("radio", &choices[wrong].text).await?;
    for _ in 0..wrong {
        visit.press(Key::Up).await?;
    }
    takes_the_right_one(visit, choices).await?;
    marks(visit, DESK).await?;
    visit.element(&format!("{DESK} .is-right")).await?;
    visit.hears("group", "").await?;
    ensure!(visit.spoken().await?.is_empty());
    Ok(())
}
