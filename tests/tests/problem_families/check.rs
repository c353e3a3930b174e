//! The check before and after the course: its two forms are alike item by item, and each
//! question comes back number for number.

use crate::root;
use site::check::{Check, Item};
use site::families::Families;
use site::report::Report;
use std::collections::BTreeSet;
use std::fmt::Write;
use superhet::problems::problem::{Answer, Part};
use superhet::problems::{Level, Problem, generate};

const FILE: &str = "tests/tests/problem_families/check.txt";

/// Lessons that the questions must be spread over.
const LESSONS: usize = 12;

fn loaded() -> (Families, Check) {
    let mut report = Report::default();
    let families = Families::load(&root(), &mut report);
    let check = Check::load(&root(), &families, &mut report);
    assert_eq!(report.faults(), [], "{report}");
    (families, check)
}

fn drawn(families: &Families, item: &Item, seed: u32) -> Problem {
    let registered = families
        .find(&item.family)
        .expect("the family is registered");
    generate(&registered.family, item.level, seed).expect("the question can be drawn")
}

fn right(part: &Part) -> String {
    match &part.answer {
        Answer::Number(number) => number.text.clone(),
        Answer::Choice(choices) => {
            let right = choices.iter().find(|choice| choice.right);
            right.expect("one choice is right").text.clone()
        }
    }
}

/// What makes two questions alike: how many parts, steps and hints, what is answered with,
/// how closely.
fn form(problem: &Problem) -> Vec<(String, usize, usize, String)> {
    let of = |part: &Part| {
        let answer = match &part.answer {
            Answer::Number(number) => format!("{:?} {}", number.kind, number.precision_text),
            Answer::Choice(choices) => format!("one of {}", choices.len()),
        };
        (part.id.clone(), part.steps.len(), part.hints.len(), answer)
    };
    problem.parts.iter().map(of).collect()
}

fn rights(problem: &Problem) -> Vec<String> {
    problem.parts.iter().map(right).collect()
}

/// Whether two questions have other numbers and another right answer, with the oscillator on
/// the same side where one is drawn.
fn differ(one: &Problem, other: &Problem) -> bool {
    let mut pairs = rights(one).into_iter().zip(rights(other));
    let side = |problem: &Problem| {
        let mut givens = problem.givens.iter();
        givens.find(|given| given.name == "side").cloned()
    };
    let apart = pairs.all(|(one, other)| one != other);
    one.givens != other.givens && side(one) == side(other) && apart
}

/// The seed of the problem that stands in its lesson, on the easiest level: who has worked it
/// there must not meet it again in the check.
const ON_THE_PAGE: u32 = 1;

/// The first two seeds whose questions have no answers that cannot be told apart, and whose
/// right answers differ.
fn first_seeds(families: &Families, item: &Item) -> [u32; 2] {
    let on_the_page = |seed: u32| item.level == Level::One && seed == ON_THE_PAGE;
    let sound =
        |seed: &u32| !on_the_page(*seed) && drawn(families, item, *seed).collisions.is_empty();
    let first = (0..).find(sound).expect("a seed");
    let one = drawn(families, item, first);
    let second = (first + 1..10_000)
        .filter(sound)
        .find(|seed| differ(&one, &drawn(families, item, *seed)));
    [first, second.expect("a second seed")]
}

#[test]
fn the_two_forms_are_alike_item_by_item() {
    let (families, check) = loaded();
    let mut seeds = Vec::new();
    println!("family, level: right in form 1; in form 2");
    for item in &check.items {
        let found = first_seeds(&families, item);
        let [one, other] = found.map(|seed| drawn(&families, item, seed));
        assert_eq!(form(&one), form(&other), "{}", item.family);
        assert_eq!(one.parts.len(), 1, "{}", item.family);
        let (family, level) = (&item.family, item.level);
        println!(
            "{family}, {level:?}: {:?}; {:?}",
            rights(&one),
            rights(&other)
        );
        if item.seeds != found {
            seeds.push(format!("{family}: seeds = {found:?}"));
        }
    }
    assert!(
        seeds.is_empty(),
        "the seeds of lessons/check.toml should be:\n{}",
        seeds.join("\n")
    );
}

#[test]
fn the_questions_are_spread_over_the_course() {
    let (families, check) = loaded();
    let lesson = |item: &Item| {
        families
            .find(&item.family)
            .expect("it is registered")
            .family
            .lesson
            .clone()
    };
    let lessons: BTreeSet<String> = check.items.iter().map(lesson).collect();
    assert_eq!(lessons.len(), LESSONS, "{lessons:?}");
    assert_eq!(
        check.items.iter().filter(|item| item.is_transfer()).count(),
        6
    );
}

/// Run with `PIN_PROBLEMS=1` to write the questions anew, which nobody may do once a release
/// is out: a reader's second form comes months after the first.
#[test]
fn the_questions_come_back_number_for_number() {
    let (families, check) = loaded();
    let mut text = String::new();
    for (number, item) in (1..).zip(&check.items) {
        for (form, seed) in (1..).zip(item.seeds) {
            let problem = drawn(&families, item, seed);
            let head = format!(
                "== {number} form {form}: {} {:?} {seed}",
                item.family, item.level
            );
            writeln!(text, "{head}\n{}", problem.scene).expect("text can be written to");
            for part in &problem.parts {
                writeln!(text, "{}\n= {}", part.ask, right(part)).expect("text can be written to");
            }
        }
    }
    let path = root().join(FILE);
    if std::env::var_os("PIN_PROBLEMS").is_some() {
        std::fs::write(&path, &text).expect("the questions can be written");
        return;
    }
    let pinned = std::fs::read_to_string(&path).unwrap_or_default();
    assert_eq!(text, pinned, "the check has changed");
}
