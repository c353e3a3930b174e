//! A problem with choices, in several parts: by arrows, Space and Enter.

use super::{Drawn, answered_rightly, right};
use crate::practice::content;
use anyhow::{Result, bail, ensure};
use checks::{Engine, Window, journey};
use superhet::problems::problem::Answer;
use thirtyfour::Key;

const LESSON: &str = "lessons/before-you-touch-a-set/";
const FAMILY: &str = "who-does-it";
const DESK: &str = "#problem-who-does-it .desk";

#[tokio::test(flavor = "multi_thread")]
async fn choices_are_made_by_arrows_and_part_follows_part() -> Result<()> {
    let content = content()?;
    let drawn = Drawn::of(&content, FAMILY)?;
    let parts = &drawn.problem.parts;
    let Answer::Choice(choices) = &parts[0].answer else {
        bail!("{FAMILY} asks for a number");
    };
    let wrong = choices.iter().position(|choice| !choice.right).unwrap_or(0);
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            visit
                .open(&format!("{LESSON}#problem={}", drawn.code))
                .await?;
            visit.ready().await?;
            visit.element(&format!("{DESK} [type=submit]")).await?;
            visit.listen().await?;

            // A wrong one is said, and the button keeps the focus.
            visit.tab_to(&format!("{DESK} .answer input")).await?;
            visit.press(Key::Space).await?;
            for choice in &choices[1..=wrong] {
                visit.press(Key::Down).await?;
                visit.hears("radio", &choice.text).await?;
            }
            visit.tab_to(&format!("{DESK} [type=submit]")).await?;
            visit.press(Key::Enter).await?;
            visit.element(&format!("{DESK} .is-wrong")).await?;
            visit.hears("button", "Mark it").await?;
            let spoken = visit.spoken().await?;
            ensure!(spoken.len() == 1, "a wrong choice is told by {spoken:?}");

            // Back to the choices: the one that was made has the focus.
            let chain = visit.browser.action_chain_with_delay(None, None);
            let back = chain.key_down(Key::Shift).send_keys(Key::Tab);
            back.key_up(Key::Shift).perform().await?;
            visit.hears("radio", &choices[wrong].text).await?;
            let to_first = (0..wrong).map(|_| Key::Up);
            for key in to_first {
                visit.press(key).await?;
            }
            for choice in choices {
                if choice.id == right(choices) {
                    break;
                }
                visit.press(Key::Down).await?;
            }
            visit.tab_to(&format!("{DESK} [type=submit]")).await?;
            visit.press(Key::Enter).await?;
            visit.element(&format!("{DESK} .is-right")).await?;
            visit.hears("group", "").await?;
            ensure!(visit.spoken().await?.is_empty());
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
