//! What a lesson lacks or has in the wrong place.

use super::{ONE, faults, faults_of_one};

fn block(name: &str) -> String {
    let start = ONE
        .find(&format!("```{name}"))
        .expect("a block of that name");
    let end = ONE[start..].find("\n```\n").expect("its end");
    ONE[start..start + end + 5].to_owned()
}

#[test]
fn a_prediction_stands_before_the_first_figure() {
    assert_eq!(
        faults_of_one(&block("predict"), ""),
        "lessons/01-one.md:2:9: a lesson asks for a prediction before its first figure"
    );
    let (predict, figure) = (block("predict"), block("figure"));
    assert_eq!(
        faults_of_one(
            &format!("{predict}\n{figure}"),
            &format!("{figure}\n{predict}")
        ),
        "lessons/01-one.md:29:4: the prediction stands before the lesson's first figure, which would answer it"
    );
    assert_eq!(
        faults_of_one(&figure, ""),
        "lessons/01-one.md:2:9: a lesson has a figure"
    );
}

#[test]
fn misconceptions_are_two_named_and_broken() {
    assert_eq!(
        faults(&[
            (
                "01-one.md",
                "[\"backwards\", \"sideways\"]",
                "[\"backwards\"]"
            ),
            ("01-one.md", &block("misconception sideways"), ""),
        ]),
        "lessons/01-one.md:2:9: a lesson breaks at least two misconceptions (got 1)\n\
         lessons/misconceptions.toml:8:6: no lesson breaks the misconception \"sideways\""
    );
    assert_eq!(
        faults_of_one(&block("misconception sideways"), ""),
        "lessons/01-one.md:6:32: \"sideways\" is named here, but no block \"misconception sideways\" stands in the text"
    );
    assert_eq!(
        faults_of_one(
            "[\"backwards\", \"sideways\"]",
            "[\"backwards\", \"upside-down\"]"
        ),
        "lessons/01-one.md:51:4: \"sideways\" stands here, but \"misconceptions\" in the front matter does not name it\n\
         lessons/01-one.md:6:32: \"upside-down\" is named here, but no block \"misconception upside-down\" stands in the text\n\
         lessons/misconceptions.toml:8:6: no lesson breaks the misconception \"sideways\""
    );
    assert_eq!(
        faults_of_one("{backwards}", "{upside-down}"),
        "lessons/01-one.md:25:34: \"upside-down\" is no misconception that this lesson names"
    );
    assert_eq!(
        faults_of_one(
            "(calc:oscillator).\nsettled",
            "(calc:oscillator). {sideways}\nsettled"
        ),
        "lessons/01-one.md:26:39: the right choice shows no misconception"
    );
}

#[test]
fn problem_families_are_known_named_and_shown() {
    assert_eq!(
        faults_of_one("problems = [\"family\"]", "problems = [\"tribe\"]"),
        "lessons/01-one.md:58:4: \"family\" stands here, but \"problems\" in the front matter does not name it\n\
         lessons/01-one.md:5:13: \"tribe\" is named here, but no block \"problem tribe\" stands in the text\n\
         lessons/01-one.md:5:13: no problem family has the id \"tribe\" in problems/registry.toml"
    );
    assert_eq!(
        faults(&[
            ("01-one.md", "problems = [\"family\"]", ""),
            ("01-one.md", &block("problem"), "")
        ]),
        "lessons/01-one.md:2:9: a lesson has at least one problem family"
    );
    assert_eq!(
        faults_of_one(
            "```problem family",
            "```problem family\n```\n\n```problem family"
        ),
        "lessons/01-one.md:61:4: the block \"problem family\" stands here a second time"
    );
}

#[test]
fn the_last_section_says_what_to_carry() {
    assert_eq!(
        faults_of_one("## Carry to the bench", "## Take home"),
        "lessons/01-one.md:2:9: a lesson ends with the section \"## Carry to the bench\""
    );
    assert_eq!(
        faults_of_one(
            "## What happens",
            "## Carry to the bench\n\nMuch.\n\n## What happens"
        ),
        "lessons/01-one.md:21:1: \"Carry to the bench\" is the last section"
    );
}

