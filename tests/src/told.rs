//! What a screen reader is told: the element that has the focus, by the role and name that
//! the browser itself computes, and what live regions say.
//!
//! No screen reader runs here. Roles, names and hidden parts are the browser's own; what is
//! spoken is worked out by `spoken.js` from the rules for live regions, so that words which
//! no region says, and words which are said twice, are found.

use crate::engine::Engine;
use crate::visit::Visit;
use anyhow::{Context, Result, ensure};
use axum::http::Method;
use serde_json::{Value, json};
use thirtyfour::common::command::FormatRequestData;
use thirtyfour::{ElementId, RequestData, SessionId, WebElement};

/// What is told of an element when the focus comes to it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Told {
    /// Its role, as the browser computes it.
    pub role: String,
    /// Its name, as the browser computes it.
    pub name: String,
    /// The words that describe it, of whatever `aria-describedby` names.
    pub description: String,
    /// Where a slider stands, in words.
    pub value: String,
}

impl Told {
    /// Whether it is told by just this role and name. White space counts for nothing: WebKit
    /// leaves out the space at which a line is broken.
    pub fn is(&self, role: &str, name: &str) -> bool {
        self.role == role && bare(&self.name) == bare(name)
    }
}

fn bare(text: &str) -> String {
    text.split_whitespace().collect()
}

/// What the document alone knows of an element.
const WRITTEN: &str = "
    const element = arguments[0];
    const ids = (element.getAttribute('aria-describedby') ?? '').split(' ').filter(Boolean);
    const words = ids.map((id) => document.getElementById(id).innerText.trim());
    return [words.join(' '), element.ariaValueText ?? ''];";

/// A question of WebDriver's that the client has no word for.
#[derive(Debug)]
struct Computed {
    element: ElementId,
    what: &'static str,
}

impl FormatRequestData for Computed {
    fn format_request(&self, session: &SessionId) -> RequestData {
        let Self { element, what } = self;
        let path = format!("session/{session}/element/{element}/{what}");
        RequestData::new(Method::GET, path)
    }
}

impl Visit {
    /// What is told of the element that has the focus.
    ///
    /// # Errors
    /// When nothing has it: a screen reader then starts again at the head of the page.
    pub async fn focus(&self) -> Result<Told> {
        let element = self.browser.active_element().await?;
        let tag = element.tag_name().await?;
        ensure!(tag != "body" && tag != "html", "the focus fell to {tag}");
        self.told(&element).await
    }

    /// What is told of what a CSS selector finds.
    ///
    /// # Errors
    /// When there is no such element.
    pub async fn told_of(&self, css: &str) -> Result<Told> {
        self.told(&self.element(css).await?).await
    }

    async fn told(&self, element: &WebElement) -> Result<Told> {
        let (description, value) = self
            .browser
            .execute(WRITTEN, vec![element.to_json()?])
            .await?
            .convert()?;
        Ok(Told {
            role: self.computed(element.element_id(), "computedrole").await?,
            name: self.computed(element.element_id(), "computedlabel").await?,
            description,
            value,
        })
    }

    async fn computed(&self, element: ElementId, what: &'static str) -> Result<String> {
        let answer = self.browser.cmd(Computed { element, what }).await;
        let answer = answer.with_context(|| what.to_owned())?.value_json()?;
        let words = answer.as_str().unwrap_or_default();
        Ok(words.split_whitespace().collect::<Vec<_>>().join(" "))
    }

    /// Refuses a focus that is told otherwise.
    ///
    /// # Errors
    /// When the role is another one, or the name does not hold these words.
    pub async fn hears(&self, role: &str, name: &str) -> Result<Told> {
        let told = self.focus().await?;
        let fits = told.role == role && bare(&told.name).contains(&bare(name));
        ensure!(fits, "expected the {role} {name:?}, heard {told:?}");
        Ok(told)
    }

    /// Goes on with the tab key to what a CSS selector finds; what is told of it.
    ///
    /// # Errors
    /// When the tab key never comes there.
    pub async fn tab_to_hear(&self, css: &str) -> Result<Told> {
        self.tab_to(css).await?;
        self.focus().await
    }

    /// Listens to the live regions of the page in view from now on.
    ///
    /// # Errors
    /// When the page cannot be listened to.
    pub async fn listen(&self) -> Result<()> {
        self.script(include_str!("spoken.js")).await
    }

    /// What live regions have said since this was last asked, in order.
    ///
    /// # Errors
    /// When one interrupts what is being read, or the same words came twice.
    pub async fn spoken(&self) -> Result<Vec<String>> {
        let said: Vec<(String, String)> = self.script("return journeySpoken.splice(0)").await?;
        for (manner, words) in &said {
            ensure!(manner == "polite", "{manner}: {words}");
        }
        let words: Vec<String> = said.into_iter().map(|(_, words)| words).collect();
        for (at, said) in words.iter().enumerate() {
            ensure!(!words[..at].contains(said), "said twice: {said:?}");
        }
        Ok(words)
    }

    /// Whether a screen reader finds anything in what a CSS selector finds first: whether any
    /// of it is in the browser's own accessibility tree. Chromium alone; others say nothing.
    ///
    /// # Errors
    /// When there is no such element.
    pub async fn is_in_tree(&self, css: &str) -> Result<Option<bool>> {
        if self.engine != Engine::Chromium {
            return Ok(None);
        }
        let cdp = self.browser.cdp();
        let find = json!({"expression": format!("document.querySelector({})", json!(css))});
        let found = cdp.send_raw("Runtime.evaluate", find).await?;
        let id = found["result"]["objectId"].as_str();
        let id = id.with_context(|| format!("no {css}"))?;
        let asked = json!({"objectId": id});
        let tree = cdp.send_raw("Accessibility.queryAXTree", asked).await?;
        let nodes = tree["nodes"].as_array().cloned().unwrap_or_default();
        Ok(Some(
            nodes
                .iter()
                .any(|node| node["ignored"] == Value::Bool(false)),
        ))
    }
}
