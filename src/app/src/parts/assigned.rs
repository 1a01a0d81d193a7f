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
    assignment_of(sitting).map(|(id, title)| {
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
    match assignment_of(sitting) {
        Some((id, title)) => (title, Place::Class(ClassPlace::Assignment(id)).fragment()),
        None => (label.to_owned(), place.fragment()),
    }
}

/// The id and the title of the assignment that a sitting is a task of.
fn assignment_of(sitting: Option<SittingId>) -> Option<(String, String)> {
    log().look(|events| folds::assigned(events, sitting?))
}
