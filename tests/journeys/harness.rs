//! What the journeys rely on holds: errors are heard, windows have their size, rules of
//! accessibility are broken when they are broken, what is told is heard, and a stopped host is
//! silent.

use anyhow::{Result, ensure};
use checks::{Engine, Visit, Window, journey};
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
async fn what_the_policy_refuses_is_heard() -> Result<()> {
    let inline = "const script = document.createElement('script'); \
        script.textContent = 'window.ran = true'; document.body.append(script); \
        return window.ran === true";
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            visit.open("").await?;
            ensure!(
                !visit.script::<bool>(inline).await?,
                "an inline script runs"
            );
            let mut said = Vec::new();
            // The browser's log is written by another process.
            for _ in 0..50 {
                said.extend(visit.console().await?);
                if !said.is_empty() {
                    break;
                }
                tokio::time::sleep(Duration::from_millis(30)).await;
            }
            let heard = |line: &String| line.contains("policy") || line.contains("Policy");
            ensure!(said.iter().any(heard), "not heard: {said:?}");
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn what_does_not_fit_is_found() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        visit.open("").await?;
        visit.no_sideways_scroll().await?;
        visit.fit_for_fingers().await?;
        visit.in_view("h1").await?;
        let spoil = "const button = document.createElement('button'); \
            button.textContent = 'x'; \
            button.style.cssText = 'width: 400px; max-width: none; min-height: 0; height: 20px'; \
            document.querySelector('main').append(button)";
        visit.script::<()>(spoil).await?;
        let wide = visit.no_sideways_scroll().await;
        ensure!(wide.is_err_and(|error| error.to_string().contains("<button")));
        let small = visit.fit_for_fingers().await;
        ensure!(small.is_err_and(|error| error.to_string().contains("400 x 20")));
        let below = visit.in_view("main > button").await;
        ensure!(below.is_err(), "what is below the window is in view");
        Ok(())
    })
    .await
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

/// Puts a live region into the page, gives it words, and says what is told of that.
async fn said(visit: &Visit, attributes: &str, words: &[&str]) -> Result<Vec<String>> {
    let region = format!("document.querySelector('main').innerHTML = '<p id=r {attributes}></p>'");
    visit.script::<()>(&region).await?;
    for words in words {
        let say = format!("document.querySelector('#r').textContent = '{words}'");
        visit.script::<()>(&say).await?;
    }
    visit.spoken().await
}

#[tokio::test(flavor = "multi_thread")]
async fn what_is_told_is_heard_and_what_is_hidden_is_not() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            visit.open("").await?;
            visit.listen().await?;
            ensure!(said(&visit, "role=status", &["one", "", "two"]).await? == ["one", "two"]);
            ensure!(
                said(&visit, "", &["one"]).await?.is_empty(),
                "it is no region"
            );
            ensure!(
                said(&visit, "role=status hidden", &["one"])
                    .await?
                    .is_empty()
            );
            let off = "role=status aria-live=off";
            ensure!(said(&visit, off, &["one"]).await?.is_empty(), "it is off");
            let twice = said(&visit, "role=status", &["one", "", "one"]).await;
            ensure!(twice.is_err_and(|error| error.to_string().contains("said twice")));
            let shouted = said(&visit, "role=alert", &["one"]).await;
            ensure!(shouted.is_err_and(|error| error.to_string().contains("assertive")));

            let lost = visit.focus().await;
            ensure!(lost.is_err_and(|error| error.to_string().contains("fell to body")));
            let put = "document.querySelector('main').innerHTML = \
                '<button id=b>Mark it</button><p id=h hidden>one</p>'; \
                document.querySelector('#b').focus()";
            visit.script::<()>(put).await?;
            visit.hears("button", "Mark it").await?;
            ensure!(visit.hears("button", "Show it").await.is_err());
            ensure!(visit.is_in_tree("#b").await? != Some(false));
            ensure!(visit.is_in_tree("#h").await? != Some(true));
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
