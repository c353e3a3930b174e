//! The check before and after the course: both forms, told only at the end, and its picture.

use crate::place;
use crate::practice::{at_the_top, content};
use anyhow::{Context, Result, anyhow, ensure};
use checks::{Engine, Visit, Window, journey};
use serde_json::{Value, json};
use site::check::Item;
use site::content::Content;
use superhet::problems::problem::Answer;
use superhet::problems::{Problem, generate};

const PAGE: &str = "practice/check/";
const LAST: &str = "reading-faults";

fn drawn(content: &Content, item: &Item, form: usize) -> Result<Problem> {
    let family = content.families.find(&item.family);
    let family = family.with_context(|| item.family.clone())?;
    Ok(generate(&family.family, item.level, item.seeds[form])?)
}

async fn open(visit: &Visit, page: &str) -> Result<()> {
    visit.open(page).await?;
    visit.ready().await
}

/// The checks that the notebook holds.
async fn taken(visit: &Visit) -> Result<Value> {
    let notebook = "return localStorage.getItem('before-the-bench:notebook') ?? '{}'";
    let notebook: Value = serde_json::from_str(&visit.script::<String>(notebook).await?)?;
    Ok(notebook["checks"].clone())
}

/// Begins, and says which form lies open.
async fn begin(visit: &Visit, content: &Content) -> Result<usize> {
    visit.click("#check-begin").await?;
    let open = "return document.getElementById('check-begin').getClientRects().length === 0";
    visit.until("the questions lie open", open).await?;
    at_the_top(visit, "#check-form-title").await?;
    ensure!(!visit.element("#check").await?.is_displayed().await?);
    Ok(lying_open(visit, content).await?.0)
}

/// Which form lies open, and its problems: their scenes stand there in their order.
pub(crate) async fn lying_open(visit: &Visit, content: &Content) -> Result<(usize, Vec<Problem>)> {
    let scenes = "return [...document.querySelectorAll('#check-questions .scene')] \
        .map((scene) => scene.textContent.replaceAll('\\u00a0', ' '))";
    let scenes: Vec<String> = visit.script(scenes).await?;
    for form in 0..2 {
        let items = content.check.items.iter();
        let problems = items.map(|item| drawn(content, item, form));
        let problems = problems.collect::<Result<Vec<Problem>>>()?;
        if scenes.iter().eq(problems.iter().map(|it| &it.scene)) {
            return Ok((form, problems));
        }
    }
    Err(anyhow!("neither form: {scenes:?}"))
}

/// Answers the first few questions rightly.
async fn answer(visit: &Visit, content: &Content, form: usize, count: usize) -> Result<()> {
    for (number, item) in (1..=count).zip(&content.check.items) {
        let question = format!("#check-questions section:nth-child({number})");
        match &drawn(content, item, form)?.parts[0].answer {
            Answer::Number(right) => {
                visit
                    .type_into(&format!("{question} input"), &right.text)
                    .await?;
            }
            Answer::Choice(choices) => {
                let right = choices.iter().find(|choice| choice.right).context("none")?;
                let choice = format!("{question} label:has([value=\"{}\"])", right.id);
                visit.click(&choice).await?;
            }
        }
    }
    Ok(())
}

/// Hands in what has open questions: once to be told, once to be taken.
async fn hand_in(visit: &Visit, open: &str) -> Result<()> {
    visit.click("#check-hand-in").await?;
    let told = visit.text("#check-open").await?;
    ensure!(told.contains(open), "{told}");
    let early = "return document.querySelectorAll('#check-questions .is-right').length";
    ensure!(
        visit.script::<u32>(early).await? == 0,
        "told before the end"
    );
    let button = visit.text("#check-hand-in").await?;
    ensure!(button == "Hand it in as it is", "{button}");
    visit.click("#check-hand-in").await?;
    visit.element("#check-questions .steps").await?;
    visit.element("#check-result .check-picture").await?;
    Ok(())
}

async fn marks(visit: &Visit, class: &str) -> Result<u32> {
    let count = format!("return document.querySelectorAll('.check-picture .{class}').length");
    visit.script(&count).await
}

