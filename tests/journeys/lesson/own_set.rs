//! A lesson's numbers for the reader's own set: switched, said, and never a wrong one.

use super::{IMAGE, SECOND};
use anyhow::{Result, ensure};
use checks::{Engine, Visit, Window, journey};
use serde_json::json;
use superhet::catalogue::evaluate;

const ABOVE: &str = r#"{"version":2,"if":"455 kHz","side":"above","region":1,"aerial-q":"75"}"#;
const BELOW: &str = r#"{"version":1,"dial":"909 kHz","if":"125 kHz","side":"below","region":1}"#;
const MINE: &str = "#numbers input[value=mine]";
const LESSON: &str = "#numbers input[value=lesson]";
/// The figures that a lesson's numbers show, as text.
const NUMBERS: &str = "return [...document.querySelectorAll('article data.number[data-kind]')] \
    .map((number) => number.textContent)";
const STAYS: &str =
    "return [...document.querySelectorAll('.stays')].map((line) => line.textContent)";

/// Keeps a set, then opens a lesson and waits for its switch.
async fn open_with(visit: &Visit, lesson: &str, set: &str) -> Result<()> {
    visit.open(lesson).await?;
    visit.ready().await?;
    let write = "localStorage.setItem('before-the-bench:set', arguments[0])";
    visit.browser.execute(write, vec![json!(set)]).await?;
    visit.open(lesson).await?;
    visit.ready().await?;
    visit.element("#numbers[data-shown]").await?;
    Ok(())
}

async fn shown(visit: &Visit, whose: &str) -> Result<()> {
    let script = format!("return document.getElementById('numbers').dataset.shown === '{whose}'");
    visit.until(whose, &script).await
}

/// The oscillator that the lesson's figure shows.
async fn in_figure(visit: &Visit, expression: &str) -> Result<()> {
    let answer = evaluate(expression).map_err(|refusal| anyhow::anyhow!("{refusal}"))?;
    let script = format!(
        "return Number(document.querySelector('figure [data-quantity=oscillator]') \
         .dataset.value) === {}",
        answer.value
    );
    visit.until(expression, &script).await
}

#[tokio::test(flavor = "multi_thread")]
async fn the_numbers_and_the_figure_follow_the_reader_s_set() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            open_with(&visit, SECOND, ABOVE).await?;
            let before: Vec<String> = visit.script(NUMBERS).await?;
            ensure!(before.contains(&"1559 kHz".to_owned()), "{before:?}");
            visit.tab_to(LESSON).await?;
            visit.press(thirtyfour::Key::Right).await?;
            shown(&visit, "mine").await?;
            let after: Vec<String> = visit.script(NUMBERS).await?;
            // By hand: 1089 + 455 = 1544.
            ensure!(after.contains(&"1544 kHz".to_owned()), "{after:?}");
            let changed = before
                .iter()
                .zip(&after)
                .filter(|(one, other)| one != other);
            let said = visit.text("#numbers [role=status]").await?;
            let count = changed.count();
            ensure!(
                said.starts_with(&format!(
                    "{count} numbers are now worked out for your set: IF 455 kHz"
                )),
                "{count}: {said}"
            );
            in_figure(&visit, "oscillator?dial=1089kHz&if=455kHz&side=above").await?;
            visit.no_sideways_scroll().await?;
            visit.accessible().await?;

            // The choice is there again, on another lesson too, and can be taken back.
            open_with(&visit, IMAGE, ABOVE).await?;
            shown(&visit, "mine").await?;
            visit.open(SECOND).await?;
            visit.ready().await?;
            visit.element("#numbers[data-shown=mine]").await?;
            in_figure(&visit, "oscillator?dial=1089kHz&if=455kHz&side=above").await?;
            visit
                .click(&format!("label:has(> {})", &LESSON[9..]))
                .await?;
            shown(&visit, "lesson").await?;
            let again: Vec<String> = visit.script(NUMBERS).await?;
            ensure!(again == before, "not the lesson's own again");
            in_figure(&visit, "oscillator?dial=1089kHz&if=470kHz&side=above").await
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn an_example_that_no_longer_applies_stays_and_says_why() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            open_with(&visit, SECOND, BELOW).await?;
            visit.click(&format!("label:has(> {})", &MINE[9..])).await?;
            shown(&visit, "mine").await?;
            let stays: Vec<String> = visit.script(STAYS).await?;
            let why =
                "Here the lesson’s numbers stay. The sums are for an oscillator above the station.";
            ensure!(stays.iter().any(|line| line == why), "{stays:?}");
            // The part itself is as its author wrote it.
            let part = "return document.getElementById('above-or-below') \
                .nextElementSibling.nextElementSibling.textContent";
            let part: String = visit.script(part).await?;
            ensure!(part.contains("619 kHz"), "{part}");
            // An oscillator below at 1089 − 125 kHz, where the text allows it.
            let numbers: Vec<String> = visit.script(NUMBERS).await?;
            ensure!(numbers.contains(&"964 kHz".to_owned()), "{numbers:?}");
            in_figure(&visit, "oscillator?dial=1089kHz&if=470kHz&side=above").await?;
            visit.accessible().await
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn without_a_set_the_switch_is_not_fetched() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        visit.open(SECOND).await?;
        visit.ready().await?;
        let text = visit.text("#numbers").await?;
        ensure!(text.contains("club’s own set"), "{text}");
        let asked = "return performance.getEntriesByType('resource') \
            .map((entry) => entry.name).filter((name) => /numbers|recipes/.test(name))";
        let asked: Vec<String> = visit.script(asked).await?;
        ensure!(asked.is_empty(), "fetched: {asked:?}");
        Ok(())
    })
    .await
}

#[tokio::test(flavor = "multi_thread")]
async fn the_switch_works_without_a_network() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        visit.open("").await?;
        let kept = "return document.getElementById('kept').dataset.kept === 'yes'";
        visit.until("everything is kept", kept).await?;
        visit.server.stop();
        open_with(&visit, SECOND, ABOVE).await?;
        visit.click(&format!("label:has(> {})", &MINE[9..])).await?;
        shown(&visit, "mine").await?;
        let numbers: Vec<String> = visit.script(NUMBERS).await?;
        ensure!(numbers.contains(&"1544 kHz".to_owned()), "{numbers:?}");
        Ok(())
    })
    .await
}
