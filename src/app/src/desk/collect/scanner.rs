//! Reading symbols with the camera.

use super::Reader;
use crate::{
    browser::{
        breath,
        camera::{self, Camera},
    },
    parts::notice::{Notice, Tone},
};
use leptos::{html, prelude::*, task::spawn_local};
use wasm_bindgen::JsCast;

/// The camera.
#[component]
pub fn Scanner(
    /// What reads hand-ins.
    reader: Reader,
) -> impl IntoView {
    let on = RwSignal::new(false);
    let seen = RwSignal::new(0_usize);
    let fault = RwSignal::new(None::<String>);
    let video = NodeRef::<html::Video>::new();
    if !camera::can_be_asked_for() {
        return view! {
            <section class="dk-camera">
                <h2 class="stage-label">"Camera"</h2>
                <p data-test="no-camera">
                    "This browser gives the page no camera. Open the symbol with the device's own camera and follow its link, or use files and links."
                </p>
            </section>
        }
        .into_any();
    }
    let start = move |_| {
        on.set(true);
        fault.set(None);
        seen.set(0);
        spawn_local(async move {
            // The element is there once the view has been drawn.
            breath::take().await;
            let element = video.try_get_untracked().flatten();
            let Some(element) = element.and_then(|it| it.dyn_into().ok()) else {
                return;
            };
            match Camera::open(element).await {
                Ok(camera) => watch(camera, on, seen, reader).await,
                Err(why) => {
                    fault.try_set(Some(why));
                    on.try_set(false);
                }
            }
        });
    };
    let shown = move || {
        on.get()
            .then(|| view! { <video class="dk-video" node_ref=video muted playsinline></video> })
    };
    let counted = move || {
        on.get().then(|| {
            let says = match seen.get() {
                0 => "No symbol was seen yet.".to_owned(),
                1 => "1 symbol was seen.".into(),
                many => format!("{many} symbols were seen."),
            };
            view! { <p class="hint" data-test="symbols-seen">{says}</p> }
        })
    };
    let button = move || {
        if on.get() {
            view! {
                <button type="button" class="button button-quiet" data-test="camera-off" on:click=move |_| on.set(false)>
                    "Camera off"
                </button>
            }
            .into_any()
        } else {
            view! {
                <button type="button" class="button button-quiet" data-test="camera-on" on:click=start>
                    "Camera on"
                </button>
            }
            .into_any()
        }
    };
    view! {
        <section class="dk-camera">
            <h2 class="stage-label">"Camera"</h2>
            <p>"Hold one symbol after the other before the camera. Pictures stay on this device."</p>
            {shown} {counted} {button}
            {move || fault.get().map(|why| view! { <Notice tone=Tone::Attention><p>{why}</p></Notice> })}
        </section>
    }
    .into_any()
}

/// Looks again and again, and reads each symbol once, until it is switched off
/// or the screen is left.
async fn watch(camera: Camera, on: RwSignal<bool>, count: RwSignal<usize>, reader: Reader) {
    let mut seen: Vec<String> = Vec::new();
    while on.try_get_untracked() == Some(true) {
        let found = camera.look().await;
        let new: Vec<String> = found.into_iter().filter(|it| !seen.contains(it)).collect();
        if !new.is_empty() {
            seen.extend(new.iter().cloned());
            count.try_set(seen.len());
            reader.take(new);
        }
        breath::take().await;
    }
}
