//! Links that lead nowhere, and marked numbers that are wrong.

use super::{faults, faults_of_one};

#[test]
fn a_wrong_digit() {
    assert_eq!(
        faults_of_one("- [x] At [1670 kHz]", "- [x] At [1680 kHz]"),
        "lessons/01-one.md:26:10: the text says 1680 kHz, but oscillator?dial=1200kHz&if=470kHz&side=above is 1670 kHz"
    );
    assert_eq!(
        faults_of_one("3. Together [1670 kHz]", "3. Together [1.66 MHz]"),
        "lessons/01-one.md:42:13: the text says 1.66 MHz, but oscillator?dial=1200kHz&if=470kHz&side=above is 1670 kHz"
    );
    assert_eq!(
        faults_of_one(
            "[1379 kHz](calc:oscillator?dial=second)",
            "[1378 kHz](calc:oscillator?dial=second)"
        ),
        "lessons/01-one.md:48:39: the text says 1378 kHz, but oscillator?dial=909kHz&if=470kHz&side=above is 1379 kHz"
    );
    for right in ["1.67 MHz", "1,670 kHz", "1670 kc/s", "2 MHz", "180 m"] {
        assert_eq!(
            faults_of_one("3. Together [1670 kHz]", &format!("3. Together [{right}]")),
            "",
            "{right}"
        );
    }
}

#[test]
fn a_number_that_cannot_be_worked_out_or_read() {
    assert_eq!(
        faults_of_one(
            "[1670 kHz](calc:oscillator).\nsettled",
            "[1670 kHz](calc:osculator).\nsettled"
        ),
        "lessons/01-one.md:26:10: no lesson introduces the quantity \"osculator\"\n\
         lessons/01-one.md:26:10: no quantity is called \"osculator\"; did you mean oscillator?"
    );
    assert_eq!(
        faults_of_one("calc:oscillator?dial=second", "calc:oscillator?dail=second"),
        "lessons/01-one.md:48:39: oscillator takes dial, if and side; it has no \"dail\""
    );
    assert_eq!(
        faults_of_one("calc:oscillator?dial=second", "calc:oscillator?dial=909"),
        "lessons/01-one.md:48:39: dial: a frequency needs a unit, such as 1200 kHz (got \"909\")"
    );
    assert_eq!(
        faults_of_one("3. Together [1670 kHz]", "3. Together [much]"),
        "lessons/01-one.md:42:13: this stands for a number: write digits, a point and a unit (got \"much\")"
    );
    assert_eq!(
        faults_of_one(
            "settled by: oscillator",
            "settled by: oscillator?dial=1kHz&side=below"
        ),
        "lessons/01-one.md:27:13: with the oscillator below, dial must be above the IF (got dial 1 kHz, IF 470 kHz)"
    );
}

#[test]
fn an_input_that_is_not_there_or_differs() {
    assert_eq!(
        faults_of_one("on [1200 kHz](given:dial)", "on [1200 kHz](given:dail)"),
        "lessons/01-one.md:19:32: \"dail\" is no input of this lesson: [given] does not hold it"
    );
    assert_eq!(
        faults_of_one("on [1200 kHz](given:dial)", "on [1201 kHz](given:dial)"),
        "lessons/01-one.md:19:32: the text says 1201 kHz, but the input \"dial\" is 1200 kHz"
    );
    assert_eq!(
        faults_of_one("on [1200 kHz](given:dial)", "on [1.2 MHz](given:dial)"),
        ""
    );
    assert_eq!(
        faults_of_one("[above](given:side)", "[below](given:side)"),
        "lessons/01-one.md:28:18: the text says below, but the input \"side\" is above"
    );
    assert_eq!(
        faults_of_one("second = \"909 kHz\"", "second = \"909\""),
        "lessons/01-one.md:15:10: \"second\" is no parameter of the catalogue, so it needs a number with a unit (got \"909\")\n\
         lessons/01-one.md:48:39: dial: a frequency starts with a number, such as 1200 kHz (got \"second\")\n\
         lessons/01-one.md:48:4: \"second\" is no input of this lesson: [given] does not hold it"
    );
    assert_eq!(
        faults_of_one("[1.67 MHz](given:runs-at)", "[1.66 MHz](given:runs-at)"),
        "lessons/01-one.md:52:12: the text says 1.66 MHz, but the input \"runs-at\" is 1670000Hz"
    );
}

#[test]
fn a_fact_is_quoted_letter_by_letter() {
    assert_eq!(
        faults_of_one("[9 kHz](fact:spacing)", "[9.0 kHz](fact:spacing)"),
        "lessons/01-one.md:19:68: the text says \"9.0 kHz\", but the fact \"spacing\" is \"9 kHz\""
    );
    assert_eq!(
        faults_of_one("[9 kHz](fact:spacing)", "[9 kHz](fact:spaces)"),
        "lessons/01-one.md:19:68: no fact has the id \"spaces\" in sources.toml\n\
         lessons/sources.toml:8:6: no lesson uses the fact \"spacing\""
    );
    assert_eq!(
        faults(&[("sources.toml", "value = \"9 kHz\"", "value = \"10 kHz\"")]),
        "lessons/sources.toml:9:8: the text says 9 kHz, but the value is 10 kHz"
    );
}

