//! Putting one more task in.
//!
//! - `picked`: what was chosen of each kind, kept while another kind is looked at
//! - `fields`: the choices of a case, a mix, a number and a form
//! - `families`: the families of questions, to be searched

mod families;
mod fields;
mod picked;

use super::{draft::Draft, kind::Kind};
use crate::{
    assignments::{self, clinic_with},
    parts::{
        announce::announcer,
        choice::{Choice, Choosable},
        notice::Fault,
    },
};
use class::{
    assignment::{MOST_TIMES, Set as TaskSet},
    cases,
    task::Task,
};
use clinic::Clinic;
use leptos::prelude::*;
use picked::Picked;

/// How many seeds are tried before it is said that no patient fits.
const TRIED: u64 = 4;

/// Putting one more in.
#[component]
pub fn Add(
    /// What is being chosen.
    draft: Draft,
) -> impl IntoView {
    let announcer = announcer();
    let kind = RwSignal::new(Kind::Case);
    let picked = Picked::new();
    let times = RwSignal::new(1_u8);
    let fault = RwSignal::new(None::<String>);
    let say = move |sentence: String| {
        announcer.say(sentence.clone());
        fault.set(Some(sentence));
    };
    let standard = StoredValue::new_local(clinic_with(None));
    let add = move |_| {
        let task = match picked.task(kind.get_untracked()) {
            Ok(task) => task,
            Err(why) => return say(why),
        };
        let fits = standard.with_value(|clinic| match clinic {
            Ok(clinic) => fits(clinic, &task),
            Err(_) => Ok(()),
        });
        if let Err(why) = fits {
            return say(why);
        }
        let name = assignments::task(&task);
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
    let chosen = move || {
        match kind.get() {
        Kind::Case => view! { <fields::CaseFields picked /> }.into_any(),
        Kind::Reading => {
            view! { <p class="hint">"A tray laid for something: what it is for, what does not belong, and why."</p> }.into_any()
        }
        Kind::Mix => view! { <fields::MixFields picked /> }.into_any(),
        Kind::Number => view! { <fields::NumberFields picked /> }.into_any(),
        Kind::Question => view! { <families::Families picked /> }.into_any(),
        Kind::Form => view! { <fields::FormFields picked /> }.into_any(),
    }
    };
    let turn_to = move |value: String| {
        kind.set(Kind::of(&value));
        fault.set(None);
    };
    let kinds = Kind::ALL.map(|kind| Choosable::new(kind.value(), kind.label()));
    view! {
        <div class="dk-add">
            <h3>"Put a task in"</h3>
            <Choice
                legend="Kind"
                options=kinds.into()
                chosen=Signal::derive(move || kind.get().value().to_owned())
                choose=turn_to
                test="assign-kind"
            />
            {chosen}
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

/// Whether a task can be drawn for a seat; a sentence where it cannot.
fn fits(clinic: &Clinic, task: &Task) -> Result<(), String> {
    match task {
        Task::Case(order) => (1..=TRIED)
            .any(|seed| cases::case(clinic, order, seed).is_some())
            .then_some(())
            .ok_or_else(|| "No patient fits all of that. Leave one of them open.".into()),
        Task::Form {
            blueprint,
            questions,
        } => assignments::form_drawn(blueprint, *questions, 1).map(drop),
        _ => Ok(()),
    }
}
