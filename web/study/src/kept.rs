//! The notebook as this browser keeps it, and what the page says about that.

use crate::book::{Book, Trouble};
use crate::day;
use crate::dom::{Result, by_id, document, made, prepend};
use crate::notebook::Notebook;
#[cfg(feature = "carrying")]
use crate::place::Place;
use crate::storage::{BROWSER, Store};
#[cfg(feature = "carrying")]
use crate::storage::{Shelf, TAB};
use superhet::problems::schedule::Day;
use web_sys::Event;

/// What other scripts of the page hear when something was written, or found written.
const RECORDED: &str = "before-the-bench:recorded";
/// What they hear when everything was wiped.
#[cfg(feature = "carrying")]
const WIPED: &str = "before-the-bench:wiped";

/// The notebook as this browser keeps it.
pub(crate) struct Kept {
    book: Book<Store>,
    /// Whether the reader was told that nothing can be kept.
    told: bool,
    /// The trouble that the reader was told of last.
    told_of: Option<Trouble>,
}

impl Kept {
    /// Opens the notebook. One that cannot be read is put aside, and the page says so.
    pub(crate) fn open() -> Result<Self> {
        let mut kept = Self {
            book: Book::on(BROWSER),
            told: false,
            told_of: None,
        };
        kept.read_again()?;
        Ok(kept)
    }

    /// What is in it, as last read.
    pub(crate) fn notebook(&self) -> &Notebook {
        self.book.notebook()
    }

    /// Reads the notebook again, as another window may have written it.
    pub(crate) fn read_again(&mut self) -> Result<()> {
        let trouble = self.book.refresh();
        self.tell_trouble(trouble)
    }

    /// Changes the notebook as it is kept now, and says once where the browser would not
    /// keep it.
    pub(crate) fn change(&mut self, change: impl FnOnce(&mut Notebook)) -> Result<()> {
        let trouble = self.book.change(change);
        self.changed(trouble)
    }

    fn changed(&mut self, trouble: Option<Trouble>) -> Result<()> {
        self.tell_trouble(trouble)?;
        if self.is_kept() {
            return tell(RECORDED);
        }
        if self.told {
            return Ok(());
        }
        self.told = true;
        note(
            "This browser keeps nothing for this site: your notebook lasts until you close the page.",
        )
    }

    /// Says what was found damaged, once.
    fn tell_trouble(&mut self, trouble: Option<Trouble>) -> Result<()> {
        if trouble == self.told_of {
            return Ok(());
        }
        self.told_of = trouble;
        let Some(Trouble { damage, aside }) = trouble else {
            return Ok(());
        };
        let then = match (aside, self.notebook().is_empty()) {
            (false, _) => "It could not be put aside, so it stays, and nothing new is kept. ",
            (true, true) => "It has been put aside in this browser, and a new one begun. ",
            (true, false) => {
                "It has been put aside in this browser; what this page knew of it is kept. "
            }
        };
        let text = [
            "Your notebook could not be read: ",
            damage,
            ". ",
            then,
            "A file or link that you saved brings it back.",
        ];
        note(&text.concat())
    }

    /// Whether everything in it is kept.
    pub(crate) fn is_kept(&self) -> bool {
        self.book.is_kept()
    }

    /// Lets the page's other scripts know whether a lesson is ticked, so that they need
    /// not read the notebook.
    pub(crate) fn mark_page(&self) -> Result<()> {
        let Some(body) = document()?.body() else {
            return Ok(());
        };
        if !self.notebook().has_tick() {
            return body.remove_attribute("data-ticked");
        }
        if body.has_attribute("data-ticked") {
            return Ok(());
        }
        body.set_attribute("data-ticked", "")?;
        tell(RECORDED)
    }
}

/// What is carried away and brought along.
#[cfg(feature = "carrying")]
impl Kept {
    /// Adds what a reader brought along.
    pub(crate) fn take_in(&mut self, place: &Place) -> Result<()> {
        let trouble = self.book.take_in(place);
        self.changed(trouble)
    }

    /// Everything that the reader can carry away.
    pub(crate) fn place(&self) -> Place {
        self.book.place()
    }

    /// Whether a set that was brought along stays outside, since the reader has another.
    pub(crate) fn keeps_own_set(&self, place: &Place) -> bool {
        self.book.keeps_own_set(place)
    }

    /// Forgets everything, in this tab too.
    pub(crate) fn wipe(&mut self) -> Result<()> {
        self.book.wipe();
        TAB.clear();
        tell(WIPED)
    }
}

/// Tells the page's other scripts.
fn tell(what: &str) -> Result<()> {
    document()?.dispatch_event(&Event::new(what)?).map(drop)
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

/// Today, by this device's clock and calendar, as it is kept.
pub(crate) fn today() -> String {
    let now = js_sys::Date::new_0();
    day::kept(now.get_full_year(), now.get_month() + 1, now.get_date())
}

/// Today as a number.
pub(crate) fn today_number() -> Day {
    let now = js_sys::Date::new_0();
    day::number(now.get_full_year(), now.get_month() + 1, now.get_date())
}
