//! The search: by keyboard, by link, without a network, without scripts, from its folder.

use anyhow::{Result, ensure};
use checks::built::Unpacked;
use checks::{Engine, Visit, Window, journey};
use superhet::catalogue::catalogue;
use thirtyfour::Key;

const PAGE: &str = "search/";
/// The titles that are shown, list by list, in their order.
const SHOWN: &str = "return [...document.querySelectorAll('.index li')] \
    .filter((line) => line.offsetParent !== null) \
    .map((line) => line.querySelector('a').textContent)";

async fn shown(visit: &Visit) -> Result<Vec<String>> {
    visit.script(SHOWN).await
}

#[tokio::test(flavor = "multi_thread")]
async fn a_word_is_found_and_followed_by_keyboard() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            visit.open(PAGE).await?;
            visit.ready().await?;
            let all = shown(&visit).await?.len();
            visit.tab_to("#wanted").await?;
            visit.type_text("Padder").await?;
            let found = shown(&visit).await?;
            ensure!(
                found.first().is_some_and(|first| first == "padder") && found.len() < all,
                "{found:?}"
            );
            let said = visit.text("#found").await?;
            ensure!(
                said.starts_with(&format!("{} found: ", found.len())),
                "{said}"
            );
            visit.press(Key::Enter).await?;
            ensure!(visit.focused("a[href$='#term-padder']").await?);
            visit.press(Key::Enter).await?;
            visit
                .until(
                    "the word is open",
                    "return location.hash === '#term-padder'",
                )
                .await?;
            // Back, the page shows what was looked for.
            visit.browser.back().await?;
            visit.ready().await?;
            ensure!(shown(&visit).await? == found);
            visit.accessible().await?;
            visit.no_sideways_scroll().await
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn lessons_sections_and_formulas_are_found_by_what_they_say() -> Result<()> {
    journey(Engine::Chromium, Window::LAPTOP, async |visit| {
        // A word of a lesson's own text, in no title; two beginnings; accents and capitals.
        for (wanted, holds) in [
            ("lamps%20rope", "Two circuits that share a swing"),
            ("critical%20coup", "Critical coupling"),
            ("TRACKING", "Tracking"),
            ("m%C3%ACxer", "mixer"),
        ] {
            visit.open(&format!("{PAGE}?q={wanted}")).await?;
            visit.ready().await?;
            let found = shown(&visit).await?;
            let holds_it = |title: &String| title.to_lowercase().contains(&holds.to_lowercase());
            ensure!(found.iter().any(holds_it), "{wanted}: {found:?}");
        }
        visit.open(&format!("{PAGE}?q=zzz%3Cb%3E")).await?;
        visit.ready().await?;
        ensure!(shown(&visit).await?.is_empty());
        let said = visit.text("#found").await?;
        ensure!(said.starts_with("Nothing here"), "{said}");
        // Taken away again, everything is there.
        visit.type_into("#wanted", "x\u{8}").await?;
        let all = shown(&visit).await?.len();
        ensure!(all > catalogue().len(), "{all}");
        Ok(())
    })
    .await
}

#[tokio::test(flavor = "multi_thread")]
async fn it_searches_without_a_network_and_from_a_folder() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            visit.open("").await?;
            visit
                .until(
                    "everything is kept",
                    "return document.getElementById('kept').dataset.kept === 'yes'",
                )
                .await?;
            visit.server.stop();
            visit.open(&format!("{PAGE}?q=image")).await?;
            visit.ready().await?;
            let found = shown(&visit).await?;
            ensure!(found.iter().any(|title| title == "image"), "{found:?}");

            let unpacked = Unpacked::for_engine(engine)?;
            visit.browser.goto(unpacked.url(PAGE)).await?;
            visit.ready().await?;
            visit.type_into("#wanted", "image").await?;
            ensure!(shown(&visit).await? == found);
            visit.quiet_console().await
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn without_scripts_it_is_an_index() -> Result<()> {
    journey(Engine::Chromium, Window::NARROW_PHONE, async |visit| {
        visit.without_scripts().await?;
        visit.open(PAGE).await?;
        for entry in catalogue() {
            visit
                .element(&format!(".index a[href$='formulas/#{}']", entry.name))
                .await?;
        }
        let box_shown = visit.element("#search").await?.is_displayed().await?;
        ensure!(!box_shown, "a box that does nothing is shown");
        visit.no_sideways_scroll().await
    })
    .await
}
