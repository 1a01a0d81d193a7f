//! The packs of this device: those that are there, a new one, one from a file.

use super::{
    checks::is_in_use,
    in_use::in_use,
    kept::{self, Kept},
    kinds::{counted, held, slug},
    taking::OpenFromFile,
    used,
};
use crate::{
    browser::address::Address,
    parts::{
        announce::announcer,
        icon::{Icon, icon},
        notice::{Fault, Notice, Tone},
        page::Page,
    },
    place::{ClassPlace, Place, WritePlace},
};
use class::pack::Pack;
use leptos::prelude::*;

/// The screen.
#[component]
pub fn PacksScreen() -> impl IntoView {
    let listed = match kept::all() {
        Ok(packs) if packs.is_empty() => view! {
            <p data-test="no-packs">
                "There is no pack on this device yet. Begin one from a copy of something built in, or open one that you were given."
            </p>
        }
        .into_any(),
        Ok(packs) => {
            view! { <ul class="rows">{packs.into_iter().map(row).collect_view()}</ul> }.into_any()
        }
        Err(sentence) => {
            view! { <Notice tone=Tone::Attention><p>{sentence}</p></Notice> }.into_any()
        }
    };
    view! {
        <Page title="Packs" over="Class" up=Place::Class(ClassPlace::Desk).fragment()>
            <p class="lead">
                "What you write beside the built-in lessons: procedures, instruments, cases, rules, lessons. A pack stays on this device until you give out its file."
            </p>
            <section class="group" data-test="packs">
                <h2 class="stage-label">"On this device"</h2>
                {listed}
            </section>
            <div class="dk-ways-in">
                <Begin />
                <section>
                    <h2>"One that you were given"</h2>
                    <p>"A pack is read and checked before anything is kept. It is in use only when you put it in use."</p>
                    <OpenFromFile />
                </section>
            </div>
        </Page>
    }
}

fn row(kept: Kept) -> impl IntoView {
    let place = Place::Class(ClassPlace::Write(WritePlace::Pack(kept.id.clone())));
    let (name, note) = match &kept.pack {
        Ok(pack) => {
            let state = if is_in_use(pack) {
                ", in use"
            } else if used::text(pack.id()).is_some() {
                ", in use as it was before"
            } else {
                ""
            };
            let note = format!("Version {}{state}. {}", pack.version, counted(&held(pack)));
            (pack.title().to_owned(), note)
        }
        Err(faults) => (kept.id.clone(), faults.join(" ")),
    };
    view! {
        <li>
            <a class="row" href=place.fragment() data-test="pack-row">
                <span class="row-name">{name}</span>
                <span class="row-note">{note}</span>
                {icon(Icon::Onwards)}
            </a>
        </li>
    }
}

/// A new pack.
#[component]
fn Begin() -> impl IntoView {
    let announcer = announcer();
    let address: Address = expect_context();
    let built_in = in_use().built_in();
    let title = RwSignal::new(String::new());
    let fault = RwSignal::new(None::<String>);
    let begin = move |event: web_sys::SubmitEvent| {
        event.prevent_default();
        let title = title.get_untracked();
        let id = slug(&title);
        let begun = Pack::new(&id, &title, built_in).and_then(|pack| {
            if kept::one(&id).is_some() {
                return Err(
                    "A pack with such a title is there already; give this one another.".into(),
                );
            }
            kept::keep(&pack)
        });
        match begun {
            Ok(()) => address.go(Place::Class(ClassPlace::Write(WritePlace::Pack(id)))),
            Err(sentence) => {
                announcer.say(sentence.clone());
                fault.set(Some(sentence));
            }
        }
    };
    view! {
        <section>
            <h2>"A new one"</h2>
            <form on:submit=begin>
                <label class="field">
                    <span>"What it is called"</span>
                    <input
                        type="text"
                        maxlength="80"
                        autocomplete="off"
                        data-test="pack-title"
                        prop:value=move || title.get()
                        on:input=move |event| title.set(event_target_value(&event))
                    />
                </label>
                <Fault says=fault test="begin-fault" />
                <button type="submit" class="button" data-test="begin-pack">"Begin"</button>
            </form>
        </section>
    }
}
