//! What the journeys rely on holds: errors are heard, windows have their size, rules of
//! accessibility are broken when they are broken, and a stopped host is silent.

use anyhow::{Result, ensure};
use checks::{Engine, Window, journey};
use std::time::Duration;

/// WebKit's narrowest window.
const WEBKIT_NARROWEST: u32 = 447;

#[tokio::test(flavor = "multi_thread")]
async fn an_error_in_a_page_is_heard() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            visit.open("").await?;
            visit.quiet_console().await?;
            let throw = "setTimeout(() => { throw new Error('a valve has gone') })";
            visit.script::<()>(throw).await?;
            tokio::time::sleep(Duration::from_millis(300)).await;
            let said = visit.console().await?;
            ensure!(
                said.iter().any(|line| line.contains("a valve has gone")),
                "not heard: {said:?}"
            );
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn windows_have_the_size_asked_for() -> Result<()> {
    for engine in Engine::ALL {
        for window in [Window::NARROW_PHONE, Window::LAPTOP] {
            journey(engine, window, async move |visit| {
                visit.open("").await?;
                let size: (u32, u32) = visit.script("return [innerWidth, innerHeight]").await?;
                let width = match engine {
                    Engine::Chromium => window.width,
                    Engine::WebKit => window.width.max(WEBKIT_NARROWEST),
                };
                ensure!(size == (width, window.height), "{window:?} became {size:?}");
                Ok(())
            })
            .await?;
        }
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn a_broken_rule_of_accessibility_is_found() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            visit.open("").await?;
            let spoil = "document.querySelector('main').append(document.createElement('button'))";
            visit.script::<()>(spoil).await?;
            let broken = visit.violations().await?;
            ensure!(
                broken.iter().any(|rule| rule.id == "button-name"),
                "{broken:?}"
            );
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn what_a_page_costs_is_counted() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            visit.open("").await?;
            let sent = visit.server.sent();
            let page = sent.iter().find(|sent| sent.path.is_empty());
            ensure!(
                page.is_some_and(|sent| sent.status == 200 && sent.body > 0),
                "{sent:?}"
            );
            let bodies: usize = sent.iter().map(|sent| sent.body).sum();
            ensure!(visit.server.wire() > bodies as u64, "heads weigh something");
            Ok(())
        })
        .await?;
    }
    Ok(())
}
