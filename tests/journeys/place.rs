//! The reader's place: what comes next, carried to another browser, wiped, and damaged.

use crate::lookup;
use anyhow::{Context, Result, ensure};
use checks::{Engine, Visit, Window, journey};
use serde_json::{Value, json};
use std::time::{Duration, Instant};
use std::{env, fs};

const LESSON: &str = "lessons/why-one-fixed-frequency/";
const NEXT: &str = "#next-step .what";
const SET: &str = "dial=909kHz&if=465kHz&side=below";
const NOTEBOOK: &str = "return localStorage.getItem('before-the-bench:notebook') ?? ''";
const KEYS: &str = "return Object.keys(localStorage) \
    .filter((name) => /:(notebook|set)/.test(name))";

async fn open(visit: &Visit, page: &str) -> Result<()> {
    visit.open(page).await?;
    visit.ready().await
}

/// Ticks the lesson that is open.
async fn tick(visit: &Visit) -> Result<()> {
    visit.click(".tick button").await?;
    let ticked = visit.text(".tick .ticked").await?;
    ensure!(ticked.contains("Ticked in your notebook on"), "{ticked:?}");
    Ok(())
}

/// Reads lesson 1 to its end and chooses a set, as somebody does on a first evening.
async fn one_evening(visit: &Visit) -> Result<()> {
    open(visit, LESSON).await?;
    tick(visit).await?;
    open(visit, "lookup/?dial=909kHz&if=465kHz&side=below").await?;
    visit.type_into("#dial", "909").await?;
    visit
        .shows(lookup::RESULTS, "image", &format!("image?{SET}"))
        .await
}

/// Everything of that evening is there.
async fn all_is_there(visit: &Visit) -> Result<()> {
    open(visit, "lessons/").await?;
    let lines = "return [...document.querySelectorAll('li[data-lesson][data-done]')] \
        .map((line) => line.dataset.lesson)";
    let ticked: Vec<String> = visit.script(lines).await?;
    ensure!(ticked == ["why-one-fixed-frequency"], "ticked: {ticked:?}");
    open(visit, "lookup/").await?;
    visit
        .shows(lookup::RESULTS, "image", &format!("image?{SET}"))
        .await?;
    open(visit, "").await?;
    let next = visit.text(NEXT).await?;
    ensure!(next.starts_with("Continue: lesson 2, "), "{next}");
    Ok(())
}

/// Nothing is kept, and the first page speaks as to a new reader.
async fn nothing_is_there(visit: &Visit) -> Result<()> {
    let kept: Vec<String> = visit.script(KEYS).await?;
    ensure!(kept.is_empty(), "kept: {kept:?}");
    let next = visit.text(NEXT).await?;
    ensure!(next.starts_with("Start: lesson 1, "), "{next}");
    Ok(())
}

/// The link that carries the place, from the page that is open.
pub(crate) async fn link(visit: &Visit) -> Result<String> {
    visit.click("#place-link").await?;
    let link = "return document.getElementById('place-box').value";
    visit.script(link).await
}

async fn wipe(visit: &Visit) -> Result<()> {
    visit.click("#place details > summary").await?;
    visit.click("#place-wipe").await?;
    let said = visit.text("#place-said").await?;
    ensure!(said.contains("Wiped"), "{said}");
    nothing_is_there(visit).await
}