#[tokio::test(flavor = "multi_thread")]
async fn both_forms_are_taken_and_the_third_time_waits() -> Result<()> {
    let content = content()?;
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            open(&visit, PAGE).await?;
            visit.accessible().await?;
            let first = begin(&visit, &content).await?;
            visit.accessible().await?;
            visit.fit_for_fingers().await?;
            visit.no_sideways_scroll().await?;
            answer(&visit, &content, first, 3).await?;
            hand_in(&visit, "4, 5, 6, 7, 8, 9, 10, 11, 12").await?;
            ensure!(marks(&visit, "full").await? == 3 && marks(&visit, "open").await? == 9);
            let checks = taken(&visit).await?;
            ensure!(checks[0][1] == first + 1 && checks[0][2] == 7, "{checks}");
            let right = "return document.querySelectorAll('#check-questions .is-right').length";
            ensure!(visit.script::<u32>(right).await? == 3);
            ensure!(visit.focused("#check-result-title").await?);
            at_the_top(&visit, "#check-result-title").await?;
            let closed = visit
                .text("#check-questions section:nth-child(12) .marking")
                .await?;
            ensure!(closed.starts_with("Left open."), "{closed}");
            ensure!(closed.contains("The answer: "), "{closed}");
            visit.accessible().await?;

            // The second waits for the last lesson.
            open(&visit, PAGE).await?;
            let next = visit.text("#check-next").await?;
            ensure!(next.contains("waits until you have ticked"), "{next}");
            ensure!(!visit.element("#check-begin").await?.is_displayed().await?);
            open(&visit, &format!("lessons/{LAST}/")).await?;
            visit.click(".tick button").await?;
            open(&visit, PAGE).await?;
            let second = begin(&visit, &content).await?;
            ensure!(second != first, "the same form again");
            answer(&visit, &content, second, 11).await?;
            hand_in(&visit, "Left open: 12.").await?;
            ensure!(marks(&visit, "full").await? == 14 && marks(&visit, "open").await? == 10);
            let said = visit.text("#check-said").await?;
            for words in [
                "3 of 12 right",
                "11 of 12 right; 8 became right, 0 no longer",
            ] {
                ensure!(said.contains(words), "{words}: {said}");
            }
            visit.no_sideways_scroll().await?;
            visit.accessible().await?;
            let next = visit.text("#check-next").await?;
            ensure!(next.contains("It comes once more from"), "{next}");

            // Thirty days later, by the notebook's own days.
            let earlier = "const key = 'before-the-bench:notebook'; \
                const notebook = JSON.parse(localStorage.getItem(key)); \
                for (const check of notebook.checks) check[0] -= 30; \
                localStorage.setItem(key, JSON.stringify(notebook))";
            visit.script::<()>(earlier).await?;
            open(&visit, PAGE).await?;
            let next = visit.text("#check-next").await?;
            ensure!(next.contains("Thirty days have passed"), "{next}");
            let third = begin(&visit, &content).await?;
            ensure!(third == first, "not the first form");
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn both_forms_are_taken_on_a_page_that_stays_open() -> Result<()> {
    let content = content()?;
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            open(&visit, &format!("lessons/{LAST}/")).await?;
            visit.click(".tick button").await?;
            open(&visit, PAGE).await?;
            let first = begin(&visit, &content).await?;
            hand_in(&visit, "1, 2, 3").await?;
            ensure!(visit.text("#check-next").await?.contains("the second form"));
            let second = begin(&visit, &content).await?;
            ensure!(second != first, "the same form again");
            ensure!(
                visit
                    .element("#check-hand-in")
                    .await?
                    .is_displayed()
                    .await?
            );
            answer(&visit, &content, second, 1).await?;
            hand_in(&visit, "2, 3, 4").await?;
            let checks = taken(&visit).await?;
            ensure!(checks[1][1] == second + 1 && checks[1][2] == 1, "{checks}");
            Ok(())
        })
        .await?;
    }
    Ok(())
}

/// What the tab keeps of a check that was begun.
async fn unfinished(visit: &Visit) -> Result<Option<String>> {
    let kept = "return sessionStorage.getItem('before-the-bench:check')";
    visit.script(kept).await
}

/// What is typed, chosen and pressed in the first questions.
async fn given(visit: &Visit) -> Result<Vec<Value>> {
    let given = "return [...document.querySelectorAll('#check-questions section')].slice(0, 4) \
        .map((slip) => [slip.querySelector('input:checked')?.value ?? \
            slip.querySelector('input[type=text]')?.value, \
            slip.querySelector('[aria-pressed=true]')?.textContent])";
    visit.script(given).await
}

