//! The files that this page is made of, as they were published.

use super::handing::{base, method, property};
use js_sys::{Promise, Uint8Array};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

/// What keeps the page for use without a connection: it lists all files.
const WORKER: &str = "sw.js";

/// All files by their paths, with their bytes.
///
/// # Errors
/// A sentence where one of them cannot be fetched, or nothing lists them.
pub async fn files() -> Result<Vec<(String, Vec<u8>)>, String> {
    let worker = fetched(WORKER).await?;
    let names = names(&String::from_utf8_lossy(&worker)).ok_or(
        "This page does not say which files it is made of. Open it where it is published, and try again.",
    )?;
    let mut files = Vec::new();
    for name in names {
        let bytes = fetched(&name).await?;
        let path = if name == "./" {
            "index.html".into()
        } else {
            name
        };
        files.push((path, bytes));
    }
    Ok(files)
}

/// The names in the list of the worker.
fn names(worker: &str) -> Option<Vec<String>> {
    let (_, list) = worker.split_once("FILES = new Map(")?;
    let (list, _) = list.split_once(");")?;
    let lines = list
        .lines()
        .filter_map(|line| line.trim().strip_prefix("[\""));
    let names: Vec<String> = lines
        .filter_map(|line| Some(line.split_once('"')?.0.to_owned()))
        .collect();
    (!names.is_empty()).then_some(names)
}

async fn fetched(name: &str) -> Result<Vec<u8>, String> {
    let folder = base();
    let folder = folder.rsplit_once('/').map_or("", |(folder, _)| folder);
    let address = format!("{folder}/{}", name.trim_start_matches("./"));
    try_fetch(&address).await.ok_or_else(|| {
        format!(
            "A file of the page could not be fetched: {name}. Check the connection and try again."
        )
    })
}

async fn try_fetch(address: &str) -> Option<Vec<u8>> {
    let response = JsFuture::from(web_sys::window()?.fetch_with_str(address))
        .await
        .ok()?;
    if property(&response, "ok")? != JsValue::TRUE {
        return None;
    }
    let promise = method(&response, "arrayBuffer")?.call0(&response).ok()?;
    let buffer = JsFuture::from(promise.dyn_into::<Promise>().ok()?)
        .await
        .ok()?;
    Some(Uint8Array::new(&buffer).to_vec())
}

#[cfg(test)]
mod tests {
    use super::names;

    #[test]
    fn the_worker_lists_its_files() {
        let worker = r#"const BUILD = "1";
const FILES = new Map([
  ["./", "sha384-a"],
  ["app-1.js", "sha384-b"],
]);
const FAMILY = new Map();"#;
        assert_eq!(names(worker).unwrap(), ["./", "app-1.js"]);
        assert_eq!(names("nothing"), None);
    }
}
