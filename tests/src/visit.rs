//! One visit to the site: a browser, the host, and what a journey does with them.

use crate::built;
use crate::ears;
use crate::engine::{self, Engine, Session};
use crate::server::Server;
use crate::window::Window;
use anyhow::{Context, Result, bail, ensure};
use serde::Deserialize;
use serde_json::Value;
use std::future::Future;
use std::sync::Arc;
use std::time::{Duration, Instant};
use thirtyfour::common::print::PrintParameters;
use thirtyfour::{By, WebDriver, WebElement};

/// How long a page may take to become live on a busy machine.
const PATIENCE: Duration = Duration::from_secs(20);

/// How long something has to keep its place before it counts as at rest.
const STILL: Duration = Duration::from_millis(60);

/// A browser on the site. Cheap to clone.
#[derive(Clone)]
pub struct Visit {
    /// The engine.
    pub engine: Engine,
    /// The browser, for what has no word here.
    pub browser: WebDriver,
    /// The host.
    pub server: Arc<Server>,
}

/// Makes a journey on the site at the root of its host: starts host and browser, walks,
/// and ends both whatever happens. Messages left in the console fail it.
///
/// # Errors
/// When something cannot be started, the walk fails, or the console holds errors.
pub async fn journey<F, Walk>(engine: Engine, window: Window, walk: F) -> Result<()>
where
    F: FnOnce(Visit) -> Walk,
    Walk: Future<Output = Result<()>>,
{
    let server = Server::start_for(engine, &built::site()?, "/")?;
    journey_on(server, engine, window, walk).await
}

/// The same on a host of the caller's own.
///
/// # Errors
/// As [`journey`].
pub async fn journey_on<F, Walk>(
    server: Server,
    engine: Engine,
    window: Window,
    walk: F,
) -> Result<()>
where
    F: FnOnce(Visit) -> Walk,
    Walk: Future<Output = Result<()>>,
{
    let Session { browser, drivers } = engine::start(engine, window).await?;
    let visit = Visit {
        engine,
        browser: browser.clone(),
        server: Arc::new(server),
    };
    let walked = browser
        .run_and_quit(|_| async move {
            walk(visit.clone()).await?;
            visit.quiet_console().await
        })
        .await;
    // The driver has to outlive the session it ends.
    drop(drivers);
    walked.map_err(|error| anyhow::anyhow!("{engine:?}: {error:?}"))
}

impl Visit {
    /// Opens a path of the site (`""`, `"lookup/?dial=1200kHz"`).
    ///
    /// # Errors
    /// When the browser cannot go there.
    pub async fn open(&self, path: &str) -> Result<()> {
        let url = self.server.url(path);
        self.browser
            .goto(&url)
            .await
            .with_context(|| format!("opening {url}"))
    }

    /// Waits until the page says that it is live.
    ///
    /// # Errors
    /// When it does not in time.
    pub async fn ready(&self) -> Result<()> {
        self.until(
            "the page is live",
            "return document.body.hasAttribute('data-ready')",
        )
        .await
    }

    /// Waits until a script gives true.
    ///
    /// # Errors
    /// When it does not in time: `what` says what was waited for.
    pub async fn until(&self, what: &str, script: &str) -> Result<()> {
        let started = Instant::now();
        loop {
            if self.script::<bool>(script).await.unwrap_or(false) {
                return Ok(());
            }
            if started.elapsed() > PATIENCE {
                let console = self.console().await.unwrap_or_default().join("\n");
                bail!("waited {PATIENCE:?} until {what}; console: {console}");
            }
            tokio::time::sleep(Duration::from_millis(30)).await;
        }
    }

    /// Runs a script in the page (`return …`) and gives what it returns.
    ///
    /// # Errors
    /// When it throws, or gives something else.
    pub async fn script<T: for<'a> Deserialize<'a>>(&self, script: &str) -> Result<T> {
        let given = self.browser.execute(script, Vec::<Value>::new()).await?;
        Ok(given.convert()?)
    }

