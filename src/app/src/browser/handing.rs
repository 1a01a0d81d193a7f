//! Ways by which something leaves the page for other people: the clipboard and
//! the device's own share sheet. Both are looked up by name, as not every
//! browser has them.

use js_sys::{Function, Object, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

/// The address of this page without its fragment.
pub fn base() -> String {
    let href = web_sys::window().and_then(|window| window.location().href().ok());
    let href = href.unwrap_or_default();
    href.split('#').next().unwrap_or_default().to_owned()
}

/// Puts a text on the clipboard.
///
/// # Errors
/// A sentence for the reader where the browser does not let it.
pub async fn copy(text: &str) -> Result<(), String> {
    let done = async {
        let clipboard = property(&navigator()?, "clipboard")?;
        let write = method(&clipboard, "writeText")?;
        let promise = write.call1(&clipboard, &text.into()).ok()?;
        JsFuture::from(promise.dyn_into::<Promise>().ok()?)
            .await
            .ok()
    };
    done.await
        .map(|_| ())
        .ok_or_else(|| "The browser did not copy it. Mark the text and copy it by hand.".to_owned())
}

/// Whether the device has a share sheet.
pub fn can_share() -> bool {
    navigator().is_some_and(|navigator| method(&navigator, "share").is_some())
}

/// Opens the share sheet with a link. Closing it without sharing is no fault.
pub async fn share(title: &str, link: &str) {
    let shared = async {
        let navigator = navigator()?;
        let what = Object::new();
        Reflect::set(&what, &"title".into(), &title.into()).ok()?;
        Reflect::set(&what, &"url".into(), &link.into()).ok()?;
        let promise = method(&navigator, "share")?.call1(&navigator, &what).ok()?;
        JsFuture::from(promise.dyn_into::<Promise>().ok()?)
            .await
            .ok()
    };
    let _ = shared.await;
}

fn navigator() -> Option<JsValue> {
    Some(web_sys::window()?.navigator().into())
}

/// A property that is there.
pub(super) fn property(of: &JsValue, name: &str) -> Option<JsValue> {
    let found = Reflect::get(of, &name.into()).ok()?;
    (!found.is_undefined() && !found.is_null()).then_some(found)
}

/// A method that is there.
pub(super) fn method(of: &JsValue, name: &str) -> Option<Function> {
    property(of, name)?.dyn_into().ok()
}
