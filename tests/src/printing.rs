//! Pages on paper.

use anyhow::{Context, Result};
use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use serde_json::json;
use thirtyfour::WebDriver;

/// The page as Chromium prints it, on the paper the page asks for or else A4.
///
/// WebDriver's own print command sets margins of its own and passes over `@page`.
pub(crate) async fn chromium_pdf(browser: &WebDriver) -> Result<Vec<u8>> {
    let wanted = json!({
        "printBackground": true, "preferCSSPageSize": true,
        "paperWidth": 8.27, "paperHeight": 11.69,
    });
    let given = browser.cdp().send_raw("Page.printToPDF", wanted).await?;
    let text = given["data"].as_str().context("no PDF came back")?;
    STANDARD.decode(text).context("the PDF is no base64")
}
