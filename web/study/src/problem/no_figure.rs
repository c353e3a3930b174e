//! A program that draws no figure on which an answer could be set: all answers are typed.

use crate::dom::Result;
use superhet::problems::problem::SetOn;
use web_sys::{Element, HtmlInputElement};

pub(super) const HOW: &str = "";
pub(super) const DRAWN: &str = "";

pub(super) fn set_on(_: &SetOn) -> Option<String> {
    None
}

#[allow(clippy::unnecessary_wraps)] // as where a figure is drawn
pub(crate) fn moved(_: &HtmlInputElement) -> Result<()> {
    Ok(())
}

pub(super) fn setting(input: &HtmlInputElement) -> String {
    input.value()
}

#[allow(clippy::unnecessary_wraps)] // as where a figure is drawn
pub(super) fn draw(_: &Element, _: &SetOn, _: &str) -> Result<bool> {
    Ok(false)
}
