//! How a lesson will look.

use super::super::writing::Writing;
use crate::parts::lesson::LessonText;
use catalogue::source::lesson;
use leptos::prelude::*;

/// How a lesson will look, as far as it can be read.
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
    let shown = move || match lesson(&path, &text.get()) {
        Ok(read) => {
            let title = read.title.clone();
            // It stays until the page is closed: a lesson is small, and pauses are few.
            let lesson = Box::leak(Box::new(read));
            view! { <h3>{title}</h3> <LessonText lesson /> }.into_any()
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
    };
    view! {
        <section class="pk-preview" data-test="preview">
            <h2 class="stage-label">"How it will look"</h2>
            {shown}
        </section>
    }
}
