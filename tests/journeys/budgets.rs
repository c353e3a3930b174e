//! What a page costs before it is live, counted by the host; a table of all pages.

use anyhow::{Context, Result, ensure};
use checks::{Engine, Sent, Server, Visit, Window, built, journey};
use std::fmt::Write as _;
use std::io::Write as _;
use std::sync::Arc;

/// The most bytes a page may send, all kinds compressed as a host sends them.
#[derive(Debug, Clone, Copy)]
struct Budget {
    /// Everything the page asks for until it is live.
    whole: usize,
    /// What has to be there before anything is painted.
    paint: usize,
    /// Its wasm, where that has a budget of its own.
    wasm: Option<usize>,
}

const LOOK_UP: Budget = Budget {
    whole: 60_000,
    paint: 14_000,
    wasm: Some(25_000),
};
const LESSON: Budget = Budget {
    whole: 150_000,
    paint: 30_000,
    wasm: None,
};

/// The budget of a page; those that have none of their own keep a lesson's.
fn budget(page: &str) -> Budget {
    if page == "lookup/" { LOOK_UP } else { LESSON }
}

/// What one page cost.
#[derive(Debug, Default)]
struct Cost {
    page: String,
    requests: usize,
    whole: usize,
    heads: usize,
    paint: usize,
    wasm: usize,
    /// What the offline copy fetched afterwards.
    kept: usize,
}

/// Files without which nothing is painted: style sheets, and scripts that hold the page up.
const BLOCKING: &str = "return [ \
    ...document.querySelectorAll('link[rel=stylesheet]'), \
    ...document.querySelectorAll('head script[src]:not([defer], [async])'), \
    ].map((element) => new URL(element.href ?? element.src).pathname.slice(1))";

const ALL_KEPT: &str = "return document.getElementById('kept').dataset.kept === 'yes'";

/// The page on a host of its own, which no browser has anything of.
async fn cost(visit: &Visit, page: &str) -> Result<Cost> {
    let server = Server::start(&built::site()?, "/")?;
    let fresh = Visit {
        server: Arc::new(server),
        ..visit.clone()
    };
    fresh.open(page).await?;
    fresh.ready().await?;
    let until_live = fresh.server.sent();
    let blocking: Vec<String> = fresh.script(BLOCKING).await?;
    fresh.until("everything is kept", ALL_KEPT).await?;
    let all = fresh.server.sent();
    Ok(counted(
        page,
        &until_live,
        &blocking,
        &all,
        fresh.server.wire(),
    ))
}

/// Sums up. The heads of answers are as long as one another, so those of the page's own
/// are their share of all.
fn counted(page: &str, until_live: &[Sent], blocking: &[String], all: &[Sent], wire: u64) -> Cost {
    let body = |sent: &[&Sent]| sent.iter().map(|sent| sent.body).sum::<usize>();
    let own: Vec<&Sent> = until_live.iter().filter(|sent| !sent.by_worker).collect();
    let of = |wanted: &dyn Fn(&str) -> bool| {
        let some: Vec<&Sent> = own
            .iter()
            .copied()
            .filter(|sent| wanted(&sent.path))
            .collect();
        body(&some)
    };
    let everything: Vec<&Sent> = all.iter().collect();
    let heads = usize::try_from(wire).unwrap_or(usize::MAX) - body(&everything);
    let whole = body(&own);
    Cost {
        page: page.to_owned(),
        requests: own.len(),
        whole,
        heads: heads * own.len() / all.len(),
        paint: of(&|path| path == page || blocking.iter().any(|file| file == path)),
        wasm: of(&|path| path.ends_with(".wasm")),
        kept: body(&everything) - whole,
    }
}

impl Cost {
    fn within(&self, budget: Budget) -> Result<()> {
        let page = &self.page;
        for (what, bytes, most) in [
            (
                "bytes until it is live",
                self.whole + self.heads,
                budget.whole,
            ),
            ("bytes before the first paint", self.paint, budget.paint),
            (
                "bytes of wasm",
                self.wasm,
                budget.wasm.unwrap_or(budget.whole),
            ),
        ] {
            ensure!(
                bytes <= most,
                "{page:?}: {bytes} {what}, {most} are allowed"
            );
        }
        Ok(())
    }
}

fn table(costs: &[Cost]) -> Result<String> {
    let mut table = String::from(
        "\nBytes until live, brotli (heads of answers apart)\n\
         requests    total    heads   before paint     wasm   kept later  page\n",
    );
    for cost in costs {
        let Cost {
            page,
            requests,
            whole,
            heads,
            paint,
            wasm,
            kept,
        } = cost;
        writeln!(
            table,
            "{requests:>8} {whole:>8} {heads:>8} {paint:>14} {wasm:>8} {kept:>12}  /{page}"
        )?;
    }
    Ok(table)
}

#[tokio::test(flavor = "multi_thread")]
async fn every_page_keeps_its_budget() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        let mut costs = Vec::new();
        for page in built::pages()? {
            let cost = cost(&visit, &page)
                .await
                .with_context(|| format!("/{page}"))?;
            ensure!(cost.paint > 0 && cost.kept > 0, "not counted: {cost:?}");
            costs.push(cost);
        }
        // Written past the test runner, which would keep a passing test's words to itself.
        std::io::stdout().write_all(table(&costs)?.as_bytes())?;
        for cost in &costs {
            cost.within(budget(&cost.page))?;
        }
        Ok(())
    })
    .await
}