#[test]
fn a_lesson_is_neither_short_nor_long() {
    assert_eq!(
        faults_of_one(
            "Plain words say what to carry to the bench and no more than that.",
            ""
        ),
        ""
    );
    let short = "Plain words say what to carry to the bench and no more than that. ".repeat(10);
    assert_eq!(
        faults_of_one(&short, ""),
        "lessons/01-one.md:2:9: a lesson has 500 to 1200 words (got 403)"
    );
    assert_eq!(
        faults_of_one("apart.", &format!("apart. {}", "more ".repeat(700))),
        "lessons/01-one.md:2:9: a lesson has 500 to 1200 words (got 1243)"
    );
}

#[test]
fn every_lesson_has_a_worked_example_and_a_goal() {
    assert_eq!(
        faults_of_one(&block("worked"), ""),
        "lessons/01-one.md:2:9: a lesson has a worked example"
    );
    assert_eq!(
        faults_of_one("goals = [\"Work out the oscillator\"]", "goals = []"),
        "lessons/01-one.md:2:9: a lesson has at least one goal"
    );
}

#[test]
fn a_lesson_needs_earlier_ones_only() {
    assert_eq!(
        faults(&[("02-two.md", "needs = [\"one\"]", "needs = [\"zero\"]")]),
        "lessons/02-two.md:4:10: no lesson has the address \"zero\""
    );
    assert_eq!(
        faults_of_one("minutes = 10", "minutes = 10\nneeds = [\"two\"]"),
        "lessons/01-one.md:4:10: lesson 1 needs \"two\", which comes later or is itself"
    );
}

#[test]
fn a_lesson_near_a_set_needs_cautions() {
    assert_eq!(
        faults(&[("cautions.md", super::CAUTIONS, "")]),
        "lessons/cautions.md:1:1: a lesson comes near a set, and there are no cautions to show"
    );
}

#[test]
fn unused_entries_of_the_lists_are_told() {
    assert_eq!(
        faults(&[
            (
                "sources.toml",
                "[[fact]]",
                "[[source]]\nid = \"film\"\nauthor = \"B\"\ntitle = \"C\"\n\n[[fact]]"
            ),
            (
                "sources.toml",
                "clause = \"page 1\"\n",
                "clause = \"page 1\"\n\n[[fact]]\nid = \"old\"\ntext = \"10 kHz\"\npractice = true\n"
            ),
            (
                "glossary.toml",
                "[[term]]",
                "[[term]]\nid = \"hum\"\nname = \"hum\"\nmeaning = \"A low note.\"\n\n[[term]]"
            ),
        ]),
        "lessons/glossary.toml:2:6: no lesson introduces the term \"hum\"\n\
         lessons/sources.toml:20:6: no lesson uses the fact \"old\"\n\
         lessons/sources.toml:8:6: nothing uses the source \"film\""
    );
}

#[test]
fn two_lessons_cannot_have_one_place() {
    let changes = faults(&[(
        "02-two.md",
        "needs = [\"one\"]",
        "needs = [\"one\", \"two\"]",
    )]);
    assert_eq!(
        changes,
        "lessons/02-two.md:4:17: lesson 2 needs \"two\", which comes later or is itself"
    );
}

#[test]
fn unknown_keys_of_the_lists_are_refused_where_they_stand() {
    let found = faults(&[
        ("glossary.toml", "also =", "others ="),
        ("set-profiles.toml", "side =", "sides ="),
        ("sources.toml", "author =", "editor ="),
    ]);
    let lines: Vec<&str> = found.lines().collect();
    for place in [
        "lessons/glossary.toml:4:1: unknown field `others`, expected one of `id`, `name`, `also`, `meaning`",
        "lessons/set-profiles.toml:6:1: unknown field `sides`, expected one of `number`, `id`, `name`, `if`, `side`, `region`, `gang`, `band`, `mixer`, `if-transformer`, `selectivity`, `detector`, `agc`",
        "lessons/sources.toml:3:1: unknown field `editor`, expected one of `id`, `author`, `title`, `edition`, `year`, `where`",
    ] {
        assert!(lines.contains(&place), "{place}: {found}");
    }
}
