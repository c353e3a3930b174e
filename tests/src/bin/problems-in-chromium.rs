//! Opens the page that `cargo site bench problems` writes, which draws and marks problems
//! in wasm, and prints its rows: a JSON object each, `{"what", "seconds"}`.

use anyhow::{Result, ensure};
use checks::{Engine, Window, journey};
use serde::Deserialize;
use serde_json::json;

/// The four levels, and the slowest of all.
const ROWS: usize = 5;

/// A row as the page leaves it.
#[derive(Deserialize)]
struct Timed {
    what: String,
    seconds: f64,
}

#[tokio::main]
async fn main() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        visit.open("").await?;
        for count in 1..=ROWS {
            let there = format!("return timed.length >= {count} || !!globalThis.failed");
            visit
                .until(&format!("row {count} is there"), &there)
                .await?;
        }
        let failed: Option<String> = visit.script("return globalThis.failed ?? null").await?;
        ensure!(failed.is_none(), "the page failed: {failed:?}");
        for row in visit.script::<Vec<Timed>>("return timed").await? {
            let what = format!("Chromium, {}", row.what);
            println!("{}", json!({"what": what, "seconds": row.seconds}));
        }
        Ok(())
    })
    .await
}
