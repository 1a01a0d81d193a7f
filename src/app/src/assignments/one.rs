//! One assignment: its tasks, how far it is, and handing it in.

use super::{
    Outward, bank, clinic_with, reported,
    run::{go_on, hand_in, take_up},
    set::Asks,
    words,
};
use crate::{
    browser::{address::Address, clock, scroll},
    log::log,
    packs::PackNeeded,
    parts::{
        announce::announcer,
        icon::{Icon, icon},
        notice::{Notice, Tone},
        page::Page,
    },
    place::{ClassPlace, HAND_IN, Place},
    questions::ReadyFor,
    shell::NotHere,
};
use class::{
    assignment::{Assignment, Seat, Slot},
    handin::{HandIn, SELF_REPORTED},
    refusal::Refusal,
};
use leptos::prelude::*;
use record::{
    Event, HandedIn, SittingId, Verdict, What,
    folds::{self, Assigned},
};

/// The screen.
#[component]
pub fn AssignmentScreen(
    /// Its id.
    id: String,
) -> impl IntoView {
    let log = log();
    let sought = id.clone();
    let assigned = log.memo(move |events| {
        let all = folds::assignments(events).into_iter();
        all.into_iter().find(|it| it.taken.assignment == sought)
    });
    let Some(now) = assigned.get_untracked() else {
        return view! { <NotHere what="assignment" /> }.into_any();
    };
    let up = Place::Class(ClassPlace::Assignments).fragment();
    let title = now.taken.title.clone();
    match Assignment::read(&now.taken.code, bank().version) {
        Ok(assignment) => {
            let assigned = Signal::derive(move || assigned.get().unwrap_or_else(|| now.clone()));
            view! {
                <Page title over="Assignments" up>
                    <At assigned />
                    {
                        let body = {
                            let assignment = assignment.clone();
                            move || {
                                if let Ok(clinic) = clinic_with(assignment.card.as_deref()) {
                                    reported::tell(log, id.clone(), assignment.clone(), clinic);
                                }
                                view! {
                                    <Tasks assignment=assignment.clone() assigned />
                                    <HandOver assignment=assignment.clone() assigned />
                                }
                            }
                        };
                        view! { <ReadyFor needs=assignment.needs_questions() show=body /> }
                    }
                    <Asks assignment />
                </Page>
            }
            .into_any()
        }
        Err(refusal) => view! {
            <Page title over="Assignments" up>
                <Notice tone=Tone::Attention>
                    <p data-test="refused">{refusal.to_string()}</p>
                </Notice>
                {(refusal == Refusal::OtherBank).then(|| view! { <PackNeeded code=now.taken.code missing=words::FROM_INSTRUCTOR /> })}
            </Page>
        }
        .into_any(),
    }
}

/// The seat and the try.
#[component]
fn At(assigned: Signal<Assigned>) -> impl IntoView {
    let says = move || {
        assigned.with(|it| {
            let seat = match it.taken.seat {
                0 => "Seat 0, to look at what was set".to_owned(),
                seat => format!("Seat {seat}"),
            };
            let attempt = match it.taken.attempt {
                1 => String::new(),
                more => format!(", try {more}"),
            };
            format!("{seat}{attempt}. {} of {} done.", it.done(), it.taken.tasks)
        })
    };
    view! { <p class="lead" data-test="assignment-state">{says}</p> }
}

/// What is to be done, one after another.
#[component]
fn Tasks(assignment: Assignment, assigned: Signal<Assigned>) -> impl IntoView {
    let (log, announcer) = (log(), announcer());
    let address: Address = expect_context();
    let slots = assignment.slots();
    let assignment = StoredValue::new_local(assignment);
    let fault = RwSignal::new(None::<String>);
    let row = move |slot: Slot| {
        let words = super::task(&slot.task);
        let place = slot.place;
        let begun = move || assigned.with(|it| it.tasks.get(&place).copied());
        let note = move || match begun() {
            None => "Not begun".to_owned(),
            Some(task) if task.finished => {
                let marks = log.look(|events| marks(events, task.sitting));
                marks.map_or_else(
                    || "Done".to_owned(),
                    |per_cent| format!("Done, {per_cent} per cent"),
                )
            }
            Some(_) => "Under way".into(),
        };
        let slot = StoredValue::new_local(slot);
        let open = move |_| {
            let went = assigned.with_untracked(|it| {
                assignment.with_value(|set| slot.with_value(|slot| go_on(log, it, set, slot)))
            });
            match went {
                Ok(place) => address.go(place),
                Err(why) => {
                    announcer.say(why.clone());
                    fault.set(Some(why));
                }
            }
        };
        view! {
            <li>
                <button type="button" class="row as-task" data-test=format!("task-{place}") on:click=open>
                    <span class="row-name">{place + 1} ". " {words}</span>
                    <span class="row-note">{note}</span>
                    {icon(Icon::Onwards)}
                </button>
            </li>
        }
    };
    view! {
        <section class="group">
            <h2 class="stage-label">"Tasks"</h2>
            <ul class="rows">{slots.into_iter().map(row).collect_view()}</ul>
            {move || fault.get().map(|why| view! { <Notice tone=Tone::Attention><p>{why}</p></Notice> })}
        </section>
    }
}

