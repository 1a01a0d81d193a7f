//! Files to and from the reader's device.

use js_sys::{Array, Uint8Array};
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    Blob, BlobPropertyBag, Event, File, FileList, HtmlAnchorElement, HtmlInputElement, Url,
};

/// Offers `text` as a file to keep.
///
/// # Errors
/// A sentence for the reader when the browser does not make the file.
pub fn download(name: &str, text: &str) -> Result<(), String> {
    download_bytes(name, "text/plain;charset=utf-8", text.as_bytes())
}

/// Offers bytes of a kind as a file to keep.
///
/// # Errors
/// A sentence for the reader when the browser does not make the file.
pub fn download_bytes(name: &str, kind: &str, bytes: &[u8]) -> Result<(), String> {
    offer(name, kind, bytes).ok_or_else(|| {
        "The browser did not make the file. Try again, or try another browser.".into()
    })
}

fn offer(name: &str, kind: &str, bytes: &[u8]) -> Option<()> {
    let bag = BlobPropertyBag::new();
    bag.set_type(kind);
    let parts = Array::of1(&Uint8Array::from(bytes));
    let blob = Blob::new_with_u8_array_sequence_and_options(&parts, &bag).ok()?;
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

/// All files a reader chose in a file field, or dropped onto something. A field
/// is emptied, so that the same files can be chosen again.
pub fn given(event: &Event) -> Vec<File> {
    let field: Option<HtmlInputElement> = event.target().and_then(|it| it.dyn_into().ok());
    let dropped = || {
        let carried = js_sys::Reflect::get(event, &"dataTransfer".into()).ok()?;
        js_sys::Reflect::get(&carried, &"files".into())
            .ok()?
            .dyn_into()
            .ok()
    };
    // What is dropped onto a field is in the event, and not in the field yet.
    let list: Option<FileList> = dropped().or_else(|| field.as_ref()?.files());
    let files = list.map_or_else(Vec::new, |list| {
        (0..list.length()).filter_map(|at| list.get(at)).collect()
    });
    if let Some(field) = field {
        field.set_value("");
    }
    files
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
