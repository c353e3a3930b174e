//! Every registered problem family, held to what a problem promises: ten thousand draws
//! a level read, answered and mistaken; textbook examples; draws pinned for ever.

mod check;
mod files;
mod golden;
mod registry;
mod spellings;
mod tally;
mod textbook;
mod trial;

use site::families::Families;
use site::report::Report;
use std::num::NonZero;
use std::path::Path;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::thread;
use superhet::problems::{Family, Level};

/// Seeds tried for each family and level.
const SEEDS: u32 = 10_000;

fn root() -> std::path::PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

fn families() -> Families {
    let mut report = Report::default();
    let families = Families::load(&root(), &mut report);
    assert_eq!(report.faults(), [], "{report}");
    families
}

fn family(id: &str) -> Family {
    families()
        .find(id)
        .expect("the family is registered")
        .family
        .clone()
}

fn wanted(id: &str) -> bool {
    std::env::var("TRY_FAMILIES").map_or(true, |ids| ids.split(',').any(|it| it == id))
}

/// Every level of every family, one after the other on as many threads as there are cores.
fn tried(families: &Families) -> Vec<tally::Tally> {
    let trials: Vec<(&Family, Level)> = families
        .newest()
        .filter(|registered| wanted(&registered.family.id))
        .flat_map(|registered| Level::ALL.map(|level| (&registered.family, level)))
        .collect();
    let next = AtomicUsize::new(0);
    let work = || {
        let mut done = Vec::new();
        loop {
            let place = next.fetch_add(1, Ordering::Relaxed);
            let Some((family, level)) = trials.get(place) else {
                return done;
            };
            done.push((place, trial::run(family, *level, SEEDS)));
        }
    };
    let cores = thread::available_parallelism().map_or(1, NonZero::get);
    let mut tallies: Vec<(usize, tally::Tally)> = thread::scope(|scope| {
        let running: Vec<_> = (0..cores).map(|_| scope.spawn(work)).collect();
        let join = |thread: thread::ScopedJoinHandle<'_, _>| thread.join().expect("the trials ran");
        running.into_iter().flat_map(join).collect()
    });
    tallies.sort_by_key(|(place, _)| *place);
    tallies.into_iter().map(|(_, tally)| tally).collect()
}

/// The table shows with --nocapture. With `TRY_FAMILIES=id,id` only those are tried, for
/// whoever is writing one.
#[test]
fn ten_thousand_draws_of_each_level_hold() {
    let tallies = tried(&families());
    println!("{}", tally::table(&tallies));
    let faults: Vec<&String> = tallies.iter().flat_map(tally::Tally::faults).collect();
    assert!(faults.is_empty(), "{faults:#?}");
    for tally in &tallies {
        tally.assert_shares();
    }
}
