//! A link opens the look-up worked out, whichever two it gives.

use super::{RESULTS, SET, key};
use anyhow::{Result, ensure};
use checks::{Engine, Visit, Window, journey};

/// What a link says, and what the page then shows: (query, quantity, expression).
const LINKS: [(&str, &str, &str); 6] = [
    (
        "dial=1200kHz&if=470kHz&side=above",
        "oscillator",
        "oscillator?dial=1200kHz&if=470kHz&side=above",
    ),
    (
        "dial=1200kHz&if=470kHz&side=above",
        "image",
        "image?dial=1200kHz&if=470kHz&side=above",
    ),
    (
        "dial=9.545%20MHz&if=465&side=below&region=2",
        "oscillator",
        "oscillator?dial=9.545MHz&if=465kHz&side=below",
    ),
    (
        "dial=250m&if=455kHz",
        "oscillator",
        "oscillator?dial=250m&if=455kHz&side=above",
    ),
    (
        "oscillator=1670kHz&if=470kHz&side=above",
        "dial",
        "dial?oscillator=1670kHz&if=470kHz&side=above",
    ),
    (
        "dial=1200kHz&oscillator=1670kHz",
        "difference",
        "difference?signal=1200kHz&oscillator=1670kHz",
    ),
];

#[tokio::test(flavor = "multi_thread")]
async fn a_link_opens_worked_out() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            for (query, quantity, expression) in LINKS {
                visit.open(&format!("lookup/?{query}")).await?;
                visit.ready().await?;
                visit.shows(RESULTS, quantity, expression).await?;
            }
            Ok(())
        })
        .await?;
    }
    Ok(())
}

/// The address of the link that the page offers.
async fn offered(visit: &Visit) -> Result<String> {
    visit
        .script("return document.querySelector('[data-slot=link]').href")
        .await
}

#[tokio::test(flavor = "multi_thread")]
async fn the_link_that_the_page_offers_opens_the_same() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            visit
                .open("lookup/?dial=1200kHz&if=470kHz&side=above")
                .await?;
            visit.ready().await?;
            visit.type_into("#dial", "1.4 MHz").await?;
            visit.click(SET).await?;
            visit.type_into("#if", "452").await?;
            visit.click(&key("side", "below")).await?;
            visit.click(&key("region", "3")).await?;
            let expression = "image?dial=1.4MHz&if=452kHz&side=below";
            visit.shows(RESULTS, "image", expression).await?;
            let query: String = visit.script("return location.search").await?;
            ensure!(query.is_empty(), "the link it came by stays: {query}");

            let set = visit.text("[data-slot=set]").await?;
            let link = offered(&visit).await?;
            visit.script::<()>("localStorage.clear()").await?;
            visit.browser.goto(&link).await?;
            visit.ready().await?;
            visit.shows(RESULTS, "image", expression).await?;
            ensure!(visit.text("[data-slot=set]").await? == set, "another set");
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn what_a_link_says_amiss_is_told() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        visit
            .open("lookup/?dial=<b>x</b>&if=470kHz&side=left&region=9")
            .await?;
        visit.ready().await?;
        let notice = visit.text("[data-slot=notice]").await?;
        for wrong in ["left", "9"] {
            ensure!(notice.contains(&format!("(got \"{wrong}\")")), "{notice}");
        }
        visit.click(SET).await?;
        visit.click(&key("side", "below")).await?;
        let notice = visit.text("[data-slot=notice]").await?;
        ensure!(
            !notice.contains("left") && notice.contains("\"9\""),
            "{notice}"
        );
        let problem = visit.text("#problem").await?;
        ensure!(problem.contains("<b>x</b>"), "{problem}");
        let dial: String = visit
            .script("return document.getElementById('dial').value")
            .await?;
        ensure!(dial == "<b>x</b>", "the box holds {dial}");
        ensure!(visit.value_in(RESULTS, "oscillator").await?.is_none());
        Ok(())
    })
    .await
}
