//! A drawing as SVG text.
//!
//! The drawing has no `viewBox`: lengths across are in percent and lengths down in
//! pixels, so it fills any column while its text keeps its size and its rules stay
//! fine. Shapes that a percentage cannot describe stand in an inner `svg` element that
//! carries the percentage. No colour, dash or font is written here: classes only.

use crate::coordinate::pixels;
use crate::escape::escape;
use crate::{Node, View};

/// The figure's drawing as an `svg` element to be put into a page.
#[must_use]
pub fn svg(view: &View) -> String {
    let mut out = String::with_capacity(8192);
    out.push_str("<svg class=\"sheet\" role=\"img\" width=\"100%\" height=\"");
    out.push_str(&pixels(view.height));
    out.push_str("\" aria-label=\"");
    out.push_str(&escape(&view.title));
    out.push_str("\">");
    for node in &view.root {
        write_node(&mut out, node);
    }
    out.push_str("</svg>");
    out
}

fn write_node(out: &mut String, node: &Node) {
    out.push('<');
    out.push_str(node.tag);
    if let Some(key) = &node.key {
        write_attribute(out, "data-key", key);
    }
    for (name, value) in &node.attributes {
        write_attribute(out, name, value);
    }
    if node.text.is_none() && node.children.is_empty() {
        out.push_str("/>");
        return;
    }
    out.push('>');
    if let Some(text) = &node.text {
        out.push_str(&escape(text));
    }
    for child in &node.children {
        write_node(out, child);
    }
    out.push_str("</");
    out.push_str(node.tag);
    out.push('>');
}

fn write_attribute(out: &mut String, name: &str, value: &str) {
    out.push(' ');
    out.push_str(name);
    out.push_str("=\"");
    out.push_str(&escape(value));
    out.push('"');
}
