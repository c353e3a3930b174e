//! The look-up with keys alone.

use super::RESULTS;
use anyhow::{Result, ensure};
use checks::{Engine, Visit, Window, journey};
use thirtyfour::Key;

/// Whoever goes by keys sees where they are.
async fn is_seen(visit: &Visit) -> Result<()> {
    let seen = "const at = document.activeElement; \
        const shown = at.matches('.visually-hidden') ? at.nextElementSibling : at; \
        const style = getComputedStyle(shown); \
        return at.matches(':focus-visible') \
            && style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2";
    let what: String = visit
        .script("return document.activeElement.outerHTML.slice(0, 120)")
        .await?;
    ensure!(visit.script::<bool>(seen).await?, "no outline round {what}");
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn a_setting_is_looked_up_with_keys_alone() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            visit.open("lookup/").await?;
            visit.ready().await?;
            visit.tab_to("#dial").await?;
            is_seen(&visit).await?;
            visit.type_text("693").await?;
            let above = "image?dial=693kHz&if=470kHz&side=above";
            visit.shows(RESULTS, "image", above).await?;

            visit.tab_to("[data-do=up]").await?;
            is_seen(&visit).await?;
            visit.press(Key::Enter).await?;
            let next = "image?dial=702kHz&if=470kHz&side=above";
            visit.shows(RESULTS, "image", next).await?;

            visit.tab_to("#set > summary").await?;
            is_seen(&visit).await?;
            visit.press(Key::Enter).await?;
            visit.tab_to("[data-do='if 465']").await?;
            visit.press(Key::Enter).await?;
            visit.tab_to("input[name=side]").await?;
            is_seen(&visit).await?;
            visit.press(Key::Right).await?;
            let below = "image?dial=702kHz&if=465kHz&side=below";
            visit.shows(RESULTS, "image", below).await
        })
        .await?;
    }
    Ok(())
}
