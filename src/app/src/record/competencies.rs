//! What was shown, by competency: a bar for each, and the numbers behind it.

use crate::{
    log::log,
    parts::{fold::Fold, verdict},
    taught::catalogue,
};
use catalogue::competencies::Competency;
use leptos::prelude::*;
use record::{Verdict, folds};

/// Answers to one competency by verdict, best first.
type Counts = [u32; 4];

/// The overview.
#[component]
pub fn Competencies() -> impl IntoView {
    let tallies = log().memo(|events| {
        let tallies = folds::by_competency(events).into_iter();
        tallies
            .map(|(id, tally)| (id, Verdict::ALL.map(|verdict| tally.of(verdict))))
            .collect::<Vec<(String, Counts)>>()
    });
    let competencies = &catalogue().competencies;
    let counted = move |competency: &Competency| {
        tallies.with(|all| {
            let mut all = all.iter();
            all.find(|(id, _)| id == competency.id.as_str())
                .map_or([0; 4], |(_, counts)| *counts)
        })
    };
    let shown = move || {
        let rows: Vec<(&Competency, Counts)> = competencies
            .iter()
            .map(|each| (each, counted(each)))
            .collect();
        view! {
            <ul class="competencies">{rows.iter().map(|(it, counts)| row(it, *counts)).collect_view()}</ul>
            <Key />
            <Fold title="The numbers" test="numbers">{table(rows)}</Fold>
        }
    };
    let nothing_yet = move || {
        tallies.with(Vec::is_empty).then(|| {
            view! {
                <p>"Nothing is done yet. Each decision in a case, each mix and each number worked out counts here, by what it shows."</p>
            }
        })
    };
    view! {
        <section data-test="competencies">
            <h2>"What I can do"</h2>
            {nothing_yet}
            {shown}
        </section>
    }
}

fn row(competency: &'static Competency, counts: Counts) -> impl IntoView + use<> {
    let total: u32 = counts.iter().sum();
    view! {
        <li>
            <details class="competency">
                <summary>
                    <span class="competency-name">{competency.name.as_str()}</span>
                    <span class="competency-total">{answers(total)}</span>
                    {bar(counts, &spoken(competency, counts))}
                </summary>
                <p>"I can " {competency.can.as_str()} "."</p>
            </details>
        </li>
    }
}

fn answers(total: u32) -> String {
    match total {
        0 => "no answers yet".into(),
        1 => "1 answer".into(),
        many => format!("{many} answers"),
    }
}

/// What the bar shows, for those who do not see it.
fn spoken(competency: &Competency, counts: Counts) -> String {
    let parts: Vec<String> = Verdict::ALL
        .iter()
        .zip(counts)
        .map(|(verdict, count)| format!("{count} {}", verdict::word(*verdict).to_lowercase()))
        .collect();
    format!("{}: {}", competency.name, parts.join(", "))
}

/// A bar parted by verdict. Each part has a shape of its own besides its
/// colour: full, hollow, half as high, and split.
fn bar(counts: Counts, label: &str) -> impl IntoView + use<> {
    let total = counts.iter().sum::<u32>().max(1);
    let mut from = 0;
    let mut parts = Vec::new();
    for (verdict, count) in Verdict::ALL.into_iter().zip(counts) {
        for (y, height) in heights(verdict) {
            let class = format!("bar-part {}", verdict::class(verdict));
            parts.push(view! { <rect class=class x=from y=*y width=count height=*height /> });
        }
        from += count;
    }
    view! {
        <svg
            class="bar"
            viewBox=format!("0 0 {total} 12")
            preserveAspectRatio="none"
            role="img"
            aria-label=label.to_string()
        >
            {parts}
        </svg>
    }
}

/// Where the rectangles of a part lie: top and height, of 12.
fn heights(verdict: Verdict) -> &'static [(u8, u8)] {
    match verdict {
        Verdict::Right | Verdict::Acceptable => &[(0, 12)],
        Verdict::Wrong => &[(6, 6)],
        Verdict::Unsafe => &[(0, 5), (7, 5)],
    }
}

/// What the parts of a bar mean.
#[component]
fn Key() -> impl IntoView {
    view! {
        <ul class="key">
            {Verdict::ALL.map(swatch).collect_view()}
        </ul>
    }
}

fn swatch(verdict: Verdict) -> impl IntoView {
    let rects: Vec<_> = heights(verdict)
        .iter()
        .map(|(y, height)| {
            let class = format!("bar-part {}", verdict::class(verdict));
            view! { <rect class=class x="0" y=*y width="20" height=*height /> }
        })
        .collect();
    view! {
        <li>
            <svg class="swatch" viewBox="0 0 20 12" aria-hidden="true">{rects}</svg>
            {verdict::word(verdict)}
        </li>
    }
}

fn table(rows: Vec<(&'static Competency, Counts)>) -> impl IntoView {
    let heads = Verdict::ALL.map(|verdict| {
        view! { <th scope="col">{verdict::word(verdict)}</th> }
    });
    let lines: Vec<_> = rows
        .into_iter()
        .map(|(competency, counts)| {
            let cells = counts.map(|count| view! { <td>{count}</td> });
            view! { <tr><th scope="row">{competency.name.as_str()}</th>{cells.collect_view()}</tr> }
        })
        .collect();
    view! {
        <div class="table-frame" tabindex="0" role="region" aria-label="Answers by competency">
            <table class="numbers">
                <thead><tr><th scope="col">"Competency"</th>{heads.collect_view()}</tr></thead>
                <tbody>{lines}</tbody>
            </table>
        </div>
    }
}
