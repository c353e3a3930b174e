//! What lies before the reader, as HTML. Every text of a problem is escaped: names and
//! words are text, never markup. A number and its unit stay on one line.

use super::desk::Desk;
use super::on_figure;
use figures::escape;
use superhet::problems::problem::{Answer, Choice, NumberAnswer, Part};
use superhet::problems::text::unbroken;
use superhet::problems::{Marking, Verdict};

/// What can be done after a problem of a lesson.
pub(super) const MORE: &str = "<button type=\"button\" class=\"main\" data-do=\"another\">Another like this</button>\
     <button type=\"button\" data-do=\"harder\" hidden>A harder one</button>";

/// What can be done after a problem of practice, and after the last.
#[cfg(feature = "rounds")]
pub(crate) const NEXT: (&str, &str) = (
    "<button type=\"button\" class=\"main\" data-do=\"next\">Next problem</button>",
    "<button type=\"button\" class=\"main\" data-do=\"next\">To the end</button>",
);

/// The desk: the scene, room for the parts, and what can be done afterwards.
pub(super) fn desk(desk: &Desk, after: &str) -> String {
    let problem = desk.state().problem();
    [
        "<p class=\"scene\" tabindex=\"-1\">",
        &words(&problem.scene),
        "</p><div class=\"parts\"></div>",
        "<div class=\"buttons after\" hidden>",
        after,
        "</div>",
        &link(desk.code().as_deref().unwrap_or_default(), desk.set()),
    ]
    .concat()
}

/// What stands beside a link to a problem before the first release, which may still change
/// what a code means. Nothing from then on.
const TRIAL: &str = trial(env!("CARGO_PKG_VERSION_MAJOR"));

const fn trial(major: &str) -> &str {
    match major.as_bytes() {
        b"0" => " (trial until 1.0)",
        _ => "",
    }
}

fn link(code: &str, set: &str) -> String {
    let code = escape(code);
    let href = [
        "<a href=\"#problem=",
        &code,
        &escape(set),
        "\">",
        &code,
        "</a>",
    ]
    .concat();
    [
        "<p class=\"again\">Its own link",
        TRIAL,
        ": ",
        &href,
        "</p>",
    ]
    .concat()
}

/// One part: which of how many, the question, something to answer with, room for what is said.
pub(super) fn part(part: &Part, id: &str, place: usize, of: usize) -> String {
    [
        &numbered(place, of),
        &question(
            part,
            id,
            "<button type=\"submit\" class=\"main\">Mark it</button>",
        ),
        // Each hint is read once: not those before it again.
        "<div role=\"status\" aria-atomic=\"false\"><ol class=\"hints\" hidden></ol></div>",
        "<div class=\"buttons help\" hidden>",
        "<button type=\"button\" data-do=\"hint\">Give me a hint</button>",
        "<button type=\"button\" data-do=\"show\">Show me the steps</button></div>",
        "<ol class=\"steps\" aria-label=\"The steps\" tabindex=\"-1\" hidden></ol>",
    ]
    .concat()
}

/// Which part of how many; nothing where there is only one.
fn numbered(place: usize, of: usize) -> String {
    if of < 2 {
        return String::new();
    }
    let place = (place + 1).to_string();
    let words = ["Part ", &place, " of ", &of.to_string()].concat();
    ["<p class=\"slip-name\">", &words, "</p>"].concat()
}

/// The question of a part, what it is answered with, a button, and room for what is said. What
/// is said is read out where there is a button to ask for it; where all is told at once, it waits
/// to be read.
pub(super) fn question(part: &Part, id: &str, button: &str) -> String {
    let (how, answer) = match &part.answer {
        Answer::Number(number) => match set_on(number, id) {
            Some(figure) => (on_figure::HOW.to_owned(), figure),
            None => (asked(&number.precision_text), box_for(number, id)),
        },
        Answer::Choice(choices) => (String::new(), choices_for(choices, id)),
    };
    let said = match button {
        "" => "-said\"></div>",
        _ => "-said\" role=\"status\" tabindex=\"-1\"></div>",
    };
    [
        "<p class=\"question\" id=\"",
        id,
        "\">",
        &words(&part.ask),
        &precision(&how),
        "</p><form class=\"answer\">",
        &answer,
        button,
        "</form><div class=\"marking\" id=\"",
        id,
        said,
    ]
    .concat()
}

/// What a number is set with, where it is set on a figure.
fn set_on(number: &NumberAnswer, id: &str) -> Option<String> {
    on_figure::markup(number.set_on.as_deref()?, id)
}

fn asked(precision: &str) -> String {
    ["Answer ", precision, "."].concat()
}

fn precision(how: &str) -> String {
    if how.is_empty() {
        return String::new();
    }
    [" <span class=\"precision\">", &words(how), "</span>"].concat()
}

