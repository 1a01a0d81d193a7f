//! The other ways of an assignment: as a student, on paper, into a calendar.

use super::{before_letters, other_systems::OtherSystems};
use crate::{
    assignments::take_up,
    browser::{address::Address, clock, files, printer},
    log::log,
    parts::announce::announcer,
    place::{ClassPlace, Place},
};
use class::{
    assignment::{Assignment, Seat},
    exchange::calendar::calendar,
};
use leptos::prelude::*;

/// The other ways: as a student, paper, calendar, other systems.
#[component]
pub fn Further(
    /// What was set.
    assignment: Assignment,
    /// Its id.
    id: String,
) -> impl IntoView {
    let (log, announcer) = (log(), announcer());
    let address: Address = expect_context();
    let said = RwSignal::new(None::<String>);
    let say = move |sentence: String| {
        announcer.say(sentence.clone());
        said.set(Some(sentence));
    };
    let assignment = StoredValue::new_local(assignment);
    let preview = move |_| {
        assignment.with_value(|set| take_up(log, set, Seat(0), 1));
        address.go(Place::Class(ClassPlace::Assignment(id.clone())));
    };
    let due = assignment.with_value(|set| set.due.is_some());
    let to_calendar = move |_| {
        let made = u64::try_from(clock::now().utc_ms / 1000).unwrap_or(0);
        let text = assignment.with_value(|set| {
            let link = set.link(&before_letters());
            calendar(set, &link, made)
        });
        let kept = text.map(|text| {
            files::download_bytes(
                "assignment.ics",
                "text/calendar;charset=utf-8",
                text.as_bytes(),
            )
        });
        if let Some(Err(why)) = kept {
            say(why);
        }
    };
    view! {
        <div class="actions">
            <button type="button" class="button button-quiet" data-test="preview" on:click=preview>
                "Look at it as a student"
            </button>
            <button type="button" class="button button-quiet" data-test="print-sheet" on:click=move |_| printer::print()>
                "Print the sheet"
            </button>
            {due
                .then(|| {
                    view! {
                        <button type="button" class="button button-quiet" data-test="calendar" on:click=to_calendar>
                            "Calendar file"
                        </button>
                    }
                })}
        </div>
        <OtherSystems assignment said />
        {move || said.get().map(|says| view! { <p class="hint" data-test="issued-said">{says}</p> })}
    }
}
