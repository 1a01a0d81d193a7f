//! Adding to a pack: a copy of something built in under an id of its own, or a
//! built-in file to stand in for.

use super::{
    kinds::{group, slug},
    one::Unkept,
    writing::Writing,
};
use crate::{
    browser::address::Address,
    parts::{announce::announcer, notice::Fault, page::Page},
    place::{ClassPlace, FileSide, Place, WritePlace},
    shell::NotHere,
};
use catalogue::source::Files;
use class::pack::{
    PackFile,
    copy::{copied, starts},
    limits::is_slug,
    place::Kind,
};
use leptos::prelude::*;

/// The screen.
#[component]
pub fn AddScreen(
    /// The id of the pack.
    id: String,
) -> impl IntoView {
    let up = Place::Class(ClassPlace::Write(WritePlace::Pack(id.clone()))).fragment();
    let Some(Ok(writing)) = Writing::open(&id) else {
        return view! { <NotHere what="pack" /> }.into_any();
    };
    let title = writing.pack.with_untracked(|pack| pack.title().to_owned());
    let body = move || match writing.sources.get() {
        None => view! { <p>"The built-in sources are on their way…"</p> }.into_any(),
        Some(Err(why)) => view! { <p data-test="no-sources">{why}</p> }.into_any(),
        Some(Ok(files)) => view! {
            <div class="dk-ways-in">
                <CopyOf writing files />
                <StandIn writing files />
            </div>
        }
        .into_any(),
    };
    view! {
        <Page title="Add something" over=title up>
            <Unkept writing />
            {body}
        </Page>
    }
    .into_any()
}

/// A copy of one thing.
#[component]
fn CopyOf(writing: Writing, files: &'static Files) -> impl IntoView {
    let announcer = announcer();
    let address: Address = expect_context();
    let kind = RwSignal::new(Kind::Procedure);
    let thing = RwSignal::new(String::new());
    let own = RwSignal::new(String::new());
    let fault = RwSignal::new(None::<String>);
    let kinds = Kind::ALL.map(|each| {
        view! { <option value=each.folder() selected=each == Kind::Procedure>{group(each)}</option> }
    });
    let choose_kind = move |event: web_sys::Event| {
        let folder = event_target_value(&event);
        if let Some(found) = Kind::ALL.into_iter().find(|each| each.folder() == folder) {
            kind.set(found);
            thing.set(String::new());
        }
    };
    let options = move || {
        let all = starts(files, kind.get()).into_iter();
        all.map(|start| view! { <option value=start.id.clone()>{start.name.clone()}</option> })
            .collect_view()
    };
    let copy = move |event: web_sys::SubmitEvent| {
        event.prevent_default();
        let kind = kind.get_untracked();
        let first = || starts(files, kind).first().map(|start| start.id.clone());
        let from = Some(thing.get_untracked())
            .filter(|id| !id.is_empty())
            .or_else(first);
        let new = slug(&own.get_untracked());
        let done = from
            .ok_or_else(|| "Choose what is copied.".to_owned())
            .and_then(|from| put_copy(writing, files, kind, &from, &new));
        match done {
            Ok(path) => {
                writing.keep();
                let id = writing.pack.with_untracked(|pack| pack.id().to_owned());
                let side = match kind {
                    Kind::Lesson => FileSide::Text,
                    _ => FileSide::Form,
                };
                address.go(Place::Class(ClassPlace::Write(WritePlace::File(
                    id, side, path,
                ))));
            }
            Err(sentence) => {
                announcer.say(sentence.clone());
                fault.set(Some(sentence));
            }
        }
    };
    view! {
        <section>
            <h2>"A copy of something built in"</h2>
            <form on:submit=copy>
                <label class="field">
                    <span>"Kind"</span>
                    <select data-test="copy-kind" on:change=choose_kind>{kinds}</select>
                </label>
                <label class="field">
                    <span>"What is copied"</span>
                    <select
                        data-test="copy-of"
                        on:change=move |event| thing.set(event_target_value(&event))
                    >
                        {options}
                    </select>
                </label>
                <label class="field">
                    <span>"Id of the copy: lower-case words joined by hyphens"</span>
                    <input
                        type="text"
                        autocomplete="off"
                        autocapitalize="none"
                        data-test="copy-id"
                        prop:value=move || own.get()
                        on:input=move |event| own.set(event_target_value(&event))
                    />
                </label>
                <Fault says=fault test="copy-fault" />
                <button type="submit" class="button" data-test="copy">"Copy it"</button>
            </form>
        </section>
    }
}

