//! Lessons with JavaScript switched off: complete, and nothing to press that does nothing.

use super::{FIRST, IMAGE, SECOND};
use anyhow::{Context, Result, ensure};
use checks::{Engine, Visit, Window, journey};

/// Folds, and what each holds.
const FOLDS: [(&str, &[&str]); 3] = [
    ("section.predict > details", &[".right-choice", ".because"]),
    (
        "figure > details",
        &[".words", "table [data-quantity=oscillator]"],
    ),
    ("section.problem details.answer", &[".right", ".steps"]),
];

/// What does nothing without a program.
const DEAD: &str = "figure .handle, figure .controls, section.predict button, \
    section.problem button, .tick, [hidden]";

async fn is_complete(visit: &Visit) -> Result<()> {
    ensure!(
        visit.element("figure svg").await?.is_displayed().await?,
        "no drawing"
    );
    let examples = "return document.querySelectorAll('section.worked .example').length";
    ensure!(
        visit.script::<f64>(examples).await? == 3.0,
        "not three examples"
    );
    ensure!(
        !visit
            .text("section.worked .example:last-child")
            .await?
            .is_empty()
    );
    for (fold, contents) in FOLDS {
        for content in contents {
            let inside = visit.element(&format!("{fold} {content}")).await?;
            ensure!(
                !inside.is_displayed().await?,
                "{fold} is open from the start"
            );
        }
        visit.click(&format!("{fold} > summary")).await?;
        for content in contents {
            let text = visit.text(&format!("{fold} {content}")).await?;
            ensure!(!text.is_empty(), "{content} is not shown in {fold}");
        }
    }
    let dead = format!(
        "return [...document.querySelectorAll('{DEAD}')] \
            .filter((one) => one.checkVisibility()).map((one) => one.outerHTML.slice(0, 120))"
    );
    let dead: Vec<String> = visit.script(&dead).await?;
    ensure!(dead.is_empty(), "shown and dead: {dead:?}");
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn a_lesson_is_complete_without_scripts() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        visit.without_scripts().await?;
        for lesson in [FIRST, SECOND, IMAGE] {
            visit.open(lesson).await?;
            let live: bool = visit
                .script("return document.body.hasAttribute('data-ready')")
                .await?;
            ensure!(!live, "scripts ran");
            is_complete(&visit).await.context(lesson)?;
            visit.no_sideways_scroll().await.context(lesson)?;
        }
        Ok(())
    })
    .await
}

#[tokio::test(flavor = "multi_thread")]
async fn the_look_up_gives_its_tables_without_scripts() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        visit.without_scripts().await?;
        visit.open("lookup/").await?;
        let tables = visit.text("#tables").await?;
        for khz in ["455", "465", "470", "475"] {
            ensure!(
                tables.contains(&format!("IF {khz} kHz")),
                "no table for {khz}"
            );
        }
        let entry = visit.element("section.entry").await?;
        ensure!(
            !entry.is_displayed().await?,
            "boxes that nobody reads are shown"
        );
        visit.no_sideways_scroll().await
    })
    .await
}
