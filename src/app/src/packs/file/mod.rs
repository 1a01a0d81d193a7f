//! A file of a pack: edited as a form or as a text, with what the checks say of
//! it, and for a lesson with how it will look.

mod form;
mod preview;
mod text;

use super::{faults::Checked, one::Unkept, writing::Writing};
use crate::{
    browser::address::Address,
    parts::{
        announce::announcer,
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
pub fn FileScreen(
    /// The id of the pack.
    id: String,
    /// Which side of the file.
    side: FileSide,
    /// Its path, with `:LINE:COLUMN` behind it where a place is named.
    path: String,
) -> impl IntoView {
    let (path, at) = split(&path);
    let up = Place::Class(ClassPlace::Write(WritePlace::Pack(id.clone()))).fragment();
    let Some(Ok(writing)) = Writing::open(&id) else {
        return view! { <NotHere what="pack" /> }.into_any();
    };
    let there = writing
        .pack
        .with_untracked(|pack| pack.file(&path).is_some());
    let (true, Ok(kind)) = (there, Kind::of(&path)) else {
        return view! { <NotHere what="file of the pack" /> }.into_any();
    };
    let title = writing.pack.with_untracked(|pack| pack.title().to_owned());
    let jump = RwSignal::new(at);
    let to = Callback::new(move |place| jump.set(Some(place)));
    let tabs = (kind != Kind::Lesson).then(|| view! { <Tabs id path=path.clone() side /> });
    let editor = match side {
        FileSide::Form if kind != Kind::Lesson => {
            view! { <form::FormView writing path=path.clone() /> }.into_any()
        }
        _ => view! { <text::TextView writing path=path.clone() jump /> }.into_any(),
    };
    let checked = if side == FileSide::Text {
        view! { <Checked writing open=path.clone() jump=to /> }.into_any()
    } else {
        view! { <Checked writing /> }.into_any()
    };
    let preview =
        (kind == Kind::Lesson).then(|| view! { <preview::Preview writing path=path.clone() /> });
    view! {
        <Page title=path.clone() over=title up>
            {tabs}
            <Unkept writing />
            <div class="pk-edit">
                <div class="pk-edit-main">{editor}</div>
                <div class="pk-edit-side">{checked} {preview} <Standing writing path /></div>
            </div>
        </Page>
    }
    .into_any()
}

/// A path, and the place in it that stands behind it.
fn split(path: &str) -> (String, Option<(usize, usize)>) {
    let parts: Vec<&str> = path.split(':').collect();
    if let [path, line, column] = parts.as_slice()
        && let (Ok(line), Ok(column)) = (line.parse(), column.parse())
    {
        return ((*path).to_owned(), Some((line, column)));
    }
    (path.to_owned(), None)
}

/// The two sides of a file.
#[component]
fn Tabs(id: String, path: String, side: FileSide) -> impl IntoView {
    let tab = move |each: FileSide| {
        let place = WritePlace::File(id.clone(), each, path.clone());
        view! {
            <li>
                <a
                    href=Place::Class(ClassPlace::Write(place)).fragment()
                    aria-current=(each == side).then_some("page")
                    data-test=format!("side-{}", each.label().to_lowercase())
                >
                    {each.label()}
                </a>
            </li>
        }
    };
    view! {
        <nav class="tabs" aria-label="Ways to edit">
            <ul>{FileSide::ALL.map(tab).collect_view()}</ul>
        </nav>
    }
}

/// Whether the file stands in place of a built-in one, and taking it out.
#[component]
fn Standing(writing: Writing, path: String) -> impl IntoView {
    let announcer = announcer();
    let address: Address = expect_context();
    let fault = RwSignal::new(None::<String>);
    let asked = RwSignal::new(false);
    let replaces = {
        let path = path.clone();
        move || {
            writing
                .pack
                .with(|pack| pack.file(&path).is_some_and(|file| file.replaces))
        }
    };
    let says = move || {
        replaces().then(|| {
            view! {
                <Notice tone=Tone::Plain>
                    <p>"This file stands in place of the built-in one with the same path."</p>
                </Notice>
            }
        })
    };
    let take = move |_| {
        if !asked.get_untracked() {
            asked.set(true);
            announcer.say("Touch it once more to take the file out.");
            return;
        }
        let done = writing.change(|pack| {
            pack.remove(&path);
            Ok(())
        });
        match done {
            Ok(()) => {
                writing.keep();
                let id = writing.pack.with_untracked(|pack| pack.id().to_owned());
                address.go(Place::Class(ClassPlace::Write(WritePlace::Pack(id))));
            }
            Err(sentence) => fault.set(Some(sentence)),
        }
    };
    view! {
        {says}
        <Fault says=fault test="take-out-fault" />
        <button type="button" class="button button-quiet" data-test="take-file-out" on:click=take>
            {move || if asked.get() { "Yes, take it out" } else { "Take this file out of the pack" }}
        </button>
    }
}

#[cfg(test)]
mod tests {
    use super::split;

    #[test]
    fn a_place_stands_behind_a_path() {
        assert_eq!(
            split("rules/a.toml:12:7"),
            ("rules/a.toml".into(), Some((12, 7)))
        );
        assert_eq!(split("rules/a.toml"), ("rules/a.toml".into(), None));
        assert_eq!(split("rules/a.toml:x:7"), ("rules/a.toml:x:7".into(), None));
    }
}
