//! The task of a figure: seen to be done, said once, politely.

use crate::dom::{Result, say};
use figures::{Condition, View};
use wasm_bindgen::JsValue;
use web_sys::Element;

/// What stands behind a task that is done.
const DONE: &str = "Done.";

/// The task of a figure.
pub(crate) struct Task {
    root: Element,
    condition: Condition,
    /// A live region (`role="status"`), so that the word is read out when it comes.
    word: Option<Element>,
    done: bool,
}

impl Task {
    /// The task of the figure at `figure`, where it has one.
    pub(crate) fn find(figure: &Element) -> Result<Option<Self>> {
        let Some(root) = figure.query_selector("[data-done]")? else {
            return Ok(None);
        };
        let text = root.get_attribute("data-done").unwrap_or_default();
        let condition =
            Condition::parse(&text).map_err(|error| JsValue::from_str(&error.to_string()))?;
        Ok(Some(Self {
            word: root.query_selector(".task-done")?,
            root,
            condition,
            done: false,
        }))
    }

    /// Looks whether the task is done. Once done it stays done: the reader may move on.
    pub(crate) fn look(&mut self, view: &View) -> Result<()> {
        if self.done || !self.condition.met(view).unwrap_or(false) {
            return Ok(());
        }
        self.done = true;
        self.root.class_list().add_1("is-done")?;
        if let Some(word) = &self.word {
            say(word, DONE);
        }
        Ok(())
    }
}
