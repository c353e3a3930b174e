//! The notebook as this browser keeps it.

use crate::dom::{Result, by_id, document, made, prepend};
use crate::notebook::Notebook;
use crate::storage::{self, NOTEBOOK, SET};
use crate::{day, place::Place, place::stored_set};
use web_sys::Event;

/// What other scripts of the page hear when something was written.
const RECORDED: &str = "before-the-bench:recorded";

/// The notebook as this browser keeps it.
pub(crate) struct Kept {
    /// What is in it.
    pub(crate) notebook: Notebook,
    /// Whether the reader was told that nothing can be kept.
    told: bool,
}

impl Kept {
    /// Opens the notebook. One that cannot be read is put aside, and the page says so.
    pub(crate) fn open() -> Result<Self> {
        let mut kept = Self {
            notebook: Notebook::default(),
            told: false,
        };
        if let Some(damage) = kept.read_again() {
            storage::set_aside(NOTEBOOK);
            let text = [
                "Your notebook could not be read: ",
                damage,
                ". It has been put aside in this browser, and a new one begun. \
                 A file or link that you saved brings it back.",
            ];
            note(&text.concat())?;
        }
        Ok(kept)
    }

    /// Reads the notebook again, as another window may have written it. Gives the damage
    /// where it cannot be read.
    pub(crate) fn read_again(&mut self) -> Option<&'static str> {
        let text = storage::read(NOTEBOOK).unwrap_or_default();
        if text.is_empty() {
            self.notebook = Notebook::default();
            return None;
        }
        match Notebook::read(&text) {
            Ok(notebook) => {
                self.notebook = notebook;
                None
            }
            Err(damage) => Some(damage),
        }
    }

    /// Writes the notebook, and says once where the browser would not.
    pub(crate) fn write(&mut self) -> Result<()> {
        if storage::write(NOTEBOOK, &self.notebook.to_json().write()) {
            document()?.dispatch_event(&Event::new(RECORDED)?)?;
        } else if !self.told {
            self.told = true;
            note(
                "This browser keeps nothing for this site: your notebook lasts until you close the page.",
            )?;
        }
        Ok(())
    }

    /// Everything that the reader can carry away.
    pub(crate) fn place(&self) -> Place {
        Place {
            notebook: self.notebook.clone(),
            set: storage::read(SET).as_deref().and_then(stored_set),
        }
    }

    /// Adds what a reader brought along.
    pub(crate) fn take_in(&mut self, place: &Place) -> Result<()> {
        self.notebook.take_in(&place.notebook);
        if let Some(set) = &place.set {
            storage::write(SET, set);
        }
        self.write()
    }

    /// Forgets everything.
    pub(crate) fn wipe(&mut self) {
        self.notebook = Notebook::default();
        storage::forget(NOTEBOOK);
        storage::forget(SET);
    }
}

/// Says something at the head of the page.
pub(crate) fn note(text: &str) -> Result<()> {
    let Some(main) = by_id("main") else {
        return Ok(());
    };
    let note = made("p", "note", text)?;
    note.set_attribute("role", "status")?;
    prepend(&main, &note)
}

/// Today, by this device's clock and calendar.
pub(crate) fn today() -> String {
    let now = js_sys::Date::new_0();
    day::kept(now.get_full_year(), now.get_month() + 1, now.get_date())
}
