//! The button that gives an answer.

use leptos::prelude::*;

/// It keeps its place under the thumb, so nothing moves when it comes to life.
#[component]
pub fn AnswerButton(
    /// Whether there is an answer to give.
    #[prop(into)]
    ready: Signal<bool>,
    /// What it says.
    #[prop(into, default = Signal::stored("Answer"))]
    says: Signal<&'static str>,
    /// Gives the answer.
    give: impl FnMut() + 'static,
) -> impl IntoView {
    let mut give = give;
    view! {
        <div class="case-go">
            <button
                type="button"
                class="button"
                data-test="answer"
                disabled=move || !ready.get()
                on:click=move |_| give()
            >
                {says}
            </button>
        </div>
    }
}
