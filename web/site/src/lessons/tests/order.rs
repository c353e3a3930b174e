//! Quantities and terms before the lesson that introduces them.

use super::{faults, faults_of_one};

#[test]
fn a_quantity_before_its_lesson() {
    let early = |place: &str| {
        format!("lessons/01-one.md:{place}: \"image\" is used here, but lesson 2 introduces it")
    };
    assert_eq!(
        faults_of_one("apart.", "apart. [2140 kHz](calc:image)"),
        early("19:97")
    );
    assert_eq!(
        faults_of_one("settled by: oscillator", "settled by: image"),
        early("27:13")
    );
    assert_eq!(
        faults_of_one("```formula oscillator", "```formula image"),
        early("55:4")
    );
    assert_eq!(
        faults_of_one("apart.", "apart. [1 kHz](calc:beat?f1=909kHz&f2=908kHz)"),
        "lessons/01-one.md:19:97: no lesson introduces the quantity \"beat\""
    );
}

#[test]
fn a_term_before_its_lesson_in_any_spelling() {
    let early = |place: &str, word: &str| {
        format!("lessons/01-one.md:{place}: \"{word}\" is used here, but lesson 2 introduces it")
    };
    assert_eq!(
        faults_of_one("apart.", "apart. The image."),
        early("19:101", "image")
    );
    assert_eq!(
        faults_of_one("apart.", "apart. Images!"),
        early("19:97", "Images")
    );
    assert_eq!(
        faults_of_one("apart.", "apart. An IM."),
        early("19:100", "IM")
    );
    assert_eq!(
        faults_of_one("apart.", "apart. [It](term:image)."),
        early("19:98", "It")
    );
    assert_eq!(
        faults_of_one("Work out the oscillator", "Find the image"),
        early("4:20", "image")
    );
    assert_eq!(faults_of_one("apart.", "apart. Imagery, I'm, im."), "");
}

#[test]
fn a_term_in_a_text_that_an_earlier_lesson_shows() {
    assert_eq!(
        faults(&[
            ("glossary.toml", "one fixed frequency", "no image"),
            ("misconceptions.toml", "It runs sideways.", "It has images."),
        ]),
        "lessons/glossary.toml:5:26: \"image\" is used here, but lesson 2 introduces it, and lesson 1 shows this text\n\
         lessons/misconceptions.toml:9:18: \"images\" is used here, but lesson 2 introduces it, and lesson 1 shows this text"
    );
}

#[test]
fn the_words_of_a_problem_family_belong_to_its_lesson() {
    assert_eq!(
        faults(&[
            ("problems/family.toml", "no superhet", "its image"),
            ("problems/family.toml", "hums", "hums at 470 kHz"),
        ]),
        "lessons/problems/family.toml:3:21: \"image\" is used here, but lesson 2 introduces it\n\
         lessons/problems/family.toml:5:32: \"470 kHz\" is a number with a unit: let a slot fill it in"
    );
}

#[test]
fn the_first_use_defines_a_term() {
    assert_eq!(
        faults_of_one(
            "A [superhet](term:superhet) on",
            "A superhet, a [superhet](term:superhet), on"
        ),
        "lessons/01-one.md:19:3: the first \"superhet\" of the lesson that introduces it is a link to term:superhet or bold type"
    );
    assert_eq!(
        faults_of_one("A [superhet](term:superhet) on", "A **superhet** on"),
        ""
    );
    assert_eq!(
        faults_of_one(
            "A [superhet](term:superhet) on",
            "A [set of this kind](term:superhet) on"
        ),
        ""
    );
    assert_eq!(
        faults(&[("02-two.md", "The **image** of", "The **image and more** of")]),
        "lessons/02-two.md:18:7: the first \"image\" of the lesson that introduces it is a link to term:image or bold type"
    );
}

#[test]
fn what_is_introduced_is_known_used_and_introduced_once() {
    assert_eq!(
        faults_of_one("A [superhet](term:superhet) on", "A set on"),
        "lessons/01-one.md:10:10: the lesson introduces \"superhet\" but never uses it"
    );
    assert_eq!(
        faults_of_one("terms = [\"superhet\"]", "terms = [\"superhet\", \"hum\"]"),
        "lessons/01-one.md:10:22: no term has the id \"hum\" in glossary.toml"
    );
    assert_eq!(
        faults(&[("02-two.md", "[\"image\"]", "[\"image\", \"oscillator\"]")]),
        "lessons/02-two.md:10:24: lesson 1 introduces \"oscillator\" already"
    );
    assert_eq!(
        faults_of_one("terms = [\"superhet\"]", "terms = []"),
        "lessons/glossary.toml:2:6: no lesson introduces the term \"superhet\""
    );
}

#[test]
fn the_first_lessons_have_no_decibels_and_no_q() {
    let said = |place: &str, word: &str| {
        format!(
            "lessons/01-one.md:{place}: lessons 1 to 5 say \"times weaker\": no decibels and no Q (got \"{word}\")"
        )
    };
    assert_eq!(
        faults_of_one("apart.", "apart. No decibels."),
        said("19:100", "decibels")
    );
    assert_eq!(
        faults_of_one("apart.", "apart. Its Q."),
        said("19:101", "Q")
    );
    let found = faults(&[
        ("01-one.md", "apart.", "apart. [6 dB](fact:six)"),
        (
            "sources.toml",
            "[[fact]]",
            "[[fact]]\nid = \"six\"\ntext = \"6 dB\"\npractice = true\n\n[[fact]]",
        ),
    ]);
    assert_eq!(found, said("19:100", "dB"));
    assert_eq!(faults_of_one("apart.", "apart. A queue, a quiet one."), "");
}
