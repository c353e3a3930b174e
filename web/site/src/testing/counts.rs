//! How many tests passed, from what cargo prints.

/// Tests counted over all of a step's programs.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub(super) struct Counts {
    /// Tests that passed.
    pub(super) passed: u32,
    /// Tests that failed.
    pub(super) failed: u32,
}

impl Counts {
    /// Adds what a line such as `test result: ok. 5 passed; 1 failed; …` says; other lines
    /// say nothing.
    pub(super) fn hear(&mut self, line: &str) {
        let Some(result) = line.trim_start().strip_prefix("test result: ") else {
            return;
        };
        for part in result.split(['.', ';']) {
            let mut words = part.split_whitespace();
            let number = words.next().and_then(|word| word.parse().ok()).unwrap_or(0);
            match words.next() {
                Some("passed") => self.passed += number,
                Some("failed") => self.failed += number,
                _ => {}
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Counts;

    #[test]
    fn results_of_all_programs_are_added() {
        let mut counts = Counts::default();
        for line in [
            "running 7 tests",
            "test result: ok. 6 passed; 0 failed; 1 ignored; 0 measured; 0 filtered out",
            "test result: FAILED. 2 passed; 3 failed; 0 ignored; finished in 0.11s",
            "a test result: ok. 9 passed",
        ] {
            counts.hear(line);
        }
        let wanted = Counts {
            passed: 8,
            failed: 3,
        };
        assert_eq!(counts, wanted);
    }
}
