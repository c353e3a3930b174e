//! Numbers with a unit that nobody accounts for.

use super::{faults, faults_of_one};

fn unmarked(place: &str, number: &str) -> String {
    format!(
        "lessons/{place}: \"{number}\" is a number with a unit: mark it as calc:, given: or fact:"
    )
}

#[test]
fn wherever_it_stands_in_a_lesson() {
    let cases = [
        ("apart.", "apart, or 10 kHz.", "19:100", "10 kHz"),
        ("apart.", "apart, or `10 kHz`.", "19:101", "10 kHz"),
        (
            "apart.",
            "apart, or ten kilohertz.",
            "19:100",
            "ten kilohertz",
        ),
        ("## What happens", "## What 240 V does", "21:9", "240 V"),
        (
            "The line.",
            "The line from 525 to 1605 kHz.",
            "32:15",
            "525 to 1605 kHz",
        ),
        ("Move it.", "Move it by 1,200 kHz.", "33:18", "1,200 kHz"),
        (
            "Where does it run?",
            "Does it run at 70 °C?",
            "24:16",
            "70 °C",
        ),
        (
            "- [ ] At ",
            "- [ ] Half a volt above ",
            "25:7",
            "Half a volt",
        ),
        (
            "because: It runs",
            "because: In 3 mm it runs",
            "28:13",
            "3 mm",
        ),
        ("ask: Where", "ask: With 500 pF, where", "39:11", "500 pF"),
        (
            "1. The dial",
            "1. Two metres off the dial",
            "40:4",
            "Two metres",
        ),
        ("title: The sum", "title: The 20 % sum", "38:12", "20 %"),
        (
            "At [909 kHz](given:second)",
            "At 909 kHz",
            "48:4",
            "909 kHz",
        ),
        ("One frequency", "The 470 kHz set", "2:14", "470 kHz"),
        ("Work out the oscillator", "Find 5 W", "4:16", "5 W"),
    ];
    for (from, to, place, number) in cases {
        let found = faults_of_one(from, to);
        let place = format!("01-one.md:{place}");
        assert!(
            found.lines().any(|line| line == unmarked(&place, number)),
            "{to}: {found}"
        );
    }
}

#[test]
fn in_a_table_and_under_a_heading_with_the_unit() {
    let table = "apart.\n\n| Dial | Swing, kHz |\n| - | - |\n| 5 mA | 470 |\n| none | [9 kHz](fact:spacing) |\n";
    assert_eq!(
        faults_of_one("apart.", table),
        [
            unmarked("01-one.md:23:10", "470 (under \"Swing, kHz\")"),
            unmarked("01-one.md:23:3", "5 mA")
        ]
        .join("\n")
    );
}

#[test]
fn in_the_lists_and_the_cautions() {
    assert_eq!(
        faults(&[
            ("glossary.toml", "one fixed frequency", "one fixed 470 kHz"),
            (
                "misconceptions.toml",
                "It runs backwards.",
                "It runs at 470 kHz."
            ),
            ("cautions.md", "It can kill.", "At 240 V it can kill."),
        ]),
        [
            unmarked("cautions.md:1:6", "240 V"),
            unmarked("glossary.toml:5:33", "470 kHz"),
            unmarked("misconceptions.toml:3:22", "470 kHz"),
        ]
        .join("\n")
    );
}

#[test]
fn half_of_a_range_is_not_marked_by_the_other_half() {
    assert_eq!(
        faults_of_one(
            "on [1200 kHz](given:dial)",
            "from 525 to [1200 kHz](given:dial)"
        ),
        unmarked("01-one.md:19:34", "525")
    );
}

#[test]
fn split_from_its_unit_by_markup() {
    for (text, number) in [
        ("or 10 **kHz**.", "10 kHz"),
        ("or [10](lesson:two) kHz.", "10 kHz"),
        ("or 10&nbsp;kHz.", "10 kHz"),
        ("or &#49;0 kHz.", "10 kHz"),
        ("or *ten*\nkilohertz.", "ten kilohertz"),
        ("or 10\\\nkHz.", "10 kHz"),
    ] {
        let found = faults_of_one("apart.", &format!("apart {text}"));
        let place = if text.contains('[') || text.contains('*') && text.starts_with("or *") {
            100
        } else {
            99
        };
        assert_eq!(
            found,
            unmarked(&format!("01-one.md:19:{place}"), number),
            "{text}"
        );
    }
    assert_eq!(
        faults_of_one("[9 kHz](fact:spacing)", "[9 kHz](fact:spacing) kHz"),
        "lessons/01-one.md:19:90: \"kHz\" belongs inside the mark of the number before it"
    );
}
