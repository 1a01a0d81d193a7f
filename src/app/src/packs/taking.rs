//! Taking in a pack from a file: it is read with suspicion, shown for what it
//! is, and kept only when the reader says so.

use super::{
    kept,
    kinds::{counted, held},
};
use crate::{
    browser::files,
    parts::{
        announce::announcer,
        notice::{Notice, Tone},
    },
    place::{ClassPlace, Place, WritePlace},
};
use class::pack::{self, Pack, limits::MOST_BYTES};
use leptos::{prelude::*, task::spawn_local};

/// A pack from outside, or what stands against it.
pub type Came = Option<Result<Pack, Vec<String>>>;

/// The button that opens a pack from a file, and what came of it.
#[component]
pub fn OpenFromFile(
    /// What is done with a pack once it is kept; without it, its page is named.
    #[prop(optional, into)]
    then: Option<Callback<Pack>>,
) -> impl IntoView {
    let came = RwSignal::new(None);
    let take = move |event: web_sys::Event| {
        let Some(file) = files::chosen(&event) else {
            return;
        };
        spawn_local(async move {
            came.set(Some(read(&file).await));
        });
    };
    view! {
        <label class="button button-quiet file-button">
            <input type="file" class="unseen" data-test="open-pack" on:change=take />
            "Open a pack from a file"
        </label>
        <Arrived came=came then />
    }
}

/// Reads a file that is no larger than a pack can be.
async fn read(file: &web_sys::File) -> Result<Pack, Vec<String>> {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "the size of a file is a whole number of bytes"
    )]
    let size = file.size() as u64;
    let size = usize::try_from(size).unwrap_or(usize::MAX);
    if size > MOST_BYTES {
        return Err(vec![pack::too_large(size)]);
    }
    let bytes = files::read(file).await.map_err(|sentence| vec![sentence])?;
    pack::read(&bytes)
}

/// What came: why it is refused, or what it holds and whether to keep it.
#[component]
pub fn Arrived(
    /// What came.
    came: RwSignal<Came>,
    /// What is done with a pack once it is kept.
    then: Option<Callback<Pack>>,
) -> impl IntoView {
    move || {
        came.get().map(|came| match came {
            Ok(pack) => view! { <Offer pack then /> }.into_any(),
            Err(faults) => view! { <Refused faults /> }.into_any(),
        })
    }
}

/// Why a pack is not taken.
#[component]
fn Refused(faults: Vec<String>) -> impl IntoView {
    announcer().say(format!("The pack was not taken in. {}", faults.join(" ")));
    let lines = faults.into_iter().map(|says| view! { <li>{says}</li> });
    view! {
        <Notice tone=Tone::Attention>
            <p>"The pack was not taken in; nothing was changed."</p>
            <ul data-test="pack-refused">{lines.collect_view()}</ul>
        </Notice>
    }
}

/// A pack that can be kept.
#[component]
fn Offer(pack: Pack, then: Option<Callback<Pack>>) -> impl IntoView {
    let announcer = announcer();
    let before = kept::one(pack.id()).and_then(|kept| kept.pack.ok());
    let same = before.as_ref() == Some(&pack);
    let fault = RwSignal::new(None::<String>);
    let kept = RwSignal::new(same);
    let place = Place::Class(ClassPlace::Write(WritePlace::Pack(pack.id().to_owned())));
    let title = pack.title().to_owned();
    announcer.say(format!("The pack “{title}” can be read."));
    let instead = before.filter(|_| !same).map(|before| {
        format!(
            "On this device there is “{}”, version {}, with the same id. Keeping this one takes its place.",
            before.title(),
            before.version
        )
    });
    let held = counted(&held(&pack));
    let heading = format!("“{title}”, version {}", pack.version);
    let pack = StoredValue::new(pack);
    let keep = move |_| {
        let pack = pack.get_value();
        match kept::keep(&pack) {
            Ok(()) => {
                kept::came_from_outside(&pack);
                kept.set(true);
                announcer.say("The pack is kept on this device.");
                if let Some(then) = then {
                    then.run(pack);
                }
            }
            Err(sentence) => {
                announcer.say(sentence.clone());
                fault.set(Some(sentence));
            }
        }
    };
    view! {
        <Notice tone=Tone::Plain>
            <p data-test="pack-came"><strong>{heading}</strong> " holds " {held} "."</p>
            {instead.map(|says| view! { <p data-test="pack-instead">{says}</p> })}
            {move || fault.get().map(|says| view! { <p data-test="pack-unkept">{says}</p> })}
            {move || {
                if kept.get() {
                    view! {
                        <p>
                            "It is kept on this device. "
                            <a href=place.fragment() data-test="to-pack">"Look at it and put it in use"</a>
                        </p>
                    }
                    .into_any()
                } else {
                    view! {
                        <div class="actions">
                            <button type="button" class="button" data-test="keep-pack" on:click=keep>
                                "Keep it on this device"
                            </button>
                        </div>
                    }
                    .into_any()
                }
            }}
        </Notice>
    }
}
