//! One element of a drawing.

use crate::coordinate::{percent, pixels};

/// An SVG element: tag, key, attributes, and either text or children.
///
/// For one figure the nodes and their order never change; what a setting does not show
/// carries `display="none"`. So a live page keeps every element it has and only changes
/// attributes and text.
#[derive(Clone, Debug, PartialEq)]
pub struct Node {
    /// The SVG tag.
    pub tag: &'static str,
    /// The name under which a live page finds the element; only nodes that can change
    /// have one.
    pub key: Option<String>,
    /// Attributes in order.
    pub attributes: Vec<(&'static str, String)>,
    /// The element's text, for text elements.
    pub text: Option<String>,
    /// The elements inside.
    pub children: Vec<Node>,
}

impl Node {
    /// An element without attributes.
    pub(crate) fn new(tag: &'static str) -> Self {
        Self {
            tag,
            key: None,
            attributes: Vec::new(),
            text: None,
            children: Vec::new(),
        }
    }

    /// An element with a class: the only way a drawing names a colour or a dash.
    pub(crate) fn classed(tag: &'static str, class: &str) -> Self {
        Self::new(tag).always("class", class)
    }

    /// The same element under a key.
    pub(crate) fn keyed(mut self, key: &str) -> Self {
        self.key = Some(key.to_owned());
        self
    }

    /// The same element with one more attribute.
    pub(crate) fn with(mut self, name: &'static str, value: String) -> Self {
        self.attributes.push((name, value));
        self
    }

    /// The same element with one more attribute that never changes.
    pub(crate) fn always(self, name: &'static str, value: &str) -> Self {
        self.with(name, value.to_owned())
    }

    /// The same element, shown or hidden. A node that can be hidden always calls this,
    /// so that the attribute is always there to change.
    pub(crate) fn shown(self, shown: bool) -> Self {
        self.always("display", if shown { "inline" } else { "none" })
    }

    /// The same element with text.
    pub(crate) fn saying(mut self, text: &str) -> Self {
        self.text = Some(text.to_owned());
        self
    }

    /// The same element at a place: percent across, pixels down.
    pub(crate) fn at(self, x: f64, y: f64) -> Self {
        self.with("x", percent(x)).with("y", pixels(y))
    }

    /// The same line from one place to another: percent across, pixels down.
    pub(crate) fn between(self, from: (f64, f64), to: (f64, f64)) -> Self {
        self.with("x1", percent(from.0))
            .with("y1", pixels(from.1))
            .with("x2", percent(to.0))
            .with("y2", pixels(to.1))
    }

    /// The same disc with its middle at a place: percent across, pixels down.
    pub(crate) fn centred(self, x: f64, y: f64, radius: f64) -> Self {
        self.with("cx", percent(x))
            .with("cy", pixels(y))
            .with("r", pixels(radius))
    }

    /// The same text, its end or middle at its place instead of its start.
    pub(crate) fn anchored(self, anchor: &str) -> Self {
        self.always("text-anchor", anchor)
    }

    /// The same element around `children`.
    pub(crate) fn around(mut self, children: Vec<Node>) -> Self {
        self.children = children;
        self
    }

    /// The value of an attribute.
    #[must_use]
    pub fn attribute(&self, name: &str) -> Option<&str> {
        self.attributes
            .iter()
            .find(|(known, _)| *known == name)
            .map(|(_, value)| value.as_str())
    }
}
