//! The few things that this program asks of a page.

use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Document, Element, HtmlElement, Node, NodeList};

/// What a browser throws, or what this program says itself.
pub(crate) type Result<T> = core::result::Result<T, JsValue>;

/// The page.
pub(crate) fn document() -> Result<Document> {
    web_sys::window()
        .and_then(|window| window.document())
        .ok_or_else(|| JsValue::from_str("there is no page"))
}

/// Every element under `root` that matches.
pub(crate) fn all(root: &Element, selector: &str) -> Result<Vec<Element>> {
    Ok(listed(&root.query_selector_all(selector)?))
}

/// Every element of the page that matches.
pub(crate) fn all_of_page(selector: &str) -> Result<Vec<Element>> {
    Ok(listed(&document()?.query_selector_all(selector)?))
}

fn listed(nodes: &NodeList) -> Vec<Element> {
    (0..nodes.length())
        .filter_map(|index| nodes.get(index))
        .filter_map(|node: Node| node.dyn_into::<Element>().ok())
        .collect()
}

/// The element under `root` that matches, which the page must hold.
pub(crate) fn one(root: &Element, selector: &str) -> Result<Element> {
    root.query_selector(selector)?
        .ok_or_else(|| JsValue::from_str(&["this page lacks ", selector].concat()))
}

/// The element with this id, where the page has one.
pub(crate) fn by_id(id: &str) -> Option<Element> {
    document().ok()?.get_element_by_id(id)
}

/// Shows or hides an element.
pub(crate) fn show(element: &Element, shown: bool) -> Result<()> {
    if shown {
        element.remove_attribute("hidden")
    } else {
        element.set_attribute("hidden", "")
    }
}

/// Sets an element's text. What is there already is left alone, so that a screen reader
/// is not told the same thing twice.
pub(crate) fn say(element: &Element, text: &str) {
    if element.text_content().as_deref() != Some(text) {
        element.set_text_content(Some(text));
    }
}

/// A new element with a class and text.
pub(crate) fn made(tag: &str, class: &str, text: &str) -> Result<Element> {
    let element = document()?.create_element(tag)?;
    if !class.is_empty() {
        element.set_class_name(class);
    }
    element.set_text_content(Some(text));
    Ok(element)
}

/// Puts an element at the end of another.
pub(crate) fn append(parent: &Element, child: &Element) -> Result<()> {
    parent.append_with_node_1(child)
}

/// Puts an element at the start of another.
pub(crate) fn prepend(parent: &Element, child: &Element) -> Result<()> {
    parent.prepend_with_node_1(child)
}

/// Says under an element why it is not alive.
pub(crate) fn explain(root: &Element, error: &JsValue) -> Result<()> {
    let reason = error.as_string().unwrap_or_default();
    let text = [
        "This part is not alive here; its words and numbers are complete. ",
        &reason,
    ];
    append(root, &made("p", "not-alive", &text.concat())?)
}

/// Gives the focus to words that came just now, so that a screen reader reads them: it is told
/// the name of what gets the focus, and only a group may be named by its own text. A status
/// would be read twice, once as such and once for the focus, so it is one no more.
pub(crate) fn read_out(words: &Element) -> Result<()> {
    if words.id().is_empty() {
        let mut ids = (0..).map(|number: u32| ["words-", &number.to_string()].concat());
        words.set_id(&ids.find(|id| by_id(id).is_none()).unwrap_or_default());
    }
    words.set_attribute("role", "group")?;
    words.set_attribute("aria-labelledby", &words.id())?;
    focus_on(words)
}

/// Gives an element the focus.
pub(crate) fn focus_on(element: &Element) -> Result<()> {
    element.unchecked_ref::<HtmlElement>().focus()
}
