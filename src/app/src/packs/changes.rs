//! What a pack changes in the built-in catalogue: thing by thing, and for each
//! file its lines.

use super::{checks::Outcome, writing::Writing};
use crate::{
    parts::fold::Fold,
    parts::page::Page,
    place::{ClassPlace, Place, WritePlace},
    shell::NotHere,
};
use catalogue::{Catalogue, source::read_files};
use class::pack::{
    PackFile,
    difference::{Change, Line, Thing, lines, things},
};
use leptos::prelude::*;
use std::{cell::OnceCell, rc::Rc};

thread_local! {
    // What the built-in sources alone come to; worked out once.
    static BUILT_IN: OnceCell<Option<Rc<Catalogue>>> = const { OnceCell::new() };
}

fn built_in(files: &'static catalogue::source::Files) -> Option<Rc<Catalogue>> {
    BUILT_IN.with(|known| {
        known
            .get_or_init(|| Some(Rc::new(read_files(files).ok()?.catalogue)))
            .clone()
    })
}

/// What the pack changes.
#[component]
pub fn Changes(
    /// The pack.
    writing: Writing,
) -> impl IntoView {
    let shown = RwSignal::new(false);
    let told = move || {
        let Outcome::Passed(over) = writing.checks.outcome() else {
            return view! { <p class="hint">"It is told once the checks find nothing wrong."</p> }
                .into_any();
        };
        let before = writing
            .sources
            .get()
            .and_then(Result::ok)
            .and_then(built_in);
        let Some(before) = before else {
            return ().into_any();
        };
        let all = things(&before, &over.catalogue);
        if all.is_empty() {
            return view! { <p data-test="changes">"Nothing yet."</p> }.into_any();
        }
        let kinds = all.chunk_by(|a, b| (a.kind, a.change) == (b.kind, b.change));
        let line = |group: &[Thing]| {
            let first = &group[0];
            let names: Vec<&str> = group.iter().map(|it| it.id.as_str()).collect();
            let word = match first.change {
                Change::Added => "Added",
                Change::Changed => "Changed",
                Change::Gone => "Gone",
            };
            view! {
                <li>
                    <span class="stage-label">{word} " " {plural(first.kind, group.len())}</span>
                    <br />
                    {names.join(", ")}
                </li>
            }
        };
        let groups: Vec<_> = kinds.map(line).collect();
        view! { <ul class="pk-changes" data-test="changes">{groups}</ul> }.into_any()
    };
    let files = move || {
        writing.pack.with(|pack| {
            pack.files()
                .map(|(path, _)| {
                    let place = WritePlace::Lines(pack.id().to_owned(), path.to_owned());
                    view! {
                        <li>
                            <a href=Place::Class(ClassPlace::Write(place)).fragment()>{path.to_owned()}</a>
                        </li>
                    }
                })
                .collect_view()
        })
    };
    view! {
        <section class="group">
            <h2 class="stage-label">"What it changes"</h2>
            {move || {
                if shown.get() {
                    told().into_any()
                } else {
                    view! {
                        <button
                            type="button"
                            class="button button-quiet"
                            data-test="show-changes"
                            on:click=move |_| shown.set(true)
                        >
                            "Show what it adds and changes"
                        </button>
                    }
                    .into_any()
                }
            }}
            <Fold title="Line by line" test="lines">
                <ul class="pk-paths">{files}</ul>
            </Fold>
        </section>
    }
}

fn plural(kind: &str, count: usize) -> String {
    let kind = if kind == "card" {
        "preference card"
    } else {
        kind
    };
    if count == 1 {
        kind.to_owned()
    } else {
        format!("{kind}s")
    }
}

/// The lines of a file beside those it was copied from or replaces.
#[component]
pub fn LinesScreen(
    /// The id of the pack.
    id: String,
    /// The path of the file.
    path: String,
) -> impl IntoView {
    let up = Place::Class(ClassPlace::Write(WritePlace::Pack(id.clone()))).fragment();
    let Some(Ok(writing)) = Writing::open(&id) else {
        return view! { <NotHere what="pack" /> }.into_any();
    };
    let title = writing.pack.with_untracked(|pack| pack.title().to_owned());
    let Some(PackFile { text, .. }) = writing
        .pack
        .with_untracked(|pack| pack.file(&path).cloned())
    else {
        return view! { <NotHere what="file of the pack" /> }.into_any();
    };
    let heading = path.clone();
    let told = move || {
        let Some(Ok(files)) = writing.sources.get() else {
            return view! { <p>"The built-in sources are on their way…"</p> }.into_any();
        };
        let before = files.get(&path).unwrap_or_default();
        let rows: Vec<_> = lines(before, &text)
            .into_iter()
            .map(|line| {
                let (class, mark, text) = match line {
                    Line::Same(text) => ("pk-line", " ", text),
                    Line::Gone(text) => ("pk-line pk-line-gone", "−", text),
                    Line::New(text) => ("pk-line pk-line-new", "+", text),
                };
                view! { <span class=class>{mark} " " {text.to_owned()} "\n"</span> }
            })
            .collect();
        view! {
            <pre class="pk-lines" tabindex="0" role="region" aria-label="Lines">{rows}</pre>
        }
        .into_any()
    };
    view! {
        <Page title=heading over=title up>
            <p class="hint">
                "Lines with + are the pack's own; lines with − stand in the built-in file and are gone."
            </p>
            {told}
        </Page>
    }
    .into_any()
}
