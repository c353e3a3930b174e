//! A round by keyboard alone, how the standing of a family moves, what is due, and the
//! notebook's tallies.

use super::{DESK, PAGE, Right, at_the_top, content, lying_open, open, right, with_notebook};
use crate::lesson::problem::tally;
use crate::place;
use anyhow::{Context, Result, anyhow, ensure};
use checks::{Engine, Visit, Window, journey};
use serde_json::{Value, json};
use superhet::problems::{Level, ProblemCode, generate};
use thirtyfour::Key;

const FAMILY: &str = "oscillator-from-dial";
/// Today as the pages count days.
const TODAY: &str = "const now = new Date(); \
    return Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / 864e5";

/// The same with keys alone.
async fn answer_by_keys(visit: &Visit) -> Result<()> {
    let problem = lying_open(visit).await?;
    for part in 0..problem.parts.len() {
        match right(&problem, part) {
            Right::Typed(text) => {
                visit.tab_to(&format!("{DESK} input")).await?;
                visit.type_text(&text).await?;
                visit.press(Key::Enter).await?;
            }
            Right::Choice(place) => {
                visit.tab_to(&format!("{DESK} input")).await?;
                visit.press(Key::Space).await?;
                for _ in 0..place {
                    visit.press(Key::Down).await?;
                }
                visit.tab_to(&format!("{DESK} [type=submit]")).await?;
                visit.press(Key::Enter).await?;
            }
        }
        let marked = format!("#round-problem .part:nth-child({}) .is-right", part + 1);
        visit.element(&marked).await?;
        ensure!(
            visit.focused(".marking").await?,
            "the focus is not on what is said"
        );
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn a_round_is_worked_by_keys_alone() -> Result<()> {
    let lessons = [
        "why-one-fixed-frequency",
        "oscillator-mixer-difference",
        "reading-a-dial",
    ];
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            with_notebook(&visit, json!({}), &lessons).await?;
            open(&visit, PAGE).await?;
            ensure!(visit.text("#done-lessons").await? == "lessons 1 to 3");
            visit.accessible().await?;
            visit.tab_to("#begin").await?;
            ensure!(
                visit
                    .text("#begin")
                    .await?
                    .contains("6 problems, about 8 minutes")
            );
            visit.press(Key::Enter).await?;
            let mut seen = Vec::new();
            for number in 1..=6 {
                visit.element(&format!("{DESK} [type=submit]")).await?;
                let title = visit.text("#round-title").await?;
                ensure!(title == format!("Problem {number} of 6"), "{title}");
                ensure!(
                    visit.focused("#round-title").await?,
                    "{number}: the focus is lost"
                );
                let problem = lying_open(&visit).await?;
                ensure!(!seen.contains(&problem.family), "{} twice", problem.family);
                seen.push(problem.family);
                answer_by_keys(&visit)
                    .await
                    .with_context(|| format!("{seen:?}"))?;
                if number == 1 {
                    visit.accessible().await?;
                }
                visit.tab_to("[data-do=next]").await?;
                visit.press(Key::Enter).await?;
            }
            ensure!(visit.focused("#round-end-title").await?);
            let said = visit.text("#round-said").await?;
            ensure!(
                said.matches("Right, without help; comes back on").count() == 6,
                "{said}"
            );
            visit.no_sideways_scroll().await?;
            visit.accessible().await
        })
        .await?;
    }
    Ok(())
}

/// Opens a problem of [`FAMILY`] on the practice page; gives what is right and what is not.
async fn open_one(visit: &Visit, level: Level) -> Result<(String, String)> {
    let content = content()?;
    let family = content.families.find(FAMILY).context(FAMILY)?;
    let code = ProblemCode {
        family: family.number,
        revision: family.family.revision,
        level,
        seed: 7,
    };
    let problem = generate(&family.family, level, code.seed)?;
    let code = code.encode().map_err(|error| anyhow!("{error}"))?;
    open(visit, &format!("{PAGE}#problem={code}")).await?;
    visit.element(&format!("{DESK} input")).await?;
    match right(&problem, 0) {
        Right::Typed(text) => Ok((text, "1 kHz".to_owned())),
        Right::Choice(_) => Err(anyhow!("{FAMILY} asks for a choice")),
    }
}

