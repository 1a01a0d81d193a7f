//! The calendar of sittings: a square for each day of the last twelve weeks.

use crate::{
    parts::fold::Fold,
    questions::{Studied, days},
};
use leptos::prelude::*;
use std::collections::BTreeMap;
use study::{answer::Answer, day::Day};

/// The weeks that are shown.
const WEEKS: u32 = 12;

/// Answers and minutes of each day that has any.
fn by_day(answers: &[Answer]) -> BTreeMap<Day, (u32, u32)> {
    let mut found: BTreeMap<Day, (u32, u32)> = BTreeMap::new();
    for answer in answers {
        let day = found.entry(answer.day).or_default();
        day.0 += 1;
        day.1 = day.1.saturating_add(answer.seconds);
    }
    for (_, seconds) in found.values_mut() {
        *seconds = seconds.div_ceil(60);
    }
    found
}

/// The section.
pub fn calendar(studied: &Studied) -> impl IntoView + use<> {
    let studied_days = by_day(&studied.shown.answers);
    // Weeks stand in columns from Monday on; 1 January 1970 was a Thursday.
    let weekday = u32::try_from((studied.today.0 + 3).rem_euclid(7)).unwrap_or(0);
    let start = studied.today.minus(weekday + 7 * (WEEKS - 1));
    let all = 7 * (WEEKS - 1) + weekday;
    let shown: Vec<(Day, u32)> = (0..=all)
        .map(|ahead| {
            let day = start.plus(ahead);
            (
                day,
                studied_days
                    .get(&day)
                    .map_or(0, |(_, minutes)| (*minutes).max(1)),
            )
        })
        .collect();
    let count = shown.iter().filter(|(_, minutes)| *minutes > 0).count();
    let total: u32 = shown.iter().map(|(_, minutes)| minutes).sum();
    let label = format!("Days of study in the last {WEEKS} weeks: {count} days, {total} minutes");
    let squares: Vec<_> = (0_u32..)
        .zip(&shown)
        .map(|(at, (_, minutes))| {
            // The more minutes, the larger the square: never colour alone.
            let size = match minutes {
                0 => 4,
                1..=5 => 10,
                6..=15 => 14,
                _ => 18,
            };
            let (column, row) = (at / 7, at % 7);
            let (x, y) = (
                26 + 22 * column + (18 - size) / 2,
                20 * row + (18 - size) / 2,
            );
            let class = if *minutes == 0 {
                "q-day q-day-empty"
            } else {
                "q-day"
            };
            view! { <rect class=class x=x y=y width=size height=size rx="2" /> }
        })
        .collect();
    let names = [(0, "Mon"), (2, "Wed"), (4, "Fri")].map(|(row, name)| {
        view! { <text class="q-bar-label" x="0" y=20 * row + 13>{name}</text> }
    });
    let rows: Vec<_> = studied_days
        .iter()
        .rev()
        .map(|(day, (answers, minutes))| {
            view! { <tr><th scope="row">{days::words(*day)}</th><td>{*answers}</td><td>{*minutes}</td></tr> }
        })
        .collect();
    view! {
        <section class="group" data-test="calendar">
            <h2>"Days of study"</h2>
            <svg class="q-chart" viewBox="0 0 292 140" role="img" aria-label=label>
                {names.collect_view()}
                {squares}
            </svg>
            <p class="q-note">
                "The last " {WEEKS} " weeks, a column each: " {count} " days, " {total} " minutes. The larger the square, the longer the study."
            </p>
            {(!rows.is_empty()).then(|| view! {
                <Fold title="Day by day" test="calendar-numbers">
                    <div class="table-frame" tabindex="0" role="region" aria-label="Days of study">
                        <table class="numbers">
                            <thead><tr>
                                <th scope="col">"Day"</th>
                                <th scope="col">"Answers"</th>
                                <th scope="col">"Minutes"</th>
                            </tr></thead>
                            <tbody>{rows}</tbody>
                        </table>
                    </div>
                </Fold>
            })}
        </section>
    }
}
