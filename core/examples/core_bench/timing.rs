//! How long a short piece of work takes.

use std::hint::black_box;
use std::time::{Duration, Instant};

/// A batch takes at least this long, so that the clock's own grain does not count,
const BATCH: Duration = Duration::from_millis(2);
/// and so many batches are timed.
const BATCHES: usize = 60;

/// Seconds that the work takes: the least of many batches, since a machine that does other
/// things makes a batch longer and none shorter.
pub(crate) fn least_seconds<T>(mut work: impl FnMut() -> T) -> f64 {
    let mut batch = |times: u32| {
        let started = Instant::now();
        for _ in 0..times {
            black_box(work());
        }
        started.elapsed()
    };
    let mut times = 1;
    while batch(times) < BATCH {
        times *= 2;
    }
    let least = (0..BATCHES).map(|_| batch(times)).min();
    least.unwrap_or_default().as_secs_f64() / f64::from(times)
}
