//! `cargo site lighthouse`: the four figures of pages, by one browser for all of them.

use crate::building::rendered;
use crate::check;
use crate::content::Content;
use crate::edition::Edition;
use crate::server::{Asked, Store, answer, respond};
use crate::tools::{Need, NodeTools, find, install, node_tools};
use crate::wasm::{Wasm, compile};
use anyhow::{Context, Result, bail};
use axum::Router;
use axum::extract::{Request, State};
use serde::Deserialize;
use std::collections::BTreeMap;
use std::fs;
use std::io::{BufRead as _, BufReader};
use std::net::Ipv4Addr;
use std::path::Path;
use std::process::{Command, Stdio};
use std::sync::Arc;
use tokio::net::TcpListener;

/// The four figures, in the order they are printed.
const CATEGORIES: [&str; 4] = ["performance", "accessibility", "best-practices", "seo"];

/// The browser.
const NEEDS: [Need; 1] = [Need::program("chromium", &["chromium", "--version"])];

/// One page's figures, as the script gives them.
#[derive(Debug, Deserialize)]
struct Figures {
    url: String,
    scores: BTreeMap<String, u32>,
    missed: Vec<String>,
}

/// Prints the figures of the main pages, or of all, and fails where one is not 100.
///
/// # Errors
/// When the site cannot be built, Lighthouse cannot be run, or a figure is below 100.
pub fn run(root: &Path, all: bool) -> Result<()> {
    install(&NEEDS)?;
    let tools = node_tools(root, NodeTools::All)?;
    let script = tools.join("lighthouse.mjs");
    fs::copy(root.join("web/site/tools/lighthouse.mjs"), &script)
        .context("cannot copy lighthouse.mjs")?;
    let wasm = Arc::new(Wasm::bind(&compile(root)?)?.optimised(root)?);
    let store = Store::new(rendered(root, &wasm, &Edition::at_root())?);
    let content = Content::load(root)?;
    let first = content.lessons.summaries().next();
    let first = first.map(|lesson| lesson.path());
    let pages = pages(&store, first, all);
    let runtime = tokio::runtime::Runtime::new().context("cannot start")?;
    let port = runtime.block_on(host(store))?;
    let missed = measure(&script, port, &pages)?;
    if missed > 0 {
        bail!("{missed} pages have a figure below 100");
    }
    Ok(())
}

/// The main pages besides the first lesson.
const MAIN: [&str; 5] = ["", "lookup/", "practice/", check::PATH, "search/"];

/// The paths of the pages: those of [`MAIN`] and the first lesson, or every page but the 404.
fn pages(store: &Store, first_lesson: Option<String>, all: bool) -> Vec<String> {
    let every: Vec<String> = store
        .paths()
        .filter_map(|path| path.strip_suffix("index.html"))
        .map(str::to_owned)
        .collect();
    if all {
        return every;
    }
    let main = MAIN.map(str::to_owned).into_iter();
    main.chain(first_lesson)
        .filter(|path| every.contains(path))
        .collect()
}

/// Hosts the site on loopback until the program ends.
async fn host(store: Store) -> Result<u16> {
    let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0))
        .await
        .context("no free port")?;
    let port = listener.local_addr()?.port();
    let router = Router::new().fallback(file).with_state(Arc::new(store));
    tokio::spawn(async move { axum::serve(listener, router).await });
    Ok(port)
}

async fn file(
    State(store): State<Arc<Store>>,
    request: Request,
) -> axum::http::Response<axum::body::Body> {
    respond(answer(&store, Asked::from_request(&request)))
}

/// Runs the script and prints a line a page; gives how many pages miss a figure.
fn measure(script: &Path, port: u16, pages: &[String]) -> Result<usize> {
    println!("{:<44} {}", "page", CATEGORIES.join("  "));
    let mut node = Command::new("node");
    node.arg(script).env("CHROMIUM", find("chromium")?);
    for page in pages {
        node.arg(format!("http://127.0.0.1:{port}/{page}"));
    }
    let mut child = node
        .stdout(Stdio::piped())
        .spawn()
        .context("cannot start node")?;
    let output = child.stdout.take().context("node has no output")?;
    let mut missed = 0;
    let mut seen = 0;
    for line in BufReader::new(output).lines() {
        let figures: Figures = serde_json::from_str(&line?).context("not a page's figures")?;
        println!("{}", row(&figures, port));
        seen += 1;
        missed += usize::from(!is_full(&figures));
    }
    if !child.wait()?.success() || seen < pages.len() {
        bail!("Lighthouse measured {seen} of {} pages", pages.len());
    }
    Ok(missed)
}

fn is_full(figures: &Figures) -> bool {
    let full = |name: &&str| figures.scores.get(*name) == Some(&100);
    CATEGORIES.iter().all(full)
}

fn row(figures: &Figures, port: u16) -> String {
    let host = format!("http://127.0.0.1:{port}");
    let page = figures.url.strip_prefix(&host).unwrap_or(&figures.url);
    let cell = |name: &&str| {
        let score = figures.scores.get(*name).copied().unwrap_or_default();
        format!("{score:>width$}", width = name.len())
    };
    let cells: Vec<String> = CATEGORIES.iter().map(cell).collect();
    let missed = if is_full(figures) {
        String::new()
    } else {
        format!("  ({})", figures.missed.join(", "))
    };
    format!("{page:<44} {}{missed}", cells.join("  "))
}

#[cfg(test)]
mod tests {
    use super::{Figures, is_full, pages, row};
    use crate::render::Files;
    use crate::server::Store;

    fn figures(performance: u32) -> Figures {
        let scores = [
            ("performance", performance),
            ("accessibility", 100),
            ("best-practices", 100),
            ("seo", 100),
        ];
        Figures {
            url: "http://127.0.0.1:5/lookup/".to_owned(),
            scores: scores.map(|(name, score)| (name.to_owned(), score)).into(),
            missed: vec!["unused-css-rules 0.5".to_owned()],
        }
    }

    #[test]
    fn what_costs_a_page_its_hundred_is_named() {
        assert!(is_full(&figures(100)));
        assert!(!row(&figures(100), 5).contains("unused"));
        let line = row(&figures(98), 5);
        assert!(!is_full(&figures(98)));
        assert!(line.starts_with("/lookup/") && line.contains("98") && line.contains("unused"));
    }

    #[test]
    fn the_main_pages_and_the_first_lesson_are_measured() {
        let mut files = Files::new();
        for path in [
            "index",
            "lookup/index",
            "practice/index",
            "practice/check/index",
            "search/index",
            "lessons/index",
            "lessons/a/index",
            "404",
        ] {
            files.insert(format!("{path}.html"), Vec::new());
        }
        let store = Store::new(files);
        let first = || Some("lessons/a/".to_owned());
        let main = [
            "",
            "lookup/",
            "practice/",
            "practice/check/",
            "search/",
            "lessons/a/",
        ];
        assert_eq!(pages(&store, first(), false), main);
        assert_eq!(pages(&store, None, false), main[..5]);
        assert_eq!(pages(&store, first(), true).len(), 7);
    }
}