    /// The first element that a CSS selector finds, waited for.
    ///
    /// # Errors
    /// When there is none in time.
    pub async fn element(&self, css: &str) -> Result<WebElement> {
        let started = Instant::now();
        loop {
            match self.browser.find(By::Css(css)).await {
                Ok(found) => return Ok(found),
                Err(error) if started.elapsed() > PATIENCE => {
                    return Err(error).with_context(|| format!("no {css}"));
                }
                Err(_) => tokio::time::sleep(Duration::from_millis(30)).await,
            }
        }
    }

    /// The same, brought into the window at once: a page that scrolls smoothly would still
    /// be on its way when the driver looks where the element is.
    async fn in_sight(&self, css: &str) -> Result<WebElement> {
        let element = self.element(css).await?;
        let show = "arguments[0].scrollIntoView({ block: 'nearest', behavior: 'instant' })";
        self.browser.execute(show, vec![element.to_json()?]).await?;
        Ok(element)
    }

    /// The text of an element, as shown.
    ///
    /// # Errors
    /// When there is none in time.
    pub async fn text(&self, css: &str) -> Result<String> {
        Ok(self.element(css).await?.text().await?)
    }

    /// Replaces what is in a box by typing.
    ///
    /// # Errors
    /// When there is no such box or it cannot be typed into.
    pub async fn type_into(&self, css: &str, text: &str) -> Result<()> {
        let element = self.in_sight(css).await?;
        element.clear().await?;
        element.send_keys(text).await?;
        Ok(())
    }

    /// Waits until an element stands still in the window, as whoever aims at it does: what
    /// comes alive above it may still move it.
    async fn still(&self, css: &str) -> Result<WebElement> {
        let mut before = None;
        let started = Instant::now();
        loop {
            let element = self.in_sight(css).await?;
            let place = "const { x, y } = arguments[0].getBoundingClientRect(); return [x, y]";
            let place = self.browser.execute(place, vec![element.to_json()?]).await;
            let place: Option<(f64, f64)> = place.ok().and_then(|place| place.convert().ok());
            if place.is_some() && place == before {
                return Ok(element);
            }
            ensure!(started.elapsed() < PATIENCE, "{css} does not stand still");
            before = place;
            tokio::time::sleep(STILL).await;
        }
    }

    /// Clicks an element as a finger would.
    ///
    /// # Errors
    /// When there is none, it does not come to rest, or something lies over it.
    pub async fn click(&self, css: &str) -> Result<()> {
        let element = self.still(css).await?;
        element
            .click()
            .await
            .with_context(|| format!("clicking {css}"))
    }

    /// The errors and warnings of the console since this was last asked.
    ///
    /// # Errors
    /// When the browser does not give its log.
    pub async fn console(&self) -> Result<Vec<String>> {
        if self.engine == Engine::Chromium {
            let entries = self.browser.browser_log().await?;
            let bad = entries.into_iter().filter(|entry| entry.level != "INFO");
            let bad = bad.filter(|entry| entry.level != "DEBUG");
            return Ok(bad
                .map(|entry| format!("{}: {}", entry.level, entry.message))
                .collect());
        }
        tokio::time::sleep(ears::LATEST).await;
        self.script(ears::HEARD).await
    }

    /// Refuses any error or warning in the console.
    ///
    /// # Errors
    /// When there is one.
    pub async fn quiet_console(&self) -> Result<()> {
        let said = self.console().await?;
        ensure!(said.is_empty(), "the console says:\n{}", said.join("\n"));
        Ok(())
    }

    /// The page printed to PDF, as Chromium's own printing gives it (`@page` is heeded).
    ///
    /// # Errors
    /// When the browser cannot print.
    pub async fn pdf(&self) -> Result<Vec<u8>> {
        if self.engine == Engine::Chromium {
            return crate::printing::chromium_pdf(&self.browser).await;
        }
        Ok(self.browser.print_page(PrintParameters::default()).await?)
    }
}
