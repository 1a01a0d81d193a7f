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
    way::of_set,
};
use crate::{
    assignments::clinic_with,
    parts::{
        choice::{Choice, Choosable},
        notice::{Notice, Tone},
    },
    place::ClassPlace,
    taught::catalogue,
};
use class::{
    assignment::Assignment,
    handin::{SELF_REPORTED, Table},
    report::{ItemReport, Report, Tries},
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
    of_set(id.clone(), ClassPlace::Report(id.clone()), |assignment| {
        let body = view! {
            <p class="hint prose dk-reported" data-test="self-reported">{SELF_REPORTED}</p>
            <Working id assignment />
        };
        Ok(body.into_any())
    })
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
            "{many} seats have handed in; {passed} {} at {} per cent.",
            if passed == 1 { "passes" } else { "pass" },
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

/// The name of an item, with the task that it is of.
pub fn titled(item: &ItemReport) -> String {
    format!("{} (task {})", item.name, item.place + 1)
}

/// A share as per cent, without digits after the point.
pub fn per_cent(share: f64) -> String {
    format!("{:.0} %", share * 100.0)
}

/// A number with so many digits after the point. What rounds to nothing has no sign.
pub fn figure(value: f64, digits: usize) -> String {
    let text = format!("{value:.digits$}");
    match text.strip_prefix('-') {
        Some(size) if size.bytes().any(|b| matches!(b, b'1'..=b'9')) => format!("−{size}"),
        Some(size) => size.to_owned(),
        None => text,
    }
}

/// A number with its interval, where it has one.
pub fn with_interval(value: f64, interval: Option<(f64, f64)>) -> String {
    let value = figure(value, 2);
    match interval {
        Some((low, high)) => format!("{value} ({} to {})", figure(low, 2), figure(high, 2)),
        None => value,
    }
}

#[cfg(test)]
mod tests {
    use super::{figure, with_interval};

    #[test]
    fn what_rounds_to_nothing_has_no_sign() {
        assert_eq!(figure(-0.004, 2), "0.00");
        assert_eq!(figure(-0.006, 2), "−0.01");
        assert_eq!(figure(0.5, 1), "0.5");
        assert_eq!(
            with_interval(0.4, Some((-0.001, 0.69))),
            "0.40 (0.00 to 0.69)"
        );
    }
}
