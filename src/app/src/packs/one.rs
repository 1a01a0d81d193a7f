//! One pack: whether it is in use, what the checks say, its files, what it
//! changes, and what can be done with it.

use super::{
    changes::Changes, faults::Checked, kept, kinds::group, puts::PutInUse, whole::EveryPatient,
    writing::Writing,
};
use crate::{
    browser::{address::Address, files},
    parts::{
        announce::announcer,
        fold::Fold,
        icon::{Icon, icon},
        notice::{Fault, Notice, Tone},
        page::Page,
    },
    place::{ClassPlace, FileSide, Place, WritePlace},
    shell::NotHere,
};
use class::pack::place::Kind;
use leptos::prelude::*;

/// The screen.
#[component]
pub fn PackScreen(
    /// The id of the pack.
    id: String,
) -> impl IntoView {
    let up = Place::Class(ClassPlace::Write(WritePlace::Packs)).fragment();
    match Writing::open(&id) {
        None => view! { <NotHere what="pack" /> }.into_any(),
        Some(Err(faults)) => view! {
            <Page title="A pack that cannot be read" over="Packs" up>
                <Notice tone=Tone::Attention>
                    {faults.into_iter().map(|says| view! { <p>{says}</p> }).collect_view()}
                </Notice>
                <TakeAway id />
            </Page>
        }
        .into_any(),
        Some(Ok(writing)) => {
            let title = writing.pack.with_untracked(|pack| pack.title().to_owned());
            view! {
                <Page title over="Packs" up>
                    <PutInUse writing />
                    <Unkept writing />
                    <Checked writing />
                    <EveryPatient writing />
                    <Files writing />
                    <Changes writing />
                    <GiveOut writing />
                    <Fold title="Its title, and taking it away" test="pack-more">
                        <Rename writing />
                        <TakeAway id />
                    </Fold>
                </Page>
            }
            .into_any()
        }
    }
}

/// Said where what was written is not kept.
#[component]
pub fn Unkept(
    /// The pack.
    writing: Writing,
) -> impl IntoView {
    view! { <Fault says=writing.unkept() test="unkept" /> }
}

/// The files, by kind.
#[component]
fn Files(writing: Writing) -> impl IntoView {
    let add = move || {
        let id = writing.pack.with(|pack| pack.id().to_owned());
        Place::Class(ClassPlace::Write(WritePlace::Add(id))).fragment()
    };
    let groups = move || {
        writing.pack.with(|pack| {
            let mut files: Vec<(Kind, String, bool)> = pack
                .files()
                .filter_map(|(path, file)| {
                    Some((Kind::of(path).ok()?, path.to_owned(), file.replaces))
                })
                .collect();
            files.sort();
            let row = |(kind, path, replaces): &(Kind, String, bool)| {
                let side = match kind {
                    Kind::Lesson => FileSide::Text,
                    _ => FileSide::Form,
                };
                let place = WritePlace::File(pack.id().to_owned(), side, path.clone());
                let note = if *replaces {
                    format!("{}, in place of the built-in one", group(*kind))
                } else {
                    group(*kind).to_owned()
                };
                view! {
                    <li>
                        <a
                            class="row"
                            href=Place::Class(ClassPlace::Write(place)).fragment()
                            data-test="pack-file"
                        >
                            <span class="row-name">{path.clone()}</span>
                            <span class="row-note">{note}</span>
                            {icon(Icon::Onwards)}
                        </a>
                    </li>
                }
            };
            files.iter().map(row).collect_view()
        })
    };
    view! {
        <section class="group" data-test="pack-files">
            <h2 class="stage-label">"What is in it"</h2>
            <ul class="rows pk-paths">{groups}</ul>
            <div class="actions">
                <a class="button" href=add data-test="to-add">"Add something"</a>
            </div>
        </section>
    }
}

/// The file that it travels as, and the link that offers it from beside the page.
#[component]
fn GiveOut(writing: Writing) -> impl IntoView {
    let announcer = announcer();
    let said = RwSignal::new(None::<String>);
    let save = move |_| {
        let mut pack = writing.pack.get_untracked();
        let name = format!("{}.json", pack.id());
        let done = kept::give_out(&mut pack);
        writing.pack.set(pack.clone());
        let saved = files::download(&name, &pack.write());
        let sentence = match (saved, done) {
            (Err(sentence), _) => sentence,
            (Ok(()), Err(sentence)) => format!("Saved as {name}. {sentence}"),
            (Ok(()), Ok(())) => format!("Saved as {name}, version {}.", pack.version),
        };
        announcer.say(sentence.clone());
        said.set(Some(sentence));
    };
    let link = move || {
        let id = writing.pack.with(|pack| pack.id().to_owned());
        format!("#/pack/{id}")
    };
    let folder = move || {
        let id = writing.pack.with(|pack| pack.id().to_owned());
        format!("packs/{id}.json")
    };
    view! {
        <section class="group" data-test="give-out">
            <h2 class="stage-label">"Giving it out"</h2>
            <p>
                "Save the pack as one file and pass it on. Whoever keeps this page on a host can lay the file beside it as "
                <code>{folder}</code> "; then " <code>{link}</code> " behind the address of the page opens it."
            </p>
            <div class="actions">
                <button type="button" class="button" data-test="save-pack" on:click=save>
                    "Save it as a file"
                </button>
            </div>
            {move || said.get().map(|says| view! { <p class="hint" data-test="pack-saved">{says}</p> })}
        </section>
    }
}

#[component]
fn Rename(writing: Writing) -> impl IntoView {
    let fault = RwSignal::new(None::<String>);
    let title = writing.pack.with_untracked(|pack| pack.title().to_owned());
    let rename = move |event: web_sys::Event| {
        let title = event_target_value(&event);
        fault.set(writing.change(|pack| pack.rename(&title)).err());
    };
    view! {
        <label class="field">
            <span>"What it is called"</span>
            <input type="text" maxlength="80" autocomplete="off" value=title data-test="rename" on:input=rename />
        </label>
        <Fault says=fault test="rename-fault" />
    }
}

/// Takes the pack away, after a second touch.
#[component]
fn TakeAway(id: String) -> impl IntoView {
    let announcer = announcer();
    let address: Address = expect_context();
    let asked = RwSignal::new(false);
    let fault = RwSignal::new(None::<String>);
    let take = move |_| {
        if !asked.get_untracked() {
            asked.set(true);
            announcer.say("Touch it once more to take the pack away.");
            return;
        }
        match kept::take_away(&id) {
            Ok(()) => address.go(Place::Class(ClassPlace::Write(WritePlace::Packs))),
            Err(sentence) => fault.set(Some(sentence)),
        }
    };
    view! {
        <p>
            "Taking a pack away deletes it from this device and puts it out of use. Save it as a file first if you may want it again."
        </p>
        <Fault says=fault test="take-away-fault" />
        <button type="button" class="button button-quiet" data-test="take-pack-away" on:click=take>
            {move || if asked.get() { "Yes, take it away" } else { "Take the pack away" }}
        </button>
    }
}
