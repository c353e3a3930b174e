//! How soon a live figure follows the hand on a slow phone. There is no rival: the goals
//! are times.

use super::row::{Goal, Row};
use crate::building::rendered;
use crate::edition::Edition;
use crate::tools::{CHROMIUM, install};
use crate::wasm::{Wasm, cargo, compile, target_folder};
use crate::write::write;
use anyhow::{Context, Result, bail};
use serde::Deserialize;
use std::path::Path;
use std::process::{Command, Stdio};
use std::sync::Arc;

/// A frame at sixty a second, and two of them.
const MEDIAN: f64 = 0.016;
const WORST: f64 = 0.033;

/// What `input-to-paint` prints for a page.
#[derive(Debug, Deserialize)]
struct Figure {
    page: String,
    median: f64,
    worst: f64,
}

/// Rows of the group `page`.
pub(super) fn rows(root: &Path) -> Result<Vec<Row>> {
    install(&CHROMIUM)?;
    let wasm = Arc::new(Wasm::bind(&compile(root)?)?.optimised(root)?);
    let site = target_folder(root).join("site-under-test");
    write(&rendered(root, &wasm, &Edition::at_root())?, &site)?;
    let output = Command::new(cargo())
        .current_dir(root)
        .args([
            "run",
            "--quiet",
            "--package",
            "checks",
            "--features",
            "browser",
        ])
        .args(["--bin", "input-to-paint"])
        .env("BEFORE_THE_BENCH_SITE", &site)
        .stderr(Stdio::inherit())
        .output()
        .context("cannot start cargo")?;
    if !output.status.success() {
        bail!("the figures could not be measured (see the messages above)");
    }
    let lines = String::from_utf8(output.stdout).context("no text came back")?;
    let mut rows = Vec::new();
    for line in lines.lines() {
        let figure = serde_json::from_str(line).context(line.to_owned())?;
        rows.extend(of_figure(&figure));
    }
    Ok(rows)
}

/// The two rows of one figure.
fn of_figure(figure: &Figure) -> [Row; 2] {
    let page = figure
        .page
        .trim_start_matches("lessons/")
        .trim_end_matches('/');
    let row = |which: &str, ours, most| Row {
        what: format!("{page}: input to paint, 4x slower, {which}"),
        ours,
        rival: None,
        goal: Goal::Seconds(most),
    };
    [
        row("median of 50", figure.median, MEDIAN),
        row("worst of 50", figure.worst, WORST),
    ]
}
