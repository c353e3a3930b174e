//! How long a piece of work takes.

use anyhow::Result;
use std::time::{Duration, Instant};

/// A piece of work is repeated for about this long,
const LONG_ENOUGH: Duration = Duration::from_millis(600);
/// and at least this often.
const FEWEST: usize = 5;

/// The median time of a piece of work in seconds, after one run that is not counted.
///
/// The median, since a machine that does other things makes some runs longer and none
/// shorter.
///
/// # Errors
/// When the work fails.
pub fn median_seconds(mut work: impl FnMut() -> Result<()>) -> Result<f64> {
    work()?;
    let started = Instant::now();
    let mut times = Vec::new();
    while times.len() < FEWEST || started.elapsed() < LONG_ENOUGH {
        let run = Instant::now();
        work()?;
        times.push(run.elapsed().as_secs_f64());
    }
    times.sort_by(f64::total_cmp);
    Ok(times[times.len() / 2])
}

#[cfg(test)]
mod tests {
    use super::median_seconds;
    use std::thread::sleep;
    use std::time::Duration;

    #[test]
    fn the_median_passes_over_a_run_that_took_longer() {
        let mut runs = 0;
        let median = median_seconds(|| {
            runs += 1;
            sleep(Duration::from_millis(if runs == 3 { 300 } else { 2 }));
            Ok(())
        });
        let median = median.unwrap();
        assert!((0.002..0.3).contains(&median), "{median}");
        assert!(runs > 5);
    }

    #[test]
    fn work_that_fails_has_no_time() {
        assert!(median_seconds(|| anyhow::bail!("broken")).is_err());
    }
}
