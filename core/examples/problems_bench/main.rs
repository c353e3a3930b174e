//! The core's side of `cargo site bench problems`: how long drawing a problem and marking
//! its answers takes.
//!
//! `problems_bench FOLDER` reads every family of the folder and prints a JSON object a
//! line, `{"what", "seconds"}`: the mean of all families at each level, then the slowest
//! family and level. A problem whose right answer is not marked right fails the run. The
//! work itself is in `work.rs`, which the bench in a browser shares.

mod work;

use std::error::Error;
use std::path::Path;
use std::time::Instant;
use superhet::problems::{Family, Level};
use work::drawn_and_marked;

/// Problems drawn of each family and level in a turn.
const SEEDS: u32 = 100;
/// The least of so many turns counts: what else the machine does makes one only longer.
const TURNS: usize = 5;

fn main() -> Result<(), Box<dyn Error>> {
    let folder = std::env::args().nth(1).ok_or("problems_bench FOLDER")?;
    let families = families(Path::new(&folder))?;
    let mut slowest = (0.0, String::new());
    for level in Level::ALL {
        let mut sum = 0.0;
        for family in &families {
            let seconds = a_problem(family, level)?;
            sum += seconds;
            if seconds > slowest.0 {
                slowest = (seconds, format!("{}, {}", family.id, name(level)));
            }
        }
        let count = families.len();
        let what = format!("{}, mean of {count} families", name(level));
        say(&what, sum / count as f64);
    }
    say(&format!("slowest: {}", slowest.1), slowest.0);
    Ok(())
}

fn name(level: Level) -> String {
    match level {
        Level::Transfer => "transfer form".to_owned(),
        other => format!("level {}", other.number()),
    }
}

fn say(what: &str, seconds: f64) {
    println!(r#"{{"what":"native, {what}","seconds":{seconds:?}}}"#);
}

/// Every family of the folder, in the order of the files' names.
fn families(folder: &Path) -> Result<Vec<Family>, Box<dyn Error>> {
    let mut paths = Vec::new();
    for entry in std::fs::read_dir(folder)? {
        let path = entry?.path();
        let registry = path.file_name().is_some_and(|name| name == "registry.toml");
        if !registry && path.extension().is_some_and(|end| end == "toml") {
            paths.push(path);
        }
    }
    paths.sort();
    let read = |path| Ok(toml::from_str(&std::fs::read_to_string(path)?)?);
    let families: Vec<Family> = paths
        .iter()
        .map(read)
        .collect::<Result<_, Box<dyn Error>>>()?;
    if families.is_empty() {
        return Err("the folder holds no family".into());
    }
    Ok(families)
}

/// Seconds to draw one problem and mark its answers, right and mistaken.
fn a_problem(family: &Family, level: Level) -> Result<f64, Box<dyn Error>> {
    let mut least = f64::INFINITY;
    for _ in 0..TURNS {
        let started = Instant::now();
        drawn_and_marked(family, level, SEEDS)?;
        least = least.min(started.elapsed().as_secs_f64() / f64::from(SEEDS));
    }
    Ok(least)
}
