//! How long a problem takes to be drawn and its answers to be marked, natively and in
//! Chromium. There is no rival: the goals are times.
//!
//! The core answers from an example of its own package, compiled with optimisation, for
//! every family of `lessons/problems/`. The program of the lesson pages, built as they have
//! it but for the feature `bench`, does the same work on a page of its own.

use super::example::{built, printed};
use super::row::{Goal, Row};
use crate::families::Families;
use crate::report::Report;
use crate::tools::{CHROMIUM, install};
use crate::wasm::{Wasm, cargo, target_folder};
use anyhow::{Context, Result, ensure};
use serde::Deserialize;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

const FAMILIES: &str = "lessons/problems";

/// A frame at sixty a second: a new problem stands there with the next one.
const A_FRAME: f64 = 0.016;

/// What `problems_bench` and `problems-in-chromium` print for a row.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Timed {
    what: String,
    seconds: f64,
}

/// Rows of the group `problems`.
pub(super) fn rows(root: &Path) -> Result<Vec<Row>> {
    let program = built(root, "problems_bench")?;
    let mut rows = printed(Command::new(program).arg(root.join(FAMILIES)), row)?;
    rows.extend(in_chromium(root)?);
    Ok(rows)
}

/// The same work in a browser.
fn in_chromium(root: &Path) -> Result<Vec<Row>> {
    install(&CHROMIUM)?;
    let page = page(root)?;
    let mut browser = Command::new(cargo());
    browser
        .current_dir(root)
        .args(["run", "--quiet", "--package", "checks"])
        .args(["--features", "browser", "--bin", "problems-in-chromium"])
        .env("BEFORE_THE_BENCH_SITE", &page);
    printed(&mut browser, row)
}

/// Writes a page that times every family, and says in which folder.
fn page(root: &Path) -> Result<PathBuf> {
    let mut report = Report::default();
    let families = Families::load(root, &mut report);
    ensure!(report.faults().is_empty(), "{report}");
    let families: Vec<String> = families
        .files(false)?
        .into_iter()
        .map(|(_, text)| String::from_utf8(text).context("a family is no text"))
        .collect::<Result<_>>()?;
    let bound = Wasm::alone(root, "study", "bench")?;
    let script = format!("{}\n{}", bound.script, include_str!("problems/page.js"));
    let folder = target_folder(root).join("problems-bench");
    fs::create_dir_all(&folder).with_context(|| format!("cannot make {}", folder.display()))?;
    for (name, bytes) in [
        ("index.html", include_bytes!("problems/page.html").to_vec()),
        ("page.js", script.into_bytes()),
        ("study.wasm", bound.wasm),
        ("families.json", serde_json::to_vec(&families)?),
    ] {
        let path = folder.join(name);
        fs::write(&path, bytes).with_context(|| format!("cannot write {}", path.display()))?;
    }
    Ok(folder)
}

fn row(line: &str) -> Result<Row> {
    let timed: Timed = serde_json::from_str(line).with_context(|| format!("no time: {line}"))?;
    Ok(Row {
        what: timed.what,
        ours: timed.seconds,
        rival: None,
        goal: Goal::Seconds(A_FRAME),
    })
}

#[cfg(test)]
mod tests {
    use super::row;

    #[test]
    fn a_line_becomes_a_row_without_a_rival() {
        let row = row(r#"{"what":"native, level 1","seconds":2e-5}"#).unwrap();
        assert_eq!((row.ours, row.rival), (2e-5, None));
        assert!(row.reached());
    }

    #[test]
    fn what_is_no_time_is_refused_with_the_line() {
        let said = row("slow").unwrap_err().to_string();
        assert!(said.contains("slow"), "{said}");
    }
}
