//! The rules of an assignment: day, pass mark, tries, card, and how it is drawn.

use super::draft::Draft;
use crate::{
    cards,
    parts::choice::{Choice, Choosable},
    taught::catalogue,
};
use class::assignment::{Day, MOST_CARD};
use leptos::prelude::*;

/// The rules.
#[component]
pub fn Rules(
    /// What is being chosen.
    draft: Draft,
) -> impl IntoView {
    let title = draft.memo(|it| it.title.to_string());
    let due = draft.memo(|it| it.due.map_or_else(String::new, |day| day.to_string()));
    let mark = draft.memo(|it| it.pass_mark.to_string());
    let tries = draft.memo(|it| it.tries.to_string());
    let alike = draft.memo(|it| it.alike);
    let number = |typed: String, most: u8| typed.trim().parse::<u8>().map_or(0, |it| it.min(most));
    view! {
        <section class="dk-rules">
            <h2>"How"</h2>
            <div class="dk-fields">
                <label class="field">
                    <span>"Its number, which the class knows it by"</span>
                    <input
                        type="number"
                        min="0"
                        max="255"
                        data-test="assign-title"
                        prop:value=move || title.get()
                        on:change=move |event| {
                            let typed = number(event_target_value(&event), u8::MAX);
                            draft.change(|draft| draft.title = typed);
                        }
                    />
                </label>
                <label class="field">
                    <span>"Last day to hand in"</span>
                    <input
                        type="date"
                        data-test="assign-due"
                        prop:value=move || due.get()
                        on:change=move |event| {
                            let day = day(&event_target_value(&event));
                            draft.change(|draft| draft.due = day);
                        }
                    />
                </label>
                <label class="field">
                    <span>"To pass, per cent right"</span>
                    <input
                        type="number"
                        min="0"
                        max="100"
                        data-test="assign-mark"
                        prop:value=move || mark.get()
                        on:change=move |event| {
                            let typed = number(event_target_value(&event), 100);
                            draft.change(|draft| draft.pass_mark = typed);
                        }
                    />
                </label>
                <label class="field">
                    <span>"Tries, 0 for as many as they like"</span>
                    <input
                        type="number"
                        min="0"
                        max="20"
                        data-test="assign-tries"
                        prop:value=move || tries.get()
                        on:change=move |event| {
                            let typed = number(event_target_value(&event), 20);
                            draft.change(|draft| draft.tries = typed);
                        }
                    />
                </label>
            </div>
            <Choice
                legend="Drawn"
                options=vec![
                    Choosable::new("own", "Each seat its own"),
                    Choosable::new("alike", "The same for all"),
                ]
                chosen=Signal::derive(move || if alike.get() { "alike" } else { "own" }.to_owned())
                choose=move |value: String| draft.change(|draft| draft.alike = value == "alike")
                test="assign-drawn"
            />
            <p class="hint">
                "Patients, questions and figures of one's own keep neighbours from copying. The same for all lets items and options be compared."
            </p>
            <Hints draft />
            <Card draft />
        </section>
    }
}

/// Whether hints may be looked at, and which of the tasks have any.
#[component]
fn Hints(draft: Draft) -> impl IntoView {
    let allowed = draft.memo(|it| it.hints);
    let has = draft.memo(|it| {
        let own = |wanted: bool| it.tasks.iter().any(|set| set.task.has_hints() == wanted);
        (own(true), own(false))
    });
    let says = move || match (allowed.get(), has.get()) {
        (_, (false, true)) => {
            "Cases, trays, numbers and forms have no hints, and nothing else is in."
        }
        (true, (true, true)) => {
            "Questions have a hint each, and a mix shows how it is mixed. Cases, trays, numbers and forms have none. A hint that was looked at is told in the hand-in."
        }
        (true, _) => {
            "Questions have a hint each, and a mix shows how it is mixed. A hint that was looked at is told in the hand-in."
        }
        (false, _) => {
            "Questions are asked without their hints, and a mix is made without looking up how."
        }
    };
    view! {
        <label class="dk-check">
            <input
                type="checkbox"
                data-test="assign-hints"
                prop:checked=move || allowed.get()
                on:change=move |event| {
                    let allowed = event_target_checked(&event);
                    draft.change(|draft| draft.hints = allowed);
                }
            />
            <span>"Hints may be looked at"</span>
        </label>
        <p class="hint" data-test="hints-say">{says}</p>
    }
}

/// The preference card that cases are played with.
#[component]
fn Card(draft: Draft) -> impl IntoView {
    let own = cards::all_own();
    let known: Vec<(String, String)> = own
        .into_iter()
        .chain(catalogue().cards.iter().cloned())
        .map(|card| (card.name.clone(), cards::write(&card)))
        .filter(|(_, text)| text.len() <= MOST_CARD)
        .collect();
    let chosen = draft.get().card;
    let options: Vec<_> = known
        .iter()
        .enumerate()
        .map(|(at, (name, text))| {
            let selected = chosen.as_ref() == Some(text);
            view! { <option value=at.to_string() selected=selected>{name.clone()}</option> }
        })
        .collect();
    let known = StoredValue::new(known);
    let choose = move |event: web_sys::Event| {
        let at = event_target_value(&event).parse::<usize>().ok();
        let text = at.and_then(|at| known.with_value(|all| Some(all.get(at)?.1.clone())));
        draft.change(|draft| draft.card = text);
    };
    view! {
        <label class="field">
            <span>"Preference card"</span>
            <select data-test="assign-card" on:change=choose>
                <option value="">"None: the standard set-ups hold"</option>
                {options}
            </select>
        </label>
    }
}

/// A day as a date field writes it: `2026-11-25`. None where it is empty or out
/// of reach.
fn day(text: &str) -> Option<Day> {
    // Few enough to look through, and no second calendar has to be written.
    let mut days = (1..=u16::MAX).map(Day);
    days.find(|day| day.to_string() == text)
}
