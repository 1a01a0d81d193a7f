//! Who comes, before anything is asked.

use super::{play::Play, tooth::ToothPlace};
use crate::{
    cards::WithCard,
    packs::FromPack,
    parts::{assigned::belongs_to, page::Page},
    place::Place,
    taught::catalogue,
};
use leptos::prelude::*;

/// The opening of a case.
#[component]
pub fn Opening(
    /// The sitting that has not begun.
    play: Play,
) -> impl IntoView {
    let case = play.case();
    let booked = catalogue().procedure(&case.booked);
    let (over, up) = belongs_to(play.id(), "Cases", &Place::Cases);
    view! {
        <Page title=case.title.clone() over up>
            <FromPack kind="case" id=case.frame.as_str() />
            <div class="patient-card" data-test="patient">
                <p class="patient-age">{format!("A patient of {} years.", case.age)}</p>
                <p>{case.reason.clone()}</p>
                <blockquote class="patient-words"><q>{case.words.clone()}</q></blockquote>
                {case.tooth.map(|fdi| view! { <ToothPlace fdi /> })}
                {booked
                    .map(|booked| {
                        view! {
                            <p class="patient-booked">"Booked for: " <strong>{booked.name.as_str()}</strong></p>
                        }
                    })}
            </div>
            <WithCard />
            <p class="case-how">
                "You assist from the chart to the date of the next visit, one decision at a time. You answer first and read why afterwards. You can leave at any point and go on later."
            </p>
            <div class="case-go">
                <button
                    type="button"
                    class="button"
                    data-test="case-start"
                    on:click=move |_| play.start()
                >
                    "Read the chart"
                </button>
            </div>
        </Page>
    }
}
