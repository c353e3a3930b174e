//! Problems come alive one by one: each fetches its family when the reader comes near it,
//! stays on paper where that fails, and takes nothing away from under the reader.

use super::SECOND;
use anyhow::{Result, bail, ensure};
use checks::{Engine, Sent, Server, Visit, Window, built, journey, journey_on};
use site::render::Files;
use site::server::read_folder;
use std::time::Duration;
use thirtyfour::{By, Key};

/// What the last of the second lesson's problems needs.
const FAMILY: &str = "family-capacitor-swing.";
/// That problem.
const PROBLEM: &str = "#problem-capacitor-swing";
/// The first fold of it as it stands on paper.
const HINT: &str = "#problem-capacitor-swing .on-paper summary";

/// The families that pages, not the worker of the offline copy, have asked for.
fn fetched(visit: &Visit) -> Vec<String> {
    let sent = visit.server.sent().into_iter();
    sent.filter(|sent| !sent.by_worker && sent.path.starts_with("assets/family-"))
        .map(|sent| sent.path)
        .collect()
}

/// Whether the problem is alive, as a script.
fn alive(then: &str) -> String {
    format!("return document.querySelector('{PROBLEM} .desk') {then} null")
}

async fn scroll_to(visit: &Visit, css: &str) -> Result<()> {
    let show = format!(
        "document.querySelector('{css}').scrollIntoView({{ block: 'center', behavior: 'instant' }})"
    );
    visit.script(&show).await
}

#[tokio::test(flavor = "multi_thread")]
async fn a_family_is_fetched_when_the_reader_comes_near() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            visit.open(SECOND).await?;
            visit.ready().await?;
            let early = fetched(&visit);
            ensure!(early.is_empty(), "fetched before anybody came: {early:?}");
            ensure!(visit.script::<bool>(&alive("===")).await?);
            scroll_to(&visit, PROBLEM).await?;
            visit.until("the problem is alive", &alive("!==")).await
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn what_is_before_the_reader_keeps_its_words_and_its_place() -> Result<()> {
    let scene =
        |of: &str| format!("return document.querySelector('{PROBLEM} {of} .scene').textContent");
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            visit.open(SECOND).await?;
            visit.ready().await?;
            // At one stroke to the problem, as by a link or the end key.
            let on_paper: String = visit.script(&scene(".on-paper")).await?;
            scroll_to(&visit, PROBLEM).await?;
            visit.until("the problem is alive", &alive("!==")).await?;
            let on_the_desk: String = visit.script(&scene(".desk")).await?;
            ensure!(
                on_the_desk == on_paper,
                "{on_paper:?} became {on_the_desk:?}"
            );

            // At one stroke below the problem, which comes alive out of sight.
            visit.open("lessons/").await?;
            visit.open(SECOND).await?;
            visit.ready().await?;
            let place = "return document.querySelector('.carry').getBoundingClientRect().top";
            let past_it = format!(
                "const problem = document.querySelector('{PROBLEM}').getBoundingClientRect(); \
                 scrollTo({{ top: scrollY + problem.bottom + 20, behavior: 'instant' }});"
            );
            let before: f64 = visit.script(&format!("{past_it} {place}")).await?;
            visit.until("the problem is alive", &alive("!==")).await?;
            let after: f64 = visit.script(place).await?;
            ensure!(
                (after - before).abs() < 2.0,
                "moved from {before} to {after}"
            );
            Ok(())
        })
        .await?;
    }
    Ok(())
}

/// Waits until the family was sent, and not word that there is none, and a little longer,
/// for the page to do with it what it will.
async fn family_came(visit: &Visit) -> Result<()> {
    let it = |sent: &Sent| !sent.by_worker && sent.status == 200 && sent.path.contains(FAMILY);
    for _ in 0..300 {
        if visit.server.sent().iter().any(it) {
            tokio::time::sleep(Duration::from_millis(300)).await;
            return Ok(());
        }
        tokio::time::sleep(Duration::from_millis(30)).await;
    }
    bail!("the family was not asked for again")
}

/// The built site, and the same without one problem family.
fn with_and_without() -> Result<(Files, Files)> {
    let whole = read_folder(&built::site()?)?;
    let mut without = whole.clone();
    without.retain(|path, _| !path.contains(FAMILY));
    ensure!(without.len() < whole.len(), "no {FAMILY} is built");
    Ok((whole, without))
}

#[tokio::test(flavor = "multi_thread")]
async fn a_problem_stays_on_paper_until_its_family_can_be_had() -> Result<()> {
    for engine in Engine::ALL {
        let (whole, without) = with_and_without()?;
        let server = Server::start_with(without, "/")?;
        journey_on(server, engine, Window::PHONE, async |visit| {
            visit.open(SECOND).await?;
            visit.ready().await?;
            scroll_to(&visit, PROBLEM).await?;
            let excuse = visit.text(&format!("{PROBLEM} .not-alive")).await?;
            ensure!(excuse.contains("the site answers 404"), "{excuse}");

            // Whoever reads a hint is left to read it, even when the family is there again.
            visit.click(HINT).await?;
            ensure!(!visit.text(&format!("{PROBLEM} .hint p")).await?.is_empty());
            visit.server.publish(whole);
            visit.script::<()>("document.activeElement.blur()").await?;
            let focus = format!("document.querySelector('{HINT}').focus()");
            visit.script::<()>(&focus).await?;
            family_came(&visit).await?;
            ensure!(
                visit.script::<bool>(&alive("===")).await?,
                "taken away from under a reader"
            );

            // Folded again, the problem comes alive, and the focus goes to what is asked.
            visit.press(Key::Enter).await?;
            visit.until("the problem is alive", &alive("!==")).await?;
            ensure!(
                visit.focused(&format!("{PROBLEM} .desk .scene")).await?,
                "the focus is lost"
            );
            let excuse = By::Css(format!("{PROBLEM} .not-alive"));
            ensure!(
                visit.browser.find(excuse).await.is_err(),
                "it still excuses itself"
            );
            // What was missing is an error that the console rightly tells.
            visit.console().await?;
            Ok(())
        })
        .await?;
    }
    Ok(())
}
