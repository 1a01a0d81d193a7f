//! What the screens of one assignment share: the ways between them, and what
//! stands where it cannot be read.

use crate::{
    parts::{
        notice::{Notice, Tone},
        page::Page,
    },
    place::{ClassPlace, Place},
};
use leptos::prelude::*;

/// A row of tabs: what went out, hand-ins, report.
#[component]
pub fn Ways(
    /// The id of the assignment.
    id: String,
    /// Where the instructor is.
    here: ClassPlace,
) -> impl IntoView {
    let all = [
        ("To hand out", ClassPlace::Issued(id.clone()), "way-issued"),
        ("Hand-ins", ClassPlace::Collect(id.clone()), "way-collect"),
        ("Report", ClassPlace::Report(id), "way-report"),
    ];
    let tab = |(label, place, hook): (&'static str, ClassPlace, &'static str)| {
        let current = (place == here).then_some("page");
        view! {
            <li>
                <a href=Place::Class(place).fragment() aria-current=current data-test=hook>
                    {label}
                </a>
            </li>
        }
    };
    view! {
        <nav class="tabs" aria-label="This assignment">
            <ul>{all.map(tab).collect_view()}</ul>
        </nav>
    }
}

/// The page of an assignment that cannot be read any more.
#[component]
pub fn Unreadable(
    /// Why, as a sentence.
    says: String,
    /// What can still be done with it.
    #[prop(optional)]
    children: Option<Children>,
) -> impl IntoView {
    view! {
        <Page title="An assignment" over="Class" up=Place::Class(ClassPlace::Desk).fragment()>
            <Notice tone=Tone::Attention>
                <p data-test="set-fault">{says}</p>
            </Notice>
            {children.map(|children| children())}
        </Page>
    }
}
