//! The class report: all that hand-ins come to, as calm tables for a desk.
//! Where a number would mean nothing, the report's own words stand in its place.

mod downloads;
mod first;
mod items;
mod seats;
mod trust;

use super::{
    grading::{self, Going, Progress},
    kept,
    way::{Unreadable, Ways},
};
use crate::{
    assignments::clinic_with,
    parts::{
        choice::{Choice, Choosable},
        notice::{Notice, Tone},
        page::Page,
    },
    place::{ClassPlace, Place},
    shell::NotHere,
    taught::catalogue,
};
use class::{
    assignment::Assignment,
    handin::{SELF_REPORTED, Table},
    report::{Report, Tries},
    roster::Roster,
};
use leptos::{prelude::*, task::spawn_local};
use std::rc::Rc;

/// What was worked out.
pub struct Worked {
    /// What was set.
    pub assignment: Assignment,
    /// The hand-ins.
    pub table: Rc<Table>,
    /// What they come to.
    pub report: Report,
    /// Labels for seats.
    pub roster: Roster,
}

/// The screen.
#[component]
pub fn ReportScreen(
    /// The id of the assignment.
    id: String,
) -> impl IntoView {
    let Some(set) = kept::set(&id) else {
        return view! { <NotHere what="assignment" /> }.into_any();
    };
    let here = ClassPlace::Report(id.clone());
    let up = Place::Class(ClassPlace::Desk).fragment();
    match set.assignment {
        Ok(assignment) => view! {
            <Page title=assignment.name() over="Class" up>
                <Ways id=id.clone() here />
                <p class="hint prose" data-test="self-reported">{SELF_REPORTED}</p>
                <Working id assignment />
            </Page>
        }
        .into_any(),
        Err(fault) => view! { <Unreadable says={fault.to_string()} /> }.into_any(),
    }
}

/// Works the report out, and shows it.
#[component]
fn Working(id: String, assignment: Assignment) -> impl IntoView {
    let going = Going::new();
    let tries = RwSignal::new(Tries::First);
    let worked = RwSignal::new_local(None::<Rc<Worked>>);
    let says = RwSignal::new(None::<String>);
    let more_tries = assignment.tries != 1;
    grading::prepare(&assignment);
    let work = {
        let clinic = clinic_with(assignment.card.as_deref());
        let (clinic, wrong) = match clinic {
            Ok(clinic) => (Some(Rc::new(clinic)), None),
            Err(why) => (None, Some(why)),
        };
        says.set(wrong);
        move |tries: Tries| {
            let Some(clinic) = &clinic else { return };
            let clinic = clinic.with_card(clinic.card().cloned());
            let lines = match kept::hand_ins(&id) {
                Ok(lines) => lines,
                Err(fault) => return says.set(Some(fault.to_string())),
            };
            let roster = kept::roster().unwrap_or_default();
            let assignment = assignment.clone();
            let known = grading::remembered(&id, &lines);
            says.set(None);
            spawn_local(async move {
                let stopped = || {
                    "Stopped. Go to the hand-ins and back to work the report out again.".to_owned()
                };
                let table = match known {
                    Some(table) => Some(table),
                    None => grading::read(&assignment, clinic, lines, Vec::new(), going)
                        .await
                        .map(|collected| Rc::new(collected.table)),
                };
                let Some(table) = table else {
                    says.try_set(Some(stopped()));
                    return;
                };
                let expected = roster.seats();
                let report = grading::report(&assignment, &table, tries, &expected, going).await;
                let Some(report) = report else {
                    says.try_set(Some(stopped()));
                    return;
                };
                worked.try_set(Some(Rc::new(Worked {
                    assignment,
                    table,
                    report,
                    roster,
                })));
            });
        }
    };
    let work = StoredValue::new_local(work);
    work.with_value(|work| work(Tries::First));
    let choose = move |value: String| {
        let wanted = if value == "last" {
            Tries::Last
        } else {
            Tries::First
        };
        tries.set(wanted);
        work.with_value(|work| work(wanted));
    };
    let chosen = move || {
        match tries.get() {
            Tries::First => "first",
            Tries::Last => "last",
        }
        .to_owned()
    };
    let choice = more_tries.then(|| {
        view! {
            <Choice
                legend="Which try counts"
                options=vec![Choosable::new("first", "The first"), Choosable::new("last", "The last")]
                chosen=Signal::derive(chosen)
                choose
                test="tries"
            />
        }
    });
    view! {
        {choice}
        <Progress going doing="Working the report out" />
        {move || {
            says.get()
                .map(|says| {
                    view! {
                        <Notice tone=Tone::Attention>
                            <p data-test="report-says">{says}</p>
                        </Notice>
                    }
                })
        }}
        {move || worked.get().map(|worked| view! { <Shown worked /> })}
    }
}

/// The report.
#[component]
fn Shown(worked: Rc<Worked>) -> impl IntoView {
    let report = &worked.report;
    let passed = report.seats.iter().filter(|seat| seat.passed).count();
    let lead = match report.seats.len() {
        0 => "Nobody has handed in yet.".to_owned(),
        1 => format!(
            "1 seat has handed in; {}.",
            if passed == 1 {
                "it passes"
            } else {
                "it does not pass"
            }
        ),
        many => format!(
            "{many} seats have handed in; {passed} pass at {} per cent.",
            report.pass_mark
        ),
    };
    view! {
        <div class="dk-report" data-test="report">
            <p class="lead" data-test="report-lead">{lead}</p>
            <downloads::Downloads worked=worked.clone() />
            <first::First worked=worked.clone() />
            <seats::Seats worked=worked.clone() />
            <items::Items worked=worked.clone() />
            <trust::Trust worked />
        </div>
    }
}

/// The name of a competency by its id.
pub fn competency(id: &str) -> String {
    let mut all = catalogue().competencies.iter();
    all.find(|it| it.id.as_str() == id)
        .map_or_else(|| id.to_owned(), |it| it.name.clone())
}

/// A share as per cent, without digits after the point.
pub fn per_cent(share: f64) -> String {
    format!("{:.0} %", share * 100.0)
}
