//! How long a problem takes to be drawn and its answers to be marked, natively. There is
//! no rival: the goals are times.
//!
//! The core answers from an example of its own package, compiled with optimisation, for
//! every family of `lessons/problems/`.

use super::row::{Goal, Row};
use crate::wasm::{cargo, target_folder};
use anyhow::{Context, Result, bail};
use serde::Deserialize;
use std::path::Path;
use std::process::{Command, Stdio};

const FAMILIES: &str = "lessons/problems";

/// A frame at sixty a second: a new problem stands there with the next one.
const A_FRAME: f64 = 0.016;

/// What `problems_bench` prints for a row.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Timed {
    what: String,
    seconds: f64,
}

/// Rows of the group `problems`.
pub(super) fn rows(root: &Path) -> Result<Vec<Row>> {
    build(root)?;
    let name = format!("problems_bench{}", std::env::consts::EXE_SUFFIX);
    let program = target_folder(root).join("release/examples").join(name);
    let output = Command::new(program)
        .arg(root.join(FAMILIES))
        .stderr(Stdio::inherit())
        .output()
        .context("cannot start problems_bench")?;
    if !output.status.success() {
        bail!("the problems could not be timed (see the messages above)");
    }
    let text = String::from_utf8(output.stdout).context("no text came back")?;
    text.lines().map(row).collect()
}

/// The core's side, optimised.
fn build(root: &Path) -> Result<()> {
    let status = Command::new(cargo())
        .current_dir(root)
        .args(["build", "--quiet", "--release", "--package", "superhet"])
        .args(["--example", "problems_bench"])
        .status()
        .context("cannot start cargo")?;
    if !status.success() {
        bail!("problems_bench does not compile (see cargo's messages above)");
    }
    Ok(())
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
