//! What must change in a live drawing to go from one view to the next.

use crate::{Node, View};

/// One change to one element.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Change<'a> {
    /// The key of the element.
    pub key: &'a str,
    /// What changes.
    pub what: What<'a>,
}

/// What changes in an element.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum What<'a> {
    /// An attribute takes a value.
    Attribute(&'static str, &'a str),
    /// The element's text becomes this.
    Text(&'a str),
}

/// The changes that turn the drawing of `old` into that of `new`.
///
/// Both are views of one figure, so their nodes agree one to one; a node without a key
/// never changes. The figures' tests hold both.
#[must_use]
pub fn changes<'a>(old: &View, new: &'a View) -> Vec<Change<'a>> {
    let mut found = Vec::new();
    compare(&old.root, &new.root, &mut found);
    found
}

fn compare<'a>(old: &[Node], new: &'a [Node], found: &mut Vec<Change<'a>>) {
    for (before, after) in old.iter().zip(new) {
        if let Some(key) = &after.key {
            compare_node(key, before, after, found);
        }
        compare(&before.children, &after.children, found);
    }
}

fn compare_node<'a>(key: &'a str, old: &Node, new: &'a Node, found: &mut Vec<Change<'a>>) {
    for ((_, before), (name, after)) in old.attributes.iter().zip(&new.attributes) {
        if before != after {
            let what = What::Attribute(name, after);
            found.push(Change { key, what });
        }
    }
    if let Some(text) = &new.text
        && old.text.as_ref() != Some(text)
    {
        let what = What::Text(text);
        found.push(Change { key, what });
    }
}
