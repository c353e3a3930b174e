//! The page as a whole: what was found, who hears what, and what happens when something
//! goes wrong.

use crate::dom::{Result, all_of_page, document, made};
use crate::figure::LiveFigure;
use crate::listener::Listener;
use std::cell::RefCell;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Element, Event, HtmlInputElement};

thread_local! {
    /// What is alive. A page has one thread; an event that arrives while another is
    /// being handled finds this borrowed and is let go.
    static PAGE: RefCell<Option<Page>> = const { RefCell::new(None) };
}

/// Everything of this page that is alive.
struct Page {
    figures: Vec<LiveFigure>,
    _listeners: Vec<Listener>,
}

/// Finds what the page holds and brings it alive.
pub(crate) fn start() -> Result<()> {
    std::panic::set_hook(Box::new(|_| stop()));
    let page = Page {
        figures: alive("figure[data-figure]", LiveFigure::mount)?,
        _listeners: listeners()?,
    };
    PAGE.with(|slot| slot.replace(Some(page)));
    Ok(())
}

/// Everything that matches, brought alive; what cannot be stays as it is.
fn alive<T>(selector: &str, mount: fn(Element) -> Result<T>) -> Result<Vec<T>> {
    let mut living = Vec::new();
    for root in all_of_page(selector)? {
        match mount(root.clone()) {
            Ok(one) => living.push(one),
            Err(error) => explain(&root, &error)?,
        }
    }
    Ok(living)
}

/// Says under an element why it is not alive.
fn explain(root: &Element, error: &JsValue) -> Result<()> {
    let reason = error.as_string().unwrap_or_default();
    let text = [
        "This part is not alive here; its words and numbers are complete. ",
        &reason,
    ];
    root.append_child(&made("p", "not-alive", &text.concat())?.into())?;
    Ok(())
}

/// One listener of each kind for the whole page.
fn listeners() -> Result<Vec<Listener>> {
    let page = document()?;
    Ok(vec![
        Listener::new(&page, "input", |event| handle(&event, Page::input))?,
        Listener::new(&page, "submit", |event| event.prevent_default())?,
    ])
}

fn handle(event: &Event, answer: fn(&mut Page, &Element) -> Result<()>) {
    let Some(target) = event
        .target()
        .and_then(|target| target.dyn_into::<Element>().ok())
    else {
        return;
    };
    PAGE.with(|slot| {
        if let Ok(mut slot) = slot.try_borrow_mut()
            && let Some(page) = slot.as_mut()
            // What cannot be said in the page has nowhere else to go.
            && let Err(error) = answer(page, &target)
        {
            let _ = explain(&target, &error);
        }
    });
}

impl Page {
    fn input(&mut self, target: &Element) -> Result<()> {
        let Some(input) = target.dyn_ref::<HtmlInputElement>() else {
            return Ok(());
        };
        let Some(place) = self.figures.iter().position(|figure| figure.holds(target)) else {
            return Ok(());
        };
        let Err(error) = self.figures[place].moved(input) else {
            return Ok(());
        };
        let figure = self.figures.swap_remove(place);
        figure.retire()?;
        explain(figure.root(), &error)
    }
}

/// After a panic nothing of this program can be trusted: the page is left as text.
fn stop() {
    let Ok(page) = document() else { return };
    let Some(body) = page.body() else { return };
    // Nothing more can be done for a page that takes no attribute.
    let _ = body.set_attribute("data-stopped", "");
}
