//! What stands in for "take my place with me" on pages that have none.

use crate::dom::Result;
use crate::kept::Kept;
use web_sys::HtmlInputElement;

/// Nothing is carried.
#[derive(Default)]
pub(crate) struct Carrying;

/// No controls are shown.
#[allow(clippy::unnecessary_wraps)] // as where there are some
pub(crate) fn show_controls(_: &Kept) -> Result<()> {
    Ok(())
}

impl Carrying {
    /// No file is read.
    pub(crate) fn read_file(
        &mut self,
        _: &HtmlInputElement,
        _: &Kept,
        _: impl FnMut(String) + 'static,
    ) -> Result<()> {
        Ok(())
    }

    /// No file is offered.
    pub(crate) fn offer_file(&mut self, _: &str, _: &Kept) -> Result<()> {
        Ok(())
    }

    /// No address carries a place here.
    pub(crate) fn offer_link(&mut self, _: &str, _: &Kept) -> Result<bool> {
        Ok(false)
    }

    /// No button is one of its.
    pub(crate) fn pressed(&mut self, _: &str, _: &str, _: &mut Kept) -> Result<bool> {
        Ok(false)
    }
}
