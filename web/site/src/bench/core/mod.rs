//! How long the core takes, against general programs that answer the same questions.
//!
//! Both sides read `questions.toml`. The core answers from an example of its own package,
//! compiled with optimisation; NumPy, SciPy and ngspice from `rivals.py`, in the Python
//! environment of the references. The two take turns, each time is the least that a side
//! showed, and an answer that is not the other side's fails the run.

mod answer;

use super::example::{built, printed};
use super::row::{Goal, Row};
use crate::tools::{Need, install, python};
use answer::{Agreement, Answer};
use anyhow::{Context, Result};
use std::path::Path;
use std::process::Command;

const QUESTIONS: &str = "web/site/src/bench/core/questions.toml";
const RIVALS: &str = "web/site/src/bench/core/rivals.py";

/// The simulator, and what makes the Python environment.
const NEEDS: [Need; 2] = [
    Need::program("ngspice", &["ngspice", "--version"]),
    Need::program("python3-venv", &["python3", "-c", "import ensurepip"]),
];

/// Turns of each side: what else the machine does has passed by the next.
const TURNS: usize = 3;

/// One row: what is asked of the core and of which rival.
struct Match {
    what: &'static str,
    ours: &'static str,
    rival: &'static str,
    times_as_fast: f64,
    agreement: Agreement,
}

/// What is asked of outside computations, of decibels and hertz.
const EXACT: Agreement = Agreement {
    relative: 1e-9,
    least_scale: 1.0,
};

/// The same of parts in farads and henries.
const EXACT_PARTS: Agreement = Agreement {
    relative: 1e-9,
    least_scale: 0.0,
};

/// The rival looks at 2 001 dial settings. Near a peak the error falls as `1 − (4π·t)²/2`,
/// t being the distance over the band, and the nearest setting is 1/4 000 away at most:
/// 4.9e-6. It stops within 1e-10 of 5e-3, which is less.
const LOOKED_AT: Agreement = Agreement {
    relative: 5e-6,
    least_scale: 0.0,
};

const MATCHES: [Match; 6] = [
    Match {
        what: "three exact pairs, 400 points, against NumPy",
        ours: "curve-400",
        rival: "curve-400",
        times_as_fast: 20.0,
        agreement: EXACT,
    },
    Match {
        what: "three exact pairs, 1001 points, against NumPy",
        ours: "curve-1001",
        rival: "curve-1001",
        times_as_fast: 10.0,
        agreement: EXACT,
    },
    Match {
        what: "three exact pairs, 1001 points, against ngspice",
        ours: "curve-1001",
        rival: "ngspice-1001",
        times_as_fast: 200.0,
        agreement: EXACT,
    },
    Match {
        what: "three-point tracking, against SciPy",
        ours: "tracking",
        rival: "tracking",
        times_as_fast: 500.0,
        agreement: EXACT_PARTS,
    },
    Match {
        what: "best three points, against SciPy",
        ours: "best-points",
        rival: "best-points",
        times_as_fast: 100.0,
        agreement: LOOKED_AT,
    },
    Match {
        what: "card of 120 channels, against NumPy",
        ours: "card",
        rival: "card",
        times_as_fast: 5.0,
        agreement: EXACT,
    },
];

/// Rows of the group `core`.
pub(super) fn rows(root: &Path) -> Result<Vec<Row>> {
    install(&NEEDS)?;
    let python = python(root)?;
    let core = built(root, "core_bench")?;
    let (mut ours, mut rivals) = (Vec::new(), Vec::new());
    for _ in 0..TURNS {
        let mut command = Command::new(&core);
        ours.extend(printed(command.arg(root.join(QUESTIONS)), Answer::read)?);
        let rival = root.join(RIVALS);
        let mut command = Command::new(&python);
        command.arg(rival).arg(root.join(QUESTIONS));
        rivals.extend(printed(&mut command, Answer::read)?);
    }
    MATCHES.iter().map(|one| row(one, &ours, &rivals)).collect()
}

/// A match's row, once every turn of the rival has given the core's answer.
fn row(one: &Match, ours: &[Answer], rivals: &[Answer]) -> Result<Row> {
    let (core, ours) = Answer::fastest(one.ours, ours)?;
    let (_, rival) = Answer::fastest(one.rival, rivals)?;
    for other in rivals.iter().filter(|answer| answer.question == one.rival) {
        one.agreement.check(core, other).context(one.what)?;
    }
    Ok(Row {
        what: one.what.to_owned(),
        ours,
        rival: Some(rival),
        goal: Goal::TimesAsFast(one.times_as_fast),
    })
}
