//! Acting on the page: by finger, by mouse and by keyboard.

use anyhow::{Context, Result, bail};
use serde::Deserialize;
use serde_json::json;
use thirtyfour::{By, Key};

use super::engine::Engine;
use super::page::Page;
use super::wait::IS_SEEN;

/// How often Tab is pressed before an element counts as out of reach.
const STOPS: usize = 200;

/// Where an element can be touched, or what lies over it.
#[derive(Deserialize)]
struct Spot {
    x: f64,
    y: f64,
    covered_by: Option<String>,
}

impl Page {
    /// Taps an element with a finger, or clicks it where there is no touch.
    ///
    /// # Errors
    /// When it is not there in time or something else lies over it.
    pub async fn tap(&self, css: &str) -> Result<()> {
        self.see(css).await?;
        if self.engine != Engine::Chromium || !self.look.touch {
            self.still(css).await?;
            let found = self.driver.find(By::Css(css)).await?;
            return found
                .click()
                .await
                .with_context(|| format!("{css} cannot be clicked."));
        }
        let spot = self.spot(css).await?;
        self.touch("touchStart", Some((spot.x, spot.y))).await?;
        self.touch("touchEnd", None).await
    }

    /// Drags an element onto another with a finger.
    ///
    /// # Errors
    /// When either is not there in time, or without touch.
    pub async fn drag(&self, from: &str, onto: &str) -> Result<()> {
        self.see(onto).await?;
        let start = self.spot(from).await?;
        self.touch("touchStart", Some((start.x, start.y))).await?;
        let goal = self.spot(onto).await?;
        // A finger moves in small steps.
        for step in 1..=10 {
            let share = f64::from(step) / 10.0;
            let at = (
                start.x + (goal.x - start.x) * share,
                start.y + (goal.y - start.y) * share,
            );
            self.touch("touchMove", Some(at)).await?;
        }
        self.touch("touchEnd", None).await
    }

    /// Empties a field and types into it.
    ///
    /// # Errors
    /// When the field is not there in time.
    pub async fn fill(&self, css: &str, text: &str) -> Result<()> {
        self.see(css).await?;
        let field = self.driver.find(By::Css(css)).await?;
        field.clear().await?;
        field
            .send_keys(text)
            .await
            .with_context(|| format!("{css} cannot be typed into."))
    }

    /// Puts a text into a field at once, as pasting does.
    ///
    /// # Errors
    /// When the field is not there in time.
    pub async fn paste(&self, css: &str, text: &str) -> Result<()> {
        self.see(css).await?;
        let (css, text) = (json!(css), json!(text));
        self.run(&format!(
            "const field = document.querySelector({css}); field.value = {text};
             field.dispatchEvent(new Event('input', {{ bubbles: true }}));"
        ))
        .await
        .map(drop)
    }

    /// Gives a file to a file field.
    ///
    /// # Errors
    /// When the field is not there.
    pub async fn give_file(&self, css: &str, file: &std::path::Path) -> Result<()> {
        let field = self.driver.find(By::Css(css)).await?;
        let path = file.to_string_lossy();
        field
            .send_keys(&*path)
            .await
            .with_context(|| format!("{css} takes no file."))
    }

    /// Presses a key where the keyboard is.
    ///
    /// # Errors
    /// When the browser does not answer.
    pub async fn press(&self, key: Key) -> Result<()> {
        Ok(self.driver.action_chain().send_keys(key).perform().await?)
    }

    /// Presses a key while holding another.
    ///
    /// # Errors
    /// When the browser does not answer.
    pub async fn press_with(&self, held: Key, key: Key) -> Result<()> {
        let chain = self
            .driver
            .action_chain()
            .key_down(held.clone())
            .send_keys(key)
            .key_up(held);
        Ok(chain.perform().await?)
    }

    /// Types where the keyboard is.
    ///
    /// # Errors
    /// When the browser does not answer.
    pub async fn type_text(&self, text: &str) -> Result<()> {
        Ok(self.driver.action_chain().send_keys(text).perform().await?)
    }

    /// Goes to an element by pressing Tab alone.
    ///
    /// # Errors
    /// When Tab does not lead there.
    pub async fn tab_to(&self, css: &str) -> Result<()> {
        self.see(css).await?;
        let there = format!("!!document.activeElement?.matches({})", json!(css));
        for _ in 0..STOPS {
            if self.value(&there).await? {
                return Ok(());
            }
            self.press(Key::Tab).await?;
        }
        bail!("Tab does not lead to {css}.")
    }

    /// Goes to an element by Tab and presses Enter on it.
    ///
    /// # Errors
    /// When Tab does not lead there.
    pub async fn enter(&self, css: &str) -> Result<()> {
        self.tab_to(css).await?;
        self.press(Key::Enter).await
    }

    /// The middle of the first visible match, brought into view.
    async fn spot(&self, css: &str) -> Result<Spot> {
        let script = format!(
            "(() => {{
               const element = [...document.querySelectorAll({})]
                 .find({IS_SEEN});
               element.scrollIntoView({{ block: 'center', inline: 'center', behavior: 'instant' }});
               const box = element.getBoundingClientRect();
               const x = box.x + box.width / 2, y = box.y + box.height / 2;
               const top = document.elementFromPoint(x, y);
               const free = top && (element.contains(top) || top.contains(element)
                 || top.closest('label')?.control === element);
               return {{ x, y, covered_by: free ? null : String(top?.outerHTML.slice(0, 200)) }};
             }})()",
            json!(css)
        );
        let spot: Spot = self.value(&script).await?;
        if let Some(other) = spot.covered_by {
            bail!("A finger cannot reach {css}: over it lies {other}");
        }
        Ok(spot)
    }

    async fn touch(&self, kind: &str, at: Option<(f64, f64)>) -> Result<()> {
        let points: Vec<_> = at.iter().map(|(x, y)| json!({ "x": x, "y": y })).collect();
        let event = json!({ "type": kind, "touchPoints": points });
        self.devtools("Input.dispatchTouchEvent", event)
            .await
            .map(drop)
    }
}
