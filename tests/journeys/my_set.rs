//! The reader's own set: asked, worked out, kept, carried, and used by the look-up.

use crate::lookup;
use anyhow::{Context, Result, ensure};
use checks::{Engine, Visit, Window, journey};
use serde_json::{Value, json};
use std::time::{Duration, Instant};
use std::{env, fs};
use superhet::catalogue::evaluate;
use thirtyfour::Key;

const PAGE: &str = "my-set/";
const KEPT: &str = "return localStorage.getItem('before-the-bench:set') ?? ''";
const RESULTS: &str = "#results";
const ALL_KEPT: &str = "return document.getElementById('kept').dataset.kept === 'yes'";
const LINK: &str = "my-set/#set&if=125kHz&side=below&region=1&aerial-q=70&aerial-circuits=2";
/// Every value on the page with the expression that it was worked out by.
const VALUES: &str = "return [...document.querySelectorAll('#results data')] \
    .map((one) => [one.dataset.expression, one.dataset.value])";

async fn open(visit: &Visit, page: &str) -> Result<()> {
    visit.open(page).await?;
    visit.ready().await
}

/// Every value on the page is what the core makes of its expression, to the last bit.
async fn values_are_the_core_s(visit: &Visit, least: usize) -> Result<()> {
    let values: Vec<(String, String)> = visit.script(VALUES).await?;
    ensure!(values.len() >= least, "only {} values", values.len());
    for (expression, shown) in values {
        let answer = evaluate(&expression).map_err(|refusal| anyhow::anyhow!("{refusal}"))?;
        let shown: f64 = shown.parse().context(expression.clone())?;
        ensure!(
            shown == answer.value,
            "{expression}: {shown}, {}",
            answer.value
        );
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn a_set_is_answered_by_keyboard_and_the_look_up_has_it() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            open(&visit, PAGE).await?;
            let example = visit.text("#results-title").await?;
            ensure!(example.contains("example"), "{example}");
            ensure!(visit.script::<String>(KEPT).await?.is_empty(), "kept unasked");

            visit.tab_to("#if").await?;
            visit.type_text("455").await?;
            visit.tab_to("input[name=side]").await?;
            visit.press(Key::Space).await?;
            visit.tab_to("input[name=region]").await?;
            visit.press(Key::Space).await?;
            let oscillator = "oscillator?dial=1000kHz&if=455kHz&side=above";
            visit.shows(RESULTS, "oscillator", oscillator).await?;
            visit.tab_to("#group-aerial summary").await?;
            visit.press(Key::Enter).await?;
            visit.tab_to("#aerial-q").await?;
            visit.type_text("75").await?;
            let weaker = "image-rejection?dial=526.5kHz&if=455kHz&side=above&q=75&circuits=1";
            visit.shows(RESULTS, "image-rejection", weaker).await?;
            values_are_the_core_s(&visit, 40).await?;
            visit.tab_to("#save").await?;
            visit.press(Key::Enter).await?;
            let saved = visit.text("#saved").await?;
            ensure!(saved.starts_with("Saved: IF 455 kHz, oscillator above"), "{saved}");
            visit.no_sideways_scroll().await?;
            visit.accessible().await?;

            open(&visit, "lookup/").await?;
            let own = "image?dial=1200kHz&if=455kHz&side=above";
            visit.shows(lookup::RESULTS, "image", own).await?;
            visit.type_into("#dial", "909").await?;
            let own = "image?dial=909kHz&if=455kHz&side=above";
            visit.shows(lookup::RESULTS, "image", own).await?;
            // What the look-up keeps leaves the rest of the set as it is.
            let kept = "return JSON.parse(localStorage.getItem('before-the-bench:set')).dial === '909 kHz'";
            visit.until("the look-up has kept its dial", kept).await?;
            open(&visit, PAGE).await?;
            visit.shows(RESULTS, "image-rejection", weaker).await?;
            let note = visit.text("#saved").await?;
            ensure!(note == "This is the set that is kept.", "{note}");
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn what_is_refused_stays_in_its_box_and_is_not_kept() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        open(&visit, PAGE).await?;
        visit.click("#save").await?;
        ensure!(
            visit.focused("#if").await?,
            "the first answer is not asked for"
        );
        visit.type_into("#if", "9 MHz").await?;
        visit
            .click("label:has(> input[name=side][value=below])")
            .await?;
        visit
            .click("label:has(> input[name=region][value='3'])")
            .await?;
        let fault = visit.text("#fault-if").await?;
        ensure!(
            fault.contains("100 kHz") && fault.contains("9 MHz"),
            "{fault}"
        );
        visit.click("#save").await?;
        ensure!(
            visit.script::<String>(KEPT).await?.is_empty(),
            "kept with a fault"
        );
        let typed = "return document.getElementById('if').value === '9 MHz'";
        ensure!(visit.script::<bool>(typed).await?, "what was typed is lost");
        visit.type_into("#if", "0.125").await?;
        visit
            .click("label:has(> input[name=if-unit][value=MHz])")
            .await?;
        let image = "image?dial=1000kHz&if=125kHz&side=below";
        visit.shows(RESULTS, "image", image).await?;
        let read = visit.text("#reading-if").await?;
        ensure!(read == "read as 125 kHz", "{read}");
        visit.accessible().await
    })
    .await
}

