//! Accessibility, by the rules of axe-core. `cargo site` fetches the version
//! that it names (4.14.1 at the time of writing) into target/tools.

use std::fmt::Write as _;

use anyhow::{Context, Result, bail};
use serde::Deserialize;

use super::page::Page;
use super::settings;

#[derive(Deserialize)]
struct Violation {
    id: String,
    help: String,
    nodes: Vec<Node>,
}

#[derive(Deserialize)]
struct Node {
    html: String,
    #[serde(rename = "failureSummary", default)]
    why: String,
}

impl Page {
    /// Holds what is on screen now to every rule.
    ///
    /// # Errors
    /// Each violation, with the elements that it concerns.
    pub async fn assert_accessible(&self, screen: &str) -> Result<()> {
        self.whole().await?;
        let rules = std::fs::read_to_string(settings::path("TRAYWARD_AXE")?)
            .context("axe-core cannot be read.")?;
        if !self.value::<bool>("typeof axe === 'object'").await? {
            self.driver.execute(rules.as_str(), Vec::new()).await?;
        }
        let found = self
            .run("return (await axe.run(document, { resultTypes: ['violations'] })).violations;")
            .await?;
        let violations: Vec<Violation> = serde_json::from_value(found)?;
        if violations.is_empty() {
            return Ok(());
        }
        let mut told = format!("{screen} breaks rules of accessibility:");
        for Violation { id, help, nodes } in &violations {
            let _ = write!(told, "\n{id}: {help}");
            for Node { html, why } in nodes {
                let _ = write!(told, "\n  {html}\n    {}", why.replace('\n', "\n    "));
            }
        }
        bail!(told)
    }
}
