//! What came of many draws of one level.

use std::collections::{BTreeMap, HashSet};
use superhet::problems::{Family, Level, Problem};

/// Share of a mistake's draws in which it must be named as itself.
const LEAST_NAMED: f64 = 0.95;
/// Share of draws that may keep two answers which cannot be told apart.
const MOST_COLLIDING: f64 = 0.05;
/// Faults kept of one level: the first few say enough.
const FAULTS: usize = 5;

/// Counts for one level of one family.
#[derive(Debug)]
pub(crate) struct Tally {
    family: String,
    level: Level,
    drawn: u32,
    colliding: u32,
    /// Part and mistake, to how often it could be made, was marked wrong, was named.
    mistakes: BTreeMap<(String, String), [u32; 3]>,
    collisions: BTreeMap<String, u32>,
    texts: HashSet<String>,
    problems: HashSet<String>,
    faults: Vec<String>,
}

impl Tally {
    pub(crate) fn new(family: &Family, level: Level) -> Tally {
        Tally {
            family: family.id.clone(),
            level,
            drawn: 0,
            colliding: 0,
            mistakes: BTreeMap::new(),
            collisions: BTreeMap::new(),
            texts: HashSet::new(),
            problems: HashSet::new(),
            faults: Vec::new(),
        }
    }

    pub(crate) fn drawn(&mut self, problem: &Problem) {
        self.drawn += 1;
        self.colliding += u32::from(!problem.collisions.is_empty());
        for collision in &problem.collisions {
            let pair = format!(
                "{}: {} = {}",
                collision.part, collision.one, collision.other
            );
            *self.collisions.entry(pair).or_default() += 1;
        }
        self.problems.insert(
            problem
                .givens
                .iter()
                .map(|given| format!("{} ", given.text))
                .collect(),
        );
    }

    /// Whether a text has not been seen before in this tally.
    pub(crate) fn is_new(&mut self, text: &str) -> bool {
        !self.texts.contains(text) && self.texts.insert(text.to_string())
    }

    pub(crate) fn mistaken(&mut self, part: &str, mistake: &str, wrong: bool, named: bool) {
        let counts = self
            .mistakes
            .entry((part.into(), mistake.into()))
            .or_default();
        for (count, happened) in counts.iter_mut().zip([true, wrong, named]) {
            *count += u32::from(happened);
        }
    }

    pub(crate) fn fault(&mut self, seed: u32, says: &str) {
        if self.faults.len() < FAULTS {
            self.faults.push(format!(
                "{} {:?} seed {seed}: {says}",
                self.family, self.level
            ));
        }
    }

    pub(crate) fn faults(&self) -> &[String] {
        &self.faults
    }

    /// Every mistake is wrong and, nearly always, named; hardly any draw collides.
    pub(crate) fn assert_shares(&self) {
        let name = format!("{} {:?}", self.family, self.level);
        assert!(
            self.mistakes.len() >= 3,
            "{name} tells {} mistakes",
            self.mistakes.len()
        );
        for ((part, mistake), [made, wrong, named]) in &self.mistakes {
            assert_eq!(
                made, wrong,
                "{name}: {part}/{mistake} was once marked right"
            );
            let share = f64::from(*named) / f64::from(*made);
            assert!(
                share >= LEAST_NAMED,
                "{name}: {part}/{mistake} named in {share:.3}"
            );
        }
        let share = f64::from(self.colliding) / f64::from(self.drawn.max(1));
        assert!(
            share <= MOST_COLLIDING,
            "{name}: {share:.3} of the draws collide"
        );
    }
}

/// One line a mistake: how often it could be made and was named; then the collisions.
pub(crate) fn table(tallies: &[Tally]) -> String {
    let mut lines = vec![format!(
        "{:<22}{:<10}{:<24}{:<24}{:>7}{:>9}{:>9}",
        "family", "level", "part", "mistake", "made", "wrong %", "named %"
    )];
    for tally in tallies {
        for ((part, mistake), counts) in &tally.mistakes {
            let [made, wrong, named] = counts.map(f64::from);
            lines.push(format!(
                "{:<22}{:<10}{part:<24}{mistake:<24}{made:>7}{:>9.2}{:>9.2}",
                tally.family,
                format!("{:?}", tally.level),
                100.0 * wrong / made,
                100.0 * named / made
            ));
        }
        lines.push(format!(
            "{:<22}{:<10}{} draws, {} different, {} with collisions {:?}",
            tally.family,
            format!("{:?}", tally.level),
            tally.drawn,
            tally.problems.len(),
            tally.colliding,
            tally.collisions
        ));
    }
    lines.join("\n")
}
