//! A pack that lies beside the page on the same host, opened by a link that
//! names it.

use super::{
    taking::{Arrived, Came},
    used::lies,
};
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
    let says = format!("Fetching {} from beside this page…", lies(&name));
    spawn_local(async move {
        let _ = came.try_set(Some(fetch(&name).await));
    });
    let up = Place::Class(ClassPlace::Write(WritePlace::Packs)).fragment();
    view! {
        <Page title="A pack from this site" over="Packs" up>
            {move || came.with(Option::is_none).then(|| view! { <p aria-busy="true">{says.clone()}</p> })}
            <Arrived came then=None />
        </Page>
    }
}

/// The button that fetches a pack which may lie beside the page, and what came
/// of it.
#[component]
pub fn FetchFromSite(
    /// The id of the pack.
    id: String,
    /// What is done with it once it is kept.
    then: Callback<Pack>,
) -> impl IntoView {
    let came: RwSignal<Came> = RwSignal::new(None);
    let test = format!("fetch-{id}");
    let take = move |_| {
        let id = id.clone();
        spawn_local(async move {
            let _ = came.try_set(Some(fetch(&id).await));
        });
    };
    view! {
        <button type="button" class="button button-quiet" data-test=test on:click=take>
            "Look for it on this site"
        </button>
        <Arrived came then=Some(then) />
    }
}

/// Fetches a pack from beside the page.
async fn fetch(id: &str) -> Result<Pack, Vec<String>> {
    if !is_slug(id) {
        return Err(vec![
            "The link names no pack: names are lower-case words joined by hyphens.".to_owned(),
        ]);
    }
    let bytes = beside::fetch(&lies(id), MOST_BYTES)
        .await
        .map_err(|sentence| vec![sentence])?;
    pack::read(&bytes)
}
