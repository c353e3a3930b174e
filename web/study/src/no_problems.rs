//! What stands in for problems on pages that have none.

use crate::dom::Result;
use crate::kept::Kept;
use superhet::problems::ProblemCode;
use web_sys::{Element, HtmlInputElement};

/// No answer is set on a figure.
#[allow(clippy::unnecessary_wraps)] // as where there are problems
pub(crate) fn moved(_: &HtmlInputElement) -> Result<()> {
    Ok(())
}

/// No problem.
#[derive(Default)]
pub(crate) struct Slips {}

#[allow(clippy::unnecessary_wraps)] // as where there are problems
impl Slips {
    /// Leaves what is found as it stands on paper.
    pub(crate) fn add(&mut self, _: Element) -> Result<()> {
        Ok(())
    }

    /// Nothing waits for the reader to come near.
    pub(crate) fn near(&self, _: &Element) {}

    /// No family was asked for.
    pub(crate) fn came(
        &mut self,
        _: &str,
        _: core::result::Result<&str, &str>,
        _: bool,
    ) -> Result<()> {
        Ok(())
    }

    /// No element belongs to a problem.
    pub(crate) fn at(&self, _: &Element) -> Option<usize> {
        None
    }

    /// Nothing is marked.
    pub(crate) fn submit(&mut self, _: usize, _: &mut Kept) -> Result<()> {
        Ok(())
    }

    /// No button belongs to a problem.
    pub(crate) fn pressed(&mut self, _: usize, _: &str, _: &Element, _: &mut Kept) -> Result<()> {
        Ok(())
    }

    /// No link leads to a problem here.
    pub(crate) fn reopen(&mut self, _: &ProblemCode) -> Result<bool> {
        Ok(false)
    }
}