/// Takes what is offered at the head of the page.
async fn take(visit: &Visit) -> Result<()> {
    let offer = visit.text(".offer").await?;
    ensure!(
        offer.contains("1 lesson ticked") && offer.contains("a set"),
        "{offer}"
    );
    ensure!(
        visit.script::<String>(NOTEBOOK).await?.is_empty(),
        "taken without asking"
    );
    visit.click(".offer [data-do=take]").await?;
    let done = visit.text(".offer").await?;
    ensure!(done.starts_with("Done."), "{done}");
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn home_says_what_comes_next() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            open(&visit, "").await?;
            nothing_is_there(&visit).await?;
            visit.click("#next-step").await?;
            visit
                .until(
                    "lesson 1 is open",
                    "return document.querySelector('article[data-lesson=why-one-fixed-frequency]') \
                    !== null && document.body.hasAttribute('data-ready')",
                )
                .await?;
            one_evening(&visit).await?;
            all_is_there(&visit).await?;
            visit.click("#next-step").await?;
            visit
                .until(
                    "lesson 2 is open",
                    "return document.querySelector('article[data-lesson]')?.dataset.lesson \
                    === 'oscillator-mixer-difference'",
                )
                .await
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn a_link_carries_the_place() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            one_evening(&visit).await?;
            open(&visit, "").await?;
            let link = link(&visit).await?;
            ensure!(
                link.starts_with(&format!("{}#place=", visit.server.url(""))),
                "{link}"
            );
            wipe(&visit).await?;

            open(&visit, "about/").await?;
            visit.browser.goto(&link).await?;
            visit.ready().await?;
            take(&visit).await?;
            visit.no_sideways_scroll().await?;
            let hash: String = visit.script("return location.hash").await?;
            ensure!(hash.is_empty(), "the address still carries the place");
            all_is_there(&visit).await
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn a_file_carries_the_place() -> Result<()> {
    let folder = env::temp_dir().join(format!("before-the-bench-place-{}", std::process::id()));
    fs::create_dir_all(&folder)?;
    let file = folder.join("before-the-bench.json");
    let walked = journey(Engine::Chromium, Window::LAPTOP, async |visit| {
        let here = json!({"behavior": "allow", "downloadPath": folder});
        visit
            .browser
            .cdp()
            .send_raw("Browser.setDownloadBehavior", here)
            .await?;
        one_evening(&visit).await?;
        open(&visit, "").await?;
        visit.click("#place-export").await?;
        let started = Instant::now();
        while !file.exists() {
            ensure!(
                started.elapsed() < Duration::from_secs(10),
                "nothing was saved"
            );
            tokio::time::sleep(Duration::from_millis(30)).await;
        }
        let saved: Value = serde_json::from_str(&fs::read_to_string(&file)?)?;
        ensure!(saved["set"]["if"] == "465 kHz", "{saved}");
        wipe(&visit).await?;

        let input = visit.element("#place-file").await?;
        input.send_keys(file.to_string_lossy().as_ref()).await?;
        take(&visit).await?;
        all_is_there(&visit).await
    })
    .await;
    fs::remove_dir_all(&folder)?;
    walked
}

#[tokio::test(flavor = "multi_thread")]
async fn a_damaged_notebook_is_put_aside_and_told() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            open(&visit, "").await?;
            for damaged in [
                "{\"version\":1,\"lessons\":",
                "{\"version\":9}",
                "<b>mine</b>",
            ] {
                let write = "localStorage.setItem('before-the-bench:notebook', arguments[0])";
                visit.browser.execute(write, vec![json!(damaged)]).await?;
                open(&visit, LESSON).await?;
                let told = visit.text("main > .note").await.context(damaged)?;
                ensure!(told.contains("put aside"), "{damaged}: {told}");
                let aside = "return localStorage.getItem('before-the-bench:notebook:set-aside')";
                ensure!(visit.script::<String>(aside).await? == damaged);
                tick(&visit).await.context(damaged)?;
                open(&visit, "").await?;
                let next = visit.text(NEXT).await?;
                ensure!(
                    next.starts_with("Continue: lesson 2, "),
                    "{damaged}: {next}"
                );
            }
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn a_link_that_carries_no_place_is_told() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        for letters in [
            "",
            "!!!",
            "eyJ2ZXJzaW9uIjo",
            "eyJ2ZXJzaW9uIjo5fQ",
            &"A".repeat(90_000),
        ] {
            open(&visit, "about/").await?;
            open(&visit, &format!("#place={letters}")).await?;
            let told = visit.text(".offer").await?;
            ensure!(told.contains("holds no place"), "{told}");
            let take = "return document.querySelector('[data-do=take]') === null";
            ensure!(
                visit.script::<bool>(take).await?,
                "it can be taken: {letters:.20}"
            );
            nothing_is_there(&visit).await?;
        }
        Ok(())
    })
    .await
}
