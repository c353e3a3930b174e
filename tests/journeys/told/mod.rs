//! What a screen reader is told on the way through the site by keys alone: the role and name
//! of whatever gets the focus, what live regions say and how often, and what stays hidden.

mod check;
mod choice;
mod figure;
mod practice;
mod prediction;
mod problem;

use anyhow::{Context, Result, anyhow, ensure};
use checks::Visit;
use site::content::Content;
use superhet::problems::problem::{Answer, Part};
use superhet::problems::{Level, Problem, ProblemCode, Registered, generate};
use thirtyfour::Key;

/// A problem, and the code that opens it.
struct Drawn {
    problem: Problem,
    code: String,
}

impl Drawn {
    /// Any seed does: the problem is drawn anew from it here and on the page.
    fn of(content: &Content, family: &str) -> Result<Self> {
        let found = content.families.find(family);
        let Registered { number, family } = found.context(family.to_owned())?;
        let code = ProblemCode {
            family: *number,
            revision: family.revision,
            level: Level::One,
            seed: 20_261,
        };
        Ok(Self {
            problem: generate(family, code.level, code.seed)?,
            code: code.encode().map_err(|error| anyhow!("{error}"))?,
        })
    }

    /// The problem that a desk's own link names.
    async fn at(visit: &Visit, content: &Content, desk: &str) -> Result<Self> {
        let code = visit.text(&format!("{desk} .again a")).await?;
        let named = ProblemCode::decode(&code).map_err(|error| anyhow!("{code}: {error}"))?;
        let family = content.families.numbered(named.family, named.revision);
        let family = &family.with_context(|| code.clone())?.family;
        let problem = generate(family, named.level, named.seed)?;
        Ok(Self { problem, code })
    }
}

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

/// Refuses parts that a screen reader finds where nobody sees anything.
async fn are_hidden(visit: &Visit, parts: &[&str]) -> Result<()> {
    for css in parts {
        let found = visit.is_in_tree(css).await?;
        ensure!(found != Some(true), "{css} is told of while it is hidden");
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
            visit.press(Key::Space).await?;
            for choice in choices {
                if choice.id == right(choices) {
                    visit.hears("radio", &choice.text).await?;
                    break;
                }
                visit.press(Key::Down).await?;
            }
            visit.tab_to(&format!("{open} [type=submit]")).await?;
            visit.hears("button", "Mark it").await?;
            visit.press(Key::Enter).await?;
        }
    }
    visit.element(&format!("{desk} .is-right")).await?;
    let told = visit.hears("group", "").await?;
    let said = visit.text(":focus").await?;
    ensure!(
        !said.is_empty() && told.is("group", &said),
        "{told:?} for {said:?}"
    );
    let spoken = visit.spoken().await?;
    ensure!(
        spoken.is_empty(),
        "told by the focus and said besides: {spoken:?}"
    );
    Ok(())
}

/// The value of the choice that is right.
fn right(choices: &[superhet::problems::problem::Choice]) -> String {
    let right = choices.iter().find(|choice| choice.right);
    right.map(|choice| choice.id.clone()).unwrap_or_default()
}