/// A box to type in, and a button for each unit; the first is pressed.
fn box_for(number: &NumberAnswer, id: &str) -> String {
    let mut html = [
        "<div class=\"typed\"><input type=\"text\" inputmode=\"decimal\" autocomplete=\"off\" \
         spellcheck=\"false\" maxlength=\"80\" enterkeyhint=\"done\" aria-labelledby=\"",
        id,
        "\" aria-describedby=\"",
        id,
        "-said\">",
    ]
    .concat();
    if !number.unit_buttons.is_empty() {
        html.push_str("<span class=\"unit-buttons\" role=\"group\" aria-label=\"Unit\">");
        for (place, unit) in number.unit_buttons.iter().enumerate() {
            let pressed = if place == 0 { "true" } else { "false" };
            let open = "<button type=\"button\" data-do=\"unit\" aria-pressed=\"";
            html.push_str(&[open, pressed, "\">", &escape(unit), "</button>"].concat());
        }
        html.push_str("</span>");
    }
    html.push_str("</div>");
    html
}

fn choices_for(choices: &[Choice], id: &str) -> String {
    let mut html = [
        "<div class=\"choices\" role=\"radiogroup\" aria-labelledby=\"",
        id,
        "\">",
    ]
    .concat();
    for choice in choices {
        let open = "<label class=\"choice\"><input type=\"radio\" name=\"answer\" value=\"";
        let words = ["\"><span>", &words(&choice.text), "</span></label>"].concat();
        html.push_str(&[open, &escape(&choice.id), &words].concat());
    }
    html.push_str("</div>");
    html
}

/// A text as HTML, with no line's end between a number and its unit.
pub(super) fn words(text: &str) -> String {
    escape(&unbroken(text))
}

/// What is said about an answer.
pub(super) fn marking(lines: &[String]) -> String {
    let lines = lines.iter();
    lines
        .map(|line| ["<p>", &words(line), "</p>"].concat())
        .collect()
}

/// The class of what is said: each has its own mark before the words.
pub(super) fn class_of(marking: &Marking) -> &'static str {
    match marking.verdict {
        Verdict::Right | Verdict::RightButRounded => "marking is-right",
        Verdict::Wrong => "marking is-wrong",
        Verdict::Unclear => "marking is-unclear",
    }
}

/// Lines of a list.
pub(super) fn lines(lines: &[String]) -> String {
    let lines = lines.iter();
    lines
        .map(|line| ["<li>", &words(line), "</li>"].concat())
        .collect()
}

#[cfg(test)]
mod tests {
    use super::super::desk::tests::{desk_of, desk_with, text_of};
    use super::{MORE, desk, part, trial, words};

    #[test]
    fn a_number_is_asked_with_its_units() {
        let mut open = desk_of("oscillator-from-dial", 2, 5);
        let html = part(&open.sitting().problem().parts[0], "q", 0, 1);
        assert!(!html.contains("Part 1"), "{html}");
        assert!(html.contains("inputmode=\"decimal\""), "{html}");
        assert!(
            html.contains("aria-pressed=\"true\">kHz</button>"),
            "{html}"
        );
        assert!(html.contains("Mark it"), "{html}");
        assert!(desk(&open, MORE).contains("#problem="));
    }

    #[test]
    fn a_link_is_on_trial_until_the_first_release() {
        assert!(trial("0").contains("until 1.0"));
        assert_eq!(trial("1"), "");
        let open = desk_of("oscillator-from-dial", 2, 5);
        let version = env!("CARGO_PKG_VERSION");
        assert_eq!(
            desk(&open, MORE).contains("(trial"),
            version.starts_with("0.")
        );
    }

    #[test]
    fn parts_are_counted_where_there_are_more() {
        let mut open = desk_of("oscillator-from-dial", 2, 5);
        let html = part(&open.sitting().problem().parts[0], "q", 1, 3);
        assert!(html.starts_with("<p class=\"slip-name\">Part 2 of 3</p>"));
    }

    #[test]
    fn a_number_keeps_its_unit() {
        assert_eq!(
            words("From 525 kHz to 1605 kHz, 3 times & more in 5 minutes"),
            "From 525\u{a0}kHz to 1605\u{a0}kHz, 3\u{a0}times &amp; more in 5 minutes"
        );
        assert_eq!(words("  two  spaces "), "  two  spaces ");
    }

    #[test]
    fn words_of_a_family_are_never_markup() {
        let text = text_of("oscillator-from-dial").replace("The", "<b>The</b>");
        let mut open = desk_with(&text, 2, 5);
        let problem = open.sitting().problem().clone();
        let all = desk(&open, MORE) + &part(&problem.parts[0], "q", 0, 2);
        assert!(!all.contains("<b>"), "{all}");
    }
}
