//! One step of the test run, and the summary of all.

use super::counts::Counts;
use anyhow::Result;
use std::io::{BufRead as _, BufReader};
use std::process::{Command, Stdio};
use std::time::Instant;

/// What came of a step.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Step {
    pub(super) name: &'static str,
    pub(super) passed: bool,
    pub(super) seconds: f64,
    pub(super) tests: Counts,
}

/// Does a piece of work as a step.
pub(super) fn timed<T>(name: &'static str, work: impl FnOnce() -> Result<T>) -> Result<(Step, T)> {
    println!("== {name}");
    let started = Instant::now();
    let made = work()?;
    let step = Step {
        name,
        passed: true,
        seconds: started.elapsed().as_secs_f64(),
        tests: Counts::default(),
    };
    Ok((step, made))
}

/// Runs tests as a step; their output passes through and is counted. A step that cannot
/// be started, or runs no test at all, has not passed.
pub(super) fn tests(name: &'static str, command: &mut Command) -> Step {
    println!("== {name}");
    let started = Instant::now();
    let (succeeded, tests) = pass_through(command).unwrap_or_else(|error| {
        eprintln!("{name}: {error:#}");
        (false, Counts::default())
    });
    Step {
        name,
        passed: succeeded && tests.failed == 0 && tests.passed > 0,
        seconds: started.elapsed().as_secs_f64(),
        tests,
    }
}

fn pass_through(command: &mut Command) -> Result<(bool, Counts)> {
    let mut child = command.stdout(Stdio::piped()).spawn()?;
    let mut tests = Counts::default();
    if let Some(output) = child.stdout.take() {
        for line in BufReader::new(output).lines() {
            let line = line?;
            println!("{line}");
            tests.hear(&line);
        }
    }
    Ok((child.wait()?.success(), tests))
}

/// A line for each step.
pub(super) fn summary(steps: &[Step]) -> String {
    let line = |step: &Step| {
        let verdict = if step.passed { "ok" } else { "FAILED" };
        let Counts { passed, failed } = step.tests;
        let tests = match (passed, failed) {
            (0, 0) => String::new(),
            (passed, 0) => format!("{passed} passed"),
            (passed, failed) => format!("{passed} passed, {failed} failed"),
        };
        format!(
            "{:<10} {verdict:<7} {:>6.0} s  {tests}",
            step.name, step.seconds
        )
    };
    let lines: Vec<String> = steps.iter().map(line).collect();
    lines.join("\n")
}

#[cfg(test)]
mod tests {
    use super::{Counts, Step, summary, tests};
    use std::process::Command;

    #[test]
    fn the_summary_names_each_step_with_its_verdict() {
        let step = |name, failed| Step {
            name,
            passed: failed == 0,
            seconds: 12.4,
            tests: Counts { passed: 7, failed },
        };
        assert_eq!(
            summary(&[step("native", 0), step("journeys", 2)]),
            "native     ok          12 s  7 passed\n\
             journeys   FAILED      12 s  7 passed, 2 failed"
        );
    }

    #[test]
    fn a_step_that_ran_no_test_has_not_passed() {
        let mut none = Command::new("true");
        assert!(!tests("nothing", &mut none).passed);
        let mut missing = Command::new("no-such-program-anywhere");
        assert!(!tests("nothing", &mut missing).passed);
    }
}
