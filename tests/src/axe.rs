//! Accessibility by the rules of axe.

use crate::built;
use crate::visit::Visit;
use anyhow::{Result, ensure};
use serde::Deserialize;
use serde_json::Value;

/// A rule that a page breaks, and where.
#[derive(Debug, Clone, Deserialize)]
pub struct Violation {
    /// The rule.
    pub id: String,
    /// What it asks for.
    pub help: String,
    /// The elements that break it.
    pub nodes: Vec<Node>,
}

/// One element.
#[derive(Debug, Clone, Deserialize)]
pub struct Node {
    /// Its markup.
    pub html: String,
}

/// Runs all rules once the script is in the page; the driver's script is not the page's,
/// so the page's policy neither hinders it nor is tested by it.
const RUN: &str = "const done = arguments[arguments.length - 1]; \
    axe.run(document, {resultTypes: ['violations']}) \
    .then((results) => done(results.violations), (error) => done([{ \
        id: 'axe', help: String(error), nodes: [] }]));";

impl Visit {
    /// Every rule the page in view breaks.
    ///
    /// # Errors
    /// When axe is not there or does not run.
    pub async fn violations(&self) -> Result<Vec<Violation>> {
        let script = built::axe_script()?;
        self.browser.execute(&script, Vec::<Value>::new()).await?;
        let given = self.browser.execute_async(RUN, Vec::<Value>::new()).await?;
        Ok(given.convert()?)
    }

    /// Refuses a page that breaks any rule.
    ///
    /// # Errors
    /// When it breaks one: all are named with their elements.
    pub async fn accessible(&self) -> Result<()> {
        let broken: Vec<String> = self
            .violations()
            .await?
            .iter()
            .map(|rule| {
                let nodes: Vec<&str> = rule.nodes.iter().map(|node| node.html.as_str()).collect();
                format!("{}: {}\n  {}", rule.id, rule.help, nodes.join("\n  "))
            })
            .collect();
        ensure!(broken.is_empty(), "axe finds:\n{}", broken.join("\n"));
        Ok(())
    }
}
