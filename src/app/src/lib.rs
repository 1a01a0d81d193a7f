//! The page.

use leptos::prelude::*;
use wasm_bindgen::prelude::*;

/// Starts the page. The loader calls this once, when both this module and the
/// packed catalogue have arrived.
///
/// # Errors
/// A sentence for the reader when the page has no place to be shown in.
#[wasm_bindgen]
pub fn start(catalogue: Vec<u8>) -> Result<(), JsValue> {
    let missing = || JsValue::from_str("The page has no place named “app” to be shown in.");
    let body = document().body().ok_or_else(missing)?;
    let place = document()
        .get_element_by_id("app")
        .and_then(|found| found.dyn_into::<web_sys::HtmlElement>().ok())
        .ok_or_else(missing)?;
    let size = catalogue.len();
    mount_to(place, move || {
        view! { <main><h1>"Trayward"</h1><p>"Catalogue: " {size} " bytes."</p></main> }
    })
    .forget();
    body.set_attribute("data-ready", "")
}
