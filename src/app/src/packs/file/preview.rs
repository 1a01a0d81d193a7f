//! How a lesson will look.

use super::super::writing::Writing;
use crate::{parts::lesson::LessonText, taught};
use catalogue::{Catalogue, source::lesson};
use leptos::prelude::*;
use std::rc::Rc;

/// How a lesson will look, as far as it can be read. What is derived in it comes
/// from the catalogue that the pack made when the checks first passed here.
#[component]
pub fn Preview(
    /// The pack.
    writing: Writing,
    /// The path of the lesson.
    path: String,
) -> impl IntoView {
    let text = Memo::new({
        let path = path.clone();
        move |_| {
            let text = writing
                .pack
                .with(|pack| pack.file(&path).map(|file| file.text.clone()));
            text.unwrap_or_default()
        }
    });
    let path = StoredValue::new(path);
    // It stays until the page is closed, so it is made once a visit to the screen.
    let known: RwSignal<Option<&'static Rc<Catalogue>>, LocalStorage> = RwSignal::new_local(None);
    Effect::new(move |_| {
        if writing.checks.passed_now()
            && known.with_untracked(Option::is_none)
            && let Some(over) = writing.checks.passed()
        {
            known.set(Some(taught::keep(over.catalogue.clone())));
        }
    });
    let shown = move || match known.get() {
        Some(catalogue) => view! { <Under catalogue text path /> }.into_any(),
        None => view! { <Shown text path /> }.into_any(),
    };
    view! {
        <section class="pk-preview" data-test="preview">
            <h2 class="stage-label">"How it will look"</h2>
            {shown}
        </section>
    }
}

/// The lesson over another catalogue than the page was opened with.
#[component]
fn Under(
    catalogue: &'static Rc<Catalogue>,
    text: Memo<String>,
    path: StoredValue<String>,
) -> impl IntoView {
    taught::provide(catalogue, Signal::stored(None));
    view! { <Shown text path /> }
}

#[component]
fn Shown(text: Memo<String>, path: StoredValue<String>) -> impl IntoView {
    move || match path.with_value(|path| lesson(path, &text.get())) {
        Ok(read) => {
            let title = read.title.clone();
            // It stays until the page is closed: a lesson is small, and pauses are few.
            let lesson = Box::leak(Box::new(read));
            view! {
                <h3>{title}</h3>
                <LessonText lesson />
            }
            .into_any()
        }
        Err(faults) => {
            let lines = faults
                .into_iter()
                .map(|fault| view! { <li>{fault.to_string()}</li> });
            view! {
                <p>"It cannot be shown yet:"</p>
                <ul>{lines.collect_view()}</ul>
            }
            .into_any()
        }
    }
}
