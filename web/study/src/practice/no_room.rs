//! What stands in for the rounds of practice on the page of the check.

use crate::dom::Result;
use crate::kept::Kept;
use superhet::problems::ProblemCode;
use web_sys::Element;

/// No rounds.
pub(super) struct Room;

impl Room {
    /// No page of this program has any.
    #[allow(clippy::unnecessary_wraps)] // as where there are some
    pub(super) fn open(_: &Kept) -> Result<Self> {
        Ok(Self)
    }

    /// Nothing is shown.
    pub(super) fn show(&self, _: &Kept) -> Result<()> {
        Ok(())
    }

    /// Nothing can be chosen.
    pub(super) fn change(&self) -> Result<()> {
        Ok(())
    }

    /// No button is one of theirs.
    pub(super) fn pressed(&mut self, _: &str, _: &Element, _: &mut Kept) -> Result<bool> {
        Ok(false)
    }

    /// No answer is to a problem of theirs.
    pub(super) fn submit(&mut self, _: &Element, _: &mut Kept) -> Result<bool> {
        Ok(false)
    }

    /// No family was asked for.
    pub(super) fn came(
        &mut self,
        _: &str,
        _: core::result::Result<&str, &str>,
        _: &Kept,
    ) -> Result<()> {
        Ok(())
    }

    /// No link leads here.
    pub(super) fn reopen(&mut self, _: &ProblemCode, _: &str) -> Result<bool> {
        Ok(false)
    }
}
