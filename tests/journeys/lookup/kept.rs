//! The look-up remembers the set chosen last, in this browser alone.

use super::{RESULTS, SET, key};
use anyhow::{Result, ensure};
use checks::{Engine, Visit, Window, journey};
use serde_json::{Value, json};

const KEPT: &str = "return localStorage.getItem('before-the-bench:set') ?? ''";
const ASIDE: &str = "return localStorage.getItem('before-the-bench:set:set-aside') ?? ''";
const EXAMPLE: &str = "oscillator?dial=1200kHz&if=470kHz&side=above";

async fn open(visit: &Visit, query: &str) -> Result<()> {
    visit.open(&format!("lookup/{query}")).await?;
    visit.ready().await
}

#[tokio::test(flavor = "multi_thread")]
async fn the_set_chosen_last_is_there_again() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            open(&visit, "").await?;
            visit.type_into("#dial", "909").await?;
            let kept: String = visit.script(KEPT).await?;
            ensure!(kept.is_empty(), "kept before an IF was chosen: {kept}");
            visit.click(SET).await?;
            visit.click("[data-do='if 465']").await?;
            visit.click(&key("side", "below")).await?;
            let own = "oscillator?dial=909kHz&if=465kHz&side=below";
            visit.shows(RESULTS, "oscillator", own).await?;
            let kept: Value = serde_json::from_str(&visit.script::<String>(KEPT).await?)?;
            let set = json!({"version": 2, "dial": "909 kHz", "if": "465 kHz",
                "side": "below", "region": 1});
            ensure!(kept == set, "kept: {kept}");

            open(&visit, "").await?;
            visit.shows(RESULTS, "oscillator", own).await?;
            let set = visit.text("[data-slot=set]").await?;
            ensure!(set.contains("465 kHz") && set.contains("below"), "{set}");
            let example = visit.element("[data-slot=example]").await?;
            ensure!(!example.is_displayed().await?, "it asks for the IF again");

            // Somebody else's link is looked at, and does not take the set's place.
            open(&visit, "?dial=1200kHz&if=470kHz&side=above").await?;
            visit.shows(RESULTS, "oscillator", EXAMPLE).await?;
            open(&visit, "").await?;
            visit.shows(RESULTS, "oscillator", own).await?;

            // A link that names no IF is worked out for the set that is kept.
            open(&visit, "?dial=1000kHz").await?;
            let expression = "oscillator?dial=1000kHz&if=465kHz&side=below";
            visit.shows(RESULTS, "oscillator", expression).await
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn a_damaged_set_is_put_aside_and_told() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            open(&visit, "").await?;
            for damaged in [
                "{\"version\":1,\"dial\":",
                "{\"version\":7,\"dial\":\"909 kHz\"}",
                "{\"version\":1,\"dial\":\"x\",\"if\":\"y\",\"side\":\"above\",\"region\":1}",
                "null",
            ] {
                let write = "localStorage.setItem('before-the-bench:set', arguments[0])";
                visit.browser.execute(write, vec![json!(damaged)]).await?;
                open(&visit, "").await?;
                visit.shows(RESULTS, "oscillator", EXAMPLE).await?;
                let told = visit.text("[data-slot=storage]").await?;
                ensure!(told.contains("set aside"), "{damaged}: {told:?}");
                ensure!(visit.script::<String>(KEPT).await?.is_empty(), "{damaged}");
                ensure!(visit.script::<String>(ASIDE).await? == damaged, "{damaged}");
            }
            open(&visit, "").await?;
            let told = visit.text("[data-slot=storage]").await?;
            ensure!(told.is_empty(), "told again: {told}");
            Ok(())
        })
        .await?;
    }
    Ok(())
}
