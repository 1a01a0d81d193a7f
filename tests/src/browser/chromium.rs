//! What only Chromium does for a journey.

use anyhow::{Context, Result, bail};
use serde_json::{Value, json};

use super::engine::Engine;
use super::page::Page;

impl Page {
    /// Runs a script before everything else on each page that is loaded from now on.
    ///
    /// # Errors
    /// In any engine but Chromium.
    pub async fn before_each_load(&self, script: &str) -> Result<()> {
        let script = json!({ "source": script });
        self.devtools("Page.addScriptToEvaluateOnNewDocument", script)
            .await
            .map(drop)
    }

    /// Pretends that there is no connection, for this page only: a service
    /// worker can still reach the server. End the server to prove anything.
    ///
    /// # Errors
    /// In any engine but Chromium.
    pub async fn disconnect(&self, offline: bool) -> Result<()> {
        self.devtools("Network.enable", json!({})).await?;
        let conditions = json!({
            "offline": offline, "latency": 0, "downloadThroughput": -1, "uploadThroughput": -1,
        });
        self.devtools("Network.emulateNetworkConditions", conditions)
            .await
            .map(drop)
    }

    /// What the browser complained of since this was last asked: refused
    /// files, faults in scripts, breaches of the security policy.
    ///
    /// # Errors
    /// In any engine but Chromium.
    pub async fn complaints(&self) -> Result<Vec<String>> {
        let log = self
            .driver
            .browser_log()
            .await
            .context("The browser gives no log.")?;
        let severe = log.into_iter().filter(|entry| entry.level == "SEVERE");
        Ok(severe.map(|entry| entry.message).collect())
    }

    /// Gives an order that only Chromium understands.
    ///
    /// # Errors
    /// In any other engine, or when Chromium refuses.
    pub async fn devtools(&self, order: &str, with: Value) -> Result<Value> {
        if self.engine != Engine::Chromium {
            bail!("{order} works in Chromium only.");
        }
        self.driver
            .cdp()
            .send_raw(order, with)
            .await
            .with_context(|| format!("{order} failed."))
    }
}
