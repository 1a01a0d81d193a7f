//! A page in a browser: going places, reading what is there, and the device
//! around it.

use anyhow::{Context, Result, bail};
use serde::de::DeserializeOwned;
use serde_json::{Value, json};
use thirtyfour::{WebDriver, WindowHandle};

use super::engine::{self, Engine, Profile};
use super::look::{Look, Scheme};
use super::process::{self, Program};
use super::settings;
use super::site::Site;

/// A browser with the page in front. It is closed when this is dropped, in
/// the middle of a journey that fails as well.
pub struct Page {
    pub(super) driver: WebDriver,
    pub(super) engine: Engine,
    pub(super) look: Look,
    _programs: Vec<Program>,
    _profile: Profile,
}

impl Page {
    /// Opens Chromium.
    ///
    /// # Errors
    /// When it does not start.
    pub async fn open(profile: &Profile, look: Look) -> Result<Self> {
        Self::open_in(Engine::Chromium, profile, look).await
    }

    /// Opens the given engine. Only Chromium follows the look.
    ///
    /// # Errors
    /// When it does not start.
    pub async fn open_in(engine: Engine, profile: &Profile, look: Look) -> Result<Self> {
        let (driver, programs) = engine::start(engine, profile, look).await?;
        let page = Self {
            driver,
            engine,
            look,
            _programs: programs,
            _profile: profile.clone(),
        };
        page.apply_look().await?;
        Ok(page)
    }

    /// Opens Chromium afresh at a place of a site, and waits for its screen.
    ///
    /// # Errors
    /// When it does not start, or no screen comes.
    pub async fn at(site: &Site, fragment: &str, look: Look) -> Result<Self> {
        let page = Self::open(&Profile::new()?, look).await?;
        page.go(&site.url(fragment)).await?;
        page.ready().await?;
        page.see("main h1").await?;
        Ok(page)
    }

    async fn apply_look(&self) -> Result<()> {
        if self.engine != Engine::Chromium {
            return Ok(());
        }
        let Look {
            width,
            height,
            ratio,
            touch,
            scheme,
            still,
            ..
        } = self.look;
        if !touch {
            let screen = json!({
                "width": width, "height": height, "deviceScaleFactor": ratio, "mobile": false,
            });
            self.devtools("Emulation.setDeviceMetricsOverride", screen)
                .await?;
        }
        let wish = |name: &str, value: &str| json!({ "name": name, "value": value });
        let features = [
            wish(
                "prefers-color-scheme",
                if scheme == Scheme::Dark {
                    "dark"
                } else {
                    "light"
                },
            ),
            wish(
                "prefers-reduced-motion",
                if still { "reduce" } else { "no-preference" },
            ),
        ];
        self.devtools(
            "Emulation.setEmulatedMedia",
            json!({ "features": features }),
        )
        .await?;
        Ok(())
    }

    /// Goes to an address and waits until it has been loaded.
    ///
    /// # Errors
    /// When nothing answers there.
    pub async fn go(&self, url: &str) -> Result<()> {
        self.driver
            .goto(url)
            .await
            .with_context(|| format!("{url} does not open."))
    }

    /// Loads the page again.
    ///
    /// # Errors
    /// When nothing answers any more.
    pub async fn reload(&self) -> Result<()> {
        self.driver
            .refresh()
            .await
            .context("The page does not load again.")
    }

    /// Goes back, as the browser's own button does.
    ///
    /// # Errors
    /// When the browser does not answer.
    pub async fn back(&self) -> Result<()> {
        self.driver
            .back()
            .await
            .context("The page does not go back.")
    }

    /// The fragment of the address.
    ///
    /// # Errors
    /// When the browser does not answer.
    pub async fn fragment(&self) -> Result<String> {
        self.value("location.hash").await
    }

    /// What a JavaScript expression gives.
    ///
    /// # Errors
    /// When the expression throws or gives something of another kind.
    pub async fn value<T: DeserializeOwned>(&self, expression: &str) -> Result<T> {
        let script = format!("return ({expression});");
        let found = self.driver.execute(script.as_str(), Vec::new()).await;
        let found = found.with_context(|| format!("The page cannot say {expression}."))?;
        found
            .convert()
            .with_context(|| format!("{expression} gives something else."))
    }

