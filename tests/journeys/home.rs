//! The first page opens in every engine, and breaks no rule of accessibility.

use anyhow::{Result, ensure};
use checks::{Engine, Window, journey};

#[tokio::test(flavor = "multi_thread")]
async fn home_opens_in_every_engine() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            visit.open("").await?;
            let heading = visit.text("h1").await?;
            ensure!(!heading.trim().is_empty(), "home has no heading");
            visit.accessible().await
        })
        .await?;
    }
    Ok(())
}
