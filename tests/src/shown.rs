//! Results on a page, and what the core says they are.

use crate::visit::Visit;
use anyhow::{Context, Result, anyhow, ensure};
use serde_json::json;
use std::time::{Duration, Instant};

/// How long a result may take to follow what was typed, on a busy machine.
const PATIENCE: Duration = Duration::from_secs(10);

/// The page's main result of a quantity comes before any table of them.
const SHOWN: &str = "
    const within = document.querySelector(arguments[0]);
    return within?.querySelector(`[data-quantity=\"${arguments[1]}\"]`)?.dataset.value ?? '';";

impl Visit {
    /// The value of the first result of a quantity within an element, in its SI base unit;
    /// none while the page has no answer.
    ///
    /// # Errors
    /// When the page shows something that is no number.
    pub async fn value_in(&self, within: &str, quantity: &str) -> Result<Option<f64>> {
        let given = vec![json!(within), json!(quantity)];
        let text: String = self.browser.execute(SHOWN, given).await?.convert()?;
        if text.is_empty() {
            return Ok(None);
        }
        let value = text
            .parse()
            .with_context(|| format!("{quantity}: {text}"))?;
        Ok(Some(value))
    }

    /// Waits until the first result of the expression's quantity is what the core makes of
    /// the expression, to the last bit.
    ///
    /// # Errors
    /// When the core refuses the expression, or the page keeps showing something else.
    pub async fn shows(&self, within: &str, quantity: &str, expression: &str) -> Result<()> {
        let expected = core(expression)?;
        let started = Instant::now();
        loop {
            let shown = self.value_in(within, quantity).await?;
            if shown == Some(expected) {
                return Ok(());
            }
            ensure!(
                started.elapsed() < PATIENCE,
                "{quantity} is {shown:?}, and {expression} is {expected}"
            );
            tokio::time::sleep(Duration::from_millis(30)).await;
        }
    }
}

/// What the core makes of an expression of the catalogue, in the SI base unit.
///
/// # Errors
/// When it refuses it.
pub fn core(expression: &str) -> Result<f64> {
    let answer = superhet::catalogue::evaluate(expression);
    Ok(answer
        .map_err(|refusal| anyhow!("{expression}: {refusal}"))?
        .value)
}
