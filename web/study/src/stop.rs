//! After a panic: nothing of this program can be trusted any more, and the page goes back
//! to what it is without it.
//!
//! Only the page itself is asked here, never what the program kept in mind.

use crate::dom::{Result, all_of_page, document, show};
use crate::kept::note;

/// What the reader is told.
const TOLD: &str = "This page's program has stopped. What stands here is complete as text; \
                    load the page again to move figures and have answers marked.";

/// Turns the page back into text.
pub(crate) fn stop() {
    // Whatever fails here, the text is still there.
    let _ = turn_back();
}

fn turn_back() -> Result<()> {
    if let Some(body) = document()?.body() {
        body.set_attribute("data-stopped", "")?;
    }
    for gone in all_of_page(".desk, .commit, .tick, #choose, #round, #check-form")? {
        gone.remove();
    }
    for handle in all_of_page(".handle, .controls")? {
        show(&handle, false)?;
    }
    for figure in all_of_page("figure[data-live]")? {
        figure.remove_attribute("data-live")?;
    }
    for folded in all_of_page(".problem > [hidden], .predict > details[hidden]")? {
        show(&folded, true)?;
    }
    note(TOLD)
}