    /// Runs JavaScript that may wait for promises, and gives what it returns.
    ///
    /// # Errors
    /// When it throws.
    pub async fn run(&self, body: &str) -> Result<Value> {
        let script = format!(
            "const done = arguments[arguments.length - 1];
             (async () => {{ {body} }})().then(
               (value) => done({{ value: value ?? null }}),
               (error) => done({{ error: String(error) }}));"
        );
        let outcome = self
            .driver
            .execute_async(script.as_str(), Vec::new())
            .await?;
        match outcome.json() {
            Value::Object(map) if map.contains_key("value") => Ok(map["value"].clone()),
            other => bail!("The page's script failed: {other}"),
        }
    }

    /// The text on screen of the first element that matches.
    ///
    /// # Errors
    /// When nothing matches.
    pub async fn text(&self, css: &str) -> Result<String> {
        let first = self.texts(css).await?.into_iter().next();
        first.with_context(|| format!("{css} is not there."))
    }

    /// The texts on screen of all elements that match.
    ///
    /// # Errors
    /// When the browser does not answer.
    pub async fn texts(&self, css: &str) -> Result<Vec<String>> {
        let css = json!(css);
        self.value(&format!(
            "[...document.querySelectorAll({css})].map((e) => e.innerText)"
        ))
        .await
    }

    /// How many elements match.
    ///
    /// # Errors
    /// When the browser does not answer.
    pub async fn count(&self, css: &str) -> Result<usize> {
        self.value(&format!("document.querySelectorAll({}).length", json!(css)))
            .await
    }

    /// The colour of a computed style, such as `background-color`, of the first match.
    ///
    /// # Errors
    /// When nothing matches.
    pub async fn style(&self, css: &str, property: &str) -> Result<String> {
        let (css, property) = (json!(css), json!(property));
        self.value(&format!(
            "getComputedStyle(document.querySelector({css})).getPropertyValue({property})"
        ))
        .await
    }

    /// Whether the page must be scrolled sideways, which no reader should have to.
    ///
    /// # Errors
    /// When the browser does not answer.
    pub async fn is_too_wide(&self) -> Result<bool> {
        self.value("document.documentElement.scrollWidth > document.documentElement.clientWidth")
            .await
    }

    /// Fills what is left of the storage, to the last character.
    ///
    /// # Errors
    /// When the storage is forbidden.
    pub async fn fill_storage(&self) -> Result<()> {
        let body = "let size = 1 << 22, number = 0;
            while (size >= 1) {
              try { localStorage.setItem(`filler-${number}`, 'x'.repeat(size)); number += 1; }
              catch (error) { if (error.name !== 'QuotaExceededError') throw error; size >>= 1; }
            }";
        self.run(body).await.map(drop)
    }

    /// Opens a second tab at an address and puts it in front.
    ///
    /// # Errors
    /// When it does not open.
    pub async fn open_tab(&self, url: &str) -> Result<WindowHandle> {
        let tab = self.driver.new_tab().await?;
        self.put_in_front(&tab).await?;
        self.go(url).await?;
        Ok(tab)
    }

    /// The tab in front.
    ///
    /// # Errors
    /// When the browser does not answer.
    pub async fn tab(&self) -> Result<WindowHandle> {
        Ok(self.driver.window().await?)
    }

    /// Puts a tab in front.
    ///
    /// # Errors
    /// When it has been closed.
    pub async fn put_in_front(&self, tab: &WindowHandle) -> Result<()> {
        self.driver.switch_to_window(tab.clone()).await?;
        self.apply_look().await
    }

    /// Takes a picture of the screen into the folder for pictures.
    ///
    /// # Errors
    /// When the picture cannot be taken or written.
    pub async fn shot(&self, name: &str) -> Result<()> {
        let path = settings::shots()?.join(format!("{name}.png"));
        self.driver
            .screenshot(&path)
            .await
            .context("The picture cannot be taken.")
    }

    /// Closes the browser, as a reader does, so that all it keeps is kept.
    ///
    /// # Errors
    /// When the browser does not answer any more.
    pub async fn quit(self) -> Result<()> {
        self.driver
            .clone()
            .quit()
            .await
            .context("The browser does not close.")
    }
}

impl Drop for Page {
    fn drop(&mut self) {
        // The library would wait for minutes here when a journey has failed.
        if self.driver.clone().leak().is_ok() {
            let (server, session) = (self.driver.server_url(), self.driver.session_id());
            let _ = process::close_session(server.port().unwrap_or_default(), &session.to_string());
        }
    }
}
