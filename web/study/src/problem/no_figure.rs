//! A program that draws no figure on which an answer could be set: all answers are typed.
#![allow(clippy::unnecessary_wraps)] // as where a figure is drawn

use crate::dom::Result;
use superhet::problems::problem::SetOn;
use web_sys::{Element, HtmlInputElement};

/// Said nowhere.
pub(super) const HOW: &str = "";
/// Said nowhere.
pub(super) const FOLLOWED: &str = "";

/// No figure can be drawn.
pub(super) fn can_draw(_: &SetOn) -> bool {
    false
}

/// Nothing is set.
pub(super) fn markup(_: &SetOn, _: &str) -> Option<String> {
    None
}

/// No slider is an answer's.
pub(crate) fn moved(_: &HtmlInputElement) -> Result<()> {
    Ok(())
}

/// No button moves a slider.
pub(super) fn step(_: &Element, _: bool) -> Result<()> {
    Ok(())
}

/// What an input holds.
pub(super) fn held(input: &HtmlInputElement) -> String {
    input.value()
}

/// There is no drawing.
pub(super) fn draw(_: &Element, _: &SetOn, _: &str) -> Result<bool> {
    Ok(false)
}

/// There is no drawing.
pub(super) fn put_right(_: &Element, _: &SetOn, _: &str) -> Result<()> {
    Ok(())
}
