//! What a reader's device says of itself: its window, its paper, its dislike of motion.

use crate::engine;
use crate::visit::Visit;
use crate::window::Window;
use anyhow::Result;
use serde_json::{Value, json};

impl Visit {
    /// Gives the window another size.
    ///
    /// # Errors
    /// When the browser does not take it.
    pub async fn resize(&self, window: Window) -> Result<()> {
        engine::fit(&self.browser, self.engine, window).await
    }

    /// Answers media queries as a device with these preferences does, such as
    /// `("prefers-color-scheme", "dark")`; Chromium alone.
    ///
    /// # Errors
    /// When the browser does not take them.
    pub async fn prefer(&self, features: &[(&str, &str)]) -> Result<()> {
        let features: Vec<Value> = features
            .iter()
            .map(|(name, value)| json!({"name": name, "value": value}))
            .collect();
        let media = json!({"features": features});
        let cdp = self.browser.cdp();
        cdp.send_raw("Emulation.setEmulatedMedia", media).await?;
        Ok(())
    }

    /// Switches JavaScript off for the pages opened from now on; Chromium alone.
    ///
    /// # Errors
    /// When the browser does not.
    pub async fn without_scripts(&self) -> Result<()> {
        let off = json!({"value": true});
        let cdp = self.browser.cdp();
        cdp.send_raw("Emulation.setScriptExecutionDisabled", off)
            .await?;
        Ok(())
    }
}
