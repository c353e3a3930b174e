//! What is typed and pressed: the lower half of a phone's screen.

use super::Ways;
use lookup::{Form, View};
use maud::{Markup, html};

/// The IFs that have a button of their own, in kHz (common practice, no source).
const INTERMEDIATES: [&str; 9] = [
    "110", "125", "175", "455", "456", "460", "465", "470", "475",
];

/// The IFs that have a table of their own, in kHz (common practice, no source).
pub(super) const COMMON_INTERMEDIATES: [&str; 4] = ["455", "465", "470", "475"];

pub(super) fn section(view: &View, ways: &Ways) -> Markup {
    let form = Form::default();
    html! {
        section.entry aria-label="What you know" {
            (number_box("dial", "Dial", &form.dial, &view.dial_reading, &["kHz", "MHz", "m"], false))
            (number_box("oscillator", "Oscillator", "1670", "", &["kHz", "MHz"], true))
            div.offers {
                button.offer type="button" data-slot="offer" data-do="" hidden {}
                button.offer type="button" data-slot="second-offer" data-do="" hidden {}
            }
            (steps())
            p.small.one-line-caution {
                a href=(ways.cautions) { "Mains and HT can kill" }
                "; capacitors stay charged; a chassis, bare spindle or knob screw may be live."
            }
            (set(view, &ways.my_set))
        }
    }
}

/// A box with its unit buttons. A unit typed into the box wins over the buttons.
fn number_box(
    name: &str,
    title: &str,
    value: &str,
    reading: &str,
    units: &[&str],
    hidden: bool,
) -> Markup {
    html! {
        div.box data-slot={ (name) "-box" } hidden[hidden] {
            p.box-head {
                label for=(name) { (title) }
                span.reading data-slot={ (name) "-reading" } { (reading) }
            }
            div.box-row {
                (text_box(name, value))
                (choice(&format!("{name}-unit"), &format!("Unit of the {name} box"), true, units, units[0]))
            }
        }
    }
}

fn text_box(name: &str, value: &str) -> Markup {
    html! {
        input id=(name) name=(name) data-slot=(name) value=(value) type="text" inputmode="decimal"
            autocapitalize="off" spellcheck="false" enterkeyhint="done" maxlength="250"
            aria-describedby="problem" aria-invalid="false";
    }
}

/// Buttons of which one is pressed: radio buttons underneath, so the arrow keys work.
fn choice(name: &str, legend: &str, legend_hidden: bool, words: &[&str], chosen: &str) -> Markup {
    html! {
        fieldset.choice {
            legend.visually-hidden[legend_hidden] { (legend) }
            @for word in words {
                label {
                    input.visually-hidden type="radio" name=(name) value=(word) checked[*word == chosen];
                    span { (word) }
                }
            }
        }
    }
}

fn steps() -> Markup {
    let steps = [
        ("low", "Low end", "Lowest channel of the band"),
        ("down", "Channel down", "One channel down"),
        ("up", "Channel up", "One channel up"),
        ("high", "High end", "Highest channel of the band"),
    ];
    html! {
        div.steps data-slot="steps" role="group" aria-label="Turn the dial" {
            @for (task, words, title) in steps {
                button type="button" data-do=(task) title=(title) { (words) }
            }
        }
    }
}

/// The set, in one line that opens.
fn set(view: &View, my_set: &str) -> Markup {
    html! {
        details.set #set {
            summary {
                span {
                    span data-slot="set" { (view.set) }
                    " " span.soft { "– or work out the dial or the IF" }
                }
            }
            div.set-parts {
                (intermediate(view))
                div data-slot="side-box" {
                    (choice("side", "Oscillator, against the dial setting", false, &["above", "below"], "above"))
                }
                (choice("region", "ITU Region", false, &["1", "2", "3"], "1"))
                p.small.soft {
                    "1: Europe, Africa, northern Asia. 2: the Americas. 3: the rest of Asia, Australia, the Pacific."
                }
                (find())
                p { a href=(my_set) { "More about your set" } }
            }
        }
    }
}

fn intermediate(view: &View) -> Markup {
    html! {
        div data-slot="if-box" {
            p.box-head {
                label for="if" { "IF of your set, kHz" }
                span.reading data-slot="if-reading" { (view.intermediate_reading) }
            }
            div.common role="group" aria-label="Common IFs" {
                @for khz in INTERMEDIATES {
                    button type="button" data-do={ "if " (khz) } { (khz) }
                }
            }
            (text_box("if", ""))
        }
    }
}

fn find() -> Markup {
    let finds = [
        ("oscillator", "the oscillator"),
        ("dial", "the dial"),
        ("if", "the IF"),
    ];
    html! {
        fieldset.choice {
            legend { "Work out" }
            @for (value, words) in finds {
                label {
                    input.visually-hidden type="radio" name="find" value=(value) checked[value == "oscillator"];
                    span { (words) }
                }
            }
        }
    }
}
