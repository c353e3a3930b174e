//! A problem of the page, alive.

use super::desk::{Desk, told};
use super::{on_figure, paper};
use crate::dom::{Result, all, append, document, focus_on, made, one, prepend, read_out, show};
use crate::kept::{Kept, today_number};
use superhet::problems::problem::{Answer, SetOn};
use superhet::problems::{Marking, Outcome, ProblemCode, Registered};
use wasm_bindgen::prelude::wasm_bindgen;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Element, HtmlInputElement};

#[wasm_bindgen]
extern "C" {
    /// Of `study.js`: brings what came just now into view, from the head of one element to the
    /// foot of another; the head if not all of it fits.
    #[wasm_bindgen(js_name = bringIntoView)]
    fn bring_into_view(from: &Element, to: &Element);
}

/// A problem of the page.
pub(crate) struct LiveProblem {
    root: Element,
    /// Where the problem is put, after what the page held without this program.
    place: Element,
    desk: Desk,
    /// The buttons for what can be done afterwards.
    after: &'static str,
}

impl LiveProblem {
    /// Brings the problem at `root` alive. Focus that stood in it goes to what is asked now.
    pub(crate) fn mount(root: Element, family: Registered, seed: u32) -> Result<Self> {
        let desk = Desk::new(family, seed).map_err(|error| JsValue::from_str(&error))?;
        Self::lay(root, desk, paper::MORE)
    }

    /// The same with a desk that is laid already, and other buttons for afterwards.
    pub(crate) fn lay(root: Element, desk: Desk, after: &'static str) -> Result<Self> {
        let focus = document()?.active_element();
        let focused = focus.is_some_and(|focus| root.contains(Some(&focus)));
        let place = made("div", "desk", "")?;
        let live = Self {
            root,
            place,
            desk,
            after,
        };
        live.lay_out()?;
        for old in all(&live.root, ":scope > :not(.slip-name, h2, h3)")? {
            show(&old, false)?;
        }
        append(&live.root, &live.place)?;
        if focused {
            read_out(&one(&live.place, ".scene")?)?;
        }
        Ok(live)
    }

    /// The problem's element.
    pub(crate) fn root(&self) -> &Element {
        &self.root
    }

    /// Back to what the page holds without this program.
    pub(crate) fn retire(&self) -> Result<()> {
        self.place.remove();
        for old in all(&self.root, ":scope > [hidden]")? {
            show(&old, true)?;
        }
        Ok(())
    }

    fn lay_out(&self) -> Result<()> {
        self.place
            .set_inner_html(&paper::desk(&self.desk, self.after));
        self.open_part()
    }

    /// Opens the part to be answered now, if one is left.
    fn open_part(&self) -> Result<()> {
        let Some(current) = self.desk.state().current() else {
            if let Some(harder) = self.place.query_selector("[data-do=harder]")? {
                show(&harder, self.desk.may_go_harder())?;
            }
            return show(&one(&self.place, ".after")?, true);
        };
        let parts = &self.desk.state().problem().parts;
        let Some(part) = parts.get(current) else {
            return Ok(());
        };
        let block = made("div", "part", "")?;
        let id = [self.desk.family(), "-", &current.to_string()].concat();
        block.set_inner_html(&paper::part(part, &id, current, parts.len()));
        append(&one(&self.place, ".parts")?, &block)
    }

    /// The part that is open: the last one laid out.
    fn block(&self) -> Result<Element> {
        one(&self.place, ".part:last-child")
    }

    /// Which part that is. It stays the last one laid out when it is done.
    fn laid_out(&self) -> Result<usize> {
        Ok(all(&self.place, ".part")?.len().saturating_sub(1))
    }

    /// Marks what was typed or chosen. The marking goes into the notebook.
    pub(crate) fn submit(&mut self, kept: &mut Kept) -> Result<()> {
        let block = self.block()?;
        let typed = typed(&block)?;
        let unit = pressed_unit(&block)?;
        let Some(marking) = self.desk.sitting().answer(&typed, unit.as_deref()) else {
            return Ok(());
        };
        let (family, outcome) = (self.desk.family(), self.outcome());
        kept.change(|notebook| {
            notebook.tally(family, &marking);
            if let Some(outcome) = outcome {
                notebook.done(family, outcome, today_number());
            }
        })?;
        let mut lines = told(&marking, &typed);
        if self.follow(&block, &marking, &typed)? {
            lines.push(on_figure::FOLLOWED.to_owned());
        }
        self.say(&block, &marking, &lines)?;
        if marking.verdict.is_right() {
            self.finish(&block)?;
            let said = one(&block, ".marking")?;
            read_out(&said)?;
            bring_into_view(&said, &self.place);
            return Ok(());
        }
        self.offer_help(&block)?;
        bring_into_view(&one(&block, ".marking")?, &block);
        Ok(())
    }

    /// How the problem was done; none until it is.
    pub(crate) fn outcome(&self) -> Option<Outcome> {
        self.desk.state().outcome()
    }

    /// The open part's figure and its right setting, where its answer is set on one.
    fn set_on(&self) -> Result<Option<(&SetOn, &str)>> {
        let part = self.desk.state().problem().parts.get(self.laid_out()?);
        Ok(match part.map(|part| &part.answer) {
            Some(Answer::Number(number)) => {
                let set_on = number.set_on.as_deref();
                set_on.map(|set_on| (set_on, number.text.as_str()))
            }
            _ => None,
        })
    }

