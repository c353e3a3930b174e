//! The site where hosts differ: below a path of its own, and over plain http.

use crate::lesson::{figure, problem};
use crate::lookup;
use anyhow::{Result, ensure};
use checks::built::{SUB_PATH, site_under_sub_path};
use checks::{Engine, Server, Window, journey, journey_on};

#[tokio::test(flavor = "multi_thread")]
async fn below_a_path_everything_is_found() -> Result<()> {
    for engine in Engine::ALL {
        let server = Server::start_for(engine, &site_under_sub_path()?, SUB_PATH)?;
        journey_on(server, engine, Window::LAPTOP, async |visit| {
            visit.open("").await?;
            visit.ready().await?;
            visit.click("#next-step").await?;
            visit
                .until(
                    "lesson 1 is alive",
                    "return document.querySelector('figure[data-live]') !== null \
                    && document.body.hasAttribute('data-ready')",
                )
                .await?;
            figure::FIRST_FIGURE.moved_by_keys(&visit).await?;
            let lesson = visit.server.url("lessons/why-one-fixed-frequency/");
            problem::worked(&visit, &lesson, "capacitor-swing").await?;
            visit
                .open("lookup/?dial=909kHz&if=465kHz&side=below")
                .await?;
            visit.ready().await?;
            let image = "image?dial=909kHz&if=465kHz&side=below";
            visit.shows(lookup::RESULTS, "image", image).await
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn a_page_that_is_not_there_leads_home_from_any_depth() -> Result<()> {
    for engine in Engine::ALL {
        let server = Server::start_for(engine, &site_under_sub_path()?, SUB_PATH)?;
        journey_on(server, engine, Window::PHONE, async |visit| {
            visit.open("no/such/page/").await?;
            visit.ready().await?;
            visit.no_sideways_scroll().await?;
            visit.click("header a.name").await?;
            visit
                .until(
                    "home is open",
                    "return document.getElementById('next-step') !== null",
                )
                .await?;
            let at: String = visit.script("return location.pathname").await?;
            ensure!(at == SUB_PATH, "{at}");
            // That the page is missing is an error which the console rightly tells.
            visit.console().await?;
            Ok(())
        })
        .await?;
    }
    Ok(())
}

/// A phone that asks a laptop in the same hall, over plain http: no copy can be kept, the
/// page says why, and all else works.
#[tokio::test(flavor = "multi_thread")]
async fn over_plain_http_it_works_and_says_what_it_cannot_do() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        let hall = visit.server.url("").replace("127.0.0.1", Engine::HALL);
        visit
            .browser
            .goto(format!("{hall}lookup/?dial=909kHz&if=465kHz&side=below"))
            .await?;
        visit.ready().await?;
        ensure!(
            !visit.script::<bool>("return isSecureContext").await?,
            "it is no plain http"
        );
        let image = "image?dial=909kHz&if=465kHz&side=below";
        visit.shows(lookup::RESULTS, "image", image).await?;
        let kept = visit.text("#kept").await?;
        ensure!(
            kept.starts_with("Needs signal") && kept.contains("http"),
            "{kept}"
        );
        let lesson = format!("{hall}lessons/why-one-fixed-frequency/");
        problem::worked(&visit, &lesson, "capacitor-swing").await
    })
    .await
}
