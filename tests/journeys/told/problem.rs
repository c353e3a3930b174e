//! A problem with a number: typed, refused, wrong, helped, shown, and another done rightly.

use super::{answered_rightly, are_hidden, asked, plain};
use crate::drawn::Drawn;
use anyhow::{Result, ensure};
use checks::{Engine, Visit, Window, journey};
use superhet::problems::problem::Part;
use thirtyfour::Key;

const LESSON: &str = "lessons/oscillator-mixer-difference/";
const FAMILY: &str = "oscillator-from-dial";
const DESK: &str = "#problem-oscillator-from-dial .desk";
const BOX: &str = "#problem-oscillator-from-dial .desk input[type=text]";

async fn open(visit: &Visit, drawn: &Drawn) -> Result<()> {
    visit
        .open(&format!("{LESSON}#problem={}", drawn.code))
        .await?;
    visit.ready().await?;
    visit.element(BOX).await?;
    visit.listen().await
}

/// Answers in the box, which keeps the focus; what is said is said once, and describes the
/// box from then on.
async fn not_right(visit: &Visit, text: &str) -> Result<String> {
    visit.type_over(text).await?;
    visit.press(Key::Enter).await?;
    visit.element(&format!("{DESK} .marking > p")).await?;
    let spoken = visit.spoken().await?;
    let [said] = &spoken[..] else {
        anyhow::bail!("{text:?} is told by {spoken:?}");
    };
    let told = visit.hears("textbox", "").await?;
    ensure!(
        plain(&told.description) == plain(said),
        "{told:?}, said {said:?}"
    );
    Ok(said.clone())
}

/// What is not told of before an attempt.
fn unasked() -> [String; 4] {
    ["help", "hints", "steps", "after"].map(|it| format!("{DESK} .{it}"))
}

async fn nothing_is_offered(visit: &Visit) -> Result<()> {
    let unasked = unasked();
    are_hidden(visit, &unasked.each_ref().map(String::as_str)).await
}

#[tokio::test(flavor = "multi_thread")]
async fn a_wrong_answer_is_said_and_help_is_said_piece_by_piece() -> Result<()> {
    let drawn = Drawn::of(FAMILY)?;
    let part = &drawn.problem.parts[0];
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            open(&visit, &drawn).await?;
            nothing_is_offered(&visit).await?;
            are_hidden(&visit, &["#problem-oscillator-from-dial .on-paper"]).await?;
            let told = visit.tab_to_hear(BOX).await?;
            ensure!(told.is("textbox", &asked(part)), "{told:?}");
            ensure!(told.description.is_empty(), "{told:?}");
            what_is_not_right_is_said(&visit).await?;
            units_are_told(&visit).await?;
            help_is_given(&visit, part).await
        })
        .await?;
    }
    Ok(())
}

/// What cannot be read makes the box invalid and offers no help yet; what is wrong does not.
async fn what_is_not_right_is_said(visit: &Visit) -> Result<()> {
    let invalid = "return document.activeElement.ariaInvalid";
    not_right(visit, "about so much").await?;
    ensure!(visit.script::<String>(invalid).await? == "true");
    nothing_is_offered(visit).await?;
    not_right(visit, "1 kHz").await?;
    ensure!(visit.script::<String>(invalid).await? == "false");
    Ok(())
}

async fn units_are_told(visit: &Visit) -> Result<()> {
    for (place, unit) in ["kHz", "MHz"].iter().enumerate() {
        visit.press(Key::Tab).await?;
        visit.hears("button", unit).await?;
        visit.press(Key::Space).await?;
        visit.hears("button", unit).await?;
        let pressed = "return [...document.activeElement.parentElement.children] \
            .map((button) => button.ariaPressed === 'true')";
        let pressed: Vec<bool> = visit.script(pressed).await?;
        ensure!(pressed == [place == 0, place == 1], "{unit}: {pressed:?}");
    }
    let group = visit.told_of(&format!("{DESK} .unit-buttons")).await?;
    ensure!(group.name == "Unit", "{group:?}");
    Ok(())
}

/// Each hint is said once; the steps are told by the focus.
async fn help_is_given(visit: &Visit, part: &Part) -> Result<()> {
    visit.tab_to(&format!("{DESK} [data-do=hint]")).await?;
    for (place, hint) in part.hints.iter().enumerate() {
        visit.hears("button", "Give me a hint").await?;
        visit.press(Key::Enter).await?;
        let spoken = visit.spoken().await?;
        let once = spoken.len() == 1 && plain(&spoken[0]) == plain(hint);
        ensure!(once, "hint {place}, {hint:?}, is told as {spoken:?}");
    }
    visit.hears("button", "Show me the steps").await?;
    are_hidden(visit, &[&format!("{DESK} [data-do=hint]")]).await?;
    visit.press(Key::Enter).await?;
    visit.hears("list", "The steps").await?;
    ensure!(visit.spoken().await?.is_empty(), "the steps are told twice");
    are_hidden(visit, &[&format!("{DESK} .help")]).await
}

#[tokio::test(flavor = "multi_thread")]
async fn a_right_answer_keeps_the_reader_where_they_were() -> Result<()> {
    let drawn = Drawn::of(FAMILY)?;
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            open(&visit, &drawn).await?;
            answered_rightly(&visit, DESK, &drawn.problem.parts[0]).await?;
            let closed = format!("return document.querySelector('{BOX}').disabled");
            ensure!(
                visit.script::<bool>(&closed).await?,
                "it can be answered again"
            );

            // The next stop is what can be done now, not the head of the page.
            visit.press(Key::Tab).await?;
            visit.hears("button", "Another like this").await?;
            visit.press(Key::Enter).await?;
            let another = Drawn::at(&visit, DESK).await?;
            let told = visit.hears("group", "").await?;
            ensure!(told.is("group", &another.problem.scene), "{told:?}");
            ensure!(visit.spoken().await?.is_empty());
            answered_rightly(&visit, DESK, &another.problem.parts[0]).await?;
            visit.accessible().await
        })
        .await?;
    }
    Ok(())
}
