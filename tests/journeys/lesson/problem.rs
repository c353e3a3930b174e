//! Problems: a wrong answer gets its mistake named, the right one counts in any unit.

use super::{FIRST, IMAGE, SECOND};
use crate::drawn::Drawn;
use anyhow::{Context, Result, anyhow, ensure};
use checks::{Engine, Visit, Window, journey};
use serde_json::Value;
use superhet::problems::problem::NumberAnswer;
use superhet::units::{Kind, display, parse};
use thirtyfour::Key;

/// Each lesson with the family whose problem stands in it.
const PROBLEMS: [(&str, &str); 3] = [
    (FIRST, "capacitor-swing"),
    (SECOND, "oscillator-from-dial"),
    (IMAGE, "image-of-a-station"),
];

const BOX: &str = "section.problem .desk .part:last-child input[type=text]";
const MARK: &str = "section.problem .desk .part:last-child [type=submit]";
const MARKING: &str = "section.problem .desk .marking";

/// The right answer in another unit than the one it is asked in, where it has a unit.
fn in_another_unit(right: &NumberAnswer) -> Result<String> {
    let rounded =
        parse::value(right.kind, &right.text, None).map_err(|error| anyhow!("{error}"))?;
    Ok(match right.kind {
        Kind::Frequency if right.text.ends_with(" kHz") => {
            format!("{:.4} MHz", rounded / 1e6)
        }
        Kind::Frequency => format!("{} kHz", rounded / 1e3),
        _ => right.text.clone(),
    })
}

async fn answer(visit: &Visit, typed: &str) -> Result<String> {
    visit.type_into(BOX, typed).await?;
    visit.click(MARK).await?;
    visit.text(MARKING).await
}

/// What the notebook tells of a family: `[right,wrong,box,due,{mistake:times}]`.
pub(crate) async fn tally(visit: &Visit, family: &str) -> Result<Value> {
    let notebook = "return localStorage.getItem('before-the-bench:notebook') ?? '{}'";
    let notebook: Value = serde_json::from_str(&visit.script::<String>(notebook).await?)?;
    Ok(notebook["problems"][family].clone())
}

/// Works the problem of a page at an address: first as somebody who cannot be read, then
/// with every mistake that has a name, then rightly.
pub(crate) async fn worked(visit: &Visit, address: &str, family: &str) -> Result<()> {
    let drawn = Drawn::of(family)?;
    let right = drawn.answer()?;
    visit
        .browser
        .goto(&format!("{address}#problem={}", drawn.code))
        .await?;
    visit.ready().await?;
    let scene = visit.text("section.problem .desk .scene").await?;
    ensure!(scene == drawn.problem.scene, "another problem: {scene}");

    let said = answer(visit, "about so much").await?;
    let kept = format!("return document.querySelector('{BOX}').value");
    ensure!(
        visit.script::<String>(&kept).await? == "about so much",
        "what was typed is gone"
    );
    ensure!(
        !said.is_empty() && tally(visit, family).await?.is_null(),
        "{said}"
    );

    ensure!(!right.mistakes.is_empty(), "{family} names no mistake");
    for mistake in &right.mistakes {
        let said = answer(visit, &display::text(right.kind, mistake.value)).await?;
        let marked = visit
            .element("section.problem .desk .marking.is-wrong")
            .await;
        marked.with_context(|| format!("{}: {said}", mistake.id))?;
        ensure!(said.contains(&mistake.says), "{}: {said:?}", mistake.id);
        let counted = &tally(visit, family).await?[4][&mistake.id];
        ensure!(counted == 1, "{} is tallied {counted} times", mistake.id);
    }

    let typed = in_another_unit(right)?;
    let said = answer(visit, &typed).await?;
    visit
        .element("section.problem .desk .marking.is-right")
        .await
        .with_context(|| said.clone())?;
    if typed != right.text {
        // Read back in the unit that was typed.
        let read = format!("Read as {}.", typed.replace("0 MHz", " MHz"));
        ensure!(said.contains(&read), "{typed:?} is told as {said:?}");
    }
    ensure!(tally(visit, family).await?[0] == 1, "not tallied as right");
    ensure!(
        tally(visit, family).await?[2] == 1,
        "with mistakes on the way the family stays in the first box"
    );
    let steps = visit.text("section.problem .desk .steps").await?;
    for step in &drawn.problem.parts[0].steps {
        ensure!(steps.contains(step.as_str()), "{step:?} is not shown");
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn mistakes_are_named_and_the_right_answer_counts_in_any_unit() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            for (lesson, family) in PROBLEMS {
                let address = visit.server.url(lesson);
                worked(&visit, &address, family).await.context(family)?;
                visit.no_sideways_scroll().await.context(family)?;
                visit.fit_for_fingers().await.context(family)?;
            }
            visit.accessible().await
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn the_unit_button_counts_where_no_unit_is_typed() -> Result<()> {
    let drawn = Drawn::of("oscillator-from-dial")?;
    let megahertz = in_another_unit(drawn.answer()?)?;
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        visit
            .open(&format!("{SECOND}#problem={}", drawn.code))
            .await?;
        visit.ready().await?;
        visit
            .click("section.problem .desk .unit-buttons button:nth-child(2)")
            .await?;
        let said = answer(&visit, megahertz.trim_end_matches(" MHz")).await?;
        visit
            .element("section.problem .desk .marking.is-right")
            .await
            .context(said)?;
        Ok(())
    })
    .await
}

