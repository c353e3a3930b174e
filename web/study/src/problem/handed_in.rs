//! A question among others, told how it went only when all are handed in.

use super::desk::told;
use super::paper::{self, class_of, lines, marking};
use crate::dom::{Result, append, made};
use superhet::problems::{Marking, Problem};
use web_sys::Element;

/// The question as HTML: the scene, the first part, no button.
pub(crate) fn question(problem: &Problem, id: &str) -> String {
    let part = problem.parts.first();
    let part = part.map(|part| paper::question(part, id, ""));
    [
        "<p class=\"scene\">",
        &paper::words(&problem.scene),
        "</p>",
        &part.unwrap_or_default(),
    ]
    .concat()
}

/// Says at an element how a question went, and beneath it how it is done.
pub(crate) fn tell(said: &Element, problem: &Problem, judged: &Marking, typed: &str) -> Result<()> {
    said.set_class_name(class_of(judged));
    said.set_inner_html(&marking(&told(judged, typed)));
    let steps = made("ol", "steps", "")?;
    let part = problem.parts.first();
    steps.set_inner_html(&part.map(|part| lines(&part.steps)).unwrap_or_default());
    match said.parent_element() {
        Some(slip) => append(&slip, &steps),
        None => Ok(()),
    }
}
