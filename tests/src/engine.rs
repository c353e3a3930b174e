//! The browser engines that journeys are made in.

use crate::process::{Running, free_port};
use crate::window::Window;
use anyhow::{Context, Result};
use serde_json::{Value, json};
use std::path::PathBuf;
use std::process::Command;
use thirtyfour::{Capabilities, WebDriver};

/// A browser engine.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Engine {
    /// Chromium.
    Chromium,
    /// WebKitGTK: Safari's engine, though not Safari. Its windows are never narrower
    /// than 447 px.
    WebKit,
}

impl Engine {
    /// Both engines.
    pub const ALL: [Self; 2] = [Self::Chromium, Self::WebKit];
    /// A name that Chromium finds on this machine, and holds for another one: pages from
    /// there come over plain http.
    pub const HALL: &str = "club.test";
}

/// A browser with the programs that drive it.
pub(crate) struct Session {
    pub(crate) browser: WebDriver,
    pub(crate) drivers: Drivers,
}

/// The programs behind a browser; they end when this is dropped.
pub(crate) struct Drivers {
    _driver: Running,
    _screen: Option<Running>,
}

/// Starts a browser with a window.
pub(crate) async fn start(engine: Engine, window: Window) -> Result<Session> {
    let port = free_port()?;
    let (drivers, capabilities) = match engine {
        Engine::Chromium => (chromium_drivers(port)?, chromium_capabilities()),
        Engine::WebKit => (webkit_drivers(port)?, webkit_capabilities()?),
    };
    let Value::Object(capabilities) = capabilities else {
        anyhow::bail!("capabilities are an object");
    };
    let capabilities = Capabilities::from(capabilities);
    let browser = WebDriver::new(format!("http://127.0.0.1:{port}"), capabilities)
        .await
        .with_context(|| format!("no session with {engine:?}"))?;
    let session = Session { browser, drivers };
    fit(&session.browser, engine, window).await?;
    Ok(session)
}

fn chromium_drivers(port: u16) -> Result<Drivers> {
    let mut command = Command::new("chromedriver");
    let mut driver = Running::start(command.arg(format!("--port={port}")))?;
    driver.wait_for_port(port).context("chromedriver")?;
    Ok(Drivers {
        _driver: driver,
        _screen: None,
    })
}

/// Headless, and silent towards the network: what is asked for is the page's own doing.
fn chromium_capabilities() -> Value {
    let hall = format!("--host-resolver-rules=MAP {} 127.0.0.1", Engine::HALL);
    json!({
        "browserName": "chrome",
        "goog:chromeOptions": {
            "args": [
                "--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic",
                "--disable-dev-shm-usage", "--no-first-run", "--disable-background-networking",
                "--disable-component-update", "--disable-sync", "--disable-extensions",
                "--hide-scrollbars", hall,
            ],
        },
        "goog:loggingPrefs": {"browser": "ALL"},
    })
}

/// A screen of its own for each browser: the server says which number it took.
fn webkit_drivers(port: u16) -> Result<Drivers> {
    let mut screen = Running::start(Command::new("Xvfb").args([
        "-displayfd",
        "1",
        "-screen",
        "0",
        "1600x1200x24",
        "-nolisten",
        "tcp",
    ]))?;
    let number = screen
        .wait_for(|line| line.trim().parse::<u32>().ok())
        .context("Xvfb")?;
    let mut command = Command::new("WebKitWebDriver");
    command
        .arg(format!("--port={port}"))
        .env("DISPLAY", format!(":{number}"))
        .env("NO_AT_BRIDGE", "1")
        .env("GDK_BACKEND", "x11")
        .env("LIBGL_ALWAYS_SOFTWARE", "1");
    let mut driver = Running::start(&mut command)?;
    driver.wait_for_port(port).context("WebKitWebDriver")?;
    Ok(Drivers {
        _driver: driver,
        _screen: Some(screen),
    })
}

fn webkit_capabilities() -> Result<Value> {
    Ok(json!({
        "webkitgtk:browserOptions": {
            "binary": mini_browser()?,
            "args": ["--automation"],
        },
    }))
}

/// The browser that comes with WebKitGTK, below each architecture's own folder.
fn mini_browser() -> Result<PathBuf> {
    let folders = std::fs::read_dir("/usr/lib").context("no /usr/lib")?;
    let paths = folders.filter_map(|entry| {
        let path = entry.ok()?.path().join("webkit2gtk-4.1/MiniBrowser");
        path.exists().then_some(path)
    });
    paths
        .into_iter()
        .next()
        .context("no MiniBrowser (package webkit2gtk-driver)")
}

/// Gives the window its inner size: by emulation where there is any, else by the outer
/// size with what the browser adds.
pub(crate) async fn fit(browser: &WebDriver, engine: Engine, window: Window) -> Result<()> {
    let Window {
        width,
        height,
        phone,
    } = window;
    if engine == Engine::Chromium {
        let metrics = json!({
            "width": width, "height": height, "mobile": phone, "deviceScaleFactor": 1,
        });
        let cdp = browser.cdp();
        cdp.send_raw("Emulation.setDeviceMetricsOverride", metrics)
            .await?;
        cdp.send_raw(
            "Emulation.setTouchEmulationEnabled",
            json!({"enabled": phone}),
        )
        .await?;
        return Ok(());
    }
    browser.set_window_rect(0, 0, width, height).await?;
    let added = "return [outerWidth - innerWidth, outerHeight - innerHeight]";
    let added: (u32, u32) = browser.execute(added, vec![]).await?.convert()?;
    browser
        .set_window_rect(0, 0, width + added.0, height + added.1)
        .await?;
    Ok(())
}
