//! An answer that is set on a figure: a slider that says its setting alone, and a drawing
//! that follows once the setting has been marked.

use crate::dom::{Result, one, say};
use figures::{Input, Setting};
use superhet::problems::problem::SetOn;
use web_sys::{Element, HtmlInputElement};

/// Said in the place of how closely a number is asked.
pub(super) const HOW: &str = "Set it with the slider. The drawing follows when it is marked.";

/// Said behind a marking.
pub(super) const DRAWN: &str = "The drawing has followed.";

/// What the answer is set with, as HTML. None where this program cannot draw the figure: the
/// answer is typed then.
pub(super) fn set_on(set_on: &SetOn) -> Option<String> {
    let (drawing, slider) = with_setting(set_on, &set_on.begin, |setting| {
        Some((setting.drawing().ok()?, setting.slider().ok()?))
    })?;
    Some(
        [
            "<div class=\"on-figure\"><div class=\"drawn\">",
            &drawing,
            "</div>",
            &slider,
            "</div>",
        ]
        .concat(),
    )
}

/// Does something with the figure, its handle set so.
fn with_setting<T>(
    set_on: &SetOn,
    setting: &str,
    act: impl FnOnce(Setting<'_>) -> Option<T>,
) -> Option<T> {
    let input = Input::parse(&set_on.with).ok()?;
    act(Setting {
        figure: &set_on.figure,
        input: &input.with(&set_on.handle, setting),
        handle: &set_on.handle,
        label: &set_on.label,
    })
}

/// A slider was moved: says where it stands now. Whatever is no such slider is let be.
pub(crate) fn moved(slider: &HtmlInputElement) -> Result<()> {
    let Some(label) = slider.closest(".on-figure .slider")? else {
        return Ok(());
    };
    slider.set_attribute("data-moved", "")?;
    let setting = setting(slider);
    say(&one(&label, "output")?, &setting);
    slider.set_attribute("aria-valuetext", &setting)
}

/// What an input holds; where a slider stands, as it would be typed.
pub(super) fn setting(input: &HtmlInputElement) -> String {
    match input.get_attribute("data-unit") {
        Some(unit) => [&input.value(), " ", &unit].concat(),
        None => input.value(),
    }
}

/// Draws a setting in the part at `block`; says whether there is a drawing.
pub(super) fn draw(block: &Element, set_on: &SetOn, setting: &str) -> Result<bool> {
    let Some(drawn) = block.query_selector(".drawn")? else {
        return Ok(false);
    };
    let html = with_setting(set_on, setting, |setting| setting.drawing().ok());
    if let Some(html) = &html {
        drawn.set_inner_html(html);
    }
    Ok(html.is_some())
}
