//! A pack that lies beside the page on the same host, opened by a link that
//! names it.

use super::taking::{Arrived, Came};
use crate::{
    browser::beside,
    parts::page::Page,
    place::{ClassPlace, Place, WritePlace},
};
use class::pack::{
    self, Pack,
    limits::{MOST_BYTES, is_slug},
};
use leptos::{prelude::*, task::spawn_local};

/// The screen.
#[component]
pub fn OfferedScreen(
    /// The name of the file without its folder and ending.
    name: String,
) -> impl IntoView {
    let came: RwSignal<Came> = RwSignal::new(None);
    let file = format!("packs/{name}.json");
    let says = format!("Fetching {file} from beside this page…");
    spawn_local(async move {
        let read = if is_slug(&name) {
            fetch(&file).await
        } else {
            Err(vec![
                "The link names no pack: names are lower-case words joined by hyphens.".to_owned(),
            ])
        };
        let _ = came.try_set(Some(read));
    });
    let up = Place::Class(ClassPlace::Write(WritePlace::Packs)).fragment();
    view! {
        <Page title="A pack from this site" over="Packs" up>
            {move || came.with(Option::is_none).then(|| view! { <p aria-busy="true">{says.clone()}</p> })}
            <Arrived came then=None />
        </Page>
    }
}

/// Fetches a pack from beside the page.
async fn fetch(file: &str) -> Result<Pack, Vec<String>> {
    let bytes = beside::fetch(file, MOST_BYTES)
        .await
        .map_err(|sentence| vec![sentence])?;
    pack::read(&bytes)
}
