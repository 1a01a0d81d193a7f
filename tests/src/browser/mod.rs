//! Walking through the page in a real browser, as a reader would.
//!
//! A journey serves its own copy of the built page ([`Site`]), opens a browser
//! on a [`Profile`] with a [`Look`], and acts on the [`Page`]: it taps, types,
//! waits for what a reader would wait for, and reads what is on screen. Nothing
//! sleeps for a fixed time; every wait names what it waits for and, when that
//! does not come, says what was on screen instead and leaves a picture.
//!
//! ```no_run
//! # use trayward_tests::browser::{Look, Page, Profile, Site, hook};
//! # async fn journey() -> anyhow::Result<()> {
//! let site = Site::serve().await?;
//! let page = Page::open(&Profile::new()?, Look::PHONE).await?;
//! page.go(&site.url("")).await?;
//! page.ready().await?;
//! page.tap(&hook("go-cases")).await?;
//! assert!(page.text("h1").await?.contains("Cases"));
//! page.assert_accessible("the list of cases").await?;
//! page.quit().await
//! # }
//! ```
//!
//! Journeys are run by `cargo site test browser`, which says in the environment
//! where everything is.

mod act;
mod axe;
mod chromium;
mod engine;
mod files;
mod host;
mod look;
mod page;
mod process;
mod settings;
mod site;
mod wait;

pub use engine::{Engine, Profile};
pub use host::Host;
pub use look::{Look, Scheme};
pub use page::Page;
pub use settings::path as setting;
pub use site::{Piece, Site};

/// The selector of a place in the page that is marked for journeys.
pub fn hook(name: &str) -> String {
    format!("[data-test=\"{name}\"]")
}
