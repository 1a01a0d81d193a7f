//! Seats by competency.

use super::{Worked, competency};
use crate::parts::more::More;
use class::report::{Part, SeatReport};
use leptos::prelude::*;
use std::rc::Rc;

/// How many seats are drawn at once; a report can hold thousands.
const AT_ONCE: usize = 100;

/// The table.
#[component]
pub fn Seats(
    /// What was worked out.
    worked: Rc<Worked>,
) -> impl IntoView {
    let shown = RwSignal::new(AT_ONCE);
    let count = worked.report.seats.len();
    let heads: Vec<_> = worked
        .report
        .competencies
        .iter()
        .map(|id| view! { <th scope="col">{competency(id)}</th> })
        .collect();
    let kept = StoredValue::new_local(worked);
    let rows = move || {
        let shown = shown.get();
        kept.with_value(|worked| {
            let seats = worked.report.seats.iter().take(shown);
            seats
                .map(|seat| row(worked.roster.label(seat.seat), seat))
                .collect_view()
        })
    };
    view! {
        <section class="dk-section" hidden=count == 0>
            <h2>"Seats by competency"</h2>
            <div class="table-frame" tabindex="0" role="region" aria-label="Seats by competency">
                <table class="dk-table numbers" data-test="seats-table">
                    <thead>
                        <tr>
                            <th scope="col">"Seat"</th>
                            <th scope="col">"Passed"</th>
                            <th scope="col">"Right"</th>
                            <th scope="col">"Give or take"</th>
                            <th scope="col">"Marks"</th>
                            <th scope="col">"Unsafe"</th>
                            <th scope="col">"Open"</th>
                            <th scope="col">"Minutes"</th>
                            {heads}
                        </tr>
                    </thead>
                    <tbody>{rows}</tbody>
                </table>
            </div>
            <More
                shown
                count=count.into()
                at_once=AT_ONCE
                says=move |_| format!("Show more of {count} seats")
                test="more-seats"
            />
            <p class="hint">
                "Right answers out of what was asked; acceptable ways count as right, an open one as wrong. “Give or take” is the error of measurement at that score, in items. A competency with few answers says little about a seat."
            </p>
        </section>
    }
}

fn row(label: String, seat: &SeatReport) -> impl IntoView + use<> {
    let late = seat.late.then_some(" (late)");
    let attempt = (seat.attempt > 1).then(|| format!(" (try {})", seat.attempt));
    // At nothing or everything right the formula gives no error, which says nothing.
    let error = seat.error.filter(|error| *error > 0.0);
    let error = error.map_or_else(|| "–".to_owned(), |error| format!("± {error:.1}"));
    let parts: Vec<_> = seat
        .parts
        .iter()
        .map(|part| view! { <td>{of(*part)}</td> })
        .collect();
    let passed = if seat.passed { "passed" } else { "not yet" };
    let class = if seat.all.harmful > 0 {
        "dk-unsafe"
    } else {
        ""
    };
    view! {
        <tr data-test=format!("seat-{}", seat.seat.0)>
            <th scope="row">{label} {late} {attempt}</th>
            <td>{passed}</td>
            <td>{of(seat.all)}</td>
            <td>{error}</td>
            <td>{format!("{:.0}", seat.marks)}</td>
            <td class=class>{seat.all.harmful}</td>
            <td>{seat.all.blank}</td>
            <td>{seat.seconds / 60}</td>
            {parts}
        </tr>
    }
}

fn of(part: Part) -> String {
    match part.asked {
        0 => "–".into(),
        asked => format!("{} of {asked}", part.right),
    }
}
