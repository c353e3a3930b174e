//! Hands on a page: keys pressed where the focus stands, and a pointer that drags.

use crate::visit::Visit;
use anyhow::{Result, bail, ensure};
use serde::Deserialize;
use serde_json::json;
use std::time::Duration;
use thirtyfour::Key;

/// No page here has more stops for the tab key.
const MOST_STOPS: u32 = 80;
/// The moves a drag is made of.
const MOVES: u32 = 6;
/// Time between the parts of a drag.
const PACE: Duration = Duration::from_millis(10);

/// Where a slider's handle stands, and where it would stand for another value.
#[derive(Debug, Clone, Copy, Deserialize)]
struct Way {
    from: f64,
    to: f64,
    y: f64,
}

/// The way of a slider's handle in CSS pixels. A handle's middle never reaches the ends of
/// its track: one that lies on a drawing is 44 px wide (`study.css`), any other 16 px as
/// both engines draw it.
const WAY: &str = "
    const slider = document.querySelector(arguments[0]);
    slider.scrollIntoView({ block: 'center', behavior: 'instant' });
    const box = slider.getBoundingClientRect();
    const thumb = slider.closest('.handle') ? 44 : 16;
    const at = (value) => box.left + thumb / 2
        + (box.width - thumb) * (value - slider.min) / (slider.max - slider.min);
    return { from: at(slider.valueAsNumber), to: at(arguments[1]),
        y: box.top + box.height / 2 };";

impl Visit {
    /// Presses a key where the focus stands.
    ///
    /// # Errors
    /// When the browser takes no keys.
    pub async fn press(&self, key: Key) -> Result<()> {
        let chain = self.browser.action_chain_with_delay(None, None);
        chain.send_keys(key).perform().await?;
        Ok(())
    }

    /// Types where the focus stands.
    ///
    /// # Errors
    /// When the browser takes no keys.
    pub async fn type_text(&self, text: &str) -> Result<()> {
        let chain = self.browser.action_chain_with_delay(None, None);
        chain.send_keys(text).perform().await?;
        Ok(())
    }

    /// Types over what is in the box that has the focus.
    ///
    /// # Errors
    /// When the browser takes no keys.
    pub async fn type_over(&self, text: &str) -> Result<()> {
        let chain = self.browser.action_chain_with_delay(None, None);
        let all = chain.key_down(Key::Control).send_keys("a");
        all.key_up(Key::Control).send_keys(text).perform().await?;
        Ok(())
    }

    /// Goes on with the tab key until the focus stands on what a CSS selector finds.
    ///
    /// # Errors
    /// When it never does.
    pub async fn tab_to(&self, css: &str) -> Result<()> {
        for _ in 0..MOST_STOPS {
            self.press(Key::Tab).await?;
            if self.focused(css).await? {
                return Ok(());
            }
        }
        bail!("the tab key never comes to {css}")
    }

    /// Whether the focus stands on what a CSS selector finds.
    ///
    /// # Errors
    /// When the page cannot be asked.
    pub async fn focused(&self, css: &str) -> Result<bool> {
        let ask = "return document.activeElement.matches(arguments[0])";
        Ok(self
            .browser
            .execute(ask, vec![json!(css)])
            .await?
            .convert()?)
    }

    /// Drags a slider's handle with the mouse to where it stands for `value`.
    ///
    /// # Errors
    /// When there is no such slider.
    pub async fn drag(&self, css: &str, value: f64) -> Result<()> {
        let Way { from, to, y } = self.way(css, value).await?;
        let mut chain = self
            .browser
            .action_chain_with_delay(None, Some(PACE))
            .move_to(whole(from), whole(y))
            .click_and_hold();
        for step in 1..=MOVES {
            let x = from + (to - from) * f64::from(step) / f64::from(MOVES);
            chain = chain.move_to(whole(x), whole(y));
        }
        chain.release().perform().await?;
        Ok(())
    }

    /// Drags a slider's handle with a finger; Chromium alone.
    ///
    /// # Errors
    /// When there is no such slider, or the engine has no fingers.
    pub async fn drag_by_touch(&self, css: &str, value: f64) -> Result<()> {
        let Way { from, to, y } = self.way(css, value).await?;
        let cdp = self.browser.cdp();
        for step in 0..=MOVES {
            let x = from + (to - from) * f64::from(step) / f64::from(MOVES);
            let kind = if step == 0 { "touchStart" } else { "touchMove" };
            let touch = json!({"type": kind, "touchPoints": [{"x": x, "y": y}]});
            cdp.send_raw("Input.dispatchTouchEvent", touch).await?;
        }
        let end = json!({"type": "touchEnd", "touchPoints": []});
        cdp.send_raw("Input.dispatchTouchEvent", end).await?;
        Ok(())
    }

    /// Goes down the page from problem to problem, waits until each can be worked, and goes
    /// back to the head of the page.
    ///
    /// # Errors
    /// When one does not come alive in time.
    pub async fn past_every_problem(&self) -> Result<()> {
        let problems = "return document.querySelectorAll('section[data-problem]').length";
        for at in 0..self.script::<u32>(problems).await? {
            let to_it = format!(
                "const problem = document.querySelectorAll('section[data-problem]')[{at}]; \
                 problem.scrollIntoView({{ block: 'center', behavior: 'instant' }}); \
                 return problem.querySelector('.desk') !== null"
            );
            self.until(&format!("problem {at} is alive"), &to_it)
                .await?;
        }
        self.script("scrollTo({ top: 0, behavior: 'instant' })")
            .await
    }

    async fn way(&self, css: &str, value: f64) -> Result<Way> {
        self.element(css).await?;
        let given = vec![json!(css), json!(value)];
        let way: Way = self.browser.execute(WAY, given).await?.convert()?;
        ensure!(way.y > 0.0, "{css} is not in view");
        Ok(way)
    }
}

/// Whole pixels, as pointers move.
fn whole(pixels: f64) -> i64 {
    pixels.round() as i64
}
