//! How far the numbers can be trusted: reliability and consistency.

use super::{Worked, figure, per_cent, with_interval};
use class::report::{Missing, Reliability, Report, Told};
use leptos::prelude::*;
use std::rc::Rc;

/// A line: what it is, the number or the words, and what it means.
type Line = (&'static str, String, &'static str);

/// Reliability, consistency, dependability.
#[component]
pub fn Trust(
    /// What was worked out.
    worked: Rc<Worked>,
) -> impl IntoView {
    let report = &worked.report;
    let common = report.scores.items;
    let seats = report.seats.len();
    let lines: Vec<_> = lines(report)
        .into_iter()
        .map(|(name, says, means)| {
            view! {
                <tr>
                    <th scope="row">{name}</th>
                    <td>{says}</td>
                    <td class="dk-means">{means}</td>
                </tr>
            }
        })
        .collect();
    view! {
        <section class="dk-section" data-test="trust">
            <h2>"How far this can be trusted"</h2>
            <p>
                "Seats: " {seats} ". Items that every one of them was asked, over which this is worked out: "
                {common} ". Where each seat has its own patients there are few such items."
            </p>
            <div class="table-frame" tabindex="0" role="region" aria-label="How far this can be trusted">
                <table class="dk-table">
                    <tbody>{lines}</tbody>
                </table>
            </div>
        </section>
    }
}

fn lines(report: &Report) -> Vec<Line> {
    let mut lines = reliability(report.reliability);
    let consistency = report.consistency;
    lines.push((
        "Same verdict twice",
        told(consistency.map(|c| {
            format!(
                "{} (beyond chance: kappa {})",
                per_cent(c.agreement),
                figure(c.kappa, 2)
            )
        })),
        "The share of seats that would pass or fail alike if they did it again. Method: Hanson and Brennan.",
    ));
    lines.push((
        "Verdict as deserved",
        told(consistency.map(|c| per_cent(c.accuracy))),
        "The share of seats that pass or fail as their true score deserves.",
    ));
    if let Some(checks) = &report.cross_checks {
        lines.push((
            "The same by other methods",
            match checks.huynh {
                Some((huynh, _)) => format!(
                    "Huynh {}, Subkoviak {}",
                    per_cent(huynh),
                    per_cent(checks.subkoviak.0)
                ),
                None => format!("Subkoviak {}", per_cent(checks.subkoviak.0)),
            },
            "Both are lower as a rule; far apart, none is to be relied on.",
        ));
    }
    lines.push((
        "Dependability about the pass mark",
        told(report.dependability.map(|phi| figure(phi, 2))),
        "How sure it is on which side of the mark a seat is; 1 is certain. Method: Brennan and Kane.",
    ));
    lines
}

fn reliability(told_of: Told<Reliability>) -> Vec<Line> {
    let meaning = "How far the order of the seats would come out again: Cronbach's alpha, the same as KR-20 here, with its 95 per cent interval.";
    match told_of {
        Ok(it) => vec![
            (
                "Reliability",
                with_interval(it.alpha, Some(it.interval)),
                meaning,
            ),
            (
                "Error of measurement",
                format!("{:.1} items", it.error),
                "Two scores that are less than about three of these apart may be the same.",
            ),
        ],
        Err(missing) => vec![("Reliability", missing.to_string(), meaning)],
    }
}

fn told(number: Result<String, Missing>) -> String {
    number.unwrap_or_else(|missing| missing.to_string())
}
