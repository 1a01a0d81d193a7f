//! Where in the visit the student is.

use clinic::case::Part;
use leptos::prelude::*;

/// The parts of the visit, with the present one marked.
#[component]
pub fn Progress(
    /// The present part.
    part: Part,
) -> impl IntoView {
    let one = move |each: Part| {
        let current = (each == part).then_some("step");
        let class = if each < part {
            "part part-past"
        } else {
            "part"
        };
        view! { <li class=class aria-current=current>{each.name()}</li> }
    };
    view! {
        <ol class="parts" aria-label="Parts of the visit" data-test="progress">
            {Part::ALL.map(one).collect_view()}
        </ol>
    }
}
