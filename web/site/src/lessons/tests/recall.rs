//! Recall sets look back, each family once.

use super::{Change, faults};

/// The second lesson with a family of its own, so that it may come back to the first's.
const OWN: [Change<'static>; 2] = [
    (
        "02-two.md",
        "problems = [\"family\"]",
        "problems = [\"second\"]",
    ),
    ("02-two.md", "```problem family", "```problem second"),
];

/// What is said when the second lesson holds this recall set.
fn recalling(set: &str) -> String {
    let set = format!("## Carry to the bench\n\n{set}");
    let [front, block] = OWN;
    faults(&[front, block, ("02-two.md", "## Carry to the bench\n", &set)])
}

#[test]
fn a_family_of_an_earlier_lesson_comes_back() {
    assert_eq!(recalling("```recall\nfamily\n```\n"), "");
}

#[test]
fn what_has_not_been_taught_before_is_refused() {
    assert_eq!(
        faults(&[(
            "01-one.md",
            "## Carry to the bench\n",
            "```recall\nfamily\n```\n\n## Carry to the bench\n"
        )]),
        "lessons/01-one.md:62:1: a recall set looks back: \"family\" belongs to lesson 1"
    );
    let own = ("problems/family.toml", "\"one\"", "\"two\"");
    let set = "```recall\nfamily\n```\n\n## Carry to the bench\n";
    let [front, block] = OWN;
    assert_eq!(
        faults(&[
            own,
            front,
            block,
            ("02-two.md", "## Carry to the bench\n", set)
        ]),
        "lessons/02-two.md:54:1: a recall set looks back: \"family\" belongs to lesson 2"
    );
}

#[test]
fn a_recall_set_names_known_families_once() {
    assert_eq!(
        recalling("```recall\nfamily\ntribe\nfamily\nsecond\n```\n"),
        "lessons/02-two.md:57:1: no problem family has the id \"tribe\" in problems/registry.toml\n\
         lessons/02-two.md:58:1: \"family\" stands in this recall set a second time\n\
         lessons/02-two.md:59:1: \"second\" is shown in this lesson already"
    );
}

#[test]
fn a_recall_set_is_one_list_of_ids() {
    assert_eq!(
        recalling("```recall\n```\n"),
        "lessons/02-two.md:55:4: a recall set names at least one problem family"
    );
    assert_eq!(
        recalling("```recall now\nfamily, second\n```\n"),
        "lessons/02-two.md:55:11: nothing stands behind the name of this block (got \"now\")\n\
         lessons/02-two.md:55:4: a recall set names at least one problem family\n\
         lessons/02-two.md:56:1: a recall set names one problem family on each of its lines (got \"family, second\")"
    );
    assert_eq!(
        recalling("```recall\nfamily\n```\n\n```recall\nfamily\n```\n"),
        "lessons/02-two.md:59:4: a lesson has one recall set"
    );
}
