//! What stands on the page of a lesson.

use super::{Change, course};
use crate::assets::AssetNames;
use crate::edition::Edition;
use crate::families::Families;
use crate::lessons::cautions;
use crate::lessons::lists::Glossary;
use crate::lessons::render::{Drawing, page};
use crate::lessons::words::Phrases;
use crate::links::{Asked, Links};
use crate::page::{Page, Program};
use crate::report::Report;

/// The problem needs a real family, which the real lessons have.
const NO_PROBLEM: Change<'static> = ("01-one.md", "```problem family\n```\n", "");

/// The page of a lesson by its slug, after changes.
fn drawn(slug: &str, changes: &[Change<'_>]) -> Page {
    tried(slug, changes).expect("a lesson that can be drawn")
}

/// The same, or why it cannot be drawn.
fn tried(slug: &str, changes: &[Change<'_>]) -> anyhow::Result<Page> {
    let mut changes = changes.to_vec();
    changes.extend([NO_PROBLEM, ("02-two.md", NO_PROBLEM.1, "")]);
    let mut report = Report::default();
    let course = course(&changes, &mut report);
    assert_eq!(report.faults(), []);
    let glossary: &Glossary = &course.glossary;
    let phrases = Phrases::of_terms(glossary);
    let (names, asked, families) = (AssetNames::default(), Asked::default(), Families::default());
    let lesson = course.lesson(slug).expect("a lesson of that slug");
    let links = Links::from_page(&lesson.path(), &Edition::at_root(), &names, &asked);
    let drawing = Drawing::new(&course, lesson, &phrases, &families, &links);
    page(&drawing)
}

#[test]
fn what_is_wrong_with_my_set_is_told_with_its_place() {
    let said = |my_set: &str| {
        let text = format!("runs-at = \"calc:oscillator\"\n{my_set}");
        let change = (
            "01-one.md",
            "runs-at = \"calc:oscillator\"\n",
            text.as_str(),
        );
        tried("one", &[change])
            .err()
            .map_or_else(String::new, |error| error.to_string())
    };
    let head = "[my-set]\nown = { if = \"if\" }\n";
    let all = "[my-set.follows]\nopening = []\nfigure-1 = []\nworked-1 = []\nbackwards = []\n\
               sideways = []\nwhat-happens = []\n";
    assert_eq!(said(&format!("{head}{all}")), "");
    for (my_set, says) in [
        (
            format!("{head}{}", all.replace("worked-1 = []\n", "")),
            "lessons/01-one.md:17:1: [my-set]: \"worked-1\" holds numbers of the set: name it under follows or stays",
        ),
        (
            format!("[my-set]\nown = {{ iff = \"if\" }}\n{all}"),
            "lessons/01-one.md:18:9: [my-set]: \"iff\" is no input of [given]",
        ),
        (
            format!("[my-set]\nown = {{ if = \"moon\" }}\n{all}"),
            "lessons/01-one.md:18:14: [my-set]: no set has a field \"moon\"",
        ),
        (
            format!("{head}{all}figure-2 = []\n"),
            "lessons/01-one.md:26:1: [my-set]: the lesson has no part \"figure-2\"",
        ),
        (
            format!("{head}{all}[my-set.stays]\nworked-1 = \"So it is.\"\n"),
            "lessons/01-one.md:22:1: [my-set]: \"worked-1\" follows and stays",
        ),
        (
            head.to_owned()
                + &all.replace(
                    "worked-1 = []",
                    "worked-1 = [{ holds = \"if > dial\", says = \"Not so.\" }]",
                ),
            "lessons/01-one.md:22:1: [my-set]: \"if > dial\" does not hold for the lesson’s own set",
        ),
    ] {
        let found = said(&my_set);
        assert!(found.contains(says), "{says}\n{found}");
    }
}

fn html(slug: &str) -> String {
    drawn(slug, &[]).main.into_string()
}

/// The page holds each of these, in this order.
fn holds(page: &str, parts: &[&str]) {
    let mut rest = page;
    for part in parts {
        let at = rest.find(part);
        let before = &page[..page.len() - rest.len()];
        assert!(at.is_some(), "{part}\nis missing behind\n{before}");
        rest = &rest[at.unwrap_or(0) + part.len()..];
    }
}

#[test]
fn the_head_says_where_the_lesson_stands() {
    let page = drawn("two", &[]);
    assert_eq!(page.path, "lessons/two/");
    assert_eq!(page.title, "Two of them");
    assert_eq!(
        page.description,
        "Lesson 2 on how an AM superhet works, 10 minutes. Find the image."
    );
    assert!(matches!(page.program, Program::Study(_)));
    holds(
        &page.main.into_string(),
        &[
            "<article class=\"lesson\" data-lesson=\"two\">",
            "<p class=\"kicker\">Lesson 2 · 10 minutes</p><h1>Two of them</h1>",
            "<p class=\"read-first\">Read first: <a href=\"../../lessons/one/\">lesson 1, “One frequency”</a></p>",
            "<div class=\"goals\"><p>After this lesson you can:</p><ul><li>Find the image</li></ul></div>",
        ],
    );
}

#[test]
fn a_lesson_near_a_set_shows_the_cautions_before_anything_else() {
    holds(
        &html("two"),
        &[
            "</header><div class=\"caution\"",
            "<strong>It can kill.</strong>",
            "<li>Leave it closed.</li>",
            "The <strong>",
        ],
    );
    assert!(!html("one").contains("caution"));
    assert!(!html("two").contains("Afterwards"));
}

#[test]
fn what_the_cautions_say_from_their_first_heading_on_stands_elsewhere() {
    let course = course(&[], &mut Report::default());
    assert_eq!(
        cautions::more(course.cautions.more()).into_string(),
        "<h3>Afterwards</h3><p>Call <strong>help</strong>.</p><ul><li>Stay out.</li></ul>"
    );
    assert!(
        !cautions::cautions(course.cautions.brief())
            .into_string()
            .contains("help")
    );
}

#[test]
fn numbers_carry_their_value_and_what_they_are() {
    let page = html("one");
    holds(
        &page,
        &[
            "<data class=\"number\" value=\"1200000\" data-kind=\"given\" data-given=\"dial\" data-value=\"1200000\">1200 kHz</data>",
            "<a class=\"fact\" href=\"#source-book\"><data class=\"number\" value=\"9 kHz\" data-kind=\"fact\" data-fact=\"spacing\">9 kHz</data></a>",
            "<data class=\"number\" value=\"1379000\" data-kind=\"calc\" data-quantity=\"oscillator\" data-value=\"1379000\">1379 kHz</data>",
            "data-given=\"runs-at\" data-value=\"1670000\">1.67 MHz</data>",
        ],
    );
}

#[test]
fn a_term_leads_to_its_meaning_and_back() {
    let page = html("two");
    holds(
        &page,
        &[
            "The <strong><a class=\"term\" id=\"use-image\" href=\"#term-image\">image</a></strong> of ",
            "Images are alike.",
            "<section class=\"meanings\"",
            "<dt id=\"term-image\">image</dt><dd>What a superhet hears besides. <a class=\"back\" href=\"#use-image\"",
        ],
    );
    assert_eq!(
        page.matches("class=\"term\"").count(),
        1,
        "only the first use is linked"
    );
    holds(
        &html("one"),
        &["A <a class=\"term\" id=\"use-superhet\" href=\"#term-superhet\">superhet</a> on "],
    );
}

#[test]
fn a_prediction_is_complete_without_the_program() {
    holds(
        &html("one"),
        &[
            "<section class=\"predict\" data-settled-by=\"oscillator?",
            "\" aria-labelledby=\"question-1\"",
            "<p class=\"question\" id=\"question-1\">Where does it run?</p>",
            "<label class=\"choice\" data-misconception=\"backwards\" data-belief=\"It runs backwards.\">\
             <input type=\"radio\" name=\"predict-1\" value=\"1\"><span>At <data",
            "<label class=\"choice\" data-right><input",
            "<details><summary>See what happens</summary><p class=\"right-choice\">What happens: At <data",
            ">1670 kHz</data>.</p>",
            "<p class=\"because\">It runs <data",
            ">above</data>.</p></details></section>",
        ],
    );
}

#[test]
fn a_worked_example_fades() {
    let page = html("one");
    let from = page
        .find("<section class=\"worked\">")
        .expect("a worked example");
    let to = from + page[from..].find("</section>").expect("its end");
    let examples: Vec<&str> = page[from..to]
        .split("<div class=\"example\">")
        .skip(1)
        .collect();
    assert_eq!(examples.len(), 3);
    assert_eq!(
        examples
            .iter()
            .map(|it| it.matches("<li").count())
            .collect::<Vec<_>>(),
        [3, 3, 3]
    );
    assert!(!examples[0].contains("<details"));
    holds(
        examples[0],
        &[
            "Where is it for ",
            ">1200 kHz</data>",
            ">470 kHz</data>",
            ">1670 kHz</data>",
        ],
    );
    assert_eq!(
        examples[1]
            .matches("<li class=\"blank\"><details class=\"blank\">")
            .count(),
        2
    );
    holds(
        examples[1],
        &[
            "Where is it for ",
            ">909 kHz</data>",
            "<ol class=\"steps\"><li>The dial says",
            ">470 kHz</data>",
            ">1379 kHz</data>",
        ],
    );
    holds(
        examples[2],
        &[
            ">693 kHz</data>",
            "<details class=\"blank\"><summary>",
            ">465 kHz</data>",
            ">1158 kHz</data>",
        ],
    );
}

#[test]
fn beliefs_formulas_and_the_card_stand_in_their_places() {
    holds(
        &html("one"),
        &[
            "<section class=\"misconception\" id=\"misconception-backwards\">",
            "<p class=\"belief\">It runs backwards.</p><p>At <data",
            "<section class=\"formula\" data-formula=\"oscillator\"><details><summary>",
            "<math",
            "<dl class=\"letters\"><dt><math",
            "<dd>oscillator frequency</dd>",
            "<dd>the intermediate frequency</dd>",
            "<section class=\"carry\"><h2 id=\"carry-to-the-bench\">Carry to the bench</h2>",
            "</section><section class=\"meanings\"",
        ],
    );
}

#[test]
fn sources_say_what_was_taken_from_where() {
    holds(
        &html("one"),
        &[
            "<h2 id=\"sources\">Sources</h2><ol><li id=\"source-book\">A. Author, <cite>A Book</cite>, 1953.",
            "<ul class=\"places\"><li>9 kHz: page 1</li></ul>",
        ],
    );
    assert!(
        !html("two").contains("class=\"sources\""),
        "nothing was taken from anywhere"
    );
    let practice = [(
        "sources.toml",
        "source = \"book\"\nclause = \"page 1\"",
        "practice = true",
    )];
    holds(
        &drawn("one", &practice).main.into_string(),
        &[
            "href=\"#source-practice\"",
            "<li id=\"source-practice\">Common practice, no source: 9 kHz.</li>",
        ],
    );
}

#[test]
fn one_lesson_leads_to_the_next() {
    holds(
        &html("one"),
        &[
            "<nav class=\"onward\"",
            "<a class=\"next\" rel=\"next\" href=\"../../lessons/two/\">Next: lesson 2, Two of them</a>",
        ],
    );
    holds(
        &html("two"),
        &[
            "<a class=\"previous\" rel=\"prev\" href=\"../../lessons/one/\">Before: lesson 1, One frequency</a>",
        ],
    );
}

#[test]
fn a_figure_stands_between_its_task_and_its_caption() {
    holds(
        &html("one"),
        &[
            "data-figure=\"frequency-line\" data-input=\"dial=1200 kHz&amp;if=470kHz&amp;side=above\"",
            "Move it.",
            "class=\"drawing\"",
            "The line.",
        ],
    );
}

#[test]
fn nothing_on_the_page_is_styled_or_scripted_in_line() {
    for slug in ["one", "two"] {
        let page = html(slug);
        assert!(!page.contains(" style="), "{slug}");
        assert!(
            !page.contains(" on") || !page.contains("=\"javascript"),
            "{slug}"
        );
    }
}

#[test]
fn text_of_an_author_is_text() {
    let page = drawn(
        "one",
        &[("01-one.md", "apart.", "apart &lt;b&gt; & \"so\" 1 \\< 2.")],
    );
    holds(
        &page.main.into_string(),
        &["apart &lt;b&gt; &amp; “so” 1 &lt; 2."],
    );
}

#[test]
fn tables_lists_and_quotations_are_drawn() {
    let text = "apart.\n\n| Dial | Place |\n| - | -: |\n| low | left |\n\n1. One\n2. Two\n\n> Said.\n\n- a\n\n  b\n";
    holds(
        &drawn("one", &[("01-one.md", "apart.", text)])
            .main
            .into_string(),
        &[
            "<div class=\"table\" tabindex=\"0\"",
            "<th scope=\"col\">Dial</th><th scope=\"col\" class=\"to-right\">Place</th>",
            "<td>low</td><td class=\"to-right\">left</td>",
            "<ol><li>One</li><li>Two</li></ol><blockquote><p>Said.</p></blockquote><ul><li>a<p>b</p></li></ul>",
        ],
    );
}