/// What a task that is done came to, of whatever kind, out of 100.
fn marks(events: &[Event], sitting: SittingId) -> Option<u8> {
    let one = events.iter().find_map(|event| match &event.what {
        What::CaseFinished(it) if it.sitting == sitting => Some(it.per_cent),
        What::MixHandedOver(it) if it.sitting == sitting => Some(it.per_cent),
        _ => None,
    });
    if let Some(marks) = one {
        return Some(marks.get());
    }
    if let Some(form) = folds::form(events, sitting) {
        let right = form.answers.values();
        let right = right.filter(|it| it.verdict == Verdict::Right).count();
        let share = (100 * right).checked_div(form.begun.questions.len())?;
        return u8::try_from(share).ok();
    }
    let mut answers = events.iter().filter_map(|event| match &event.what {
        What::QuestionAnswered(it) if it.sitting == sitting => Some(it.per_cent.get()),
        _ => None,
    });
    answers.next()
}

/// Handing in, and what comes after it.
#[component]
fn HandOver(assignment: Assignment, assigned: Signal<Assigned>) -> impl IntoView {
    let (log, announcer) = (log(), announcer());
    let tries = assignment.tries;
    let assignment = StoredValue::new_local(assignment);
    let fault = RwSignal::new(None::<String>);
    let card = assignment.with_value(|set| set.card.clone());
    let clinic = StoredValue::new_local(clinic_with(card.as_deref()));
    let give = move |_| {
        let it = assigned.get_untracked();
        let made = clinic.with_value(|clinic| {
            let clinic = clinic.as_ref().map_err(Clone::clone)?;
            let made = |set: &Assignment| log.look(|events| hand_in(events, &it, set, clinic));
            Ok::<HandIn, String>(assignment.with_value(made))
        });
        match made {
            Ok(made) => {
                log.append(What::HandedIn(HandedIn {
                    run: it.taken.run,
                    code: made.letters(),
                }));
                announcer
                    .say("The code of your hand-in is made. It has to reach your instructor now.");
                scroll::to("#as-code".into());
            }
            Err(why) => {
                announcer.say(why.clone());
                fault.set(Some(why));
            }
        }
    };
    let again = move |_| {
        let it = assigned.get_untracked();
        let next = it.taken.attempt.saturating_add(1);
        assignment.with_value(|set| take_up(log, set, Seat(it.taken.seat), next));
        announcer.say("Another try begins.");
    };
    let code = Memo::new(move |_| assigned.with(|it| it.handed_in.clone()));
    let open = Memo::new(move |_| {
        assigned.with(|it| usize::from(it.taken.tasks).saturating_sub(it.done()))
    });
    let begun = Memo::new(move |_| assigned.with(|it| it.done() > 0));
    let button = move || {
        let again = code.with(Option::is_some);
        let (label, quiet) = match (open.get(), again) {
            (0, false) => ("Hand in", false),
            (_, true) => ("Make the code again", true),
            _ => ("Hand in as it is", true),
        };
        let class = if quiet {
            "button button-quiet"
        } else {
            "button"
        };
        let left = match open.get() {
            0 => None,
            1 => Some("One task is still open. What is open counts as wrong.".to_owned()),
            many => Some(format!(
                "{many} tasks are still open. What is open counts as wrong."
            )),
        };
        begun.get().then(|| {
            view! {
                {left.map(|says| view! { <p class="hint">{says}</p> })}
                <div class="actions">
                    <button type="button" class=class data-test="hand-in" on:click=give>{label}</button>
                </div>
            }
        })
    };
    let may_try = move || {
        let attempt = assigned.with(|it| it.taken.attempt);
        (code.with(Option::is_some) && (tries == 0 || attempt < tries)).then(|| {
            view! {
                <div class="actions">
                    <button type="button" class="button button-quiet" data-test="another-try" on:click=again>
                        "Another try"
                    </button>
                </div>
            }
        })
    };
    let made = move || {
        code.get().map(|(at, letters)| {
            let seat = assigned.with_untracked(|it| it.taken.seat);
            let day = clock::day(at);
            // It was written by this page; where it cannot be read, the letters are all there is.
            let bytes = HandIn::read(&letters).map_or_else(|_| Vec::new(), |it| it.bytes());
            view! {
                <div id="as-code" class="as-code" data-test="handed-in">
                    <p>
                        "The code of your hand-in was made on " {day}
                        ". It has to reach your instructor: send the link, show the symbol to their camera, or send the file. Nothing is sent by itself."
                    </p>
                    <Outward
                        prefix=HAND_IN
                        letters
                        bytes
                        title=format!("Hand-in of seat {seat}")
                        file=format!("hand-in-seat-{seat}.txt")
                    />
                    <p class="hint">{SELF_REPORTED}</p>
                </div>
            }
        })
    };
    let nothing = move || {
        (!begun.get())
            .then(|| view! { <p class="hint">"It can be handed in once a task is done."</p> })
    };
    view! {
        <section class="group">
            <h2 class="stage-label">"Handing in"</h2>
            {nothing} {button}
            {move || fault.get().map(|why| view! { <Notice tone=Tone::Attention><p>{why}</p></Notice> })}
            {made} {may_try}
        </section>
    }
}
