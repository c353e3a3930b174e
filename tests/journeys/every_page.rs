//! What holds for every page: it comes alive in silence, breaks no rule of accessibility on
//! light or dark paper, fits a phone, and leads nowhere that is not there.

use anyhow::{Context, Result, ensure};
use checks::{Engine, Visit, Window, built, journey};
use site::server::read_folder;

/// The narrowest phone, and the usual one.
const PHONES: [Window; 2] = [Window::NARROW_PHONE, Window::PHONE];

/// Opens every fold, for what is in it has to fit and be accessible too.
const UNFOLD: &str = "for (const fold of document.querySelectorAll('details')) fold.open = true";

/// The built pages, and the one that a host shows for those that are not there.
fn pages() -> Result<Vec<String>> {
    let mut pages = built::pages()?;
    pages.push("404.html".to_owned());
    Ok(pages)
}

/// Opens every page in turn and does the same on each.
async fn on_every_page(visit: &Visit, act: impl AsyncFn(&Visit, &str) -> Result<()>) -> Result<()> {
    for page in pages()? {
        let walk = async {
            visit.open(&page).await?;
            visit.ready().await?;
            visit.past_every_problem().await?;
            act(visit, &page).await?;
            visit.quiet_console().await
        };
        walk.await.with_context(|| format!("page {page:?}"))?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn comes_alive_in_silence_and_breaks_no_rule() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            on_every_page(&visit, async |visit, _| {
                let title: String = visit.script("return document.title").await?;
                ensure!(title.ends_with("Before the Bench"), "{title}");
                visit.script::<()>(UNFOLD).await?;
                visit.accessible().await
            })
            .await
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn is_accessible_on_light_and_dark_paper_on_a_phone() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        let mut papers = Vec::new();
        for scheme in ["light", "dark"] {
            visit.prefer(&[("prefers-color-scheme", scheme)]).await?;
            on_every_page(&visit, async |visit, _| {
                visit.script::<()>(UNFOLD).await?;
                visit.accessible().await.context(scheme)
            })
            .await?;
            let paper = "return getComputedStyle(document.body).backgroundColor";
            papers.push(visit.script::<String>(paper).await?);
        }
        ensure!(papers[0] != papers[1], "both papers are {}", papers[0]);
        Ok(())
    })
    .await
}

#[tokio::test(flavor = "multi_thread")]
async fn fits_a_phone_and_a_finger() -> Result<()> {
    for window in PHONES {
        journey(Engine::Chromium, window, async |visit| {
            on_every_page(&visit, async |visit, _| {
                visit.no_sideways_scroll().await?;
                visit.script::<()>(UNFOLD).await?;
                visit
                    .no_sideways_scroll()
                    .await
                    .context("with its folds open")?;
                visit.fit_for_fingers().await
            })
            .await
        })
        .await
        .with_context(|| format!("{window:?}"))?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn stands_still_for_who_asks_for_it() -> Result<()> {
    let moving = "return [...document.querySelectorAll('*')].filter((element) => { \
        const style = getComputedStyle(element); \
        const long = (times) => times.split(',').some((time) => parseFloat(time) > 0); \
        return long(style.transitionDuration) || style.animationName !== 'none' \
            || style.scrollBehavior === 'smooth'; \
        }).map((element) => element.cloneNode().outerHTML.slice(0, 160))";
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        on_every_page(&visit, async |visit, page| {
            if page.is_empty() {
                let some: Vec<String> = visit.script(moving).await?;
                ensure!(!some.is_empty(), "nothing moves for others either");
            }
            visit
                .prefer(&[("prefers-reduced-motion", "reduce")])
                .await?;
            let still: Vec<String> = visit.script(moving).await?;
            ensure!(still.is_empty(), "these move:\n  {}", still.join("\n  "));
            visit.prefer(&[]).await
        })
        .await
    })
    .await
}

#[tokio::test(flavor = "multi_thread")]
async fn leads_to_pages_that_are_there_and_asks_nobody_else() -> Result<()> {
    let files = read_folder(&built::site()?)?;
    let elsewhere = "return performance.getEntriesByType('resource') \
        .map((entry) => entry.name) \
        .filter((name) => !name.startsWith(location.origin + '/') && !name.startsWith('data:'))";
    let links = "return [...document.links].map((link) => new URL(link.href)) \
        .filter((url) => url.origin === location.origin).map((url) => url.pathname)";
    journey(Engine::Chromium, Window::LAPTOP, async |visit| {
        on_every_page(&visit, async |visit, _| {
            let asked: Vec<String> = visit.script(elsewhere).await?;
            ensure!(asked.is_empty(), "asked of others: {asked:?}");
            let paths: Vec<String> = visit.script(links).await?;
            ensure!(paths.len() > 5, "only {paths:?}");
            for path in paths {
                let file = site::page::file_of(path.trim_start_matches('/'));
                ensure!(files.contains_key(&file), "{path} is not there");
            }
            Ok(())
        })
        .await
    })
    .await
}
