//! The program of the lesson pages, the course page and the first page.
//!
//! It finds what the page holds and brings it alive; a page without it is complete text.
//! Everything it decides is in pure modules that are tested natively; the modules named
//! after a place of the page are the only ones that touch it.
//!
//! What it finds, and where:
//!
//! | in the page | becomes |
//! | --- | --- |
//! | `figure[data-figure][data-input]` as `figures::markup` writes it | a live figure, with its task |
//! | `section.predict` with `label.choice` around radio buttons (the right one's label has `data-right`, a wrong one's may have `data-belief` with the belief's sentence) and a `details` | a prediction to commit to |
//! | `section[data-problem]` with `[data-number]`, `[data-family]` (where its family is found) and `[data-seed]` (of the one on paper) | a problem that is marked, once its family has been fetched |
//! | `article[data-lesson]`, which holds the slug | a lesson to tick |
//! | `li[data-lesson]` with `p.ticked` on the course page | a ticked line |
//! | `#choose`, `#round`, `#notebook` and the rest of the practice page | a round of problems, and the notebook |
//! | `#course`, `#next-step` and `#place…` on the first page | what comes next, and "take my place with me" |
//!
//! Nothing it does may take the page down: an error turns the part it came from back
//! into text, a panic marks the page (`body[data-stopped]`), and what was drawn stays.

#[cfg(feature = "carrying")]
mod base64url;
#[cfg(feature = "bench")]
mod bench;
mod book;
#[cfg_attr(not(feature = "carrying"), path = "no_carrying.rs")]
mod carrying;
mod course;
mod day;
mod dom;
mod drawing;
mod figure;
mod json;
mod kept;
mod listener;
#[cfg(all(test, not(target_arch = "wasm32")))]
mod nasty_input;
mod notebook;
mod page;
#[cfg(feature = "carrying")]
mod place;
mod practice;
mod prediction;
#[cfg_attr(not(feature = "problems"), path = "no_problems.rs")]
mod problem;
mod stop;
mod storage;
mod task;
mod tick;

use wasm_bindgen::prelude::wasm_bindgen;

/// Makes ready to bring the page alive. Called once, by the page's script.
///
/// # Errors
/// When there is no page to bring alive.
#[wasm_bindgen]
pub fn start() -> Result<(), wasm_bindgen::JsValue> {
    page::start()
}

/// Brings the next part of the page alive and says whether more is to come. One part a call:
/// the script lets the page breathe between them.
///
/// # Errors
/// When the page was not started, or cannot be written to.
#[wasm_bindgen]
pub fn next() -> Result<bool, wasm_bindgen::JsValue> {
    page::next_part()
}

/// The reader comes near an element: what waits for that is asked for now.
#[wasm_bindgen]
pub fn near(element: &web_sys::Element) {
    page::near(element);
}

/// Hands over a problem family that was asked for: its text, or the reason why there is
/// none, and whether its problem is before the reader's eyes.
#[wasm_bindgen(js_name = familyCame)]
#[allow(clippy::needless_pass_by_value)] // as the bindings hand it over
pub fn family_came(address: &str, text: Option<String>, reason: &str, on_screen: bool) {
    page::family_came(address, text.as_deref().ok_or(reason), on_screen);
}
