//! An assignment that a link or a typed code brought: what it asks, and the
//! seat at which it is taken up.

use super::{
    bank, clinic_with, reported,
    run::{minutes, take_up},
    words,
};
use crate::{
    browser::address::Address,
    cards,
    log::log,
    packs::PackNeeded,
    parts::{
        announce::announcer,
        notice::{Notice, Tone},
        page::Page,
    },
    place::{ClassPlace, Place},
    questions::ReadyFor,
    taught::catalogue,
};
use class::{
    assignment::{Assignment, Seat},
    refusal::Refusal,
};
use leptos::prelude::*;
use record::folds;

/// The screen.
#[component]
pub fn SetScreen(
    /// The code.
    code: String,
) -> impl IntoView {
    let up = Place::Class(ClassPlace::Assignments).fragment();
    match Assignment::read_any(&code, &bank()) {
        Ok(assignment) => {
            let title = assignment.name();
            let awaits = reported::awaits_questions(&assignment);
            let body = move || {
                // Within a school's system, what it kept is gone on with at once.
                if let Ok(clinic) = clinic_with(assignment.card.as_deref())
                    && reported::resume(log(), &assignment, &clinic)
                {
                    let address: Address = expect_context();
                    address.go(Place::Class(ClassPlace::Assignment(words::id(&assignment))));
                }
                view! {
                    <Asks assignment=assignment.clone() />
                    <TakeUp assignment=assignment.clone() />
                }
            };
            view! {
                <Page title over="Assignments" up>
                    <ReadyFor needs=awaits show=body />
                </Page>
            }
            .into_any()
        }
        Err(refusal) => view! {
            <Page title="This assignment cannot be opened" over="Assignments" up>
                <Notice tone=Tone::Attention>
                    <p data-test="refused">{refusal.to_string()}</p>
                </Notice>
                {(refusal == Refusal::OtherBank).then(|| view! { <PackNeeded code missing=words::FROM_INSTRUCTOR /> })}
            </Page>
        }
        .into_any(),
    }
}

/// What an assignment asks.
#[component]
pub fn Asks(
    /// The assignment.
    assignment: Assignment,
) -> impl IntoView {
    let due = assignment.due.map(|day| {
        view! { <dt>"Last day to hand in"</dt> <dd data-test="due">{words::due(day)}</dd> }
    });
    let tries = match assignment.tries {
        0 => "As many tries as you like; the first shows what was there before".into(),
        1 => "One try".to_string(),
        many => format!("{many} tries"),
    };
    let card = assignment.card.as_ref().map(|text| {
        let name = cards::read(text, catalogue())
            .map_or_else(|_| "one that cannot be read here".into(), |card| card.name);
        view! { <dt>"With the preference card"</dt> <dd>{name}</dd> }
    });
    let drawn = if assignment.alike {
        "The same for every seat"
    } else {
        "Each seat has its own"
    };
    let hints = hints_in(&assignment);
    let time = assignment.clone();
    let tasks: Vec<_> = words::tasks(&assignment.tasks)
        .into_iter()
        .map(|says| view! { <li>{says}</li> })
        .collect();
    view! {
        <section class="as-asks" data-test="asks">
            <h2 class="stage-label">"What is to be done"</h2>
            <ul>{tasks}</ul>
            <dl class="facts">
                {due} <dt>"To pass"</dt> <dd>{assignment.pass_mark} " per cent right"</dd>
                <dt>"Tries"</dt> <dd>{tries}</dd> {card} <dt>"Drawn"</dt> <dd>{drawn}</dd>
                <dt>"Hints"</dt> <dd data-test="hints">{hints}</dd> <dt>"Time"</dt> <dd data-test="time-expected"><Time assignment=time /></dd>
            </dl>
        </section>
    }
}

/// Whether there are hints, in words.
fn hints_in(assignment: &Assignment) -> &'static str {
    let with = |it: bool| {
        let mut tasks = assignment.tasks.iter();
        tasks.any(|set| set.task.has_hints() == it)
    };
    match (assignment.hints, with(true), with(false)) {
        (_, false, _) => "These tasks have none",
        (false, ..) => "Not allowed",
        (true, true, false) => "Allowed, and told in the hand-in",
        (true, true, true) => "Allowed with questions and mixes, and told in the hand-in",
    }
}

/// The time that is expected, once it can be told.
#[component]
fn Time(assignment: Assignment) -> impl IntoView {
    let needs = assignment.needs_questions();
    let assignment = StoredValue::new_local(assignment);
    let told = move || {
        let minutes = assignment.with_value(minutes);
        minutes.map_or_else(
            || "Not known".to_owned(),
            |minutes| format!("An unhurried student needs {}", words::expected(minutes)),
        )
    };
    view! { <ReadyFor needs show=told /> }
}

/// The seat, and the way on.
#[component]
fn TakeUp(assignment: Assignment) -> impl IntoView {
    let (log, announcer) = (log(), announcer());
    let address: Address = expect_context();
    let id = words::id(&assignment);
    let place = Place::Class(ClassPlace::Assignment(id.clone()));
    let known = log.look(|events| {
        folds::assignments(events)
            .into_iter()
            .find(|it| it.taken.assignment == id)
    });
    let attempt = known.as_ref().map_or(1, |it| it.taken.attempt);
    let typed = RwSignal::new(
        known
            .as_ref()
            .map_or_else(String::new, |it| it.taken.seat.to_string()),
    );
    let wrong = RwSignal::new(false);
    let go = {
        let place = place.clone();
        move |event: web_sys::SubmitEvent| {
            event.prevent_default();
            let seat = typed.with_untracked(|typed| typed.trim().parse::<u16>().ok());
            if let Some(seat) = seat.filter(|seat| *seat > 0) {
                take_up(log, &assignment, Seat(seat), attempt);
                address.go(place.clone());
            } else {
                wrong.set(true);
                announcer.say("Type the number of your seat, from 1.");
            }
        }
    };
    let under_way = known.map(|it| {
        view! {
            <Notice tone=Tone::Plain>
                <p>
                    "You have taken this up at seat " {it.taken.seat} ". "
                    <a href=place.fragment() data-test="go-on-assignment">"Go on with it"</a>
                    ". Taking it up at another seat begins it afresh."
                </p>
            </Notice>
        }
    });
    view! {
        <section class="as-take-up">
            <h2 class="stage-label">"Your seat"</h2>
            {under_way}
            <form on:submit=go>
                <label class="field as-number">
                    <span>"Number of your seat"</span>
                    <input
                        type="text"
                        inputmode="numeric"
                        autocomplete="off"
                        data-test="seat"
                        aria-describedby="as-seat-hint"
                        prop:value=move || typed.get()
                        on:input=move |event| typed.set(event_target_value(&event))
                    />
                </label>
                <p class="hint" id="as-seat-hint">
                    "Your instructor has told you the number. No name is asked for, and none is sent."
                </p>
                {move || {
                    wrong
                        .get()
                        .then(|| {
                            view! {
                                <Notice tone=Tone::Attention>
                                    <p data-test="seat-wrong">"Type the number of your seat, from 1 to 65535."</p>
                                </Notice>
                            }
                        })
                }}
                <div class="actions">
                    <button type="submit" class="button" data-test="take-up">"Take it up"</button>
                </div>
            </form>
        </section>
    }
}
