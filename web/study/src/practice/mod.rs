//! The pages of practice: a round of problems, the notebook, the check.
//!
//! [`kinds`] reads what the page knows of each kind of problem, [`names`] what mistakes are
//! called, [`choice`] says which of them come into question, [`round`] is the way through the
//! chosen ones, [`words`] and [`tallies`] write what the reader sees, [`own`] is the reader's
//! set, as far as a problem can be asked of it: those seven are pure, and [`room`] puts them
//! into the page. For the check before and after the course [`items`], [`offer`] and
//! [`unfinished`] are pure, and [`check`] puts them into a page of its own.
//! Each page's program has its own half, and those of other pages none: `no_room.rs` and
//! `no_check.rs` stand in for what is left out.

#[cfg_attr(not(feature = "check"), path = "no_check.rs")]
mod check;
#[cfg(feature = "rounds")]
mod choice;
#[cfg(feature = "check")]
mod items;
#[cfg(feature = "rounds")]
mod kinds;
#[cfg(feature = "rounds")]
mod names;
#[cfg(feature = "check")]
mod offer;
#[cfg(feature = "rounds")]
mod own;
#[cfg_attr(not(feature = "rounds"), path = "no_room.rs")]
mod room;
#[cfg(feature = "rounds")]
mod round;
#[cfg(feature = "rounds")]
mod tallies;
#[cfg(feature = "check")]
mod unfinished;
#[cfg(feature = "rounds")]
mod words;

#[cfg(feature = "practice")]
use crate::dom::focus_on;
use crate::dom::{Result, by_id};
use crate::kept::Kept;
use check::Check;
use room::Room;
use superhet::problems::ProblemCode;
#[cfg(feature = "practice")]
use wasm_bindgen::JsValue;
use web_sys::Element;

/// What this page has of practice.
#[derive(Default)]
pub(crate) struct Practice {
    room: Option<Room>,
    check: Option<Check>,
}

impl Practice {
    /// Finds what the page has and brings it alive.
    pub(crate) fn find(kept: &Kept) -> Result<Self> {
        let room = match by_id("choose") {
            Some(_) => Some(Room::open(kept)?),
            None => None,
        };
        let check = match by_id("check") {
            Some(_) => Some(Check::open()?),
            None => None,
        };
        Ok(Self { room, check })
    }

    /// A button was pressed. Says whether it was one of practice's.
    pub(crate) fn pressed(
        &mut self,
        what: &str,
        button: &Element,
        kept: &mut Kept,
    ) -> Result<bool> {
        match (&mut self.room, &mut self.check) {
            (Some(room), _) => room.pressed(what, button, kept),
            (None, Some(check)) => check.pressed(what, button, kept),
            (None, None) => Ok(false),
        }
    }

    /// An answer was handed in. Says whether it was to a problem of practice.
    pub(crate) fn submit(&mut self, form: &Element, kept: &mut Kept) -> Result<bool> {
        match &mut self.room {
            Some(room) => room.submit(form, kept),
            None => Ok(false),
        }
    }

    /// Something was chosen.
    pub(crate) fn change(&mut self) -> Result<()> {
        self.room.as_ref().map_or(Ok(()), Room::change)
    }

    /// Something was typed or chosen.
    pub(crate) fn input(&mut self, target: &Element) -> Result<()> {
        self.check.as_mut().map_or(Ok(()), |it| it.input(target))
    }

    /// A family has come, or the reason why it has not.
    pub(crate) fn came(
        &mut self,
        address: &str,
        text: core::result::Result<&str, &str>,
        kept: &Kept,
    ) -> Result<()> {
        match (&mut self.room, &mut self.check) {
            (Some(room), _) => room.came(address, text, kept),
            (None, Some(check)) => check.came(address, text),
            (None, None) => Ok(()),
        }
    }

    /// Opens the problem that a link names, on the set that it names behind that, if it
    /// does. Says whether this page can.
    pub(crate) fn reopen(&mut self, code: &ProblemCode, own: &str) -> Result<bool> {
        match &mut self.room {
            Some(room) => room.reopen(code, own),
            None => Ok(false),
        }
    }

    /// Shows what the notebook says.
    pub(crate) fn show(&self, kept: &Kept) -> Result<()> {
        match (&self.room, &self.check) {
            (Some(room), _) => room.show(kept),
            (None, Some(check)) => check.show(kept),
            (None, None) => Ok(()),
        }
    }
}

/// Gives a heading the focus, and the top of the window.
#[cfg(feature = "practice")]
fn turn_to(heading: &str) -> Result<()> {
    let heading = part(heading)?;
    focus_on(&heading)?;
    heading.scroll_into_view();
    Ok(())
}

/// A part of the page by its id.
#[cfg(feature = "practice")]
fn part(id: &str) -> Result<Element> {
    by_id(id).ok_or_else(|| JsValue::from_str(&["this page lacks ", id].concat()))
}