#[test]
fn other_links_lead_somewhere() {
    let cases = [
        (
            "[x](term:superhot)",
            "no term has the id \"superhot\" in glossary.toml",
        ),
        ("[x](lesson:three)", "no lesson has the address \"three\""),
        (
            "[x](page:lockup/)",
            "no page has the address \"lockup/\" (pages: lessons/, lookup/, about/)",
        ),
        (
            "[x](source:film)",
            "no source has the id \"film\" in sources.toml",
        ),
        (
            "[x](https://example.org/)",
            "a link begins with calc:, given:, fact:, term:, lesson:, page: or source: (got \"https://example.org/\")",
        ),
        (
            "[x](two)",
            "a link begins with calc:, given:, fact:, term:, lesson:, page: or source: (got \"two\")",
        ),
    ];
    for (link, message) in cases {
        assert_eq!(
            faults_of_one("apart.", &format!("apart. {link}")),
            format!("lessons/01-one.md:19:97: {message}"),
            "{link}"
        );
    }
    for link in [
        "[x](page:lookup/?dial=1200kHz)",
        "[x](page:lessons/two/)",
        "[x](source:book)",
        "[x](page:about/#caution)",
    ] {
        assert_eq!(
            faults_of_one("apart.", &format!("apart. {link}")),
            "",
            "{link}"
        );
    }
}

#[test]
fn names_in_the_front_matter_are_known() {
    assert_eq!(
        faults_of_one("sources = [\"book\"]", "sources = [\"film\"]"),
        "lessons/01-one.md:7:12: no source has the id \"film\" in sources.toml"
    );
    assert_eq!(
        faults_of_one(
            "quantities = [\"oscillator\"]",
            "quantities = [\"oscillator\", \"magic\"]"
        ),
        "lessons/01-one.md:9:29: no quantity of the catalogue is called \"magic\"\n\
         lessons/01-one.md:9:29: the lesson introduces \"magic\" but never uses it"
    );
}

#[test]
fn figures_can_be_drawn_and_their_tasks_done() {
    let known: Vec<&str> = figures::names().collect();
    assert_eq!(
        faults_of_one("figure frequency-line", "figure frequency-lane"),
        format!(
            "lessons/01-one.md:31:4: there is no figure 'frequency-lane'; there are {}",
            known.join(", ")
        )
    );
    assert_eq!(
        faults_of_one("if=470kHz", "if=470"),
        "lessons/01-one.md:31:4: if: a frequency needs a unit, such as 1200 kHz (got \"470\")"
    );
    assert_eq!(
        faults_of_one("done: dial > 1300 kHz", "done: moon > 1300 kHz"),
        "lessons/01-one.md:34:7: this figure shows nothing called 'moon'"
    );
    assert_eq!(
        faults_of_one("done: dial > 1300 kHz", "done: dial > 1100 kHz"),
        "lessons/01-one.md:34:7: the figure meets this before the reader has done anything"
    );
    assert_eq!(
        faults_of_one(
            "done: dial > 1300 kHz",
            "done: dial > 1301 kHz and dial < 1304 kHz"
        ),
        "lessons/01-one.md:34:7: no stop of the figure's handles meets this: they move in steps"
    );
}

#[test]
fn the_other_examples_of_a_worked_one_can_be_worked() {
    assert_eq!(
        faults_of_one("again: dial=909kHz", "again: dail=909kHz"),
        "lessons/01-one.md:43:8: \"dail\" is no input of this lesson: [given] does not hold it"
    );
    assert_eq!(
        faults_of_one("again: dial=909kHz", "again: dial=909"),
        "lessons/01-one.md:43:8: a frequency needs a unit, such as 1200 kHz (got \"909\")\n\
         lessons/01-one.md:43:8: oscillator takes dial, if and side; dial is missing"
    );
    assert_eq!(
        faults_of_one("again: dial=909kHz", "again: dial=465kHz side=below"),
        "lessons/01-one.md:43:8: with the oscillator below, dial must be above the IF (got dial 465 kHz, IF 470 kHz)"
    );
}

#[test]
fn a_formula_is_one_of_the_catalogue() {
    assert_eq!(
        faults_of_one("formula oscillator", "formula magic"),
        "lessons/01-one.md:55:4: no lesson introduces the quantity \"magic\"\n\
         lessons/01-one.md:55:4: no quantity of the catalogue is called \"magic\""
    );
}
