//! The look-up on small screens: answer and box together, nothing sideways, keys for thumbs.

use super::SET;
use anyhow::{Context, Result, ensure};
use checks::{Engine, Visit, Window, journey};

/// The least height of the answer's digits, in CSS pixels.
const ANSWER: f64 = 40.0;

const SCREENS: [Window; 3] = [
    Window::PHONE,
    Window::PHONE_WITH_KEYPAD,
    Window::NARROW_PHONE,
];

/// What has to be seen without moving the page.
const TOGETHER: [&str; 4] = [
    "[data-slot=answer]",
    "[data-slot=image]",
    "#dial",
    "[data-slot=dial-box]",
];

async fn fits(visit: &Visit) -> Result<()> {
    visit.no_sideways_scroll().await?;
    visit.fit_for_fingers().await
}

#[tokio::test(flavor = "multi_thread")]
async fn answer_and_box_stand_together_on_every_phone() -> Result<()> {
    for engine in Engine::ALL {
        for window in SCREENS {
            journey(engine, window, async |visit| {
                for query in ["", "?dial=17.825MHz&if=455kHz&side=above&region=2"] {
                    visit.open(&format!("lookup/{query}")).await?;
                    visit.ready().await?;
                    for css in TOGETHER {
                        visit.in_view(css).await?;
                    }
                    fits(&visit).await?;
                }
                Ok(())
            })
            .await
            .with_context(|| format!("{window:?}"))?;
        }
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn a_refusal_stands_with_its_box_above_the_keypad() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE_WITH_KEYPAD, async |visit| {
        visit
            .open("lookup/?dial=400kHz&if=470kHz&side=below")
            .await?;
        visit.ready().await?;
        visit.in_view("#problem").await?;
        visit.in_view("#dial").await?;
        fits(&visit).await
    })
    .await
}

#[tokio::test(flavor = "multi_thread")]
async fn everything_opened_still_fits() -> Result<()> {
    for window in SCREENS {
        journey(Engine::Chromium, window, async |visit| {
            visit
                .open("lookup/?dial=945kHz&if=470kHz&side=above")
                .await?;
            visit.ready().await?;
            visit.click(SET).await?;
            visit.in_view("#set > summary").await?;
            fits(&visit).await
        })
        .await
        .with_context(|| format!("{window:?}"))?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn the_answer_is_large() -> Result<()> {
    let size = "return parseFloat(getComputedStyle( \
        document.querySelector('[data-slot=answer-number]')).fontSize)";
    for window in SCREENS {
        journey(Engine::Chromium, window, async move |visit| {
            visit.open("lookup/").await?;
            let place = visit.place("[data-slot=answer-number]").await?;
            ensure!(place.bottom - place.top >= ANSWER, "{window:?}: {place:?}");
            let size: f64 = visit.script(size).await?;
            ensure!(size >= ANSWER, "{window:?}: {size} px");
            Ok(())
        })
        .await?;
    }
    Ok(())
}
