//! Draws pinned for ever: three seeds of each level of each registered revision.
//!
//! A problem that was once handed out by its code must come back number for number, so
//! lines of `golden.txt` are added when a revision is registered and never changed. Run
//! with `PIN_PROBLEMS=1` to add the lines of new revisions; lines that are there stay.

use crate::{families, root};
use std::fmt::Write;
use superhet::problems::problem::Answer;
use superhet::problems::{Level, Problem, ProblemCode, Registered, generate};

/// Seeds that are pinned: the first, one beyond 16 bits, the last.
const PINNED: [u32; 3] = [0, 70_013, u32::MAX];

const FILE: &str = "tests/tests/problem_families/golden.txt";

#[test]
fn pinned_problems_come_back_number_for_number() {
    let path = root().join(FILE);
    let pinned = std::fs::read_to_string(&path).unwrap_or_default();
    let blocks: Vec<String> = families().all().flat_map(blocks).collect();
    if std::env::var_os("PIN_PROBLEMS").is_some() {
        let head = |block: &String| block.lines().next().unwrap_or_default().to_string();
        let new = blocks.iter().filter(|block| !pinned.contains(&head(block)));
        let grown = new.fold(pinned.clone(), |text, block| text + block);
        std::fs::write(&path, grown).expect("the pinned problems can be written");
        return;
    }
    for block in &blocks {
        let head = block.lines().next().unwrap_or_default();
        assert!(
            pinned.contains(head),
            "not pinned yet, see the top of golden.rs: {head}"
        );
        assert!(
            pinned.contains(block.as_str()),
            "this problem has changed:\n{block}"
        );
    }
    let count = |text: &str| text.lines().filter(|line| line.starts_with("== ")).count();
    assert_eq!(
        count(&pinned),
        blocks.len(),
        "a pinned problem is no longer registered"
    );
}

fn blocks(registered: &Registered) -> Vec<String> {
    let pairs = Level::ALL
        .into_iter()
        .flat_map(|level| PINNED.map(|seed| (level, seed)));
    pairs
        .map(|(level, seed)| block(registered, level, seed))
        .collect()
}

fn block(registered: &Registered, level: Level, seed: u32) -> String {
    let Registered { number, family } = registered;
    let problem = generate(family, level, seed).expect("a pinned problem can be drawn");
    let code = ProblemCode {
        family: *number,
        revision: family.revision,
        level,
        seed,
    };
    let code = code.encode().expect("a registered family has a code");
    assert_eq!(ProblemCode::decode(&code).map(|read| read.seed), Ok(seed));
    written(&code, &problem)
}

fn written(code: &str, problem: &Problem) -> String {
    let mut text = format!(
        "== {code} {} {:?} {}\n",
        problem.family, problem.level, problem.seed
    );
    let mut line = |words: &str| writeln!(text, "{words}").expect("text can be written to");
    line(&problem.scene);
    for part in &problem.parts {
        line(&part.ask);
        match &part.answer {
            Answer::Number(answer) => {
                line(&format!(
                    "= {} {:#018x}",
                    answer.text,
                    answer.value.to_bits()
                ));
                for mistake in &answer.mistakes {
                    line(&format!(
                        "! {} {:#018x}",
                        mistake.id,
                        mistake.value.to_bits()
                    ));
                }
            }
            Answer::Choice(choices) => {
                for choice in choices {
                    line(&format!(
                        "{} {}",
                        if choice.right { '=' } else { '!' },
                        choice.id
                    ));
                }
            }
        }
    }
    text
}
