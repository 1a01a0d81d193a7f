//! Files that the page offers, and pages within pages.

use std::fs;
use std::path::Path;
use std::time::{Duration, Instant};

use anyhow::{Context, Result, bail};
use serde_json::json;
use thirtyfour::By;

use super::page::Page;

/// Files of many megabytes are made in the page.
const PATIENCE: Duration = Duration::from_secs(60);

impl Page {
    /// Has every file that the page offers from now on put into a folder.
    ///
    /// # Errors
    /// In any engine but Chromium.
    pub async fn download_into(&self, folder: &Path) -> Result<()> {
        let way = json!({ "behavior": "allow", "downloadPath": folder });
        self.devtools("Browser.setDownloadBehavior", way)
            .await
            .map(drop)
    }

    /// Waits for a file in the folder, and gives its bytes.
    ///
    /// # Errors
    /// When it does not come.
    pub async fn downloaded(&self, folder: &Path, name: &str) -> Result<Vec<u8>> {
        let begun = Instant::now();
        let path = folder.join(name);
        // The browser gives a file its name once all of it is there.
        while !path.is_file() {
            if begun.elapsed() > PATIENCE {
                bail!("Waited in vain for the file {name}.");
            }
            tokio::time::sleep(Duration::from_millis(50)).await;
        }
        fs::read(&path).with_context(|| format!("{name} cannot be read."))
    }

    /// Goes into a page that stands within this one.
    ///
    /// # Errors
    /// When there is none.
    pub async fn go_into(&self, frame: &str) -> Result<()> {
        let frame = self.driver.find(By::Css(frame)).await?;
        frame
            .enter_frame()
            .await
            .context("The page within the page cannot be entered.")
    }

    /// Goes back to the page around all others.
    ///
    /// # Errors
    /// When the browser does not answer.
    pub async fn go_out(&self) -> Result<()> {
        Ok(self.driver.enter_default_frame().await?)
    }
}
