//! The ways back from a task to the assignment it belongs to.

use crate::{
    log::log,
    place::{ClassPlace, Place},
};
use leptos::prelude::*;
use record::{SittingId, folds};

/// A link back to the assignment; nothing where the sitting belongs to none.
#[component]
pub fn BackToAssignment(
    /// The sitting.
    sitting: Option<SittingId>,
    /// Whether something else is to be done first.
    #[prop(optional)]
    quiet: bool,
) -> impl IntoView {
    let found = sitting.and_then(|id| log().look(|events| folds::assigned(events, id)));
    found.map(|(id, title)| {
        let class = if quiet {
            "button button-quiet"
        } else {
            "button"
        };
        let to = Place::Class(ClassPlace::Assignment(id));
        view! {
            <div class="actions">
                <a class=class href=to.fragment() data-test="back-to-assignment">
                    "Back to " {title}
                </a>
            </div>
        }
    })
}

/// What a screen of a sitting belongs to: the assignment that it is a task of, or
/// else the place that is named. Its label, and the fragment that leads there.
pub fn belongs_to(sitting: Option<SittingId>, label: &str, place: &Place) -> (String, String) {
    let found = sitting.and_then(|id| log().look(|events| folds::assigned(events, id)));
    match found {
        Some((id, title)) => (title, Place::Class(ClassPlace::Assignment(id)).fragment()),
        None => (label.to_owned(), place.fragment()),
    }
}
