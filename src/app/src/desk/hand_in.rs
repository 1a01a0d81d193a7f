//! A hand-in that came by link: it is read where its assignment was set.

use super::{
    grading::{self, Going, Progress},
    kept,
};
use crate::{
    assignments::{clinic_with, id, id_of},
    parts::{
        notice::{Notice, Tone},
        page::Page,
    },
    place::{ClassPlace, Place},
};
use class::{
    assignment::Assignment,
    handin::{HandIn, Outcome},
    refusal::Refusal,
};
use clinic::Clinic;
use leptos::{prelude::*, task::spawn_local};

/// The screen.
#[component]
pub fn HandInScreen(
    /// Its letters.
    code: String,
) -> impl IntoView {
    let said = RwSignal::new(None::<(String, Option<String>)>);
    let going = Going::new();
    match sought(&code) {
        Ok((assignment, clinic)) => spawn_local(async move {
            let outcome = take(&assignment, clinic, code, going).await;
            said.try_set(Some(outcome));
        }),
        Err(why) => said.set(Some((why, None))),
    }
    let shown = move || {
        said.get().map(|(says, id)| {
            let on = id.map(|id| {
                let to = Place::Class(ClassPlace::Collect(id));
                view! {
                    <div class="actions">
                        <a class="button" href=to.fragment() data-test="to-collect">"All hand-ins"</a>
                    </div>
                }
            });
            view! {
                <Notice tone=Tone::Plain>
                    <p data-test="hand-in-said">{says}</p>
                </Notice>
                {on}
            }
        })
    };
    let up = Place::Class(ClassPlace::Desk).fragment();
    view! {
        <Page title="A hand-in" over="Class" up>
            <Progress going doing="Reading hand-ins" />
            {shown}
        </Page>
    }
}

/// The assignment of this device that a hand-in belongs to, and what grades it.
fn sought(code: &str) -> Result<(Assignment, Clinic), String> {
    let assignment = set_here(code)?;
    let clinic = clinic_with(assignment.card.as_deref())?;
    grading::prepare(&assignment);
    Ok((assignment, clinic))
}

fn set_here(code: &str) -> Result<Assignment, String> {
    match HandIn::read(code) {
        Ok(hand_in) => match kept::set(&id_of(hand_in.assignment)) {
            Some(set) => set.assignment.map_err(|fault| fault.to_string()),
            None => Err("This is handed in to an assignment that was not set on this device. If you are the student: send this link to your instructor.".to_owned()),
        },
        // A part says nothing of what it is a part of: the latest is tried.
        Err(Refusal::Foreign) => {
            let sets = kept::sets().map_err(|fault| fault.to_string())?;
            let mut known = sets.into_iter().filter_map(|set| set.assignment.ok());
            known.next().ok_or_else(|| Refusal::Foreign.to_string())
        }
        Err(refusal) => Err(refusal.to_string()),
    }
}

async fn take(
    assignment: &Assignment,
    clinic: Clinic,
    code: String,
    going: Going,
) -> (String, Option<String>) {
    let id = id(assignment);
    let before = match kept::hand_ins(&id) {
        Ok(lines) => lines,
        Err(fault) => return (fault.to_string(), Some(id)),
    };
    match grading::read(assignment, clinic, before, vec![code], going).await {
        Some(collected) => {
            let outcome = collected
                .new
                .first()
                .map_or(Outcome::Nothing, |(_, it)| it.outcome);
            match kept::keep_hand_ins(&id, &collected.keep) {
                Ok(()) => (outcome.to_string(), Some(id)),
                Err(fault) => (fault.to_string(), Some(id)),
            }
        }
        None => ("Stopped. Nothing was changed.".into(), Some(id)),
    }
}
