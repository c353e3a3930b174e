//! An answer that is set on a figure: a slider that says its setting alone, and a drawing
//! that follows once the setting has been marked.

use crate::dom::{Result, one, say};
use crate::drawing;
use figures::{Setting, View};
use superhet::problems::problem::SetOn;
use web_sys::{Element, HtmlInputElement};

/// Said in the place of how closely a number is asked.
pub(super) const HOW: &str = "Set it with the slider. The drawing follows when it is marked.";

/// Said behind a marking.
pub(super) const FOLLOWED: &str = "The drawing has followed.";

/// Whether this program can draw the figure; the answer is typed where it cannot.
pub(super) fn can_draw(set_on: &SetOn) -> bool {
    figures::group(&set_on.figure).is_some()
}

/// What the answer is set with, as HTML. `id` is the question's.
pub(super) fn markup(set_on: &SetOn, id: &str) -> Option<String> {
    let setting = Setting::new(set_on, &set_on.begin).ok()?;
    let figure = setting.markup(&[id, "-said"].concat()).ok()?;
    Some(
        [
            "<div class=\"on-figure\" role=\"group\" aria-labelledby=\"",
            id,
            "\">",
            &figure,
            "<span class=\"one-stop\"><button type=\"button\" data-do=\"down\" \
             aria-label=\"One stop down\">\u{2212}</button><button type=\"button\" \
             data-do=\"up\" aria-label=\"One stop up\">+</button></span></div>",
        ]
        .concat(),
    )
}

/// A slider was moved: says where it stands now. Whatever is no such slider is let be.
pub(crate) fn moved(slider: &HtmlInputElement) -> Result<()> {
    if slider.closest(".on-figure")?.is_none() {
        return Ok(());
    }
    slider.set_attribute("data-moved", "")?;
    tell(slider, "off")
}

/// Moves the slider beside a button by one stop, which is read out: the slider has not the
/// focus that would say it.
pub(super) fn step(button: &Element, up: bool) -> Result<()> {
    let Some(figure) = button.closest(".on-figure")? else {
        return Ok(());
    };
    let slider = slider(&figure)?;
    let step = js_sys::parse_float(&slider.step());
    let away = if up { step } else { -step };
    slider.set_value_as_number(slider.value_as_number() + away);
    slider.set_attribute("data-moved", "")?;
    tell(&slider, "polite")
}

fn slider(within: &Element) -> Result<HtmlInputElement> {
    use wasm_bindgen::JsCast;
    one(within, "input[type=range]")?
        .dyn_into()
        .map_err(Into::into)
}

/// Shows where a slider stands, and says it as politely as asked.
fn tell(slider: &HtmlInputElement, live: &str) -> Result<()> {
    let stands = held(slider);
    if let Some(label) = slider.parent_element() {
        let output = one(&label, "output")?;
        output.set_attribute("aria-live", live)?;
        say(&output, &stands);
    }
    slider.set_attribute("aria-valuetext", &stands)
}

/// What an input holds; where a slider stands, as it would be typed.
pub(super) fn held(input: &HtmlInputElement) -> String {
    match input.get_attribute("data-unit") {
        Some(unit) => [&input.value(), " ", &unit].concat(),
        None => input.value(),
    }
}

/// Draws a setting in the part at `block`; says whether there is a drawing that could follow.
pub(super) fn draw(block: &Element, set_on: &SetOn, stands: &str) -> Result<bool> {
    let Some(drawn) = block.query_selector(".drawn")? else {
        return Ok(false);
    };
    let before = drawn.get_attribute("data-set").unwrap_or_default();
    let settings = Setting::new(set_on, &before).and_then(|old| {
        let new = Setting::new(set_on, stands)?;
        Ok((old.view()?, new.view()?, new.drawn_for(stands)))
    });
    let Ok((old, new, drawn_for)) = settings else {
        return Ok(false);
    };
    redraw(&drawn, (&old, &new))?;
    say(&one(&drawn, ".drawn-for")?, &drawn_for);
    drawn.set_attribute("data-set", stands)?;
    Ok(true)
}

fn redraw(drawn: &Element, views: (&View, &View)) -> Result<()> {
    let svg = one(drawn, "svg")?;
    let keyed = drawing::keyed(&svg)?;
    drawing::change(&svg, views, |key| drawing::at(&keyed, key))?;
    say(&one(drawn, ".words")?, &views.1.words);
    Ok(())
}

/// Draws the right setting and puts the slider there.
pub(super) fn put_right(block: &Element, set_on: &SetOn, stands: &str) -> Result<()> {
    if draw(block, set_on, stands)? {
        let slider = slider(block)?;
        let (number, _) = stands.split_once(' ').unwrap_or((stands, ""));
        slider.set_value(number);
        tell(&slider, "off")?;
    }
    Ok(())
}
