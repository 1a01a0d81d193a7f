//! Letting the browser answer touches and draw in the middle of long work.

use js_sys::Promise;
use wasm_bindgen_futures::JsFuture;

/// Gives way to everything that waits, and goes on after it.
pub async fn take() {
    let later = Promise::new(&mut |resolve, _| {
        if let Some(window) = web_sys::window() {
            // A browser that sets no timer goes on at the next chance it has.
            let set = window.set_timeout_with_callback_and_timeout_and_arguments_0(&resolve, 0);
            if set.is_ok() {
                return;
            }
        }
        let _ = resolve.call0(&wasm_bindgen::JsValue::NULL);
    });
    let _ = JsFuture::from(later).await;
}
