//! The tasks: what is in, and putting one more in.

use super::{draft::Draft, kind::Kind};
use crate::{
    assignments::clinic_with,
    parts::{
        announce::announcer,
        choice::{Choice, Choosable},
        notice::Fault,
        wanted::{booked, choose, flags, level_of, levels},
    },
    taught::catalogue,
};
use class::{
    assignment::{MOST_TIMES, Set as TaskSet},
    cases,
    task::{Order, Task},
};
use leptos::prelude::*;

/// How many seeds are tried before it is said that no patient fits.
const TRIED: u64 = 4;

/// The tasks.
#[component]
pub fn Tasks(
    /// What is being chosen.
    draft: Draft,
) -> impl IntoView {
    view! {
        <section class="dk-tasks">
            <h2>"What is to be done"</h2>
            <List draft />
            <Add draft />
        </section>
    }
}

/// What is in.
#[component]
fn List(draft: Draft) -> impl IntoView {
    let announcer = announcer();
    let words = draft.memo(|it| crate::assignments::tasks(&it.tasks));
    let take_out = move |at: usize, name: String| {
        draft.change(|draft| {
            draft.tasks.remove(at);
        });
        announcer.say(format!("Taken out: {name}."));
    };
    let row = move |(at, says): (usize, String)| {
        let (name, hook) = (says.clone(), format!("take-out-{at}"));
        let label = format!("Take out: {says}");
        view! {
            <li class="dk-task">
                <span>{says}</span>
                <button
                    type="button"
                    class="button button-quiet"
                    aria-label=label
                    data-test=hook
                    on:click=move |_| take_out(at, name.clone())
                >
                    "Take out"
                </button>
            </li>
        }
    };
    move || {
        let words = words.get();
        if words.is_empty() {
            view! { <p class="hint" data-test="no-tasks">"Nothing is in yet."</p> }.into_any()
        } else {
            let rows = words.into_iter().enumerate().map(row).collect_view();
            view! { <ol class="dk-task-list" data-test="tasks">{rows}</ol> }.into_any()
        }
    }
}

/// Putting one more in.
#[component]
fn Add(draft: Draft) -> impl IntoView {
    let announcer = announcer();
    let kind = RwSignal::new(Kind::Case);
    let order = RwSignal::new_local(Order::default());
    let times = RwSignal::new(1_u8);
    let fault = RwSignal::new(None::<String>);
    let say = move |sentence: String| {
        announcer.say(sentence.clone());
        fault.set(Some(sentence));
    };
    let standard = StoredValue::new_local(clinic_with(None));
    let add = move |_| {
        let task = order.with_untracked(|order| kind.get_untracked().task(order));
        let fits = match &task {
            Task::Case(order) => standard.with_value(|clinic| {
                let Ok(clinic) = clinic else { return true };
                (1..=TRIED).any(|seed| cases::case(clinic, order, seed).is_some())
            }),
            _ => true,
        };
        if !fits {
            return say("No patient fits all of that. Leave one of them open.".into());
        }
        let name = crate::assignments::task(&task);
        let set = TaskSet {
            task,
            times: times.get_untracked(),
        };
        if draft.put_in(set) {
            fault.set(None);
            announcer.say(format!("Put in: {name}."));
        } else {
            say("There is no room for more of these tasks.".into());
        }
    };
    let change = move |change: fn(&mut Order, Option<String>)| {
        move |value: String| {
            order.update(|order| change(order, Some(value).filter(|it| !it.is_empty())));
        }
    };
    let wanted = move || {
        (kind.get() == Kind::Case).then(|| {
            view! {
                <div class="dk-fields">
                    {choose("Case", "assign-frame", frames(), change(|o, v| o.frame = v))}
                    {choose("The patient has", "assign-with", flags(), change(|o, v| o.with = v))}
                    {choose("How hard", "assign-level", levels(), change(|o, v| {
                        o.level = v.as_deref().and_then(level_of);
                    }))}
                    {choose("Booked for", "assign-booked", booked(), change(|o, v| o.booked = v))}
                </div>
                <p class="hint">
                    "With a case chosen, what it is booked for follows from it. Left open, every seat draws its own kind of case."
                </p>
            }
        })
    };
    let kinds = Kind::ALL.map(|kind| Choosable::new(kind.value(), kind.label()));
    view! {
        <div class="dk-add">
            <h3>"Put a task in"</h3>
            <Choice
                legend="Kind"
                options=kinds.into()
                chosen=Signal::derive(move || kind.get().value().to_owned())
                choose=move |value: String| kind.set(Kind::of(&value))
                test="assign-kind"
            />
            {wanted}
            <label class="field as-number">
                <span>"How many of them"</span>
                <input
                    type="number"
                    min="1"
                    max=MOST_TIMES
                    data-test="assign-times"
                    prop:value=move || times.get().to_string()
                    on:input=move |event| {
                        let typed = event_target_value(&event).trim().parse::<u8>();
                        times.set(typed.map_or(1, |it| it.clamp(1, MOST_TIMES)));
                    }
                />
            </label>
            <Fault says=fault test="add-fault" />
            <div class="actions">
                <button type="button" class="button button-quiet" data-test="put-in" on:click=add>
                    "Put it in"
                </button>
            </div>
        </div>
    }
}

fn frames() -> Vec<(String, String)> {
    let frames = catalogue().cases.iter();
    frames
        .map(|it| (it.id.to_string(), it.title.clone()))
        .collect()
}
