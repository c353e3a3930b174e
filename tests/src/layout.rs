//! What fits: into the window, under a finger.

use crate::visit::Visit;
use anyhow::{Context, Result, ensure};
use serde::Deserialize;
use serde_json::json;

/// The least height and width of what a finger presses, in CSS pixels.
const TOUCH: f64 = 44.0;

/// The place of an element in the window.
#[derive(Debug, Clone, Copy, PartialEq, Deserialize)]
pub struct Place {
    /// Left edge.
    pub left: f64,
    /// Upper edge.
    pub top: f64,
    /// Right edge.
    pub right: f64,
    /// Lower edge.
    pub bottom: f64,
}

/// Something to press that is too small.
#[derive(Debug, Clone, Deserialize)]
struct Small {
    what: String,
    width: f64,
    height: f64,
}

const PLACE: &str = "
    const { left, top, right, bottom } =
        document.querySelector(arguments[0]).getBoundingClientRect();
    return { left, top, right, bottom };";

/// What sticks out of the page to the right, if the page can be moved sideways at all.
/// What scrolls in a box of its own is no fault.
const STICKING_OUT: &str = "
    const wide = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth <= wide) return [];
    return [...document.body.querySelectorAll('*')]
        .filter((element) => element.getBoundingClientRect().right > wide + 0.5)
        .map((element) => element.cloneNode().outerHTML.slice(0, 160)).slice(0, 8)
        .concat(`${document.documentElement.scrollWidth} px of ${wide}`);";

/// What is pressed and shown: a button, a choice by its label, a box, a fold, a tab. A link
/// within a sentence is as high as its line, as everywhere.
const PRESSED: &str = "
    const least = arguments[1];
    return [...document.querySelectorAll(arguments[0])]
        .filter((element) => element.checkVisibility({ visibilityProperty: true }))
        .filter((element) => !element.matches('.visually-hidden, label input:is([type=radio], [type=checkbox])'))
        .map((element) => {
            const { width, height } = element.getBoundingClientRect();
            return { what: element.outerHTML.slice(0, 160), width, height };
        })
        .filter(({ width, height }) => width < least || height < least);";

/// Everything of that kind.
const ALL_PRESSED: &str = "button, summary, select, input, nav a, a.next-step, a.door, \
    label:has(> input:is([type=radio], [type=checkbox]))";

impl Visit {
    /// The place of the first element that a CSS selector finds.
    ///
    /// # Errors
    /// When there is none.
    pub async fn place(&self, css: &str) -> Result<Place> {
        self.element(css).await?;
        let given = self.browser.execute(PLACE, vec![json!(css)]).await?;
        Ok(given.convert()?)
    }

    /// Refuses an element of which any part lies outside the window, or which is not shown.
    ///
    /// # Errors
    /// When it does.
    pub async fn in_view(&self, css: &str) -> Result<()> {
        let place = self.place(css).await?;
        let (width, height): (f64, f64) = self
            .script("return [document.documentElement.clientWidth, innerHeight]")
            .await?;
        let inside = place.left >= 0.0
            && place.top >= 0.0
            && place.right <= width
            && place.bottom <= height
            && place.right > place.left
            && place.bottom > place.top;
        ensure!(
            inside,
            "{css} is at {place:?} in a window of {width} x {height}"
        );
        Ok(())
    }

    /// Refuses a page that can be moved sideways.
    ///
    /// # Errors
    /// When it can: what sticks out is named.
    pub async fn no_sideways_scroll(&self) -> Result<()> {
        let wide: Vec<String> = self.script(STICKING_OUT).await?;
        ensure!(
            wide.is_empty(),
            "the page is too wide:\n  {}",
            wide.join("\n  ")
        );
        Ok(())
    }

    /// Refuses anything to press that is smaller than a finger needs.
    ///
    /// # Errors
    /// When there is something so small, or nothing to press.
    pub async fn fit_for_fingers(&self) -> Result<()> {
        let given = vec![json!(ALL_PRESSED), json!(TOUCH)];
        let small: Vec<Small> = self
            .browser
            .execute(PRESSED, given)
            .await?
            .convert()
            .context("asking for sizes")?;
        let lines: Vec<String> = small
            .iter()
            .map(
                |Small {
                     what,
                     width,
                     height,
                 }| format!("{width} x {height}: {what}"),
            )
            .collect();
        ensure!(
            lines.is_empty(),
            "too small for a finger:\n  {}",
            lines.join("\n  ")
        );
        Ok(())
    }
}
