//! The portable edition: unzipped and opened from its folder, without any host.

use crate::lesson::{figure, problem};
use crate::lookup;
use crate::practice;
use anyhow::{Context, Result, ensure};
use checks::built::{Unpacked, portable_files};
use checks::{Engine, Window, journey};

/// The wasm programs' pages say when they are live; others have nothing to wait for.
const LIVE: &str =
    "return !document.body.dataset.program || document.body.hasAttribute('data-ready')";

#[tokio::test(flavor = "multi_thread")]
async fn every_page_opens_from_its_folder_and_comes_alive() -> Result<()> {
    let files = portable_files()?;
    let pages: Vec<&str> = files
        .keys()
        .filter_map(|path| path.strip_suffix("index.html"))
        .collect();
    ensure!(pages.len() > 1, "only {pages:?}");
    for engine in Engine::ALL {
        let unpacked = Unpacked::for_engine(engine)?;
        journey(engine, Window::LAPTOP, async |visit| {
            for page in &pages {
                visit.browser.goto(unpacked.url(page)).await?;
                visit.until(&format!("{page} is live"), LIVE).await?;
                let heading = visit.text("h1").await.with_context(|| (*page).to_owned())?;
                ensure!(!heading.is_empty(), "{page} has no heading");
                let rules: f64 = visit.script("return document.styleSheets.length").await?;
                ensure!(rules > 0.0, "{page} has no styles");
                visit
                    .quiet_console()
                    .await
                    .with_context(|| (*page).to_owned())?;
            }
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn the_look_up_answers_and_remembers_without_a_host() -> Result<()> {
    for engine in Engine::ALL {
        let unpacked = Unpacked::for_engine(engine)?;
        journey(engine, Window::PHONE, async |visit| {
            let page = unpacked.url("lookup/");
            visit
                .browser
                .goto(format!("{page}?dial=1200kHz&if=465kHz&side=below"))
                .await?;
            visit.ready().await?;
            let by_link = "image?dial=1200kHz&if=465kHz&side=below";
            visit.shows(lookup::RESULTS, "image", by_link).await?;
            visit.type_into("#dial", "1.4 MHz").await?;
            let typed = "image?dial=1400kHz&if=465kHz&side=below";
            visit.shows(lookup::RESULTS, "image", typed).await?;
            visit.browser.goto(&page).await?;
            visit.ready().await?;
            visit.shows(lookup::RESULTS, "image", typed).await
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn a_lesson_is_alive_without_a_host() -> Result<()> {
    for engine in Engine::ALL {
        let unpacked = Unpacked::for_engine(engine)?;
        journey(engine, Window::LAPTOP, async |visit| {
            let lesson = unpacked.url("lessons/why-one-fixed-frequency/");
            visit.browser.goto(&lesson).await?;
            visit.ready().await?;
            figure::FIRST_FIGURE.moved_by_keys(&visit).await?;
            problem::worked(&visit, &lesson, "capacitor-swing").await?;
            visit.click(".tick button").await?;
            visit.browser.goto(unpacked.url("")).await?;
            visit.ready().await?;
            let next = visit.text("#next-step .what").await?;
            ensure!(next.starts_with("Continue: lesson 2, "), "{next}");
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn practice_works_without_a_host() -> Result<()> {
    for engine in Engine::ALL {
        let unpacked = Unpacked::for_engine(engine)?;
        journey(engine, Window::PHONE, async |visit| {
            visit.browser.goto(unpacked.url("practice/")).await?;
            visit.ready().await?;
            visit.click("#begin").await?;
            practice::answer_rightly(&visit).await
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn its_links_lead_from_file_to_file() -> Result<()> {
    for engine in Engine::ALL {
        let unpacked = Unpacked::for_engine(engine)?;
        journey(engine, Window::LAPTOP, async |visit| {
            visit.browser.goto(unpacked.url("")).await?;
            visit.click("nav a[href*=about]").await?;
            visit
                .until(
                    "the link was followed",
                    "return location.pathname.endsWith('/about/index.html')",
                )
                .await?;
            visit.click("header a").await?;
            visit
                .until(
                    "the way home was found",
                    "return document.querySelector('h1') !== null \
                && !location.pathname.includes('/about/')",
                )
                .await
        })
        .await?;
    }
    Ok(())
}

#[test]
fn it_carries_neither_worker_nor_interface_for_scripts() -> Result<()> {
    let files = portable_files()?;
    ensure!(files.contains_key("index.html"));
    let stray: Vec<&String> = files
        .keys()
        .filter(|path| path.starts_with("api/") || *path == "sw.js" || path.ends_with(".wasm"))
        .collect();
    ensure!(stray.is_empty(), "{stray:?}");
    Ok(())
}
