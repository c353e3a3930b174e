//! The tick at the end of a lesson.

use crate::day::said;
use crate::dom::{Result, append, made, say};
use crate::kept::{Kept, today};
use std::cell::Cell;
use web_sys::Element;

/// The tick at the end of a lesson.
pub(crate) struct Tick {
    slug: String,
    root: Element,
    button: Element,
    word: Element,
    /// Whether the reader has just taken the tick away.
    taken: Cell<bool>,
}

impl Tick {
    /// Puts the tick at the end of the lesson at `lesson`, after what to carry to the
    /// bench.
    pub(crate) fn mount(lesson: &Element, kept: &Kept) -> Result<Self> {
        let root = made("div", "tick", "")?;
        let button = made("button", "", "")?;
        button.set_attribute("type", "button")?;
        button.set_attribute("data-do", "tick")?;
        let word = made("p", "ticked", "")?;
        word.set_attribute("role", "status")?;
        append(&root, &button)?;
        append(&root, &word)?;
        match lesson.query_selector(".carry")? {
            Some(carry) => carry.after_with_node_1(&root)?,
            None => append(lesson, &root)?,
        }
        let tick = Self {
            slug: lesson.get_attribute("data-lesson").unwrap_or_default(),
            root,
            button,
            word,
            taken: Cell::new(false),
        };
        tick.show(kept);
        Ok(tick)
    }

    /// Whether an element belongs to the tick.
    pub(crate) fn holds(&self, element: &Element) -> bool {
        self.root.contains(Some(element))
    }

    /// Ticks the lesson, or takes the tick away: whichever the button offered, even if
    /// another window has done it meanwhile.
    pub(crate) fn pressed(&self, kept: &mut Kept) -> Result<()> {
        let was_ticked = kept.notebook().day_of(&self.slug).is_some();
        self.taken.set(was_ticked);
        kept.change(|notebook| {
            if was_ticked {
                notebook.untick(&self.slug);
            } else if notebook.day_of(&self.slug).is_none() {
                notebook.tick(&self.slug, &today());
            }
        })
    }

    /// Shows what the notebook says.
    pub(crate) fn show(&self, kept: &Kept) {
        match kept.notebook().day_of(&self.slug) {
            Some(day) => {
                say(&self.button, "Take the tick away");
                self.button.set_class_name("");
                let done = ["✓ Ticked in your notebook on ", &said(day), "."];
                say(&self.word, &done.concat());
            }
            None => {
                say(&self.button, "Tick this lesson in my notebook");
                self.button.set_class_name("main");
                let taken = self.taken.get();
                say(
                    &self.word,
                    if taken { "The tick is taken away." } else { "" },
                );
            }
        }
    }
}
