//! Waiting for what a reader would wait for.

use std::time::{Duration, Instant};

use anyhow::{Result, bail};
use serde_json::json;

use super::page::Page;

const PATIENCE: Duration = Duration::from_secs(15);
const GLANCE: Duration = Duration::from_millis(25);

/// JavaScript: whether an element can be seen; an empty one cannot.
pub(super) const IS_SEEN: &str = "((e) => e.checkVisibility({ visibilityProperty: true })
    && e.getClientRects().length > 0 && e.getBoundingClientRect().height > 0)";

impl Page {
    /// Waits until a JavaScript expression holds.
    ///
    /// # Errors
    /// When it does not hold in time: says what was on screen and leaves a picture.
    pub async fn until(&self, what: &str, expression: &str) -> Result<()> {
        let begun = Instant::now();
        // While the page is being loaded the browser may have no answer.
        while !self
            .value::<bool>(&format!("!!({expression})"))
            .await
            .unwrap_or(false)
        {
            if begun.elapsed() > PATIENCE {
                let shot = format!(
                    "waited-for-{}",
                    what.replace(|c: char| !c.is_alphanumeric(), "-")
                );
                let _ = self.shot(&shot).await;
                let text = self.text("body").await.unwrap_or_default();
                bail!("Waited in vain for {what}. See the picture {shot}. On screen:\n{text}");
            }
            tokio::time::sleep(GLANCE).await;
        }
        Ok(())
    }

    /// Waits until the program runs and the page can be used.
    ///
    /// # Errors
    /// When it does not come to that.
    pub async fn ready(&self) -> Result<()> {
        self.until(
            "the page to be ready",
            "document.body?.hasAttribute('data-ready')",
        )
        .await
    }

    /// Waits until all parts of the screen are there.
    ///
    /// # Errors
    /// When they do not come.
    pub async fn whole(&self) -> Result<()> {
        self.until(
            "the screen to be whole",
            "!document.body.hasAttribute('data-unfinished')",
        )
        .await
    }

    /// Waits until this build is kept on the device and its worker serves the page.
    ///
    /// # Errors
    /// When it does not come to that.
    pub async fn kept_offline(&self) -> Result<()> {
        self.until("the page to be kept", "navigator.serviceWorker?.controller")
            .await
    }

    /// Waits until an element can be seen.
    ///
    /// # Errors
    /// When none can be seen in time.
    pub async fn see(&self, css: &str) -> Result<()> {
        let found = format!(
            "[...document.querySelectorAll({})].some({IS_SEEN})",
            json!(css)
        );
        self.until(css, &found).await
    }

    /// Waits until an element keeps its place from one frame to the next: a new
    /// screen is brought to its top in a frame of its own, and a click that was
    /// aimed before it would meet what lies there after it.
    ///
    /// # Errors
    /// When it does not come to rest in time.
    pub async fn still(&self, css: &str) -> Result<()> {
        let script = format!(
            "const place = () => {{
               const box = document.querySelector({})?.getBoundingClientRect();
               return `${{box?.x}} ${{box?.y}} ${{box?.width}} ${{box?.height}}`;
             }};
             const frame = () => new Promise(requestAnimationFrame);
             for (let before; before !== place();) {{
               before = place();
               await frame();
               await frame();
             }}",
            json!(css)
        );
        self.run(&script).await.map(drop)
    }

    /// Waits until no element that matches can be seen.
    ///
    /// # Errors
    /// When one stays.
    pub async fn see_no(&self, css: &str) -> Result<()> {
        let gone = format!(
            "![...document.querySelectorAll({})].some({IS_SEEN})",
            json!(css)
        );
        self.until(&format!("no {css}"), &gone).await
    }

    /// Waits until an element shows a text.
    ///
    /// # Errors
    /// When it does not in time.
    pub async fn read(&self, css: &str, text: &str) -> Result<()> {
        let found = format!(
            "[...document.querySelectorAll({})].some((e) => e.innerText.includes({}))",
            json!(css),
            json!(text)
        );
        self.until(&format!("{css} to show {text}"), &found).await
    }
}
