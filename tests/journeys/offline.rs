//! The offline copy: every page without a network after the first visit, never two
//! versions at once, and no file that is not the listed one.

use anyhow::{Context, Result, ensure};
use checks::{Engine, Server, Visit, Window, built, journey, journey_on};
use site::page_files::PageFiles;
use site::render::Files;
use site::server::read_folder;
use site::{repository, service_worker};

/// Until the page says in words that everything is kept.
const ALL_KEPT: &str = "return document.getElementById('kept').dataset.kept === 'yes'";
/// Until a worker answers for this page.
const HAS_WORKER: &str = "return navigator.serviceWorker.controller !== null";

#[tokio::test(flavor = "multi_thread")]
async fn every_page_opens_without_a_network_after_the_first_visit() -> Result<()> {
    let routes = built::pages()?;
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            visit.open("").await?;
            visit.until("everything is kept", ALL_KEPT).await?;
            visit.server.stop();
            for route in &routes {
                visit.open(route).await?;
                visit.ready().await?;
                // The words as they stand, since a heading may be hidden from sight.
                let heading: String = visit
                    .script("return document.querySelector('h1')?.textContent.trim() ?? ''")
                    .await?;
                ensure!(!heading.is_empty(), "{route} has no heading");
                let styled: f64 = visit
                    .script("return document.styleSheets[0].cssRules.length")
                    .await?;
                ensure!(styled > 1.0, "{route} has no styles");
            }
            visit.open("about/?asked=something#licences").await?;
            visit.element("#licences").await?;
            visit.ready().await
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn the_look_up_answers_without_a_network() -> Result<()> {
    let set = "dial=909kHz&if=465kHz&side=below";
    let expression = format!("image?{set}");
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            visit.open("lookup/").await?;
            visit.until("everything is kept", ALL_KEPT).await?;
            visit.server.stop();
            visit.open(&format!("lookup/?{set}")).await?;
            visit.ready().await?;
            visit.shows("#lookup", "image", &expression).await?;
            visit.browser.refresh().await?;
            visit.ready().await?;
            visit.shows("#lookup", "image", &expression).await?;
            visit.type_into("#dial", "1.2 MHz").await?;
            let typed = "image?dial=1200kHz&if=465kHz&side=below";
            visit.shows("#lookup", "image", typed).await
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn a_page_that_does_not_exist_says_so_without_a_network() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            visit.open("").await?;
            visit.until("everything is kept", ALL_KEPT).await?;
            let known: String = visit.script("return document.title").await?;
            visit.server.stop();
            visit.open("nothing/here/").await?;
            let title: String = visit.script("return document.title").await?;
            ensure!(!title.is_empty() && title != known, "it is titled {title}");
            // The missing page itself is an error that the console rightly tells.
            visit.console().await?;
            Ok(())
        })
        .await?;
    }
    Ok(())
}

/// The built site with a word put into the page about it, as the next version would have.
fn next_version(word: &str) -> Result<Files> {
    let mut files = read_folder(&built::site()?)?;
    files.retain(|path, _| !path.ends_with(".br") && !path.ends_with(".gz"));
    let about = files.get_mut("about/index.html").context("no about page")?;
    let page = String::from_utf8_lossy(about);
    *about = page
        .replacen("<h1", &format!("<p id=\"word\">{word}</p><h1"), 1)
        .into_bytes();
    service_worker::add(&mut files, &PageFiles::load(&repository::root())?)?;
    Ok(files)
}

/// The word on the page about the site; empty where there is none.
async fn word(visit: &Visit) -> Result<String> {
    visit.open("about/").await?;
    visit
        .script("return document.getElementById('word')?.textContent ?? ''")
        .await
}

#[tokio::test(flavor = "multi_thread")]
async fn a_newer_version_takes_over_whole_and_takes_nothing_away() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            visit.server.publish(next_version("first")?);
            visit.open("").await?;
            visit.until("everything is kept", ALL_KEPT).await?;
            visit.until("a worker answers", HAS_WORKER).await?;
            visit.server.publish(next_version("second")?);
            // The old version answers until the new one is kept whole.
            ensure!(word(&visit).await? == "first");
            let update = "navigator.serviceWorker.getRegistration().then((r) => r.update())";
            visit.script::<()>(update).await?;
            visit
                .until(
                    "the new version waits",
                    "window.seen ??= 0; \
                    navigator.serviceWorker.getRegistration() \
                        .then((r) => { window.seen = r.waiting ? 1 : 0 }); \
                    return window.seen === 1",
                )
                .await?;
            // A link opened in another tab leaves the page open, and with it its version.
            let page = visit.browser.window().await?;
            let beside = visit.browser.new_tab().await?;
            visit.browser.switch_to_window(beside).await?;
            ensure!(
                word(&visit).await? == "first",
                "a page still open was taken for one about to be left"
            );
            visit.browser.close_window().await?;
            visit.browser.switch_to_window(page).await?;
            visit.server.stop();
            // The only page says that it is left, and the new version takes over whole.
            visit.click("a[href$='about/']").await?;
            visit
                .until(
                    "the new version has taken over",
                    "return document.getElementById('word')?.textContent === 'second'",
                )
                .await?;
            // What is asked for while the workers change places may go to the network, which
            // is away; nothing else may be told.
            for told in visit.console().await? {
                ensure!(told.contains("ERR_CONNECTION_REFUSED"), "{told}");
            }
            visit.open("lessons/").await?;
            ensure!(!visit.text("h1").await?.is_empty());
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn a_file_that_is_not_the_listed_one_is_never_kept() -> Result<()> {
    for engine in Engine::ALL {
        let mut files = next_version("first")?;
        let other = b"<!DOCTYPE html><h1>another version's page</h1>".to_vec();
        files.insert("about/index.html".to_owned(), other);
        let server = Server::start_with(files, "/")?;
        journey_on(server, engine, Window::PHONE, async |visit| {
            visit.open("").await?;
            visit.until("a worker answers", HAS_WORKER).await?;
            let filled =
                "return /: (\\d+) of (\\d+)/.test(document.getElementById('kept').textContent)";
            visit
                .until("the page says that some is missing", filled)
                .await?;
            let kept = "const done = arguments[0]; (async () => { \
                for (const name of await caches.keys()) { \
                    if (await (await caches.open(name)).match('/about/')) return true; } \
                return false; })().then(done)";
            let given = visit.browser.execute_async(kept, Vec::new()).await?;
            ensure!(!given.convert::<bool>()?, "another version's page is kept");
            visit.console().await?;
            Ok(())
        })
        .await?;
    }
    Ok(())
}
