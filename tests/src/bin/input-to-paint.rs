//! Measures how long a lesson's figure takes from its handle's input to what is painted, on
//! a processor slowed down four times: one JSON object a figure, times in seconds.
//!
//! `cargo site bench page` builds the site and runs this.

use anyhow::{Result, ensure};
use checks::{Engine, Visit, Window, journey};
use serde_json::json;

/// How much slower than this machine.
const SLOW_DOWN: u32 = 4;
/// Keys pressed before any is counted, and keys counted.
const WARM_UP: usize = 5;
const COUNTED: usize = 50;

/// Lessons, each with the handle that its first figure is moved by.
const FIGURES: [(&str, &str); 3] = [
    ("lessons/why-one-fixed-frequency/", "dial"),
    ("lessons/oscillator-mixer-difference/", "dial"),
    ("lessons/the-image/", "dial"),
];

/// From the moment the handle had its input to the first task after the frame that shows
/// what came of it.
const LISTEN: &str = "
    window.paints = [];
    addEventListener('input', (event) => {
        requestAnimationFrame(() => {
            const { port1, port2 } = new MessageChannel();
            port1.onmessage = () => paints.push(performance.now() - event.timeStamp);
            port2.postMessage(null);
        });
    }, true);";

#[tokio::main]
async fn main() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        for (lesson, handle) in FIGURES {
            let times = measured(&visit, lesson, handle).await?;
            let (median, worst) = (times[times.len() / 2], times[times.len() - 1]);
            println!(
                "{}",
                json!({"page": lesson, "median": median, "worst": worst})
            );
        }
        Ok(())
    })
    .await
}

/// The times of all counted keys in seconds, the shortest first.
async fn measured(visit: &Visit, lesson: &str, handle: &str) -> Result<Vec<f64>> {
    visit.open(lesson).await?;
    visit.ready().await?;
    let handle = format!("figure[data-live] input[name={handle}]");
    visit.tab_to(&handle).await?;
    let cdp = visit.browser.cdp();
    cdp.send_raw("Emulation.setCPUThrottlingRate", json!({"rate": SLOW_DOWN}))
        .await?;
    visit.script::<()>(LISTEN).await?;
    let standing = format!("return document.querySelector('{handle}').value");
    for count in 1..=WARM_UP + COUNTED {
        let before: String = visit.script(&standing).await?;
        // Back and forth, so that every key moves something.
        press(
            visit,
            if count % 10 < 5 {
                "ArrowRight"
            } else {
                "ArrowLeft"
            },
        )
        .await?;
        let painted = format!("return paints.length === {count}");
        visit.until("it is painted", &painted).await?;
        let after: String = visit.script(&standing).await?;
        ensure!(before != after, "{lesson}: a key moved nothing");
    }
    cdp.send_raw("Emulation.setCPUThrottlingRate", json!({"rate": 1}))
        .await?;
    let mut times: Vec<f64> = visit.script("return paints").await?;
    let mut times: Vec<f64> = times.drain(WARM_UP..).map(|time| time / 1e3).collect();
    times.sort_by(f64::total_cmp);
    Ok(times)
}

async fn press(visit: &Visit, key: &str) -> Result<()> {
    let code = if key == "ArrowLeft" { 37 } else { 39 };
    for kind in ["rawKeyDown", "keyUp"] {
        let event = json!({"type": kind, "key": key, "code": key,
            "windowsVirtualKeyCode": code});
        visit
            .browser
            .cdp()
            .send_raw("Input.dispatchKeyEvent", event)
            .await?;
    }
    Ok(())
}
