//! Something folded away until the reader wants it.

use leptos::prelude::*;

/// A folded part with a line to open it by.
#[component]
pub fn Fold(
    /// The line that stands while it is folded.
    #[prop(into)]
    title: String,
    /// Whether it stands open at first.
    #[prop(optional)]
    open: bool,
    /// A stable hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
    /// What is folded.
    children: Children,
) -> impl IntoView {
    view! {
        <details class="fold" open=open data-test=test>
            <summary>{title}</summary>
            <div class="fold-body">{children()}</div>
        </details>
    }
}
