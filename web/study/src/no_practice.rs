//! What stands in for practice on pages that have none.

use crate::dom::Result;
use crate::kept::Kept;
use superhet::problems::ProblemCode;
use web_sys::Element;

/// Nothing of practice.
#[derive(Default)]
pub(crate) struct Practice;

impl Practice {
    /// Nothing is found.
    #[allow(clippy::unnecessary_wraps)] // as where there is practice
    pub(crate) fn find(_: &Kept) -> Result<Self> {
        Ok(Self)
    }

    /// No button is one of practice's.
    pub(crate) fn pressed(&mut self, _: &str, _: &Element, _: &mut Kept) -> Result<bool> {
        Ok(false)
    }

    /// No answer is to a problem of practice.
    pub(crate) fn submit(&mut self, _: &Element, _: &mut Kept) -> Result<bool> {
        Ok(false)
    }

    /// Nothing can be chosen.
    pub(crate) fn change(&mut self) -> Result<()> {
        Ok(())
    }

    /// No family was asked for.
    pub(crate) fn came(
        &mut self,
        _: &str,
        _: core::result::Result<&str, &str>,
        _: &Kept,
    ) -> Result<()> {
        Ok(())
    }

    /// No link leads here.
    pub(crate) fn reopen(&mut self, _: &ProblemCode, _: &str) -> Result<bool> {
        Ok(false)
    }

    /// Nothing is shown.
    pub(crate) fn show(&self, _: &Kept) -> Result<()> {
        Ok(())
    }
}
