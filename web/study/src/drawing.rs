//! A drawing of the page, changed in place.

use crate::dom::Result;
use figures::{View, What};
use web_sys::Element;

/// Changes what differs between two views of a figure in the drawing `svg`, whose elements
/// `keyed` finds by their keys.
pub(crate) fn change<'e>(
    svg: &Element,
    (old, new): (&View, &View),
    keyed: impl Fn(&str) -> Option<&'e Element>,
) -> Result<()> {
    for change in figures::changes(old, new) {
        let Some(element) = keyed(change.key) else {
            continue;
        };
        match change.what {
            What::Attribute(name, value) => element.set_attribute(name, value)?,
            What::Text(text) => element.set_text_content(Some(text)),
        }
    }
    if old.title != new.title {
        svg.set_attribute("aria-label", &new.title)?;
    }
    Ok(())
}

/// The elements of a drawing that change, by their keys.
pub(crate) fn keyed(svg: &Element) -> Result<Vec<(String, Element)>> {
    let all = crate::dom::all(svg, "[data-key]")?.into_iter();
    let keyed = all.map(|element| {
        let key = element.get_attribute("data-key");
        (key.unwrap_or_default(), element)
    });
    Ok(keyed.collect())
}

/// The element of this key.
pub(crate) fn at<'e>(keyed: &'e [(String, Element)], key: &str) -> Option<&'e Element> {
    let found = keyed.iter().find(|(known, _)| known == key);
    found.map(|(_, element)| element)
}
