//! Problems of the reader's own set: in a round, by link, and gone when it is wiped.

use super::{DESK, PAGE, Right, content, open, right, with_notebook};
use anyhow::{Context, Result, anyhow, ensure};
use checks::{Engine, Visit, Window, journey};
use serde_json::{Value, json};
use superhet::problems::{ProblemCode, generate_for_set};

/// The link to the problem that lies open, as the page writes it.
const AGAIN: &str = "return document.querySelector('#round-problem .again a').getAttribute('href')";

/// The reader's own set, as the page of the set keeps it.
const OWN: &str = r#"{"version":2,"side":"below","region":1,"if":"125 kHz"}"#;

#[tokio::test(flavor = "multi_thread")]
async fn a_problem_is_asked_of_the_reader_s_own_set() -> Result<()> {
    let lessons = ["why-one-fixed-frequency", "oscillator-mixer-difference"];
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            with_notebook(&visit, json!({}), &lessons).await?;
            let keep = "localStorage.setItem('before-the-bench:set', arguments[0])";
            visit.browser.execute(keep, vec![json!(OWN)]).await?;
            open(&visit, PAGE).await?;
            let said = visit.text("#own-said").await?;
            ensure!(said == "IF 125 kHz, oscillator below", "{said}");
            visit.click("#begin").await?;
            // One of the round's six is that of lesson 2 that is asked of any set.
            let mut link = None;
            for _ in 0..6 {
                visit.element(&format!("{DESK} [type=submit]")).await?;
                let scene = visit.text("#round-problem .scene").await?;
                if scene.contains("our own set") {
                    ensure!(scene.contains("125 kHz"), "{scene}");
                    link = Some(visit.script::<String>(AGAIN).await?);
                    break;
                }
                visit.click("#round-leave").await?;
            }
            let link = link.context("no problem of the reader's own set")?;
            ensure!(link.ends_with("&if=125 kHz&side=below"), "{link}");
            let scene = visit.text("#round-problem .scene").await?;

            // The link holds the set: it opens the same for somebody who has none.
            visit
                .script::<Value>("localStorage.removeItem('before-the-bench:set')")
                .await?;
            open(&visit, "about/").await?;
            open(&visit, &format!("{PAGE}{link}")).await?;
            ensure!(visit.text("#round-problem .scene").await? == scene);
            let code = visit.text("#round-problem .again a").await?;
            let code = ProblemCode::decode(&code).map_err(|error| anyhow!("{error}"))?;
            let family = content()?;
            let family = family.families.numbered(code.family, code.revision);
            let family = family.context("no such family")?;
            let set = [("if", "125 kHz"), ("side", "below")];
            let problem = generate_for_set(&family.family, code.level, code.seed, &set)?;
            let Right::Typed(text) = right(&problem, 0) else {
                return Err(anyhow!("a choice"));
            };
            visit.type_into(&format!("{DESK} input"), &text).await?;
            visit.click(&format!("{DESK} [type=submit]")).await?;
            visit
                .element("#round-problem .part:nth-child(1) .is-right")
                .await?;
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn a_set_that_is_wiped_is_asked_of_no_more() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE, async |visit: Visit| {
        open(&visit, PAGE).await?;
        let choice = visit.element("#own-choice").await?;
        ensure!(!choice.is_displayed().await?, "there is no set yet");
        let keep = "localStorage.setItem('before-the-bench:set', arguments[0])";
        visit.browser.execute(keep, vec![json!(OWN)]).await?;
        open(&visit, PAGE).await?;
        ensure!(visit.element("#own-choice").await?.is_displayed().await?);
        visit.click("#place details > summary").await?;
        visit.click("#place-wipe").await?;
        let gone = "return document.getElementById('own-choice').hidden";
        visit.until("the choice is gone", gone).await
    })
    .await
}
