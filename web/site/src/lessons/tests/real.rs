//! The lessons as they are.

use crate::assets::AssetNames;
use crate::edition::Edition;
use crate::families::Families;
use crate::lessons::course::Course;
use crate::lessons::render::{Drawing, page};
use crate::lessons::words::Phrases;
use crate::lessons::{Counts, Lessons};
use crate::links::{Asked, Links};
use crate::report::Report;
use std::path::{Path, PathBuf};

/// The course as it is.
pub(super) fn course() -> Course {
    lessons().course
}

/// The problem families as they are.
pub(super) fn families() -> Families {
    Families::load(&root(), &mut Report::default())
}

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

fn lessons() -> Lessons {
    let root = root();
    let mut report = Report::default();
    let families = Families::load(&root, &mut report);
    let lessons = Lessons::load(&root, &families, &mut report);
    let said: Vec<String> = report.faults().iter().map(ToString::to_string).collect();
    assert_eq!(said.join("\n"), "");
    lessons
}

#[test]
fn they_are_right_and_counted() {
    let counts: Vec<Counts> = lessons().counts().collect();
    println!(
        "{:<34}{:>6}{:>6}{:>7}{:>6}{:>9}{:>9}{:>8}{:>9}{:>10}{:>8}{:>7}",
        "lesson",
        "words",
        "calc",
        "given",
        "fact",
        "figures",
        "predict",
        "worked",
        "beliefs",
        "problems",
        "recall",
        "terms"
    );
    for it in &counts {
        println!(
            "{:<34}{:>6}{:>6}{:>7}{:>6}{:>9}{:>9}{:>8}{:>9}{:>10}{:>8}{:>7}",
            it.slug,
            it.words,
            it.calc,
            it.given,
            it.facts,
            it.figures,
            it.predictions,
            it.worked,
            it.misconceptions,
            it.problems,
            it.recall,
            it.terms
        );
        assert!(it.calc > 0, "{} works nothing out", it.slug);
    }
    assert!(!counts.is_empty());
}

#[test]
fn the_glossary_lists_every_term_by_the_alphabet_with_its_lesson() {
    let lessons = lessons();
    let definitions = lessons.definitions();
    assert_eq!(definitions.len(), lessons.course.glossary.terms().len());
    let names = |definition: &crate::lessons::Definition| definition.name.to_lowercase();
    assert!(definitions.is_sorted_by_key(names));
    for definition in &definitions {
        assert!(!definition.meaning.is_empty(), "{}", definition.id);
        assert!(definition.lesson.is_some(), "{}", definition.id);
    }
    let image = definitions.iter().find(|it| it.id == "image").unwrap();
    assert_eq!(image.lesson.as_ref().unwrap().slug, "the-image");
}

/// A lesson's page, as HTML.
fn drawn(slug: &str) -> String {
    let (course, families) = (course(), families());
    let phrases = Phrases::of_terms(&course.glossary);
    let lesson = course.lesson(slug).expect("a lesson");
    let (names, asked) = (AssetNames::default(), Asked::default());
    let links = Links::from_page(&lesson.path(), &Edition::at_root(), &names, &asked);
    let drawing = Drawing::new(&course, lesson, &phrases, &families, &links);
    page(&drawing).expect("a page").main.into_string()
}

/// Every prediction is settled by a number of the core that is to be seen, once.
#[test]
fn each_prediction_shows_what_settles_it() {
    let mut added = 0;
    for lesson in &course().lessons {
        let page = drawn(&lesson.slug);
        for predict in page
            .split("<section class=\"predict\" data-settled-by=\"")
            .skip(1)
        {
            let (predict, _) = predict.split_once("</section>").unwrap();
            let quantity = predict.split(['?', '"']).next().unwrap();
            let (_, told) = predict.split_once("<details>").unwrap();
            let by_name = told
                .matches(&format!("data-quantity=\"{quantity}\""))
                .count();
            assert!(by_name > 0, "{}: {quantity}", lesson.slug);
            let says = told.contains("Worked out: ");
            assert!(!says || by_name == 1, "{}: twice", lesson.slug);
            added += u32::from(says);
        }
    }
    assert!(added > 0, "no lesson leaves its number to the page");
}

#[test]
fn each_problem_says_which_of_how_many_it_is() {
    let page = drawn("reading-a-dial");
    let mut rest = page.as_str();
    for heading in [
        "<h3 class=\"slip-name\" id=\"heading-metres-and-kilohertz\">Problem 1 of 3</h3>",
        ">Problem 2 of 3</h3>",
        ">Problem 3 of 3</h3>",
        ">Earlier problem 1 of 2</h3>",
        ">Earlier problem 2 of 2</h3>",
    ] {
        let at = rest.find(heading).expect(heading);
        rest = &rest[at + heading.len()..];
    }
}