async fn answer(visit: &Visit, text: &str) -> Result<()> {
    visit.type_into(&format!("{DESK} input"), text).await?;
    visit.click(&format!("{DESK} [type=submit]")).await
}

#[tokio::test(flavor = "multi_thread")]
async fn a_family_moves_on_its_ladder() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            let third = json!({FAMILY: [4, 0, 3, 1, {}]});
            // Right alone, on its day: one box up, back in two weeks.
            with_notebook(&visit, third.clone(), &[]).await?;
            let (right, _) = open_one(&visit, Level::Three).await?;
            let today: u32 = visit.script(TODAY).await?;
            answer(&visit, &right).await?;
            let now = tally(&visit, FAMILY).await?;
            ensure!(now == json!([5, 0, 4, today + 14, {}]), "{now}");
            // Wrong, then right: one box down, back in three days.
            with_notebook(&visit, third.clone(), &[]).await?;
            let (right, wrong) = open_one(&visit, Level::Three).await?;
            answer(&visit, &wrong).await?;
            ensure!(tally(&visit, FAMILY).await?[2] == 3, "moved before the end");
            answer(&visit, &right).await?;
            let now = tally(&visit, FAMILY).await?;
            ensure!(now[2] == 2 && now[3] == today + 3, "{now}");
            // Its working shown: back to the first, due tomorrow.
            with_notebook(&visit, third, &[]).await?;
            let (_, wrong) = open_one(&visit, Level::Three).await?;
            answer(&visit, &wrong).await?;
            visit.click("#round-problem [data-do=show]").await?;
            let now = tally(&visit, FAMILY).await?;
            ensure!(now[2] == 1 && now[3] == today + 1, "{now}");
            visit.click("#round-problem [data-do=next]").await?;
            let said = visit.text("#round-said").await?;
            ensure!(said.contains("Its working was shown"), "{said}");
            let sum = visit.text("#round-sum").await?;
            ensure!(sum == "0 of 1 right.", "{sum}");
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn each_problem_begins_at_the_top_and_another_round_follows() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            open(&visit, PAGE).await?;
            visit.click("#begin").await?;
            visit.element(&format!("{DESK} [type=submit]")).await?;
            at_the_top(&visit, "#round-title").await?;
            visit.click("#round-leave").await?;
            let second = "return document.getElementById('round-title').textContent \
                .startsWith('Problem 2') && document.querySelector('.desk [type=submit]') !== null";
            visit.until("the second is there", second).await?;
            at_the_top(&visit, "#round-title").await?;
            visit.click("#round [data-do=stop]").await?;
            at_the_top(&visit, "#round-end-title").await?;
            ensure!(visit.text("#round-sum").await? == "0 of 1 right.");
            visit.in_view("#round-again").await?;
            visit.accessible().await?;
            visit.click("#round-again").await?;
            visit.element(&format!("{DESK} [type=submit]")).await?;
            at_the_top(&visit, "#round-title").await
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn home_and_practice_say_what_is_due() -> Result<()> {
    let mut problems = serde_json::Map::new();
    let content = content()?;
    for registered in content.families.newest().take(6) {
        problems.insert(registered.family.id.clone(), json!([1, 0, 2, 1, {}]));
    }
    let ticked: Vec<String> = content.lessons.summaries().map(|it| it.slug).collect();
    let ticked: Vec<&str> = ticked.iter().map(String::as_str).collect();
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            with_notebook(&visit, Value::Object(problems.clone()), &ticked[..3]).await?;
            open(&visit, "").await?;
            let next = visit.text("#next-step .what").await?;
            let expected = "Continue lesson 4; 6 problems due, about 8 minutes";
            ensure!(next == expected, "{next}");
            visit.accessible().await?;
            visit.fit_for_fingers().await?;
            visit.click("#due-step").await?;
            let there = "return document.getElementById('choose') !== null \
                && document.body.hasAttribute('data-ready')";
            visit.until("practice is open", there).await?;
            let due = visit.text("#due-said").await?;
            ensure!(due == "6 problems due, about 8 minutes.", "{due}");
            with_notebook(&visit, Value::Object(problems.clone()), &ticked).await?;
            open(&visit, "").await?;
            let next = visit.text("#next-step .what").await?;
            ensure!(
                next == "All ticked; 6 problems due, about 8 minutes",
                "{next}"
            );
            let to_practice = "return document.getElementById('next-step').pathname";
            let to_practice: String = visit.script(to_practice).await?;
            ensure!(to_practice.ends_with("/practice/"), "{to_practice}");
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn what_went_wrong_is_tallied_and_practised() -> Result<()> {
    let problems = json!({
        "image-of-a-station": [0, 7, 1, 1, {"one-if": 4, "wrong-way": 7}],
        FAMILY: [9, 0, 4, 90_000, {}],
    });
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            open(&visit, PAGE).await?;
            ensure!(
                visit
                    .text("#tallies")
                    .await?
                    .contains("No mistake is on record")
            );
            visit.click("#choose label:nth-child(3)").await?;
            visit.click("#begin").await?;
            let said = visit.text("#choose-said").await?;
            ensure!(said.contains("Nothing is on record"), "{said}");

            with_notebook(&visit, problems.clone(), &[]).await?;
            open(&visit, PAGE).await?;
            visit.element("#tallies li").await?;
            let tallies = visit.text("#tallies").await?;
            ensure!(
                tallies.contains("4 times") && tallies.contains("7 times"),
                "{tallies}"
            );
            let strokes = "return [...document.querySelectorAll('#tallies li')] \
                .map((line) => line.querySelectorAll('path').length)";
            let strokes: Vec<u32> = visit.script(strokes).await?;
            ensure!(strokes == [7, 4], "{strokes:?}");
            visit.accessible().await?;
            visit.click("#choose label:nth-child(3)").await?;
            visit.click("#begin").await?;
            let mut seen = Vec::new();
            for _ in 0..2 {
                visit.element(&format!("{DESK} [type=submit]")).await?;
                seen.push(lying_open(&visit).await?.family);
                visit.click("#round-leave").await?;
                if visit.element("#round-end").await?.is_displayed().await? {
                    break;
                }
            }
            ensure!(seen.iter().any(|it| it == "image-of-a-station"), "{seen:?}");
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn the_standing_travels_and_is_wiped() -> Result<()> {
    let problems = json!({FAMILY: [9, 1, 4, 20_800, {"added": 1}]});
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            with_notebook(&visit, problems.clone(), &[]).await?;
            open(&visit, PAGE).await?;
            let link = place::link(&visit).await?;
            visit.click("#place details > summary").await?;
            visit.click("#place-wipe").await?;
            ensure!(tally(&visit, FAMILY).await?.is_null(), "not wiped");
            ensure!(visit.text("#tallies").await?.contains("No mistake"));
            open(&visit, "about/").await?;
            visit.browser.goto(&link).await?;
            visit.ready().await?;
            visit.click(".offer [data-do=take]").await?;
            let now = tally(&visit, FAMILY).await?;
            ensure!(now == problems[FAMILY], "{now}");
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn lessons_can_be_picked() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        open(&visit, PAGE).await?;
        let read = visit.text("#done-lessons").await?;
        ensure!(
            read == "no lesson is ticked yet, so you are asked about lesson 1",
            "{read}"
        );
        let boxes = visit.element("#pick-lessons").await?;
        ensure!(!boxes.is_displayed().await?);
        visit.click("#choose label:nth-child(2)").await?;
        ensure!(boxes.is_displayed().await?);
        visit.fit_for_fingers().await?;
        visit.accessible().await?;
        visit.click("#pick-lessons label:nth-of-type(1)").await?;
        visit.click("#begin").await?;
        let said = visit.text("#choose-said").await?;
        ensure!(said.contains("Pick one lesson"), "{said}");
        visit.click("#pick-lessons label:nth-of-type(5)").await?;
        visit.click("#begin").await?;
        visit.element(&format!("{DESK} [type=submit]")).await?;
        let family = lying_open(&visit).await?.family;
        let content = content()?;
        let lesson = content
            .families
            .find(&family)
            .map(|it| it.family.lesson.clone());
        ensure!(
            lesson.as_deref() == Some("the-image"),
            "{family}: {lesson:?}"
        );
        visit.fit_for_fingers().await
    })
    .await
}
