//! Starting each of the three browser engines.

use std::io::{BufRead, BufReader};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::Arc;

use anyhow::{Context, Result};
use serde_json::{Value, json};
use tempfile::TempDir;
use thirtyfour::{Capabilities, WebDriver};

use super::look::Look;
use super::process::{Program, free_port};
use super::settings;

/// A browser engine.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Engine {
    /// The engine of most phones; the only one that is steered at phone size.
    Chromium,
    /// The engine of Firefox; its window stays at least 500 CSS pixels wide.
    Firefox,
    /// The engine of Safari; its window stays at least 447 CSS pixels wide.
    WebKit,
}

/// Where a browser keeps what it keeps. A browser opened again on the same
/// profile is the same reader coming back.
///
/// The folder goes when the last of its users does, be it a browser or the journey.
#[derive(Debug, Clone)]
pub struct Profile {
    folder: Arc<TempDir>,
    film: Option<PathBuf>,
}

impl Profile {
    /// A reader who has never been here.
    ///
    /// # Errors
    /// When no folder can be made for it.
    pub fn new() -> Result<Self> {
        let folder = tempfile::tempdir().context("No folder can be made for the browser.")?;
        Ok(Self {
            folder: Arc::new(folder),
            film: None,
        })
    }

    /// The same reader with a camera, which sees a film (YUV4MPEG2) over and
    /// over, and may be used by every page. Only in Chromium.
    #[must_use]
    pub fn seeing(self, film: &Path) -> Self {
        Self {
            film: Some(film.into()),
            ..self
        }
    }

    fn path(&self) -> &Path {
        self.folder.path()
    }
}

/// Starts the engine with its driver; gives the session and the programs that
/// must outlive it.
pub async fn start(
    engine: Engine,
    profile: &Profile,
    look: Look,
) -> Result<(WebDriver, Vec<Program>)> {
    match engine {
        Engine::Chromium => chromium(profile, look).await,
        Engine::Firefox => firefox(profile).await,
        Engine::WebKit => webkit().await,
    }
}

async fn chromium(profile: &Profile, look: Look) -> Result<(WebDriver, Vec<Program>)> {
    let mut options = json!({
        "binary": settings::path("TRAYWARD_CHROMIUM")?,
        "args": [
            "--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic",
            "--no-first-run", "--disable-background-networking", "--disable-component-update",
            "--disable-sync", "--disable-dev-shm-usage", "--lang=en",
            format!("--window-size={},{}", look.width, look.height),
            format!("--user-data-dir={}", profile.path().display()),
        ],
    });
    if let (Some(film), Some(args)) = (&profile.film, options["args"].as_array_mut()) {
        args.extend([
            json!("--use-fake-device-for-media-stream"),
            json!("--use-fake-ui-for-media-stream"),
            json!(format!(
                "--use-file-for-fake-video-capture={}",
                film.display()
            )),
        ]);
    }
    if look.touch {
        options["mobileEmulation"] = json!({ "deviceMetrics": {
            "width": look.width, "height": look.height, "pixelRatio": look.ratio,
            "touch": true, "mobile": true,
        }});
    }
    if !look.storage {
        // The setting that a reader would use to forbid it.
        options["prefs"] = json!({ "profile.default_content_setting_values.cookies": 2 });
    }
    let mut driver = Command::new(settings::path("TRAYWARD_CHROMEDRIVER")?);
    connect(
        &mut driver,
        "--port=",
        &[
            ("browserName", json!("chrome")),
            ("goog:chromeOptions", options),
            ("goog:loggingPrefs", json!({ "browser": "ALL" })),
        ],
    )
    .await
}

async fn firefox(profile: &Profile) -> Result<(WebDriver, Vec<Program>)> {
    let options = json!({
        "binary": settings::path("TRAYWARD_FIREFOX")?,
        "args": ["-headless", "-profile", profile.path()],
    });
    let mut driver = Command::new(settings::path("TRAYWARD_GECKODRIVER")?);
    // Each driver steers its browser over a second port.
    driver.arg(format!("--websocket-port={}", free_port()?));
    connect(
        &mut driver,
        "--port=",
        &[
            ("browserName", json!("firefox")),
            ("moz:firefoxOptions", options),
        ],
    )
    .await
}

async fn webkit() -> Result<(WebDriver, Vec<Program>)> {
    let (screen, display) = screen()?;
    let mut driver = Command::new(settings::path("TRAYWARD_WEBKITDRIVER")?);
    driver
        .env("DISPLAY", format!(":{display}"))
        .env("LIBGL_ALWAYS_SOFTWARE", "1");
    let options = json!({ "binary": mini_browser()?, "args": ["--automation"] });
    let (session, mut programs) = connect(
        &mut driver,
        "--port=",
        &[("webkitgtk:browserOptions", options)],
    )
    .await?;
    programs.push(screen);
    Ok((session, programs))
}

async fn connect(
    driver: &mut Command,
    port_option: &str,
    wishes: &[(&str, Value)],
) -> Result<(WebDriver, Vec<Program>)> {
    let port = free_port()?;
    let program = Program::listening(driver.arg(format!("{port_option}{port}")), port).await?;
    let mut capabilities = Capabilities::new();
    for (name, value) in wishes {
        capabilities.set(*name, value)?;
    }
    let session = WebDriver::new(format!("http://127.0.0.1:{port}"), capabilities)
        .await
        .context("The browser does not start.")?;
    Ok((session, vec![program]))
}

/// A screen that nobody sees, and its number.
fn screen() -> Result<(Program, u32)> {
    let mut xvfb = Command::new(settings::path("TRAYWARD_XVFB")?);
    xvfb.args([
        "-displayfd",
        "1",
        "-screen",
        "0",
        "800x1000x24",
        "-nolisten",
        "tcp",
    ]);
    let mut screen = Program::spawn(xvfb.stdout(Stdio::piped()))?;
    let mut line = String::new();
    let printed = screen.stdout().context("Xvfb says nothing.")?;
    BufReader::new(printed)
        .read_line(&mut line)
        .context("Xvfb says nothing.")?;
    let number = line.trim().parse().context("Xvfb names no screen.")?;
    Ok((screen, number))
}

/// The small browser that comes with the engine's driver.
fn mini_browser() -> Result<PathBuf> {
    let folders = std::fs::read_dir("/usr/lib").context("/usr/lib cannot be read.")?;
    folders
        .flatten()
        .map(|folder| folder.path().join("webkit2gtk-4.1/MiniBrowser"))
        .find(|path| path.is_file())
        .context("The MiniBrowser of webkit2gtk-4.1 is missing; it comes with webkit2gtk-driver.")
}
