//! What to study next after a case: where the weakest answers point.

use super::play::Play;
use crate::{
    place::{Place, View},
    taught::{catalogue, clinic},
};
use catalogue::ids::ProcedureId;
use clinic::{
    case::{Decision, Form, Part},
    standing::Standing,
};
use leptos::prelude::*;

/// The most places that are named.
const MOST: usize = 5;

/// A place to study, and why.
struct Next {
    name: String,
    note: String,
    place: Place,
}

/// Links to what the answers showed to be weak; to the procedure's lesson
/// where nothing was.
#[component]
pub fn StudyNext(
    /// The finished sitting.
    play: Play,
) -> impl IntoView {
    let mut weak: Vec<(Standing, usize)> = (0..play.case().decisions.len())
        .map(|at| (play.asked(at).grade(&play.answer(at)).standing, at))
        .filter(|(standing, _)| *standing > Standing::Right)
        .collect();
    weak.sort_by_key(|&(standing, at)| (std::cmp::Reverse(standing), at));
    let mut all: Vec<Next> = Vec::new();
    for (_, at) in weak {
        for next in about(play, at) {
            if !all.iter().any(|it| it.place == next.place) {
                all.push(next);
            }
        }
    }
    all.truncate(MOST);
    if all.is_empty() {
        all.extend(lesson(&play.case().booked, "How and why of this visit"));
    }
    let row = |next: Next| {
        view! {
            <li>
                <a class="row" href=next.place.fragment()>
                    <span class="row-name">{next.name}</span>
                    <span class="row-note">{next.note}</span>
                </a>
            </li>
        }
    };
    view! {
        <section class="study" data-test="study-next">
            <h2 class="stage-label">"What to study next"</h2>
            <ul class="rows">{all.into_iter().map(row).collect_view()}</ul>
        </section>
    }
}

/// What a decision points at: the set-up, the lesson of the plan, or the
/// things that the best answer names.
fn about(play: Play, at: usize) -> Vec<Next> {
    let (case, asked) = (play.case(), play.asked(at));
    match (&asked.form, asked.part()) {
        (Form::Tray { .. }, _) => set_up(&case.booked, &asked.name).into_iter().collect(),
        (Form::Number(sum), _) => vec![Next {
            name: sum.tool.name().into(),
            note: format!("Bench · {}", asked.name),
            place: Place::Tool(sum.tool.id().into(), Vec::new()),
        }],
        (_, Part::Chart) => lesson(&case.booked, &asked.name).into_iter().collect(),
        _ => {
            let things = things(&asked);
            if things.is_empty() {
                let procedure = carried_out(play).unwrap_or_else(|| case.booked.clone());
                lesson(&procedure, &asked.name).into_iter().collect()
            } else {
                things
            }
        }
    }
}

/// The procedure of the plan that the dentist settled on.
fn carried_out(play: Play) -> Option<ProcedureId> {
    let case = play.case();
    let plan = catalogue().plan(case.plan.as_ref()?)?;
    let clinic = clinic();
    let settled = clinic.settled(&case.opened, plan);
    clinic
        .procedure_of(plan, &clinic.reason(&settled).patient)
        .cloned()
}

fn lesson(procedure: &ProcedureId, after: &str) -> Option<Next> {
    let found = catalogue().procedure(procedure)?;
    Some(Next {
        name: found.name.clone(),
        note: format!("Lesson · {after}"),
        place: Place::Procedure(found.id.clone(), View::Lesson, Vec::new()),
    })
}

fn set_up(procedure: &ProcedureId, after: &str) -> Option<Next> {
    let found = catalogue().procedure(procedure)?;
    Some(Next {
        name: found.name.clone(),
        note: format!("Set-up · {after}"),
        place: Place::Procedure(found.id.clone(), View::SetUp, Vec::new()),
    })
}

/// What the best answer shows, two at the most.
fn things(asked: &Decision) -> Vec<Next> {
    let best = asked.best_answer();
    let choices = best.iter().filter_map(|id| asked.choice(id));
    let items = choices.filter_map(|choice| catalogue().item(choice.shows.first()?));
    let next = items.take(2).map(|item| Next {
        name: item.name().into(),
        note: asked.name.clone(),
        place: Place::Item(item.id().clone()),
    });
    next.collect()
}
