//! What stands in for the check on the page of practice.

use crate::dom::Result;
use crate::kept::Kept;
use web_sys::Element;

/// No check.
pub(super) struct Check;

impl Check {
    /// No page of this program has one.
    #[allow(clippy::unnecessary_wraps)] // as where there is one
    pub(super) fn open() -> Result<Self> {
        Ok(Self)
    }

    /// Nothing is shown.
    pub(super) fn show(&self, _: &Kept) -> Result<()> {
        Ok(())
    }

    /// No button is one of its.
    pub(super) fn pressed(&mut self, _: &str, _: &Element, _: &mut Kept) -> Result<bool> {
        Ok(false)
    }

    /// Nothing is typed for it.
    pub(super) fn input(&mut self, _: &Element) -> Result<()> {
        Ok(())
    }

    /// No family was asked for.
    pub(super) fn came(&mut self, _: &str, _: core::result::Result<&str, &str>) -> Result<()> {
        Ok(())
    }
}
