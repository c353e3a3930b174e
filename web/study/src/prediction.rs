//! A prediction: the reader commits to one choice, then sees what happens.
//!
//! Without this program the outcome stands folded in a `details`; with it the fold stays
//! out of sight until the reader has chosen.

use crate::dom::{Result, all, append, made, one, read_out, say, show};
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Element, HtmlInputElement};

/// A prediction of the page.
pub(crate) struct Prediction {
    root: Element,
    outcome: Element,
    button: Element,
    said: Element,
}

impl Prediction {
    /// Brings the prediction at `root` alive.
    pub(crate) fn mount(root: Element) -> Result<Self> {
        let outcome = one(&root, "details")?;
        if all(&root, "label input[type=radio]")?.is_empty() {
            return Err(JsValue::from_str("it has no choices"));
        }
        let button = made("button", "commit main", "That is my answer")?;
        button.set_attribute("type", "button")?;
        let said = made("div", "said", "")?;
        said.set_attribute("role", "status")?;
        said.set_attribute("tabindex", "-1")?;
        outcome.before_with_node_2(&button, &said)?;
        show(&outcome, false)?;
        Ok(Self {
            root,
            outcome,
            button,
            said,
        })
    }

    /// The prediction's element.
    pub(crate) fn root(&self) -> &Element {
        &self.root
    }

    /// Takes the choice that is made and shows what happens, if the button is this
    /// prediction's own.
    pub(crate) fn pressed(&self, button: &Element) -> Result<()> {
        if !button.is_same_node(Some(&self.button)) {
            return Ok(());
        }
        let Some(chosen) = self.root.query_selector("label input:checked")? else {
            say(&self.said, "Pick one of the choices first.");
            return Ok(());
        };
        let label = chosen.closest("label")?.unwrap_or(chosen);
        self.close_choices()?;
        self.said.set_text_content(None);
        for line in told(&label) {
            append(&self.said, &made("p", "", &line)?)?;
        }
        label.class_list().add_1("is-chosen")?;
        show(&self.button, false)?;
        show(&self.outcome, true)?;
        self.outcome.set_attribute("open", "")?;
        read_out(&self.said)
    }

    /// No other choice can be made now, and the right one is marked.
    fn close_choices(&self) -> Result<()> {
        for input in all(&self.root, "label input[type=radio]")? {
            if let Some(input) = input.dyn_ref::<HtmlInputElement>() {
                input.set_disabled(true);
            }
        }
        for right in all(&self.root, "label[data-right]")? {
            right.class_list().add_1("is-right")?;
        }
        Ok(())
    }
}

/// What is said about the choice under this label.
fn told(label: &Element) -> Vec<String> {
    let words = label.text_content().unwrap_or_default();
    let words = words.trim().trim_end_matches('.');
    let right = label.has_attribute("data-right");
    let turned_out = if right {
        "And so it is."
    } else {
        "It turns out differently."
    };
    let mut lines = vec![["You said: “", words, "”. ", turned_out].concat()];
    if let Some(belief) = label.get_attribute("data-belief") {
        let belief = belief.trim_end_matches('.');
        lines.push(
            [
                "Many people hold this: “",
                belief,
                "”. The lesson comes back to it.",
            ]
            .concat(),
        );
    }
    lines
}
