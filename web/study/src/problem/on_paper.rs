//! A problem of the page that stands on paper, since its family is not there.
//!
//! The page holds one problem of the family as text, its hints and answer folded away, and
//! says where the family is found. Whoever has opened a fold is left to read it: the problem
//! comes alive the next time they turn to it.

use super::live::{LiveProblem, seed};
use crate::dom::{Result, append, made, say};
use superhet::problems::{ProblemCode, Registered};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;
use web_sys::Element;

#[wasm_bindgen]
extern "C" {
    /// Of `study.js`: fetches a family, which comes back by [`crate::family_came`].
    #[wasm_bindgen(js_name = fetchFamily)]
    pub(crate) fn fetch_family(address: &str);
}

/// A problem on paper.
pub(crate) struct OnPaper {
    root: Element,
    number: u16,
    address: String,
    /// The problem that a link asks for.
    wanted: Option<ProblemCode>,
    /// Where it is said why the family is not there.
    excuse: Option<Element>,
}

impl OnPaper {
    /// Reads what the page says of the problem at `root`.
    pub(crate) fn find(root: Element) -> Result<Self> {
        let number = root.get_attribute("data-number");
        let number = number.and_then(|number| number.parse().ok());
        let (Some(number), Some(address)) = (number, root.get_attribute("data-family")) else {
            return Err(JsValue::from_str("it names no problem family"));
        };
        Ok(Self {
            root,
            number,
            address,
            wanted: None,
            excuse: None,
        })
    }

    /// The problem's element.
    pub(crate) fn root(&self) -> &Element {
        &self.root
    }

    /// The registered number of its family.
    pub(crate) fn number(&self) -> u16 {
        self.number
    }

    /// Where its family is found.
    pub(crate) fn address(&self) -> &str {
        &self.address
    }

    /// Asks for its family.
    pub(crate) fn fetch(&self) {
        fetch_family(&self.address);
    }

    /// Asks for its family, to open the problem that a link names.
    pub(crate) fn open(&mut self, code: &ProblemCode) {
        self.wanted = Some(*code);
        self.fetch();
    }

    /// Whether the reader has opened a fold and wants nothing else.
    pub(crate) fn is_being_read(&self) -> bool {
        let open = self.root.query_selector("details[open]");
        self.wanted.is_none() && open.is_ok_and(|fold| fold.is_some())
    }

    /// Says why the problem cannot be marked now.
    pub(crate) fn excuse(&mut self, reason: &str) -> Result<()> {
        let text = [
            "What marks this problem could not be fetched: ",
            reason,
            ". It can be worked on paper; come back to it to try again.",
        ];
        if let Some(line) = &self.excuse {
            say(line, &text.concat());
        } else {
            let line = made("p", "not-alive", &text.concat())?;
            line.set_attribute("role", "status")?;
            append(&self.root, &line)?;
            self.excuse = Some(line);
        }
        if self.wanted.is_some() {
            self.root.scroll_into_view();
        }
        Ok(())
    }

    /// Brings it alive: as the problem that a link asks for, as the one on paper where that
    /// is before the reader's eyes, else as a fresh one.
    pub(crate) fn come_alive(&self, family: Registered, on_screen: bool) -> Result<LiveProblem> {
        if let Some(line) = &self.excuse {
            line.remove();
        }
        let on_paper = self.root.get_attribute("data-seed");
        let on_paper = on_paper
            .filter(|_| on_screen)
            .and_then(|seed| seed.parse().ok());
        let mut problem =
            LiveProblem::mount(self.root.clone(), family, on_paper.unwrap_or_else(seed))?;
        if let Some(code) = &self.wanted {
            problem.reopen(code)?;
        }
        Ok(problem)
    }
}
