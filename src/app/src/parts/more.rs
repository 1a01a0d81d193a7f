//! A long list, a screenful at a time.

use crate::browser::printer;
use leptos::prelude::*;

/// The button that shows so many more, as long as any are left.
#[component]
pub fn More(
    /// How many are shown.
    shown: RwSignal<usize>,
    /// How many there are.
    count: Signal<usize>,
    /// How many come at once.
    at_once: usize,
    /// What the button says, given how many are left.
    says: impl Fn(usize) -> String + Send + 'static,
    /// What the button is called in a journey.
    test: &'static str,
) -> impl IntoView {
    printer::whole_on_paper(shown, count);
    move || {
        let left = count.get().saturating_sub(shown.get());
        (left > 0).then(|| {
            view! {
                <button
                    type="button"
                    class="button button-quiet more"
                    data-test=test
                    on:click=move |_| shown.update(|shown| *shown += at_once)
                >
                    {says(left)}
                </button>
            }
        })
    }
}
