//! A task that is done within its assignment: a mix, a number, a question. Cases,
//! trays and forms have places of their own.

mod question;

use super::{bank, clinic_with};
use crate::{
    bench::{MixTask, NumberTask},
    log::log,
    parts::{
        notice::{Notice, Tone},
        page::Page,
    },
    place::{ClassPlace, Place},
    questions::Ready,
    shell::NotHere,
};
use class::{
    assignment::{Assignment, Seat, Slot},
    mixes, numbers,
    task::Task,
};
use leptos::prelude::*;
use question::QuestionTask;
use record::{SittingId, folds};

/// The screen.
#[component]
pub fn TaskScreen(
    /// The id of the assignment.
    id: String,
    /// The place of the task in it, from 0.
    place: u16,
) -> impl IntoView {
    let sought = id.clone();
    let found = log().look(|events| {
        let mut all = folds::assignments(events).into_iter();
        let assigned = all.find(|it| it.taken.assignment == sought)?;
        let sitting = assigned.tasks.get(&place)?.sitting;
        Some((assigned.taken, sitting))
    });
    let Some((taken, sitting)) = found else {
        return view! { <NotHere what="task" /> }.into_any();
    };
    let over = taken.title.clone();
    let up = Place::Class(ClassPlace::Assignment(id)).fragment();
    let known =
        Assignment::read(&taken.code, bank().version).map_err(|refusal| refusal.to_string());
    let played = known.and_then(|assignment| {
        let slots = assignment.slots();
        let slot = slots.into_iter().find(|slot| slot.place == place);
        let slot = slot.ok_or("This assignment has no such task.")?;
        let title = format!("{}. {}", place + 1, super::task(&slot.task));
        play(&assignment, &slot, Seat(taken.seat), sitting).map(|body| (title, body))
    });
    match played {
        Ok((title, body)) => view! { <Page title over up>{body}</Page> }.into_any(),
        Err(why) => view! {
            <Page title="This task cannot be done here" over up>
                <Notice tone=Tone::Attention>
                    <p data-test="refused">{why}</p>
                </Notice>
            </Page>
        }
        .into_any(),
    }
}

fn play(
    assignment: &Assignment,
    slot: &Slot,
    seat: Seat,
    sitting: SittingId,
) -> Result<AnyView, String> {
    const NOT_TAUGHT: &str = "This task asks for what is not taught here. Tell whoever set it.";
    let clinic = clinic_with(assignment.card.as_deref())?;
    let (draw, hints) = (assignment.draw(seat, slot), assignment.hints);
    match &*slot.task {
        Task::Mix { material, usage } => {
            let drawn = mixes::drawn(&clinic, material, usage.as_deref(), draw.seed);
            let drawn = drawn.ok_or(NOT_TAUGHT)?;
            Ok(view! { <MixTask drawn sitting hints /> }.into_any())
        }
        Task::Number(family) => {
            let drawn = numbers::drawn(&clinic, family, draw).ok_or(NOT_TAUGHT)?;
            Ok(view! { <NumberTask drawn sitting /> }.into_any())
        }
        Task::Question(family) => {
            let family = family.clone();
            Ok(view! {
                <Ready show=move |questions| {
                    view! { <QuestionTask questions family=family.clone() draw sitting hints /> }
                } />
            }
            .into_any())
        }
        Task::Case(_) | Task::Reading | Task::Form { .. } => {
            Err("This task has a place of its own. Open it from the assignment.".into())
        }
    }
}
