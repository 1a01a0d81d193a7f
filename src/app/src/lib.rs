//! The page: screens over the catalogue, the reasoning and the record.
//!
//! - `place`: every place and its address
//! - `areas`: what is fetched when it is first needed
//! - `book`, `taught`, `log`: what every view can reach
//! - `browser`: the only folder that knows there is a browser behind the views
//! - `shell`: the frame round every screen
//! - `parts`: small parts that several screens share
//! - one folder for each screen

#![expect(
    clippy::needless_pass_by_value,
    reason = "what a view is made of is handed to it by value"
)]

mod about;
mod areas;
mod assignments;
mod bench;
mod book;
mod browser;
mod cards;
mod cases;
mod desk;
mod find;
mod glossary;
mod items;
mod log;
mod packs;
mod parts;
mod place;
mod plan;
mod plates;
mod practice;
mod procedures;
mod progress;
mod questions;
mod reading;
mod record;
mod sampler;
mod shell;
mod sitting;
mod taught;
mod timeline;
mod today;
mod tray_card;

use leptos::{mount::mount_to, prelude::*};
use wasm_bindgen::prelude::*;

/// Starts the page. The loader calls this once, when both this module and the
/// packed outline have arrived; `fetch` gives a promise of the packed catalogue,
/// and `sources` one of the sources it was made from.
///
/// # Errors
/// A sentence for the reader when the outline cannot be read or the page has
/// no place to be shown in.
#[wasm_bindgen]
pub fn start(
    outline: Vec<u8>,
    fetch: js_sys::Function,
    sources: js_sys::Function,
) -> Result<(), JsValue> {
    let outline =
        catalogue::unpack_outline(&outline).map_err(|sentence| JsValue::from(&sentence))?;
    let missing = || JsValue::from_str("The page has no place named “app” to be shown in.");
    let body = document().body().ok_or_else(missing)?;
    let place = document()
        .get_element_by_id("app")
        .and_then(|found| found.dyn_into::<web_sys::HtmlElement>().ok())
        .ok_or_else(missing)?;
    mount_to(
        place,
        move || view! { <shell::Frame outline fetch sources /> },
    )
    .forget();
    body.set_attribute("data-ready", "")
}
