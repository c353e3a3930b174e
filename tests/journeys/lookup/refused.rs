//! What cannot be used gets a sentence, and stays in its box.

use super::{RESULTS, SET, key};
use anyhow::{Context, Result, ensure};
use checks::{Engine, Visit, Window, journey};

/// The longest sentence.
const LONGEST: usize = 400;

/// What is typed as the dial setting, and what the sentence has to say of it.
const BAD: [(&str, &[&str]); 6] = [
    ("abc", &["Dial", "abc"]),
    ("-5 kHz", &["Dial", "-5"]),
    ("0", &["Dial", "0"]),
    ("1e999 MHz", &["Dial", "1e999"]),
    ("1200 kHz <i>", &["Dial", "<i>"]),
    ("2000 GHz", &["Dial"]),
];

/// What a box holds.
async fn held(visit: &Visit, name: &str) -> Result<String> {
    visit
        .script(&format!("return document.getElementById('{name}').value"))
        .await
}

async fn is_refused(visit: &Visit, name: &str, typed: &str, words: &[&str]) -> Result<()> {
    let invalid =
        format!("return document.getElementById('{name}').getAttribute('aria-invalid') === 'true'");
    visit.until("the box is marked", &invalid).await?;
    let sentence = visit.text("#problem").await?;
    let whole = sentence.ends_with('.') && sentence.len() <= LONGEST;
    ensure!(whole, "{sentence:?} is no sentence");
    for word in words {
        ensure!(sentence.contains(word), "no {word:?} in {sentence:?}");
    }
    ensure!(
        held(visit, name).await? == typed,
        "the box lost what was typed"
    );
    for quantity in ["oscillator", "image"] {
        let value = visit.value_in(RESULTS, quantity).await?;
        ensure!(value.is_none(), "{quantity} is still {value:?}");
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn a_dial_setting_that_is_none_gets_a_sentence_and_stays() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            visit.open("lookup/").await?;
            visit.ready().await?;
            for (typed, words) in BAD {
                visit.type_into("#dial", typed).await?;
                is_refused(&visit, "dial", typed, words)
                    .await
                    .context(typed)?;
                visit.in_view("#problem").await?;
                visit.type_into("#dial", "1200").await?;
                let good = "oscillator?dial=1200kHz&if=470kHz&side=above";
                visit.shows(RESULTS, "oscillator", good).await?;
                let problem = visit.element("#problem").await?;
                ensure!(
                    !problem.is_displayed().await?,
                    "{typed}: the sentence stays"
                );
            }
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn an_if_above_the_dial_setting_cannot_be_reached_from_below() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            visit
                .open("lookup/?dial=400kHz&if=470kHz&side=above")
                .await?;
            visit.ready().await?;
            visit.click(SET).await?;
            visit.click(&key("side", "below")).await?;
            is_refused(&visit, "dial", "400", &["below", "400 kHz", "470 kHz"]).await?;
            ensure!(held(&visit, "if").await? == "470");
            visit.click(&key("side", "above")).await?;
            let good = "oscillator?dial=400kHz&if=470kHz&side=above";
            visit.shows(RESULTS, "oscillator", good).await
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn an_if_that_is_none_is_told_too() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        visit.open("lookup/").await?;
        visit.ready().await?;
        visit.click(SET).await?;
        for typed in ["abc", "-470", "0", "1e999 MHz"] {
            visit.type_into("#if", typed).await?;
            is_refused(&visit, "if", typed, &["IF"])
                .await
                .context(typed)?;
        }
        Ok(())
    })
    .await
}
