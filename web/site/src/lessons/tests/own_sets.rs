//! The lessons for other sets than their own: whatever follows can be worked out and drawn,
//! and its task is open and can be done.

use super::real;
use crate::assets::AssetNames;
use crate::edition::Edition;
use crate::lessons::blocks::{Figure, Part};
use crate::lessons::lesson::Lesson;
use crate::lessons::reach::can_be_done;
use crate::lessons::render::{Drawing, page};
use crate::lessons::words::Phrases;
use crate::links::{Asked, Links};
use crate::page::Page;
use figures::{Condition, Input, View};
use myset::{OwnSet, Typed};
use numbers::Recipes;
use numbers::own::{Outcome, apply};

/// IFs in kHz: those in use (common practice, no source), and some that spoil examples.
const INTERMEDIATES: [&str; 12] = [
    "110", "125", "175", "260", "440", "455", "465", "470", "475", "480", "600", "1600",
];

fn set(intermediate: &str, side: &str, more: &[(&'static str, &str)]) -> Option<OwnSet> {
    let mut typed = Typed {
        side: side.to_owned(),
        region: "1".to_owned(),
        ..Typed::default()
    };
    typed.boxes.insert("if", intermediate.to_owned());
    let more = more.iter().map(|(key, text)| (*key, (*text).to_owned()));
    typed.boxes.extend(more);
    typed.set().ok()
}

/// Sets that say no more than their IF, and sets with dials and circuits of their own.
fn sets() -> Vec<OwnSet> {
    let mut sets = Vec::new();
    for intermediate in INTERMEDIATES {
        for side in ["above", "below"] {
            sets.extend(set(intermediate, side, &[]));
            sets.extend(set(
                intermediate,
                side,
                &[
                    ("mw-low", "512 kHz"),
                    ("mw-high", "1650 kHz"),
                    ("aerial-q", "45"),
                    ("f1", "580 kHz"),
                    ("f2", "960 kHz"),
                    ("f3", "1490 kHz"),
                    ("coil", "190 µH"),
                ],
            ));
        }
    }
    sets
}

/// Does something with the page and recipes of every lesson that speaks of sets.
fn with_lessons(mut act: impl FnMut(&Lesson, &Page, &Recipes)) {
    let (course, families) = (real::course(), real::families());
    let phrases = Phrases::of_terms(&course.glossary);
    let (names, asked) = (AssetNames::default(), Asked::default());
    let (mut met, mut faults) = (0, Vec::new());
    for lesson in &course.lessons {
        let links = Links::from_page(&lesson.path(), &Edition::at_root(), &names, &asked);
        let drawing = Drawing::new(&course, lesson, &phrases, &families, &links);
        let page = match page(&drawing) {
            Ok(page) => page,
            Err(error) => {
                faults.push(error.to_string());
                continue;
            }
        };
        if let Some(text) = &page.recipes {
            let recipes: Recipes = serde_json::from_str(text).expect("recipes");
            assert!(recipes.is_sound());
            act(lesson, &page, &recipes);
            met += 1;
        }
    }
    assert_eq!(faults.join("\n"), "");
    assert!(met > 6, "only {met} lessons speak of sets");
}

/// The values that stand in the page as marked numbers, in its order; a problem's answer on
/// paper is none.
fn values_in(page: &str) -> Vec<String> {
    let found = page.split("<data class=\"number\" value=\"").skip(1);
    let value = |rest: &str| {
        let (value, rest) = rest.split_once('"')?;
        rest.starts_with(" data-kind").then(|| value.to_owned())
    };
    found.filter_map(value).collect()
}

#[test]
fn recipes_stand_in_the_order_of_the_page() {
    let practice = set("470 kHz", "above", &[]).expect("a set");
    with_lessons(|lesson, page, recipes| {
        let values = values_in(&page.main.clone().into_string());
        assert_eq!(values.len(), recipes.numbers.len(), "{}", lesson.slug);
        let known = numbers::own::values(recipes);
        for (place, value) in values.iter().enumerate() {
            if let Some(known) = &known[place] {
                assert_eq!(known, value, "{}, number {place}", lesson.slug);
            }
        }
        let outcome = apply(recipes, &practice);
        assert!(outcome.numbers.is_empty(), "{}: {outcome:?}", lesson.slug);
        assert!(outcome.stays.is_empty(), "{}: {outcome:?}", lesson.slug);
    });
}

fn figures_of(lesson: &Lesson) -> Vec<&Figure> {
    let figures = lesson.parts.iter().filter_map(|part| match part {
        Part::Figure(figure) => Some(figure),
        _ => None,
    });
    figures.collect()
}

#[test]
fn figures_that_follow_can_be_drawn_and_their_tasks_done() {
    let mut followed = 0;
    with_lessons(|lesson, _, recipes| {
        let own = figures_of(lesson);
        for set in sets() {
            for (place, query) in apply(recipes, &set).figures {
                let figure = own[place];
                let about = format!("{}, {query}", lesson.slug);
                let input = Input::parse(&query).expect(&about);
                let view = figures::view(&figure.name, &input).expect(&about);
                if let Some(task) = &figure.task {
                    let done = Condition::parse(&task.done).expect(&about);
                    let met = |view: &View| done.met(view).expect(&about);
                    assert!(!met(&view), "{about}: done from the start");
                    let can = can_be_done(&figure.name, &input, &done);
                    assert!(can, "{about}: cannot be done");
                }
                followed += 1;
            }
        }
    });
    assert!(followed > 100, "only {followed} figures follow");
}

#[test]
fn every_lesson_tells_what_follows_and_what_stays() {
    let told = |outcome: &Outcome| {
        let stays = outcome.stays.len();
        format!(
            "{:>9}{:>9}{:>8}{:>6}",
            outcome.numbers.len(),
            outcome.figures.len(),
            stays,
            outcome.left
        )
    };
    println!(
        "{:<34}  IF 455 kHz, above                 IF 125 kHz, below",
        "lesson"
    );
    println!("{:<34}{1}{1}", "", "  numbers  figures  places  left");
    with_lessons(|lesson, _, recipes| {
        let outcomes = [("455 kHz", "above"), ("125 kHz", "below")].map(|(intermediate, side)| {
            apply(recipes, &set(intermediate, side, &[]).expect("a set"))
        });
        let changed = outcomes
            .iter()
            .map(|outcome| outcome.numbers.len() + outcome.stays.len());
        assert!(changed.sum::<usize>() > 0, "{}", lesson.slug);
        for (_, why) in outcomes.iter().flat_map(|outcome| &outcome.stays) {
            assert!(why.ends_with('.'), "{}: {why}", lesson.slug);
        }
        println!(
            "{:<34}{}{}",
            lesson.slug,
            told(&outcomes[0]),
            told(&outcomes[1])
        );
    });
}