#[tokio::test(flavor = "multi_thread")]
async fn a_set_of_the_look_up_s_first_version_is_the_reader_s_set() -> Result<()> {
    let old =
        json!({"version": 1, "dial": "909 kHz", "if": "465 kHz", "side": "below", "region": 2});
    let write = "localStorage.setItem('before-the-bench:set', arguments[0])";
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            open(&visit, PAGE).await?;
            visit
                .browser
                .execute(write, vec![json!(old.to_string())])
                .await?;
            open(&visit, PAGE).await?;
            let image = "image?dial=1000kHz&if=465kHz&side=below";
            visit.shows(RESULTS, "image", image).await?;
            visit.click("#save").await?;
            let kept: Value = serde_json::from_str(&visit.script::<String>(KEPT).await?)?;
            let new = json!({"version": 2, "dial": "909 kHz", "if": "465 kHz",
                "side": "below", "region": 2});
            ensure!(kept == new, "{kept}");

            visit
                .browser
                .execute(write, vec![json!("{\"version\":9}")])
                .await?;
            open(&visit, PAGE).await?;
            let told = visit.text("#notice").await?;
            ensure!(told.contains("set aside"), "{told}");
            ensure!(
                visit.script::<String>(KEPT).await?.is_empty(),
                "not set aside"
            );
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn a_link_fills_the_boxes_and_takes_nobody_s_place() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            open(&visit, LINK).await?;
            let weaker = "image-rejection?dial=526.5kHz&if=125kHz&side=below&q=70&circuits=2";
            visit.shows(RESULTS, "image-rejection", weaker).await?;
            let notice = visit.text("#notice").await?;
            ensure!(
                notice.contains("Nothing is kept until you press Save"),
                "{notice}"
            );
            ensure!(
                visit.script::<String>(KEPT).await?.is_empty(),
                "kept unasked"
            );
            visit.click("#save").await?;
            visit.click("#link-make").await?;
            let made: String = visit
                .script("return document.getElementById('link').value")
                .await?;
            ensure!(
                made == visit.server.url(
                    LINK.replace(
                        "&side=below&region=1&aerial-q=70&aerial-circuits=2",
                        "&aerial-q=70&aerial-circuits=2&side=below&region=1"
                    )
                    .as_str()
                ),
                "{made}"
            );

            open(&visit, "about/").await?;
            open(&visit, "my-set/#set&if=470kHz&side=above&region=1").await?;
            let notice = visit.text("#notice").await?;
            ensure!(notice.contains("Your own set stays kept"), "{notice}");
            ensure!(
                visit.script::<String>(KEPT).await?.contains("125"),
                "overwritten"
            );
            open(&visit, "about/").await?;
            open(&visit, "my-set/#set&if=%").await?;
            let notice = visit.text("#notice").await?;
            ensure!(notice.contains("carries no set"), "{notice}");
            visit.shows(RESULTS, "image-rejection", weaker).await
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn a_file_carries_the_set_and_a_wipe_forgets_it() -> Result<()> {
    let folder = env::temp_dir().join(format!("before-the-bench-set-{}", std::process::id()));
    fs::create_dir_all(&folder)?;
    let walked = journey(Engine::Chromium, Window::PHONE, async |visit| {
        let here = json!({"behavior": "allow", "downloadPath": folder});
        let cdp = visit.browser.cdp();
        cdp.send_raw("Browser.setDownloadBehavior", here).await?;
        open(&visit, LINK).await?;
        visit.click("#save").await?;
        visit.click("#file-save").await?;
        let file = folder.join("my-set.json");
        let started = Instant::now();
        while !file.exists() {
            let late = started.elapsed() > Duration::from_secs(10);
            ensure!(!late, "nothing was saved");
            tokio::time::sleep(Duration::from_millis(30)).await;
        }
        visit.click("#carry details > summary").await?;
        visit.click("#wipe").await?;
        ensure!(visit.script::<String>(KEPT).await?.is_empty(), "not wiped");
        let boxes = "return document.getElementById('if').value === '' \
            && document.querySelector('#results data') === null";
        ensure!(
            visit.script::<bool>(boxes).await?,
            "the page still shows it"
        );

        let input = visit.element("#file").await?;
        input.send_keys(file.to_string_lossy().as_ref()).await?;
        let image = "image?dial=1000kHz&if=125kHz&side=below";
        visit.shows(RESULTS, "image", image).await?;
        ensure!(
            visit.script::<String>(KEPT).await?.is_empty(),
            "kept unasked"
        );

        for (text, why) in [
            ("<b>mine</b>".to_owned(), "no file of this page"),
            (" ".repeat(9_000), "too long"),
        ] {
            let wrong = folder.join("wrong.json");
            fs::write(&wrong, text)?;
            input.send_keys(wrong.to_string_lossy().as_ref()).await?;
            let said =
                format!("return document.getElementById('carried').textContent.includes('{why}')");
            visit.until(why, &said).await?;
            visit.shows(RESULTS, "image", image).await?;
        }
        Ok(())
    })
    .await;
    fs::remove_dir_all(&folder)?;
    walked
}

#[tokio::test(flavor = "multi_thread")]
async fn it_works_without_a_network_and_says_what_it_is_without_scripts() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            visit.open("").await?;
            visit.until("everything is kept", ALL_KEPT).await?;
            visit.server.stop();
            open(&visit, LINK).await?;
            let image = "image?dial=1000kHz&if=125kHz&side=below";
            visit.shows(RESULTS, "image", image).await
        })
        .await?;
    }
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        visit.without_scripts().await?;
        visit.open(PAGE).await?;
        let told = visit.text("noscript").await?;
        ensure!(told.contains("JavaScript"), "{told}");
        let form = visit.element("#set-form").await?;
        ensure!(!form.is_displayed().await?, "dead boxes are shown");
        let practice = "image?dial=1000kHz&if=470kHz&side=above";
        visit.shows(RESULTS, "image", practice).await?;
        values_are_the_core_s(&visit, 50).await?;
        visit.no_sideways_scroll().await
    })
    .await
}
