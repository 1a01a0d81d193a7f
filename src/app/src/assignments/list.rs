//! The assignments of this device, and where a code is typed.

use super::{bank, code_of, words};
use crate::{
    browser::{address::Address, clock},
    log::log,
    parts::{
        announce::announcer,
        icon::{Icon, icon},
        notice::{Notice, Tone},
        page::Page,
    },
    place::{ClassPlace, Place},
};
use class::{assignment::Assignment, refusal::Refusal};
use leptos::prelude::*;
use record::{
    AssignmentTaken, Moment,
    folds::{self, Assigned},
};

/// The screen.
#[component]
pub fn AssignmentsScreen() -> impl IntoView {
    let all = log().memo(|events| {
        let mut all = folds::assignments(events);
        all.reverse();
        all
    });
    let rows = move || {
        let rows: Vec<_> = all.get().into_iter().map(row).collect();
        if rows.is_empty() {
            view! { <p>"None is taken up on this device yet. Open the link that your instructor gave you, or type the code."</p> }.into_any()
        } else {
            view! { <ul class="rows">{rows}</ul> }.into_any()
        }
    };
    view! {
        <Page title="Assignments" over="Today" up=Place::Today.fragment()>
            <section class="group" data-test="assignments">
                <h2 class="stage-label">"Taken up"</h2>
                {rows}
            </section>
            <Typed />
        </Page>
    }
}

fn row(it: Assigned) -> impl IntoView {
    let place = Place::Class(ClassPlace::Assignment(it.taken.assignment.clone()));
    let state = match &it.handed_in {
        Some((at, _)) => format!("Handed in on {}", clock::day(*at)),
        None => format!("{} of {} done", it.done(), it.taken.tasks),
    };
    let due = it.taken.due.map(|day| {
        let day = clock::day(Moment {
            utc_ms: i64::from(day) * 86_400_000,
            offset_min: 0,
        });
        format!(" · due {day}")
    });
    let about = about(&it.taken);
    view! {
        <li>
            <a class="row" href=place.fragment() data-test="assignment-row">
                <span class="row-name">{it.taken.title}</span>
                <span class="row-note">"Seat " {it.taken.seat} " · " {state} {due}</span>
                {about.map(|says| view! { <span class="row-note" data-test="about">{says}</span> })}
                {icon(Icon::Onwards)}
            </a>
        </li>
    }
}

/// What is to be done, and how long it takes.
fn about(taken: &AssignmentTaken) -> Option<String> {
    let time = taken.minutes.map(words::expected);
    let parts: Vec<String> = taken.about.iter().cloned().chain(time).collect();
    (!parts.is_empty()).then(|| parts.join(" · "))
}

/// A code that is typed or pasted.
#[component]
fn Typed() -> impl IntoView {
    let announcer = announcer();
    let address: Address = expect_context();
    let typed = RwSignal::new(String::new());
    let refused = RwSignal::new(None::<String>);
    let bank = StoredValue::new(bank());
    let open = move |event: web_sys::SubmitEvent| {
        event.prevent_default();
        let code = typed.get_untracked();
        match bank.with_value(|bank| Assignment::read_any(&code, bank)) {
            // What it needs is said where it is opened.
            Ok(_) | Err(Refusal::OtherBank) => {
                address.go(Place::Class(ClassPlace::Set(code_of(&code))));
            }
            Err(refusal) => {
                let sentence = refusal.to_string();
                announcer.say(sentence.clone());
                refused.set(Some(sentence));
            }
        }
    };
    view! {
        <section>
            <h2 class="stage-label">"Open another"</h2>
            <form on:submit=open>
                <label class="field">
                    <span>"Code or link"</span>
                    <input
                        type="text"
                        autocomplete="off"
                        autocapitalize="characters"
                        spellcheck="false"
                        data-test="typed-code"
                        on:input=move |event| {
                            refused.set(None);
                            typed.set(event_target_value(&event));
                        }
                    />
                </label>
                {move || {
                    refused
                        .get()
                        .map(|says| {
                            view! {
                                <Notice tone=Tone::Attention>
                                    <p data-test="code-refused">{says}</p>
                                </Notice>
                            }
                        })
                }}
                <div class="actions">
                    <button type="submit" class="button" data-test="open-code">"Open it"</button>
                </div>
            </form>
        </section>
    }
}