#[tokio::test(flavor = "multi_thread")]
async fn what_was_answered_outlives_a_reload_until_it_is_handed_in() -> Result<()> {
    let content = content()?;
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            open(&visit, PAGE).await?;
            let form = begin(&visit, &content).await?;
            answer(&visit, &content, form, 3).await?;
            let unit = "#check-questions section:nth-child(4) .unit-buttons button:last-child";
            visit.click(unit).await?;
            let before = given(&visit).await?;
            visit.browser.refresh().await?;
            visit.ready().await?;
            let next = visit.text("#check-next").await?;
            ensure!(next.contains("You have begun it"), "{next}");
            ensure!(visit.text("#check-begin").await? == "Go on with it");
            ensure!(begin(&visit, &content).await? == form, "the other form");
            let after = given(&visit).await?;
            ensure!(after == before, "{before:?} came back as {after:?}");
            visit.accessible().await?;
            hand_in(&visit, "Left open: 4, 5").await?;
            ensure!(marks(&visit, "full").await? == 3);
            ensure!(unfinished(&visit).await?.is_none(), "kept for ever");
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn damaged_answers_are_told_to_be_gone() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            open(&visit, PAGE).await?;
            let damage = "sessionStorage.setItem('before-the-bench:check', '{\"version\":1')";
            visit.script::<()>(damage).await?;
            visit.browser.refresh().await?;
            visit.ready().await?;
            let note = visit.text("main > .note").await?;
            let says = "could not be read: it is cut or garbled. They are gone";
            ensure!(note.contains(says), "{note}");
            ensure!(unfinished(&visit).await?.is_none(), "kept all the same");
            ensure!(visit.text("#check-begin").await? == "Begin");
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn wiped_answers_do_not_come_back() -> Result<()> {
    let content = content()?;
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            open(&visit, PAGE).await?;
            let form = begin(&visit, &content).await?;
            answer(&visit, &content, form, 3).await?;
            visit.browser.refresh().await?;
            visit.ready().await?;
            ensure!(visit.text("#check-begin").await? == "Go on with it");
            visit.click("#place details > summary").await?;
            visit.click("#place-wipe").await?;
            let left = "return sessionStorage.length";
            // The journey's own ears keep what they hear there.
            let ears = u32::from(engine == Engine::WebKit);
            ensure!(visit.script::<u32>(left).await? <= ears, "not wiped");
            ensure!(unfinished(&visit).await?.is_none(), "not wiped");
            let next = visit.text("#check-next").await?;
            ensure!(next.contains("You have not taken it yet"), "{next}");
            ensure!(visit.text("#check-begin").await? == "Begin");
            begin(&visit, &content).await?;
            let left = given(&visit).await?;
            let blank = |slip: &Value| slip[0].is_null() || slip[0] == "";
            ensure!(left.iter().all(blank), "{left:?}");
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn without_scripts_both_forms_stand_on_paper() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        visit.without_scripts().await?;
        visit.open(PAGE).await?;
        // As in an engine that does not know the media feature `scripting`.
        let unknown = "for (const sheet of document.styleSheets) \
            [...sheet.cssRules].forEach((rule) => { \
                if (rule.media?.mediaText.includes('scripting')) rule.media.mediaText = 'not all'; \
            })";
        for asks in ["", unknown] {
            visit.script::<()>(asks).await?;
            ensure!(!visit.element("#check").await?.is_displayed().await?);
            let room = "return document.getElementById('check').getBoundingClientRect().height";
            ensure!(visit.script::<f64>(room).await? == 0.0, "a blank room");
        }
        let questions = "return document.querySelectorAll('.paper-sheet .problem').length";
        ensure!(visit.script::<u32>(questions).await? == 24);
        visit.click(".paper-sheet > summary").await?;
        ensure!(!visit.text(".paper-sheet .scene").await?.is_empty());
        visit.no_sideways_scroll().await
    })
    .await
}

#[tokio::test(flavor = "multi_thread")]
async fn the_result_travels_with_the_place() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        open(&visit, "about/").await?;
        let notebook = json!({"version": 2, "checks": [[20_000, 1, 7], [20_100, 2, 2047]]});
        let write = "localStorage.setItem('before-the-bench:notebook', arguments[0])";
        let given = vec![json!(notebook.to_string())];
        visit.browser.execute(write, given).await?;
        open(&visit, PAGE).await?;
        let link = place::link(&visit).await?;
        visit.click("#place details > summary").await?;
        visit.click("#place-wipe").await?;
        ensure!(taken(&visit).await?.is_null());
        ensure!(!visit.element("#check-result").await?.is_displayed().await?);
        open(&visit, "about/").await?;
        visit.browser.goto(&link).await?;
        visit.ready().await?;
        ensure!(visit.text(".offer").await?.contains("2 checks taken"));
        visit.click(".offer [data-do=take]").await?;
        ensure!(taken(&visit).await? == notebook["checks"]);
        ensure!(marks(&visit, "full").await? == 14);
        Ok(())
    })
    .await
}