    /// Draws what was set, if the answer is set on a figure; says whether the drawing followed.
    fn follow(&self, block: &Element, marking: &Marking, stands: &str) -> Result<bool> {
        match self.set_on()? {
            Some((set_on, _)) if marking.verdict.is_attempt() => {
                on_figure::draw(block, set_on, stands)
            }
            _ => Ok(false),
        }
    }

    fn say(&self, block: &Element, marking: &Marking, lines: &[String]) -> Result<()> {
        let said = one(block, ".marking")?;
        said.set_class_name(paper::class_of(marking));
        said.set_inner_html(&paper::marking(lines));
        for input in all(block, "input[type=text]")? {
            let invalid = if marking.verdict.is_attempt() {
                "false"
            } else {
                "true"
            };
            input.set_attribute("aria-invalid", invalid)?;
        }
        Ok(())
    }

    fn offer_help(&self, block: &Element) -> Result<()> {
        let state = self.desk.state();
        show(&one(block, ".help")?, state.may_show())?;
        show(&one(block, "[data-do=hint]")?, state.may_hint())
    }

    /// The part is done: nothing more to type, the working to see, the next part to open.
    /// The caller sees to the focus, since what held it may be gone.
    fn finish(&self, block: &Element) -> Result<()> {
        for gone in all(block, ".help, [type=submit]")? {
            show(&gone, false)?;
        }
        for input in all(block, "input, form button")? {
            input.set_attribute("disabled", "")?;
        }
        if let Some(steps) = self.desk.state().steps(self.laid_out()?) {
            let list = one(block, ".steps")?;
            list.set_inner_html(&paper::lines(steps));
            show(&list, true)?;
        }
        self.open_part()
    }

    /// Does what a button asks for.
    pub(crate) fn pressed(&mut self, what: &str, button: &Element, kept: &mut Kept) -> Result<()> {
        match what {
            "unit" => press_unit(button),
            "down" | "up" => on_figure::step(button, what == "up"),
            "hint" => self.hint(),
            "show" => self.show_steps(kept),
            "another" => {
                self.desk
                    .another(seed())
                    .map_err(|error| JsValue::from_str(&error))?;
                self.start_again()
            }
            "harder" => {
                self.desk
                    .harder(seed())
                    .map_err(|error| JsValue::from_str(&error))?;
                self.start_again()
            }
            _ => Ok(()),
        }
    }

    fn start_again(&self) -> Result<()> {
        self.lay_out()?;
        read_out(&one(&self.place, ".scene")?)
    }

    fn hint(&mut self) -> Result<()> {
        let block = self.block()?;
        let list = one(&block, ".hints")?;
        if let Some(hint) = self.desk.sitting().hint() {
            show(&list, true)?;
            append(&list, &made("li", "", hint)?)?;
        }
        self.offer_help(&block)?;
        bring_into_view(&one(&list, "li:last-child")?, &block);
        if !self.desk.state().may_hint() {
            focus_on(&one(&block, "[data-do=show]")?)?;
        }
        Ok(())
    }

    fn show_steps(&mut self, kept: &mut Kept) -> Result<()> {
        let block = self.block()?;
        if self.desk.sitting().show().is_some() {
            if let Some(outcome) = self.outcome() {
                kept.change(|notebook| notebook.done(self.desk.family(), outcome, today_number()))?;
            }
            if let Some((set_on, right)) = self.set_on()? {
                on_figure::put_right(&block, set_on, right)?;
            }
            self.finish(&block)?;
            focus_on(&one(&block, ".steps")?)?;
        }
        Ok(())
    }

    /// Opens the problem that a link names, if it is of this family.
    pub(crate) fn reopen(&mut self, code: &ProblemCode) -> Result<bool> {
        if self.desk.lies_open(code) {
            return Ok(true);
        }
        match self.desk.reopen(code) {
            None => Ok(false),
            Some(Ok(())) => {
                self.start_again()?;
                self.root.scroll_into_view();
                Ok(true)
            }
            Some(Err(sentence)) => {
                let note = made("p", "not-alive", &sentence)?;
                prepend(&self.place, &note)?;
                self.root.scroll_into_view();
                Ok(true)
            }
        }
    }
}

/// A number of the page's own: any problem will do, and the core draws from it.
pub(crate) fn seed() -> u32 {
    (js_sys::Math::random() * 4_294_967_296.0) as u32
}

/// What was typed or set, or the id of what was chosen; nothing where a slider was not moved.
pub(crate) fn typed(block: &Element) -> Result<String> {
    let inputs = all(block, "input[type=text], input[data-moved], input:checked")?;
    let input = inputs
        .first()
        .and_then(|input| input.dyn_ref::<HtmlInputElement>());
    Ok(input.map(on_figure::held).unwrap_or_default())
}

/// The unit whose button is pressed.
pub(crate) fn pressed_unit(block: &Element) -> Result<Option<String>> {
    let button = block.query_selector("[aria-pressed=true]")?;
    Ok(button.and_then(|button| button.text_content()))
}

pub(crate) fn press_unit(button: &Element) -> Result<()> {
    if let Some(group) = button.parent_element() {
        for other in all(&group, "button")? {
            let pressed = other.is_same_node(Some(button));
            other.set_attribute("aria-pressed", if pressed { "true" } else { "false" })?;
        }
    }
    Ok(())
}