/// Puts a copy into the pack, and gives the path of its first file.
fn put_copy(
    writing: Writing,
    files: &Files,
    kind: Kind,
    from: &str,
    new: &str,
) -> Result<String, String> {
    if !is_slug(new) {
        return Err("Give the copy an id of its own, such as our-stitches.".into());
    }
    let copy = copied(files, kind, from, new)
        .ok_or_else(|| format!("There is nothing built in with the id “{from}”."))?;
    let first = copy
        .first()
        .map(|(path, _)| path.clone())
        .unwrap_or_default();
    writing.change(|pack| {
        for (path, text) in copy {
            if pack.file(&path).is_some() {
                return Err(format!(
                    "The pack has {path} already; give the copy another id."
                ));
            }
            if files.get(&path).is_some() {
                return Err(format!(
                    "There is a built-in file {path} already; give the copy another id."
                ));
            }
            let file = PackFile {
                text,
                replaces: false,
            };
            pack.put(&path, file)?;
        }
        Ok(())
    })?;
    Ok(first)
}

/// A built-in file that the pack's own stands in for.
#[component]
fn StandIn(writing: Writing, files: &'static Files) -> impl IntoView {
    let announcer = announcer();
    let address: Address = expect_context();
    let chosen = RwSignal::new(String::new());
    let fault = RwSignal::new(None::<String>);
    let paths: Vec<String> = files
        .iter()
        .filter(|(path, _)| Kind::of(path).is_ok())
        .map(|(path, _)| path.to_owned())
        .collect();
    let first = paths.first().cloned().unwrap_or_default();
    let options = paths
        .into_iter()
        .map(|path| view! { <option value=path.clone()>{path.clone()}</option> });
    let put = move |event: web_sys::SubmitEvent| {
        event.prevent_default();
        let path = Some(chosen.get_untracked()).filter(|it| !it.is_empty());
        let path = path.unwrap_or_else(|| first.clone());
        let file = PackFile {
            text: files.get(&path).unwrap_or_default().to_owned(),
            replaces: true,
        };
        let done = writing.change(|pack| {
            if pack.file(&path).is_some() {
                return Err(format!("The pack has {path} already."));
            }
            pack.put(&path, file)
        });
        match done {
            Ok(()) => {
                writing.keep();
                let id = writing.pack.with_untracked(|pack| pack.id().to_owned());
                let place = WritePlace::File(id, FileSide::Text, path);
                address.go(Place::Class(ClassPlace::Write(place)));
            }
            Err(sentence) => {
                announcer.say(sentence.clone());
                fault.set(Some(sentence));
            }
        }
    };
    view! {
        <section>
            <h2>"In place of a built-in file"</h2>
            <p>
                "The pack's file stands where the built-in one stands; what is no longer in it is gone while the pack is in use."
            </p>
            <form on:submit=put>
                <label class="field">
                    <span>"Which file"</span>
                    <select
                        data-test="stand-in"
                        on:change=move |event| chosen.set(event_target_value(&event))
                    >
                        {options.collect_view()}
                    </select>
                </label>
                <Fault says=fault test="stand-in-fault" />
                <button type="submit" class="button button-quiet" data-test="put-stand-in">
                    "Change this file"
                </button>
            </form>
        </section>
    }
}
