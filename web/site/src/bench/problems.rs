//! How long a problem takes to be drawn and its answers to be marked, natively. There is
//! no rival: the goals are times.
//!
//! The core answers from an example of its own package, compiled with optimisation, for
//! every family of `lessons/problems/`.

use super::example::{built, printed};
use super::row::{Goal, Row};
use anyhow::{Context, Result};
use serde::Deserialize;
use std::path::Path;
use std::process::Command;

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
    let program = built(root, "problems_bench")?;
    printed(Command::new(program).arg(root.join(FAMILIES)), row)
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
