//! What the program fills in stands there before it does, in the words of somebody's first
//! visit, so that nothing moves under the reader.

use super::{PAGE, open};
use anyhow::{Context, Result, ensure};
use checks::{Engine, Visit, Window, built, journey};
use serde_json::json;
use site::server::read_folder;

/// The words of what is still to come, in a page as served and in the page in view. What
/// stands on the button that begins a round hangs on the round.
const WORDS: &str = "
    const served = new DOMParser().parseFromString(arguments[0], 'text/html');
    return [served, document].map((page) => [...page.querySelectorAll('.coming')].map((part) => {
        const copy = part.cloneNode(true);
        copy.querySelector('#begin')?.replaceChildren();
        return copy.innerHTML;
    }));";

async fn is_the_same_when_alive(visit: &Visit, page: &str) -> Result<()> {
    let files = read_folder(&built::site()?)?;
    let served = files.get(&format!("{page}index.html")).context("no page")?;
    open(visit, page).await?;
    let given = vec![json!(String::from_utf8_lossy(served))];
    let words = visit.browser.execute(WORDS, given).await?;
    let [served, alive]: [Vec<String>; 2] = words.convert()?;
    ensure!(!served.is_empty(), "{page}: nothing is to come");
    ensure!(served == alive, "{page}: {served:#?} becomes {alive:#?}");
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn a_first_visit_finds_the_words_that_stood_there() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        for page in [PAGE, "practice/check/"] {
            is_the_same_when_alive(&visit, page).await?;
        }
        Ok(())
    })
    .await
}
