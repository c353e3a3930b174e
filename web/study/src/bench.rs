//! For `cargo site bench problems` alone: the very work that is timed natively, in wasm.
//! No page's program is built with it.

use crate::problem::open_family;
use superhet::problems::{Family, Level};
use wasm_bindgen::prelude::wasm_bindgen;

#[path = "../../../core/examples/problems_bench/work.rs"]
mod work;

/// A family to draw problems from.
#[wasm_bindgen]
#[derive(Debug)]
pub struct TimedFamily(Family);

#[wasm_bindgen]
impl TimedFamily {
    /// The family of a file as the site ships it.
    ///
    /// # Errors
    /// When it holds none.
    #[wasm_bindgen(constructor)]
    pub fn new(text: &str) -> Result<TimedFamily, String> {
        let registered = open_family(text)?;
        Ok(Self(registered.family))
    }

    /// Draws so many problems and marks their answers: of level 1, 2 or 3, and 4 for the
    /// transfer form.
    ///
    /// # Errors
    /// When a right answer is not marked right.
    #[wasm_bindgen(js_name = drawAndMark)]
    pub fn draw_and_mark(&self, level: usize, seeds: u32) -> Result<(), String> {
        let level = Level::ALL.get(level.wrapping_sub(1));
        let level = level.ok_or("there is no such level")?;
        work::drawn_and_marked(&self.0, *level, seeds)
    }
}
