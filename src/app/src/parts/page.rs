//! What every screen begins with: its heading, which is also the page's title.

use leptos::prelude::*;

/// A screen: its heading and what follows.
#[component]
pub fn Page(
    /// The heading; also what the browser's tab says.
    #[prop(into)]
    title: String,
    /// A small label over the heading: where this belongs.
    #[prop(optional, into)]
    over: Option<String>,
    /// Where the label leads, as a fragment.
    #[prop(optional, into)]
    up: Option<String>,
    /// What follows the heading.
    children: Children,
) -> impl IntoView {
    document().set_title(&format!("{title} · Trayward"));
    let over = over.map(|label| match up {
        Some(up) => view! { <a class="page-up" href=up data-test="up">{label}</a> }.into_any(),
        None => view! { <p class="page-over">{label}</p> }.into_any(),
    });
    view! {
        <article class="page">
            <header class="page-head">{over} <h1 tabindex="-1">{title}</h1></header>
            {children()}
        </article>
    }
}
