//! What a screen reader is told on the way through the site by keys alone: the role and name
//! of whatever gets the focus, what live regions say and how often, and what stays hidden.

mod check;
mod choice;
mod figure;
mod practice;
mod prediction;
mod problem;

use anyhow::{Result, ensure};
use checks::Visit;
use superhet::problems::problem::{Answer, Choice, Part};
use thirtyfour::Key;

/// Text as it is told: with plain spaces.
fn plain(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// A question as it is told: with how closely it is asked.
fn asked(part: &Part) -> String {
    match &part.answer {
        Answer::Number(number) if !number.precision_text.is_empty() => {
            format!("{} Answer {}.", part.ask, number.precision_text)
        }
        _ => part.ask.clone(),
    }
}

/// Refuses parts that a screen reader finds where nobody sees anything. Chromium alone can be
/// asked; WebKit passes whatever is hidden or not.
async fn are_hidden(visit: &Visit, parts: &[&str]) -> Result<()> {
    for css in parts {
        let found = visit.is_in_tree(css).await?;
        ensure!(found != Some(true), "{css} is told of while it is hidden");
    }
    Ok(())
}

/// Refuses parts that a screen reader does not find. Chromium alone can be asked; WebKit passes
/// whatever is hidden or not.
async fn are_told_of(visit: &Visit, parts: &[&str]) -> Result<()> {
    for css in parts {
        let found = visit.is_in_tree(css).await?;
        ensure!(found != Some(false), "{css} is not told of");
    }
    Ok(())
}

/// Answers the open part of a desk rightly by keys; what is asked is told on the way, and
/// nothing is said: how it went is told by the focus.
async fn answered_rightly(visit: &Visit, desk: &str, part: &Part) -> Result<()> {
    let open = format!("{desk} .part:last-child");
    let told = visit.tab_to_hear(&format!("{open} .answer input")).await?;
    match &part.answer {
        Answer::Number(number) => {
            ensure!(told.is("textbox", &asked(part)), "{told:?}");
            visit.type_over(&number.text).await?;
            visit.press(Key::Enter).await?;
        }
        Answer::Choice(choices) => {
            ensure!(told.is("radio", &choices[0].text), "{told:?}");
            let group = visit.told_of(&format!("{open} .choices")).await?;
            ensure!(group.is("radiogroup", &asked(part)), "{group:?}");
            takes_the_right_one(visit, choices).await?;
            marks(visit, &open).await?;
        }
    }
    visit.element(&format!("{desk} .is-right")).await?;
    the_focus_tells_alone(visit).await
}

/// How it went is told by the focus, and no region says it besides.
async fn the_focus_tells_alone(visit: &Visit) -> Result<()> {
    let told = visit.hears("group", "").await?;
    let said = visit.text(":focus").await?;
    let is_told = !said.is_empty() && told.is("group", &said);
    ensure!(is_told, "{told:?} for {said:?}");
    let spoken = visit.spoken().await?;
    ensure!(spoken.is_empty(), "said besides: {spoken:?}");
    Ok(())
}

/// Takes the first of the choices that have the focus, and goes on to the right one.
async fn takes_the_right_one(visit: &Visit, choices: &[Choice]) -> Result<()> {
    visit.press(Key::Space).await?;
    for choice in choices {
        if choice.right {
            visit.hears("radio", &choice.text).await?;
            break;
        }
        visit.press(Key::Down).await?;
    }
    Ok(())
}

/// Goes on to the button that marks what was chosen, and presses it.
async fn marks(visit: &Visit, within: &str) -> Result<()> {
    visit.tab_to(&format!("{within} [type=submit]")).await?;
    visit.hears("button", "Mark it").await?;
    visit.press(Key::Enter).await
}
