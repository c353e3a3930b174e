//! The look-up page.

mod by_link;
mod kept;
mod keyboard;
mod refused;
mod screens;
mod typed;

/// Where its results stand.
pub(crate) const RESULTS: &str = "#lookup";

/// Opens the part of the page that holds the set.
const SET: &str = "#set > summary";

/// What stands on one key of a row of keys.
fn key(name: &str, value: &str) -> String {
    format!("label:has(> input[name=\"{name}\"][value=\"{value}\"])")
}
