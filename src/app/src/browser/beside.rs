//! Files that lie beside the page on the same host.

use js_sys::{Function, Promise, Reflect, Uint8Array};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

/// The bytes of a file beside the page, no more than so many.
///
/// # Errors
/// A sentence for the reader where it is not there, does not come, or is larger.
pub async fn fetch(file: &str, most: usize) -> Result<Vec<u8>, String> {
    let missing = || {
        format!(
            "There is no {file} beside this page. Ask whoever gave you the link, or open the file itself."
        )
    };
    let response = answer(file)
        .await
        .ok_or("The file could not be fetched. Check the connection and try again.")?;
    let good = Reflect::get(&response, &"ok".into()).is_ok_and(|ok| ok.is_truthy());
    if !good {
        return Err(missing());
    }
    let buffer = body(&response)
        .await
        .ok_or("The file broke off on its way here. Check the connection and try again.")?;
    let bytes = Uint8Array::new(&buffer);
    if bytes.length() as usize > most {
        return Err(format!(
            "{file} is larger than {} kB, which is the most. Nothing of it was read.",
            most / 1024
        ));
    }
    Ok(bytes.to_vec())
}

/// Asks for it afresh: a newer version has the same name.
async fn answer(file: &str) -> Option<JsValue> {
    let window = web_sys::window()?;
    let fetch: Function = Reflect::get(&window, &"fetch".into())
        .ok()?
        .dyn_into()
        .ok()?;
    let options = js_sys::Object::new();
    Reflect::set(&options, &"cache".into(), &"no-cache".into()).ok()?;
    let promise: Promise = fetch
        .call2(&window, &file.into(), &options)
        .ok()?
        .dyn_into()
        .ok()?;
    JsFuture::from(promise).await.ok()
}

async fn body(response: &JsValue) -> Option<JsValue> {
    let read: Function = Reflect::get(response, &"arrayBuffer".into())
        .ok()?
        .dyn_into()
        .ok()?;
    let promise: Promise = read.call0(response).ok()?.dyn_into().ok()?;
    JsFuture::from(promise).await.ok()
}