#[tokio::test(flavor = "multi_thread")]
async fn help_waits_for_an_attempt_and_another_one_follows() -> Result<()> {
    let drawn = Drawn::of("oscillator-from-dial")?;
    let part = &drawn.problem.parts[0];
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        visit
            .open(&format!("{SECOND}#problem={}", drawn.code))
            .await?;
        visit.ready().await?;
        let help = visit.element("section.problem .desk .help").await?;
        ensure!(
            !help.is_displayed().await?,
            "there is help before an attempt"
        );
        answer(&visit, "1 kHz").await?;
        for hint in &part.hints {
            visit.click("section.problem [data-do=hint]").await?;
            let hints = visit.text("section.problem .desk .hints").await?;
            ensure!(
                hints.contains(hint.as_str()),
                "{hint:?} is not in {hints:?}"
            );
        }
        visit.click("section.problem [data-do=show]").await?;
        let steps = visit.text("section.problem .desk .steps").await?;
        ensure!(steps.contains(&drawn.answer()?.text), "{steps}");
        visit.click("section.problem [data-do=another]").await?;
        let code = visit.text("section.problem .desk .again a").await?;
        ensure!(code != drawn.code, "the same problem again");
        ensure!(
            visit.focused(".desk .scene").await?,
            "the focus is not at the new one"
        );
        Ok(())
    })
    .await
}

/// Waits until all of an element is in the window.
async fn comes_into_view(visit: &Visit, css: &str) -> Result<()> {
    let inside = format!(
        "const {{ top, bottom }} = document.querySelector('{css}').getBoundingClientRect(); \
         return bottom > top && top >= 0 && bottom <= innerHeight"
    );
    visit.until(css, &inside).await
}

/// Puts what is pressed at the lower edge of the window, as it may stand when it is pressed.
async fn at_the_foot(visit: &Visit, css: &str) -> Result<()> {
    let put = format!(
        "document.querySelector('{css}').scrollIntoView({{ block: 'end', behavior: 'instant' }})"
    );
    visit.script::<()>(&put).await
}

#[tokio::test(flavor = "multi_thread")]
async fn what_is_said_of_a_wrong_answer_comes_into_view_with_the_help() -> Result<()> {
    let drawn = Drawn::of("oscillator-from-dial")?;
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            visit
                .open(&format!("{SECOND}#problem={}", drawn.code))
                .await?;
            visit.ready().await?;
            visit.type_into(BOX, "1 kHz").await?;
            at_the_foot(&visit, BOX).await?;
            visit.press(Key::Enter).await?;
            comes_into_view(&visit, MARKING).await?;
            ensure!(visit.focused(BOX).await?, "the focus went elsewhere");
            comes_into_view(&visit, "section.problem .desk .help").await?;
            let hint = "section.problem .desk [data-do=hint]";
            visit.tab_to(hint).await?;
            at_the_foot(&visit, hint).await?;
            visit.press(Key::Enter).await?;
            comes_into_view(&visit, "section.problem .desk .hints li").await?;
            comes_into_view(&visit, hint).await?;
            ensure!(visit.focused(hint).await?, "the focus went elsewhere");
            // What cannot be read is said in view too.
            visit.type_into(BOX, "-20").await?;
            at_the_foot(&visit, BOX).await?;
            visit.press(Key::Enter).await?;
            let said = "return document.querySelector('.desk .marking').textContent \
                .includes('leave the sign off')";
            visit.until("the sign is told", said).await?;
            comes_into_view(&visit, MARKING).await
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn the_head_is_one_row_of_tabs_and_a_meaning_leads_back_below_the_edge() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            visit.open(SECOND).await?;
            let tops = "return [...document.querySelectorAll('.tabs a')] \
                .map((tab) => tab.getBoundingClientRect().top)";
            let tops: Vec<f64> = visit.script(tops).await?;
            ensure!(tops.iter().all(|top| *top == tops[0]), "{tops:?}");
            visit.ready().await?;
            visit.click(".meanings a.back").await?;
            let low = "const used = document.querySelector(location.hash); \
                return used && used.getBoundingClientRect().top > 80";
            visit.until("the sentence is in view", low).await
        })
        .await?;
    }
    Ok(())
}
