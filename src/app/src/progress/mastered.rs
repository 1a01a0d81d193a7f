//! Mastery by competency: an expected per cent, where it may lie, and how many
//! answers that rests on.

use crate::parts::fold::Fold;
use leptos::prelude::*;
use study::mastery::{Mastery, Standing};

/// The section of mastery.
pub fn by_competency(mastery: &Mastery) -> impl IntoView + use<> {
    let rows = mastery.standings.iter().map(row).collect_view();
    let lines = mastery.standings.iter().map(line).collect_view();
    view! {
        <section class="group" data-test="mastery">
            <h2>"By competency"</h2>
            <p class="q-note">
                {mastery.words.clone()}
                " Only first answers count here, without a hint; the bar is the 80 % interval, the mark what is expected."
            </p>
            <ul class="q-standings">{rows}</ul>
            <Fold title="The numbers" test="mastery-numbers">
                <div class="table-frame" tabindex="0" role="region" aria-label="Mastery by competency">
                    <table class="numbers">
                        <thead><tr>
                            <th scope="col">"Competency"</th>
                            <th scope="col">"Expected"</th>
                            <th scope="col">"80 % interval"</th>
                            <th scope="col">"First answers"</th>
                            <th scope="col">"Right"</th>
                        </tr></thead>
                        <tbody>{lines}</tbody>
                    </table>
                </div>
            </Fold>
        </section>
    }
}

fn row(standing: &Standing) -> impl IntoView + use<> {
    let picture = standing.percent.map(|percent| {
        let label = format!(
            "{}: {} % expected, between {} and {} %",
            standing.name, percent.expected, percent.low, percent.high
        );
        let width = percent.high.saturating_sub(percent.low).max(1);
        view! {
            <svg class="bar" viewBox="0 0 100 12" preserveAspectRatio="none" role="img" aria-label=label>
                <rect class="q-interval" x=percent.low y="3" width=width height="6" />
                <rect class="q-expected" x=f64::from(percent.expected) - 0.75 y="0" width="1.5" height="12" />
            </svg>
        }
    });
    let practice = standing
        .percent
        .map(|_| view! { <p class="q-note">{standing.practice.words()}</p> });
    view! {
        <li class="q-standing">
            <h3>{standing.name.clone()}</h3>
            {picture}
            <p>{standing.words.clone()}</p>
            {practice}
        </li>
    }
}

fn line(standing: &Standing) -> impl IntoView + use<> {
    let (expected, interval) = standing.percent.map_or_else(
        || ("thin".to_owned(), "–".to_owned()),
        |p| {
            (
                format!("{} %", p.expected),
                format!("{}–{} %", p.low, p.high),
            )
        },
    );
    view! {
        <tr>
            <th scope="row">{standing.name.clone()}</th>
            <td>{expected}</td>
            <td>{interval}</td>
            <td>{standing.count}</td>
            <td>{standing.right}</td>
        </tr>
    }
}
