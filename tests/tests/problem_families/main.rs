//! Every registered problem family, held to what a problem promises: ten thousand draws
//! a level read, answered and mistaken; textbook examples; draws pinned for ever.

mod files;
mod golden;
mod registry;
mod spellings;
mod tally;
mod textbook;
mod trial;

use site::families::Families;
use site::report::Report;
use std::path::Path;
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

/// Each level of each family on a thread of its own; the table shows with --nocapture.
/// With `TRY_FAMILIES=id,id` only those are tried, for whoever is writing one.
#[test]
fn ten_thousand_draws_of_each_level_hold() {
    let families = families();
    let tallies: Vec<tally::Tally> = std::thread::scope(|scope| {
        let running: Vec<_> = families
            .newest()
            .filter(|registered| wanted(&registered.family.id))
            .flat_map(|registered| Level::ALL.map(|level| (&registered.family, level)))
            .map(|(family, level)| scope.spawn(move || trial::run(family, level, SEEDS)))
            .collect();
        running
            .into_iter()
            .map(|trial| trial.join().expect("the trial ran"))
            .collect()
    });
    println!("{}", tally::table(&tallies));
    let faults: Vec<&String> = tallies.iter().flat_map(tally::Tally::faults).collect();
    assert!(faults.is_empty(), "{faults:#?}");
    for tally in &tallies {
        tally.assert_shares();
    }
}
