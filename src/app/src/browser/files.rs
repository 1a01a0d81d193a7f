//! Files to and from the reader's device.

use js_sys::{Array, Uint8Array};
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, BlobPropertyBag, Event, File, HtmlAnchorElement, HtmlInputElement, Url};

/// Offers `text` as a file to keep.
///
/// # Errors
/// A sentence for the reader when the browser does not make the file.
pub fn download(name: &str, text: &str) -> Result<(), String> {
    offer(name, text).ok_or_else(|| {
        "The browser did not make the file. Try again, or try another browser.".into()
    })
}

fn offer(name: &str, text: &str) -> Option<()> {
    let kind = BlobPropertyBag::new();
    kind.set_type("text/plain;charset=utf-8");
    let parts = Array::of1(&text.into());
    let blob = Blob::new_with_str_sequence_and_options(&parts, &kind).ok()?;
    let url = Url::create_object_url_with_blob(&blob).ok()?;
    let document = web_sys::window()?.document()?;
    let link: HtmlAnchorElement = document.create_element("a").ok()?.dyn_into().ok()?;
    link.set_href(&url);
    link.set_download(name);
    link.click();
    // The click has taken its own hold of the file.
    let _ = Url::revoke_object_url(&url);
    Some(())
}

/// The file a reader chose in a file field, if any. The field is emptied, so
/// that the same file can be chosen again.
pub fn chosen(event: &Event) -> Option<File> {
    let field: HtmlInputElement = event.target()?.dyn_into().ok()?;
    let file = field.files()?.get(0);
    field.set_value("");
    file
}

/// All bytes of a file.
///
/// # Errors
/// A sentence for the reader when the file cannot be read.
pub async fn read(file: &File) -> Result<Vec<u8>, String> {
    let buffer = JsFuture::from(file.array_buffer()).await.map_err(|_| {
        format!(
            "The file “{}” could not be read. Is it still where it was? Nothing was changed.",
            file.name()
        )
    })?;
    Ok(Uint8Array::new(&buffer).to_vec())
}
